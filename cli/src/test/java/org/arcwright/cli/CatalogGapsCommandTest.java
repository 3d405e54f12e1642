package org.arcwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A trainer looks for what the shelf lacks. */
class CatalogGapsCommandTest {
  /** A goal for which a large group with a call alone lacks an exercise, for it makes no list. */
  private static final String GOAL =
      """
      id: hand-over-a-shift
      title: Hand over a shift
      purpose: One group goes, another comes, and what matters must get across.
      yields: [actions, takeaways]
      given: [shared-picture]
      arc:
        - {name: open, title: Arrive, kinds: [icebreaker], count: [1, 1], share: [5, 15, 30], yields: [arrival]}
        - {name: settle, title: Settle, kinds: [decision], count: [1, 2], share: [10, 60, 80], yields: [actions]}
        - {name: close, title: Close, kinds: [reflection], count: [1, 1], share: [5, 15, 30], yields: [takeaways]}
      """;

  @TempDir Path folder;

  private Run gaps(String words) {
    List<Object> all = new ArrayList<>(List.of("catalog", "gaps", "--catalog", folder));
    Stream.of(words.split(" ")).forEach(all::add);
    return Run.of(all.toArray());
  }

  private void aGoalThatIsHardToReach() throws IOException {
    Files.createDirectories(folder.resolve("goals"));
    Files.writeString(folder.resolve("goals/hand-over-a-shift.yaml"), GOAL);
  }

  @Test
  void the_table_has_a_row_for_each_goal_and_a_figure_for_each_length() {
    Run run =
        gaps(
            "--goal choose-a-direction,set-priorities --mode remote --tools usual --people 8,12 --minutes 90,120");

    assertThat(run.code()).isEqualTo(Exit.DONE);
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .isEqualTo(
            """
            How many different agendas there are: • stands for 3 or more. Behind each other:
            90 and 120 min.

            Remote with the usual tools
            people             8   12
            choose-a-direction ••  ••
            set-priorities     ••  ••

            8 briefs: 0 with no agenda, 0 with one, 0 with 2 and 8 with 3 or more. Agendas
            are different if no two share more than half of their exercises.
            """);
  }

  @Test
  void a_gap_is_told_with_what_would_fill_it() throws IOException {
    aGoalThatIsHardToReach();

    Run run =
        gaps("--goal hand-over-a-shift --mode remote --tools call --people 20..21 --minutes 60");

    assertThat(run.code()).isEqualTo(Exit.NEGATIVE);
    assertThat(run.out())
        .contains("hand-over-a-shift 0   0")
        .contains("2 briefs: 2 with no agenda")
        .contains("What to write next")
        .contains("The thinnest first")
        .contains("0  hand-over-a-shift, remote with call only, 20 and 21 people, 60 min")
        .containsPattern("Missing: a decision exercise that leaves actions in \\d+ min or\\s+less");
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void where_time_is_too_short_no_exercise_is_asked_for() {
    Run run = gaps("--goal choose-a-direction --mode remote --tools usual --people 8 --minutes 15");

    assertThat(run.code()).isEqualTo(Exit.NEGATIVE);
    assertThat(run.out())
        .contains("No exercise would help: there is too little time for the arc of this goal.")
        .doesNotContain("What to write next");
  }

  @Test
  void a_wide_grid_is_folded_to_the_width() {
    Run run =
        gaps("--goal choose-a-direction --mode remote --tools usual --people 4..30 --minutes 90");

    assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
    assertThat(run.out().lines().filter(line -> line.startsWith("choose-a-direction"))).hasSize(2);
  }

  @Test
  void other_programs_get_every_brief_and_every_gap() throws IOException {
    aGoalThatIsHardToReach();

    Run run =
        gaps(
            "--goal hand-over-a-shift --mode remote --tools usual,call --people 20 --minutes 60,90 --format json");

    JsonNode json = JsonMapper.shared().readTree(run.out());
    assertThat(json.path("briefs").asInt()).isEqualTo(4);
    assertThat(json.path("most").asInt()).isEqualTo(3);
    assertThat(json.path("counts").size()).isEqualTo(4);
    JsonNode last = json.path("counts").path(2);
    assertThat(last.path("goal").asString()).isEqualTo("hand-over-a-shift");
    assertThat(last.path("mode").asString()).isEqualTo("remote");
    assertThat(last.path("tools").path(0).asString()).isEqualTo("call");
    assertThat(last.path("people").asInt()).isEqualTo(20);
    assertThat(last.path("minutes").asInt()).isEqualTo(60);
    assertThat(last.path("agendas").asInt()).isZero();
    assertThat(last.path("counted").asBoolean()).isTrue();
    JsonNode missing = json.path("gaps").path(0).path("missing").path(0);
    assertThat(missing.path("kind").asString()).isEqualTo("decision");
    assertThat(missing.path("yields").path(0).asString()).isEqualTo("actions");
    assertThat(missing.path("minutesAtMost").asInt()).isBetween(5, 60);
    assertThat(json.path("demands").path(0).path("briefs").asInt()).isPositive();
  }

  @Test
  void the_picture_can_be_read_without_colour_and_without_sight() throws Exception {
    aGoalThatIsHardToReach();
    Path file = folder.resolve("gaps.svg");

    Run run =
        gaps(
            "--goal hand-over-a-shift --mode remote --tools call --people 12,20 --minutes 15,60 --out "
                + file);

    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("Written to " + file);
    Document svg =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(Files.readString(file))));
    Element root = svg.getDocumentElement();
    assertThat(root.getAttribute("role")).isEqualTo("img");
    assertThat(root.getAttribute("aria-labelledby")).isEqualTo("title text");
    assertThat(svg.getElementsByTagName("desc").item(0).getTextContent())
        .contains("4 briefs")
        .contains("No agenda at all: Hand over a shift, remote with call only:")
        .contains("20 people in 15 and 60 min");
    assertThat(texts(svg)).contains("0", "no agenda", "people", "20", "Hand over a shift");
    NodeList fields = svg.getElementsByTagName("rect");
    for (int i = 0; i < fields.getLength(); i++) {
      assertThat(((Element) fields.item(i)).getAttribute("fill"))
          .as("a shade of grey")
          .matches("#(..)\\1\\1|#(.)\\2\\2");
    }
  }

  private static List<String> texts(Document svg) {
    List<String> texts = new ArrayList<>();
    NodeList nodes = svg.getElementsByTagName("text");
    for (int i = 0; i < nodes.getLength(); i++) {
      texts.add(nodes.item(i).getTextContent());
    }
    return texts;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          --goal choose-a-directoin   | perhaps choose-a-direction
          --tools call+bord           | perhaps board
          --people 0                  | --people 0: from 1 to 1000 is right
          --people four               | 15..30
          --minutes 10                | --minutes 10: from 15 to 2400 is right
          --most 0                    | --most 0: from 1 to 9 is right
          --list -1                   | --list -1: 0 or more is right
          --format png                | text, json or svg are right
          --mode remot                | perhaps remote
          --people 1..1000 --minutes 60..2400 | at most 100000; narrow it
          """)
  void what_cannot_be_is_told_before_any_work(String words, String told) {
    Run run = gaps(words);

    assertThat(run.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(run.err()).contains(told);
    assertThat(run.out()).isEmpty();
  }

  @Test
  void who_wishes_hears_how_far_it_is() {
    Run quiet = gaps("--goal choose-a-direction --mode remote --people 8 --minutes 60");
    Run told = gaps("--progress --goal choose-a-direction --mode remote --minutes 60..240");

    assertThat(quiet.err()).isEmpty();
    assertThat(told.err()).doesNotContain("\n");
    assertThat(told.code()).isEqualTo(Exit.DONE);
  }
}
