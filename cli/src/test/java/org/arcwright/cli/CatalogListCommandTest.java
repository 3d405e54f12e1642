package org.arcwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Mode;
import org.arcwright.library.BuiltIn;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A trainer looks for exercises. */
class CatalogListCommandTest {
  @Test
  void without_filters_all_are_there() {
    Run run = Run.of("catalog", "list");

    int all = BuiltIn.catalog().exercises().size();
    assertThat(run.code()).isEqualTo(Exit.DONE);
    assertThat(run.out()).contains(all + " of " + all + " exercises.");
    BuiltIn.catalog().exercises().keySet().forEach(id -> assertThat(run.out()).contains(id));
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void every_filter_holds() {
    Run run =
        Run.of(
            (Object[])
                ("catalog list --kind divergent,convergent --people 12 --minutes 15..30"
                        + " --mode remote --without-tool board,document --energy 2..3 --openness ..1"
                        + " --goal choose-a-direction")
                    .split(" "));

    List<Exercise> listed = listed(run);
    assertThat(listed).isNotEmpty();
    assertThat(listed)
        .allSatisfy(
            exercise -> {
              assertThat(exercise.kind()).isIn(Kind.DIVERGENT, Kind.CONVERGENT);
              assertThat(exercise.serves(12)).isTrue();
              assertThat(exercise.minutes(12).min().toMinutes()).isLessThanOrEqualTo(30);
              assertThat(exercise.minutes(12).max().toMinutes()).isGreaterThanOrEqualTo(15);
              assertThat(exercise.in(Mode.REMOTE).fit()).isPositive();
              assertThat(exercise.in(Mode.REMOTE).tools()).doesNotContain("board", "document");
              assertThat(exercise.energy()).isBetween(2, 3);
              assertThat(exercise.openness()).isLessThanOrEqualTo(1);
            });
  }

  @Test
  void words_and_work_products_are_found() {
    assertThat(listed(Run.of("catalog", "list", "--text", "Brainwriting sheets")))
        .extracting(Exercise::id)
        .contains("brainwriting-6-3-5", "brainwriting-shared-pool");
    assertThat(listed(Run.of("catalog", "list", "--yields", "risks", "--tool", "board")))
        .isNotEmpty()
        .allMatch(exercise -> exercise.yields().contains("risks"));
  }

  @Test
  void those_come_first_that_usually_last_so_long() {
    Run run = Run.of("catalog", "list", "--kind", "decision", "--people", "8", "--minutes", "20");

    List<Long> off =
        listed(run).stream()
            .map(e -> Math.abs(e.minutes(8).typical().toSeconds() - 20 * 60))
            .toList();
    assertThat(off).isNotEmpty().isSorted();
  }

  @Test
  void as_json_for_tools() {
    Run run = Run.of("catalog", "list", "--text", "premortem", "--people", "8", "--format", "json");

    assertThat(run.out())
        .startsWith("{\n  \"exercises\": [")
        .contains("\"id\": \"premortem\"", "\"people\": 8", "\"layer\": \"built-in\"");
  }

  @Test
  void when_nothing_meets_all_the_filter_in_the_way_is_named() {
    Run run = Run.of("catalog", "list", "--kind", "decision", "--yields", "introductions");

    assertThat(run.code()).isEqualTo(Exit.NEGATIVE);
    assertThat(run.out())
        .startsWith("No exercise meets all that.\n")
        .containsPattern("Without --kind there are \\d+\\.")
        .containsPattern("Without --yields introductions there are \\d+\\.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--kind divergant | \"divergant\" is none; perhaps divergent",
        "--goal choose-a-directon | \"choose-a-directon\": the catalog has no such goal; perhaps choose-a-direction",
        "--tool boards | \"boards\": the catalog has no such tool; perhaps board",
        "--without-tool pol | \"pol\": the catalog has no such tool; perhaps poll",
        "--yields idea | \"idea\": the catalog has no such work product",
        "--mode online | \"online\" is none; remote, in-person or hybrid is right",
        "--minutes ten | \"ten\" is no number or range; write 20, 15..30, ..20 or 20..",
        "--minutes 30..20 | \"30..20\" is no number or range",
        "--minutes .. | \"..\" is no number or range",
        "--people many | --people",
        "--people 0 | --people 0: from 1 to 1000 is right",
        "--energy 9 | --energy 9: from 1 to 5 is right",
        "--openness 4..6 | --openness 4..6: from 0 to 3 is right",
        "--format csv | \"csv\" is none; text or json are right",
        "--kinds decision | \"--kinds\" is unknown here; perhaps --kind"
      })
  void wrong_words_are_told_with_the_right_ones(String words, String hint) {
    Run run = Run.of((Object[]) ("catalog list " + words).split(" "));

    assertThat(run.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains(hint);
  }

  @ParameterizedTest
  @ValueSource(strings = {"20", "15..30", "..20", "20.."})
  void ranges_read_as_they_are_written(String text) {
    assertThat(new Between.Converter().convert(text)).hasToString(text);
  }

  /** The exercises in the rows, in their order. */
  private static List<Exercise> listed(Run run) {
    assertThat(run.code()).as(run.out() + run.err()).isEqualTo(Exit.DONE);
    return run.out()
        .lines()
        .map(line -> line.split(" ", 2)[0])
        .flatMap(id -> BuiltIn.catalog().exercise(id).stream())
        .toList();
  }
}
