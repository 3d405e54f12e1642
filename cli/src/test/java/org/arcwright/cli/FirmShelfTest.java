package org.arcwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Kind;
import org.arcwright.format.AgendaFormat;
import org.arcwright.format.CatalogFormat;
import org.arcwright.library.BuiltIn;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * An invented firm keeps a shelf of twenty exercises over the built-in one: it tells many in its
 * own way and takes out those it tells otherwise, and one keeps its id and takes the place of ours.
 */
class FirmShelfTest {
  private static final int OWN = 19;
  private static final String HOUSE = "house-";
  private static final String REPLACED = "premortem";

  @TempDir Path folder;
  private Path shelf;
  private Path brief;
  private List<String> usual;

  @BeforeEach
  void aShelfOfTheirOwn() throws IOException {
    shelf = folder.resolve("house-shelf");
    brief = Briefs.write(folder, Briefs.SHORT);
    usual = composed(Run.of("compose", brief, "--format", "json"));
    for (Exercise exercise : retold()) {
      String text =
          CatalogFormat.write(exercise)
              .replaceFirst("id: ", "id: " + HOUSE)
              .replaceFirst("title: \"?", "$0Our ");
      Slips.write(shelf, HOUSE + exercise.id(), text);
      Slips.write(shelf, exercise.id(), "id: " + exercise.id() + "\nretired: true\n");
    }
    Exercise ours = BuiltIn.catalog().exercise(REPLACED).orElseThrow();
    String theirs =
        CatalogFormat.write(ours).replace(ours.purpose(), "We look back from a failure.");
    Slips.write(shelf, REPLACED, theirs);
  }

  /** What the agenda would hold without them, and others of all kinds. */
  private List<Exercise> retold() {
    List<Exercise> retold = new ArrayList<>();
    usual.forEach(id -> retold.add(BuiltIn.catalog().exercise(id).orElseThrow()));
    for (Kind kind : Kind.values()) {
      BuiltIn.catalog().exercises().values().stream()
          .filter(e -> e.kind() == kind && !retold.contains(e) && !e.id().equals(REPLACED))
          .filter(e -> e.title().length() < 50)
          .limit(4)
          .forEach(retold::add);
    }
    return retold.subList(0, OWN);
  }

  private static List<String> composed(Run run) {
    assertThat(run.code()).as(run.err()).isEqualTo(Exit.DONE);
    Agenda agenda = AgendaFormat.read("agenda", run.out());
    return agenda.activities().stream().map(Activity::exercise).toList();
  }

  @Test
  void their_exercises_make_the_agenda_and_what_they_took_out_is_gone() {
    List<String> theirs =
        composed(Run.of("compose", brief, "--format", "json", "--catalog", shelf));

    assertThat(usual).isNotEmpty();
    assertThat(theirs).anyMatch(id -> id.startsWith(HOUSE)).doesNotContainAnyElementsOf(usual);
  }

  @Test
  void each_page_says_which_shelf_it_comes_from() {
    assertThat(Run.of("catalog", "show", HOUSE + usual.get(0), "--catalog", shelf).out())
        .contains("Id " + HOUSE + usual.get(0) + ", from " + shelf);
    assertThat(onePage(Run.of("catalog", "show", REPLACED, "--catalog", shelf)))
        .contains("We look back from a failure.")
        .contains("Id premortem, from " + shelf + ", in place of the one from built-in.");
    assertThat(Run.of("catalog", "show", usual.get(0), "--catalog", shelf).err())
        .contains(shelf + " takes this exercise out");
    assertThat(Run.of("catalog", "show", "five-whys", "--catalog", shelf).out())
        .contains("from built-in.");
  }

  private static String onePage(Run run) {
    return run.out().replaceAll("\\s+", " ");
  }

  @Test
  void a_broken_page_stops_the_composing_unless_it_may_be_left_out() throws IOException {
    Path broken = Slips.write(shelf, "house-broken", "id: house-broken\nenergy: 9\n");

    Run strict = Run.of("compose", brief, "--catalog", shelf);
    Run lenient = Run.of("compose", brief, "--format", "json", "--catalog", shelf, "--lenient");

    assertThat(strict.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(strict.err()).contains(broken + ":2:9: energy, 9");
    assertThat(lenient.err()).contains("Left out: " + broken);
    assertThat(composed(lenient)).anyMatch(id -> id.startsWith(HOUSE));
  }

  @Test
  void twenty_entries_are_theirs() throws IOException {
    try (Stream<Path> files = Files.list(shelf.resolve("exercises"))) {
      assertThat(files).hasSize(OWN + OWN + 1);
    }
    assertThat(Run.of("catalog", "list", "--format", "json", "--catalog", shelf).out().lines())
        .filteredOn(line -> line.contains("\"layer\": \"" + shelf))
        .hasSize(OWN + 1);
  }
}
