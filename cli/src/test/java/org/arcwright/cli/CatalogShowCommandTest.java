package org.arcwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Mode;
import org.arcwright.library.BuiltIn;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A facilitator runs an exercise from its page. */
class CatalogShowCommandTest {
  @TempDir Path folder;
  @TempDir Path elsewhere;

  @Test
  void the_page_is_complete_for_the_size() throws IOException {
    Slips.write(folder, Slips.ID, Slips.TEXT);

    Run run =
        Run.of(
            "catalog", "show", Slips.ID, "--people", 13, "--mode", "remote", "--catalog", folder);

    assertThat(run)
        .isEqualTo(
            new Run(
                Exit.DONE,
                """
                Paper slips
                Learn what was useful.

                For 13 people: 3.5–6.5 min, usually 4.75. It serves 3–60 people, in groups of
                3–5.
                Reflection, energy 2 of 5 (quiet work), openness 0 of 3 (nothing personal).
                Before it: decision. After it: takeaways and feedback.
                Id paper-slips, from FOLDER.

                Have ready
                  - Remote (works): call and breakout rooms. Small rooms.

                Say, to start
                  "Before we part, two questions. What was useful, and what is still unclear?"

                Steps
                  0:00  1–1.5 min, usually 1; all together; you speak
                        Say the opening.
                  1:00  2.5–5 min, usually 3.75; 5 turns of 0.75 min; in small groups (2 groups
                        of 4 and 1 of 5); one after another
                        In small groups, each reads one line.
                  4:45  end

                Watch for
                  - Praise alone.

                So that all can take part
                  - A line may be dictated.

                Carry over
                  - A pile of slips.

                Source
                  - Published: Reed, A. (2001). Slips. Ghent.
                """
                    .replace("FOLDER", folder.toString()),
                ""));
  }

  @Test
  void twelve_in_threes_are_four_groups() throws IOException {
    Slips.write(folder, Slips.ID, Slips.TEXT.replace("{min: 3, max: 5}", "{min: 2, max: 3}"));

    assertThat(
            Run.of("catalog", "show", Slips.ID, "--people", 12, "--catalog", folder)
                .out()
                .replaceAll("\\s+", " "))
        .contains("in small groups (4 groups of 3)", "3 turns of 0.75 min");
  }

  /** Whoever has only the page misses nothing that the file says. */
  @Test
  void nothing_of_any_exercise_is_left_out() {
    for (Exercise exercise : BuiltIn.catalog().exercises().values()) {
      Run run = Run.of("catalog", "show", exercise.id());
      String page = run.out().replaceAll("\\s+", " ");

      assertThat(run.code()).as(exercise.id()).isEqualTo(Exit.DONE);
      assertThat(page).contains("\"" + flat(exercise.opening()) + "\"", flat(exercise.purpose()));
      exercise.steps().forEach(step -> assertThat(page).contains(flat(step.text())));
      for (Mode mode : Mode.values()) {
        assertThat(page).contains(flat(exercise.in(mode).adaptation()));
        exercise.cautions(mode).forEach(caution -> assertThat(page).contains(flat(caution)));
      }
      exercise.care().optOut().ifPresent(way -> assertThat(page).contains(flat(way)));
      exercise.care().access().forEach(line -> assertThat(page).contains(flat(line)));
      exercise.notes().watch().forEach(line -> assertThat(page).contains(flat(line)));
      exercise.notes().materials().forEach(line -> assertThat(page).contains(flat(line)));
      exercise.notes().tips().forEach(line -> assertThat(page).contains(flat(line)));
      assertThat(page).contains(flat(exercise.notes().carryOver()), "from built-in.");
      assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
    }
  }

  private static String flat(String text) {
    return text.replaceAll("\\s+", " ");
  }

  @Test
  void a_size_that_it_does_not_serve_is_an_answer() throws IOException {
    Slips.write(folder, Slips.ID, Slips.TEXT.replace("{min: 3, max: 5}", "{min: 4, max: 5}"));

    assertThat(Run.of("catalog", "show", Slips.ID, "--people", 7, "--catalog", folder))
        .isEqualTo(
            new Run(
                Exit.NEGATIVE,
                "\"Paper slips\" serves 3-60 people in groups of 4-5, not 7; the nearest number is"
                    + " 8.\n",
                ""));
  }

  @Test
  void a_goal_is_shown_with_its_arc() {
    Run run = Run.of("catalog", "show", "choose-a-direction");

    assertThat(run.code()).isEqualTo(Exit.DONE);
    assertThat(run.out())
        .startsWith("Choose a direction\n")
        .contains(
            "1. Arrive: 1–2 of kind icebreaker", "exercises for it. Its name in a brief: open.");
  }

  @Test
  void as_json_for_tools() {
    Run run = Run.of("catalog", "show", "premortem", "--people", "7", "--format", "json");

    assertThat(run.out())
        .contains("\"exercise\": {", "\"people\": 7", "\"times\": 1", "\"layer\": \"built-in\"");
    assertThat(Run.of("catalog", "show", "generate-ideas", "--format", "json").out())
        .contains("\"goal\": {", "\"layer\": \"built-in\"");
  }

  @Test
  void the_layer_is_told() throws IOException {
    Slips.write(folder, "dot-voting", Slips.TEXT.replace("paper-slips", "dot-voting"));

    assertThat(flat(Run.of("catalog", "show", "dot-voting", "--catalog", folder).out()))
        .contains("from " + folder + ", in place of the one from built-in.");
    assertThat(Run.of("catalog", "show", "premortem", "--catalog", folder).out())
        .contains("Id premortem, from built-in.");
  }

  @Test
  void what_is_retired_is_gone_and_who_took_it_out_is_told() throws IOException {
    Slips.write(folder, "dot-voting", "id: dot-voting\nretired: true\n");

    assertThat(Run.of("catalog", "show", "dot-voting", "--catalog", folder))
        .isEqualTo(
            new Run(
                Exit.WRONG_INPUT, "", "\"dot-voting\": " + folder + " takes this exercise out\n"));
    assertThat(Run.of("catalog", "list", "--catalog", folder).out()).doesNotContain("dot-voting ");
  }

  @Test
  void an_unknown_id_gets_the_nearest() {
    assertThat(Run.of("catalog", "show", "dot-votin").err())
        .isEqualTo("\"dot-votin\": the catalog has no such exercise or goal; perhaps dot-voting\n");
    assertThat(Run.of("catalog", "compare", "dot-voting", "multivotin").err())
        .contains("perhaps multivoting");
    assertThat(Run.of("catalog", "similar", "premorten").err()).contains("perhaps premortem");
  }

  @Test
  void two_are_compared_side_by_side() {
    Run run = Run.of("catalog", "compare", "dot-voting", "multivoting");

    assertThat(run.code()).isEqualTo(Exit.DONE);
    assertThat(run.out())
        .contains("Dot voting", "Multivoting in two rounds", "minutes for 12", "is livelier");
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
    assertThat(Run.of("catalog", "compare", "premortem", "premortem").out())
        .endsWith("They differ in nothing that is compared here.\n");
  }

  @Test
  void the_nearest_are_listed_with_the_reason() {
    Run run = Run.of("catalog", "similar", "brainwriting-6-3-5", "--count", 4);

    assertThat(run.code()).isEqualTo(Exit.DONE);
    assertThat(run.out().lines().filter(line -> line.matches(" +\\d+  \\S+, .*"))).hasSize(4);
    assertThat(run.out()).contains("brainwriting-shared-pool", "the same kind", "Both leave");
    assertThat(Run.of("catalog", "similar", "premortem", "--count", 0).code())
        .isEqualTo(Exit.WRONG_INPUT);
  }

  @Test
  void a_faulty_layer_stops_a_command_unless_it_is_lenient() throws IOException {
    Path broken = Slips.write(folder, "broken", "id: broken\nenergy: 9\n");
    Slips.write(folder, Slips.ID, Slips.TEXT);
    Path brief = Briefs.write(elsewhere, Briefs.SHORT);

    for (Object[] command :
        new Object[][] {
          {"compose", brief},
          {"catalog", "list"},
          {"catalog", "export"},
          {"catalog", "show", "premortem"}
        }) {
      Run strict = Run.of(with(command, "--catalog", folder));
      Run lenient = Run.of(with(command, "--catalog", folder, "--lenient"));

      assertThat(strict.code()).isEqualTo(Exit.WRONG_INPUT);
      assertThat(strict.out()).isEmpty();
      assertThat(strict.err()).contains(broken + ":1:1: missing key, title", "--lenient");
      assertThat(lenient.code()).as(lenient.err()).isEqualTo(Exit.DONE);
      assertThat(lenient.err()).contains(broken + ":2:9: energy, 9", "Left out: " + broken + "\n");
    }
    assertThat(Run.of("catalog", "list", "--catalog", folder, "--lenient").out())
        .contains("paper-slips");
  }

  private static Object[] with(Object[] words, Object... more) {
    return Stream.concat(Arrays.stream(words), Arrays.stream(more)).toArray();
  }

  @Test
  void the_way_out_is_told_where_there_is_something_to_heed() {
    assertThat(Run.of("catalog", "show", "affinity-mapping", "--mode", "in-person").out())
        .contains("To opt out, say:");
    assertThat(Run.of("catalog", "show", "affinity-mapping", "--mode", "remote").out())
        .doesNotContain("To opt out", "Heed");
  }
}
