package org.arcwright.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TableFormatTest {
  private static final Catalog WORDS = SmallCatalog.read();
  private static final Exercise ROUNDS =
      CatalogFormat.readExercise(
          "rounds.yaml",
          """
          id: rounds
          title: Rounds
          kind: divergent
          purpose: Many ideas.
          people: {min: 4, max: 36}
          breakout: {min: 3, max: 5}
          energy: 2
          openness: 1
          moves: true
          needs: [arrival]
          yields: [idea-pool, arrival]
          opening: "= We write. \\nThen we read."
          steps:
            - {text: Explain., who: facilitator, format: plenary, minutes: [1, 2, 3]}
            - {text: "Write, and pass on. \\nAgain.", who: nobody, format: small-groups, minutes: [4, 5.5, 6], per: round, rounds: 3}
            - {text: 'Say [one], then C:\\n.', who: each, format: pairs, minutes: [0.5, 1, 1], per: person}
            - {text: Read out., who: group, format: plenary, minutes: [1, 2, PT2M1S], per: group}
          modes:
            remote: {fit: 3, tools: [call, board], how: On the board.}
            in-person: {fit: 2, tools: [], how: On paper., cautions: [Mind the cables.]}
            hybrid: {fit: 0, tools: [], how: Sheets do not travel.}
          cautions: [Standing tires., '- Ask first.']
          opt-out: You may sit.
          watch: [Who stops.]
          access: [Seated is fine., "Two\\nlines."]
          carry-over: The sheets.
          source: {mark: memory, cite: 'Author (1969). Title.'}
          """);

  @Test
  void cells_are_what_a_person_would_type() {
    assertThat(cell("people-min")).isEqualTo("4");
    assertThat(cell("moves")).isEqualTo("yes");
    assertThat(cell("yields")).isEqualTo("idea-pool, arrival");
    assertThat(cell("opening")).isEqualTo("= We write. \nThen we read.");
    assertThat(cell("steps"))
        .isEqualTo(
            """
            [1-2-3 min, facilitator, plenary] Explain.
            [4-5.5-6 min x 3 rounds, nobody, small-groups] Write, and pass on. \\nAgain.
            [0.5-1-1 min per person, each, pairs] Say [one], then C:\\\\n.
            [1-2-PT2M1S min per group, group, plenary] Read out.""");
    assertThat(cell("in-person-fit")).isEqualTo("2");
    assertThat(cell("in-person-tools")).isEmpty();
    assertThat(cell("in-person-cautions")).isEqualTo("Mind the cables.");
    assertThat(cell("access")).isEqualTo("Seated is fine.\nTwo\\nlines.");
    assertThat(cell("tips")).isEmpty();
    assertThat(cell("source")).isEqualTo("memory");
  }

  @Test
  void what_is_written_is_read_as_the_same() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(TableFormat.header());
    WORDS.exercises().values().forEach(exercise -> rows.add(TableFormat.row(exercise)));
    rows.add(TableFormat.row(ROUNDS));

    assertThat(read(rows))
        .containsExactly(
            WORDS.exercise("chat-burst").orElseThrow(),
            WORDS.exercise("two-objects").orElseThrow(),
            ROUNDS);
  }

  @Test
  void columns_may_stand_in_any_order_and_unused_ones_be_missing() {
    List<Integer> order =
        new ArrayList<>(IntStream.range(0, TableFormat.header().size()).boxed().toList());
    order.remove((Integer) TableFormat.header().indexOf("tips"));
    order.remove((Integer) TableFormat.header().indexOf("materials"));
    Collections.reverse(order);

    List<List<String>> rows =
        List.of(
            order.stream().map(TableFormat.header()::get).map(String::toUpperCase).toList(),
            order.stream().map(TableFormat.row(ROUNDS)::get).toList());

    assertThat(read(rows)).containsExactly(ROUNDS);
  }

  @Test
  void empty_rows_and_what_a_spreadsheet_made_of_a_cell_do_no_harm() {
    List<List<String>> rows =
        List.of(
            with(TableFormat.header(), "tips", " Tips "),
            List.of(),
            List.of("", " "),
            with(
                with(
                    with(TableFormat.row(ROUNDS), "moves", "TRUE"), "yields", "idea-pool;arrival;"),
                "steps",
                cell("steps")
                    .replace("-5.5-", " \u2013 5.5 \u2013 ")
                    .replace(" x ", " \u00D7 ")
                    .replace("\n", "\r\n\r\n")));

    assertThat(read(rows)).containsExactly(ROUNDS);
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '^',
      value = {
        "title | ^^ | t.csv:2:2: empty cell, title: fill it in",
        "kind | diverging | t.csv:2:3: kind, diverging: perhaps divergent",
        "people-max | 3 | t.csv:2:6: people-max, 3: it is under min 4; swap the two",
        "people-min | four | t.csv:2:5: people-min, four: a whole number is right",
        "breakout-max | ^^ | t.csv:2:8: empty cell, breakout-max: fill it in",
        "energy | 9 | t.csv:2:9: energy, 9: a whole number from 1 to 5 is right",
        "moves | maybe | t.csv:2:11: moves, maybe: yes or no is right",
        "needs | arival | t.csv:2:12: unknown work product, arival: perhaps arrival",
        "yields | ^^ | t.csv:2:13: yields, empty: name at least one work product that it leaves behind",
        "steps | ^^ | t.csv:2:15: steps, empty: describe at least one step",
        "steps | Talk. | t.csv:2:15: steps, Talk.: a line each, such as [1-2-3 min per person, each, plenary] Everybody says a word.",
        "steps | [1-2-3 min, every, plenary] Talk. | t.csv:2:15: who, every: facilitator, each, group, all or nobody is right",
        "steps | [3-2-1 min, each, plenary] Talk. | t.csv:2:15: minutes, [3, 2, 1]: write them ascending: min, typical, max",
        "steps | [2 min, each, plenary] Talk. | t.csv:2:15: minutes, 1 value: 3 are right, such as [1, 2, 3]",
        "steps | [1-2-3 min x many rounds, each, plenary] Talk. | t.csv:2:15: rounds, many: a whole number is right",
        "remote-fit | 7 | t.csv:2:16: remote-fit, 7: a whole number from 0 to 3 is right",
        "remote-tools | bord | t.csv:2:17: unknown tool, bord: perhaps board",
        "hybrid-how | ^^ | t.csv:2:26: empty cell, hybrid-how: fill it in",
        "opt-out | ^^ | t.csv:2:11: moves, true: what moves bodies or asks for disclosure needs cautions and an opt-out",
        "source | hearsay | t.csv:2:35: source, hearsay: published, common-practice or memory is right",
        "cite | ^^ | t.csv:2:36: empty cell, cite: fill it in",
      })
  void a_fault_names_row_and_column(String column, String cell, String complaint) {
    assertThat(
            complaints(List.of(TableFormat.header(), with(TableFormat.row(ROUNDS), column, cell))))
        .containsExactly(complaint);
  }

  @Test
  void all_faults_of_all_rows_are_told_at_once() {
    List<String> first = with(with(TableFormat.row(ROUNDS), "title", ""), "energy", "lively");
    List<String> second = with(TableFormat.row(ROUNDS), "id", "Rounds");
    List<String> third = new ArrayList<>(TableFormat.row(ROUNDS));
    third.add("a remark");

    assertThat(complaints(List.of(TableFormat.header(), first, second, third)))
        .containsExactly(
            "t.csv:2:2: empty cell, title: fill it in",
            "t.csv:2:9: energy, lively: a whole number is right",
            "t.csv:3:1: id, Rounds: an id has at most 80 lower-case letters, digits and single"
                + " hyphens",
            "t.csv:4:37: cell without a column, a remark: name it in the first row");
  }

  @Test
  void an_id_stands_once() {
    assertThat(
            complaints(
                List.of(TableFormat.header(), TableFormat.row(ROUNDS), TableFormat.row(ROUNDS))))
        .containsExactly("t.csv:3:1: id, rounds: row 2 has it already; rename one");
  }

  @Test
  void the_first_row_names_the_columns() {
    List<String> header = with(with(TableFormat.header(), "title", "titel"), "kind", "purpose");

    assertThat(complaints(List.of(header, TableFormat.row(ROUNDS))))
        .containsExactly(
            "t.csv:1:1: missing columns, 2: add to the first row: title, kind",
            "t.csv:1:2: unknown column, titel: perhaps title",
            "t.csv:1:4: column twice, purpose: it is column 3 already");
    assertThat(complaints(List.of(with(TableFormat.header(), "title", "tips"))))
        .contains("t.csv:1:1: missing column, title: add it to the first row");
    assertThat(complaints(List.of()))
        .contains("t.csv:1:1: empty table: its first row names the columns");
  }

  private static String cell(String column) {
    return TableFormat.row(ROUNDS).get(TableFormat.header().indexOf(column));
  }

  private static List<String> with(List<String> row, String column, String cell) {
    List<String> changed = new ArrayList<>(row);
    changed.set(TableFormat.header().indexOf(column), cell);
    return changed;
  }

  private static List<Exercise> read(List<List<String>> rows) {
    return TableFormat.read("t.csv", rows, WORDS);
  }

  private static List<String> complaints(List<List<String>> rows) {
    return Complaints.of(() -> read(rows));
  }
}
