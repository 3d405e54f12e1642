package org.arcwright.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Layers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A firm's folder over another catalog: what it adds, takes out, and gets wrong. */
class LayerReadingTest {
  private static final Catalog BELOW = SmallCatalog.read();

  @TempDir Path folder;

  @Test
  void it_adds_replaces_and_takes_out() throws IOException {
    put("exercises/two-objects.yaml", "id: two-objects\nretired: true\n");
    put("exercises/ours/chat-burst.yaml", SmallCatalog.CHAT_BURST.replace("Chat burst", "Ours"));
    put("goals/generate-ideas.yaml", "retired: true\nid: generate-ideas\n");
    put("tools.yaml", "- {id: gong, title: gong, meaning: It sounds., modes: [in-person]}\n");
    put(
        "exercises/gong.yaml",
        SmallCatalog.CHAT_BURST
            .replace("id: chat-burst", "id: gong")
            .replace("in-person: {fit: 2, tools: []", "in-person: {fit: 2, tools: [gong]"));

    LayerReading reading = CatalogFormat.readLayer(folder, BELOW);
    Catalog all = Layers.of("below", BELOW).with(reading.strictly()).catalog();

    assertThat(all.exercises().keySet()).containsExactly("chat-burst", "gong");
    assertThat(all.exercise("chat-burst").map(Exercise::title)).contains("Ours");
    assertThat(all.goals()).isEmpty();
    assertThat(reading.layer().retiredExercises()).containsExactly("two-objects");
    assertThat(reading.leftOut()).isEmpty();
  }

  @Test
  void a_whole_file_may_be_retired_too_and_is_kept_for_later() throws IOException {
    put(
        "exercises/old.yaml",
        SmallCatalog.CHAT_BURST.replace("id: chat-burst", "id: old\nretired: true"));

    assertThat(CatalogFormat.readLayer(folder, BELOW).strictly().exercises()).isEmpty();
  }

  @Test
  void what_is_taken_out_must_be_there() throws IOException {
    put("exercises/two-object.yaml", "id: two-object\nretired: true\n");
    put("exercises/chat-burst.yaml", "id: chat-burst\nretired: yes\n");
    put("exercises/x.yaml", "retired: true\nidd: x\n");

    assertThat(problems(CatalogFormat.readLayer(folder, BELOW)))
        .contains(
            "exercises/two-object.yaml:1:5: id, two-object: there is no such exercise to take"
                + " out; perhaps two-objects",
            "exercises/chat-burst.yaml:2:10: retired, yes: true or false is right",
            "exercises/x.yaml:1:1: missing key, id: add it, such as id: two-objects",
            "exercises/x.yaml:2:1: unknown key, idd: perhaps id");
  }

  @Test
  void an_entry_that_is_asked_for_by_itself_cannot_be_retired() {
    assertThat(
            Complaints.of(
                () ->
                    CatalogFormat.readExercise(
                        "e.yaml", SmallCatalog.TWO_OBJECTS + "retired: true\n")))
        .containsExactly(
            "e.yaml:24:10: retired, true: only a folder that adds to another catalog takes out;"
                + " strike it");
  }

  @Test
  void what_is_sound_is_there_and_what_is_not_is_named() throws IOException {
    put("exercises/two-objects.yaml", SmallCatalog.TWO_OBJECTS.replace("energy: 3", "energy: 9"));
    put("exercises/chat-burst.yaml", SmallCatalog.CHAT_BURST.replace("Chat burst", "Ours"));

    LayerReading reading = CatalogFormat.readLayer(folder, BELOW);

    assertThat(reading.layer().exercises()).extracting(Exercise::title).containsExactly("Ours");
    assertThat(reading.leftOut())
        .containsExactly(folder.resolve("exercises/two-objects.yaml").toString());
    assertThat(reading.problems()).hasSize(1);
    assertThatExceptionOfType(FormatException.class).isThrownBy(reading::strictly);
  }

  @Test
  void entries_that_use_a_word_from_a_faulty_file_are_left_out() throws IOException {
    put("products.yaml", "- {id: mood, title: mood}\n");
    put(
        "exercises/song.yaml",
        SmallCatalog.CHAT_BURST
            .replace("id: chat-burst", "id: song")
            .replace("yields: [idea-pool]", "yields: [mood]"));

    LayerReading reading = CatalogFormat.readLayer(folder, BELOW);

    assertThat(problems(reading)).hasSize(1).first().asString().startsWith("products.yaml:1:3:");
    assertThat(reading.layer().exercises()).isEmpty();
    assertThat(reading.leftOut())
        .containsExactly(
            folder.resolve("products.yaml").toString(),
            folder.resolve("exercises/song.yaml").toString());
  }

  @Test
  void a_folder_that_is_spelt_wrong_is_not_passed_over() throws IOException {
    put("exercise/song.yaml", SmallCatalog.CHAT_BURST);

    assertThat(problems(CatalogFormat.readLayer(folder, BELOW)))
        .containsExactly("exercise: unknown folder, exercise: perhaps exercises");
  }

  @Test
  void words_that_stand_twice_are_told() throws IOException {
    put(
        "products.yaml",
        "- {id: mood, title: mood, meaning: One.}\n- {id: mood, title: mood, meaning: Two.}\n");

    assertThat(problems(CatalogFormat.readLayer(folder, BELOW)))
        .containsExactly(
            "products.yaml:2:8: id, mood: it stands above already; strike one of the two");
  }

  @Test
  void every_fault_of_an_entry_is_told_at_once() throws IOException {
    String text =
        SmallCatalog.TWO_OBJECTS
            .replace("title: Two objects", "title: " + "Two objects ".repeat(6))
            .replace("kind: icebreaker", "kind: ice")
            .replace("{min: 4, max: 12}", "{min: 12, max: 4}")
            .replace("energy: 3", "energy: 6")
            .replace("openness: 1", "openness: 4")
            .replace("[arrival]", "[arrival, arrivals]")
            .replace("who: each", "whom: each")
            .replace("per: person", "rounds: 2")
            .replace("fit: 2", "fit: 7")
            .replace("watch: [Who talks long.]", "watch: ['']");
    put("exercises/two-objects.yaml", text);

    assertThat(problems(CatalogFormat.readLayer(folder, BELOW)))
        .extracting(problem -> problem.replaceFirst("^[^:]*:", "").replaceFirst(": [^:]*$", ""))
        .containsExactly(
            "2:8: title, Two objects Two objects Two objects Two objects Two objec...",
            "3:7: kind, ice",
            "5:24: max, 4",
            "6:9: energy, 6",
            "7:11: openness, 4",
            "8:19: unknown work product, arrivals",
            "11:5: missing key, who: add it, such as who",
            "12:5: unknown key, whom",
            "15:13: rounds, 2: rounds go with \"per",
            "18:20: fit, 7",
            "20:8: watch, empty");
  }

  private void put(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  private List<String> problems(LayerReading reading) {
    return reading.problems().stream()
        .map(problem -> problem.text().replace(folder + "/", ""))
        .toList();
  }
}
