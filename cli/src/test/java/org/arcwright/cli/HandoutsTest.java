package org.arcwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What stands in the handouts follows from brief, agenda and catalog. */
class HandoutsTest {
  private static final String IN_PERSON =
      """
      title: The crew meets
      goal: start-a-team
      people: {count: 7, acquainted: strangers}
      mode: in-person
      cap: 4h
      start: 2027-05-04 13:00
      zone: Europe/Vienna
      """;

  @TempDir Path folder;

  private Path handouts(String brief) throws IOException {
    Path agenda = folder.resolve("agenda.json");
    Run composed = Run.of("compose", Briefs.write(folder, brief), "--out", agenda);
    assertThat(composed.code()).as(composed.err()).isZero();
    Run prepared = Run.of("prepare", agenda, "--out", folder.resolve("out"));
    assertThat(prepared.code()).as(prepared.err()).isZero();
    return folder.resolve("out");
  }

  private static String text(Path out, String name) throws IOException {
    return Files.readString(out.resolve(name));
  }

  @Test
  void the_sponsor_is_asked_what_the_brief_leaves_open_and_nothing_else() throws IOException {
    String silent = text(handouts(Briefs.SHORT), "sponsor-call.md");
    String outspoken =
        text(
            handouts(
                Briefs.SHORT.replace(
                        "people: 5", "people: {count: 5, acquainted: colleagues, openness: 1}")
                    + "zones: [Asia/Kolkata]\ntools: [call, breakouts, board, chat, document]\nbuffer: 20%\n"),
            "sponsor-call.md");

    for (String line :
        List.of("people: acquainted", "people: openness", "zones", "tools", "buffer")) {
      assertThat(silent).contains("(brief: " + line + ")");
      assertThat(outspoken)
          .as(line)
          .doesNotContain("We took: some", "(brief: zones)", "(brief: tools)", "(brief: buffer)");
    }
  }

  @Test
  void the_sponsor_is_asked_about_what_is_odd() throws IOException {
    assertThat(text(handouts(Briefs.SHORT + "buffer: 5%\n"), "sponsor-call.md"))
        .contains("What struck us in the brief", "5%: discussions run over");
  }

  @Test
  void people_read_the_hours_of_their_own_zones() throws IOException {
    Document page =
        Jsoup.parse(
            text(
                handouts(Briefs.SHORT + "zones: [Asia/Kolkata, Europe/Lisbon]\n"),
                "participants.html"));

    assertThat(page.select("thead th").eachText())
        .containsExactly("Vienna", "Kolkata", "Lisbon", "What");
    assertThat(page.select("tbody tr").first().children().eachText())
        .element(1)
        .asString()
        .startsWith("13:30");
  }

  @Test
  void where_it_is_another_day_people_read_which() throws IOException {
    Document page =
        Jsoup.parse(
            text(
                handouts(Briefs.SHORT + "zones: [Pacific/Auckland, America/Los_Angeles]\n"),
                "participants.html"));

    assertThat(page.select("thead th").eachText())
        .containsExactly("Vienna", "Auckland", "Los Angeles", "What");

    Document early =
        Jsoup.parse(
            text(
                handouts(Briefs.SHORT.replace("09:00", "06:00") + "zones: [America/Los_Angeles]\n"),
                "participants.html"));

    assertThat(early.select("thead th").eachText())
        .containsExactly("Vienna", "Los Angeles, Monday, 1 March 2027", "What");
  }

  @Test
  void materials_are_counted_for_so_many_people() throws IOException {
    String list = text(handouts(IN_PERSON), "materials.md");

    assertThat(list)
        .contains("Worked out for 7 people", "| Name tags | 9 |", "| Printed agendas | 7 |");
  }

  @Test
  void every_tool_is_tried_on_every_kind_of_device_and_what_is_in_the_room_once()
      throws IOException {
    Document remote = Jsoup.parse(text(handouts(Briefs.SHORT), "tool-test.html"));
    assertThat(remote.select("section h2").eachText()).contains("Call");
    assertThat(remote.select("section#tool-call tbody tr")).hasSize(5);
    Document room = Jsoup.parse(text(handouts(IN_PERSON), "tool-test.html"));
    assertThat(room.select("section h2").eachText()).containsExactly("In the room");
  }

  /** The picture shows nothing that its table and its description do not say. */
  @Test
  void the_board_plan_draws_an_arrow_for_what_is_carried_over() throws IOException {
    String brief = Files.readString(Path.of("../examples/briefs/next-service.yaml"));
    Document page = Jsoup.parse(text(handouts(brief), "board-plan.html"));
    String said = page.select("svg > desc").text();

    assertThat(page.select("svg > rect.arc-line")).hasSameSizeAs(page.select("table tbody tr"));
    assertThat(said).contains("covered until", "An arrow carries");
    assertThat(page.select("svg > circle")).hasSize(said.split("An arrow carries", -1).length - 1);
  }

  @Test
  void what_stands_in_for_an_exercise_stands_in_the_run_sheet_and_in_full_beside_it()
      throws IOException {
    Path out = handouts(Briefs.SHORT);
    Document page = Jsoup.parse(text(out, "stand-ins.html"));

    assertThat(text(out, "run-sheet.md")).contains("**Stand-in:**");
    assertThat(page.select("section#in-full > section")).isNotEmpty();
    for (var standIn : page.select("section#in-full > section")) {
      assertThat(standIn.select("blockquote")).isNotEmpty();
      assertThat(standIn.select("ol > li")).isNotEmpty();
    }
  }

  /** A brief whose agenda has no board at hand. */
  private static final String BOARDLESS =
      """
      title: Why the boiler failed
      goal: learn-from-an-incident
      people: {count: 5, acquainted: colleagues, openness: 1}
      mode: remote
      cap: 75m
      start: 2027-05-04 13:00
      zone: Europe/Vienna
      tools: [call, chat, document]
      """;

  @Test
  void nobody_hears_of_a_board_where_the_agenda_leans_on_none() throws IOException {
    Path out = handouts(BOARDLESS);

    for (String name : List.of("onboarding.txt", "preparation-plan.md", "plan.ics", "index.html")) {
      assertThat(text(out, name)).as(name).doesNotContainIgnoringCase("the board");
    }
    assertThat(Jsoup.parse(text(out, "index.html")).text()).doesNotContain("Board plan");
  }

  @Test
  void where_the_agenda_leans_on_a_board_it_is_linked_and_built() throws IOException {
    Path out = handouts(Files.readString(Path.of("../examples/briefs/next-service.yaml")));

    assertThat(text(out, "onboarding.txt"))
        .contains("[LINK TO THE BOARD]", "one word on the board");
    assertThat(text(out, "preparation-plan.md")).contains("Build the board");
  }

  /** A cue of half a minute of music would be a nuisance. */
  @Test
  void music_is_played_only_where_people_are_silent_for_two_minutes() throws IOException {
    Path out = handouts(Files.readString(Path.of("../examples/briefs/next-service.yaml")));

    for (Element item : Jsoup.parse(text(out, "run-sheet.html")).select("section.item")) {
      boolean silent =
          item.select("ol > li").eachText().stream()
              .filter(step -> step.contains("in silence, everybody alone"))
              .anyMatch(
                  step -> Double.parseDouble(step.substring(0, step.indexOf("min")).strip()) >= 2);
      if (!silent) {
        assertThat(item.text()).doesNotContain("Quiet music");
      }
    }
    assertThat(text(out, "run-sheet.md")).contains("Quiet music");
  }

  /** Central Europe sets its clocks forward at 02:00 on 28 March 2027 (Directive 2000/84/EC). */
  @Test
  void people_are_told_when_the_clocks_change_meanwhile() throws IOException {
    String night =
        Briefs.SHORT.replaceAll("start: \\S+ \\S+", "start: 2027-03-28 01:00")
            + "zones: [Asia/Kolkata]\n";

    assertThat(text(handouts(night), "participants.md"))
        .contains("the clocks in Vienna go forward by 1 h at 02:00")
        .doesNotContain("the clocks in Kolkata");
    assertThat(text(handouts(Briefs.SHORT), "participants.md")).doesNotContain("clocks");
  }

  @Test
  void what_only_a_stand_in_needs_is_brought_and_tried() throws IOException {
    Path out = handouts(BOARDLESS);
    Document standIns = Jsoup.parse(text(out, "stand-ins.html"));
    String materials = text(out, "materials.md");
    String tests = text(out, "tool-test.md");

    for (String ready : standIns.select("td:nth-child(3)").eachText()) {
      for (String tool : List.of("chat", "document", "screen", "board", "poll")) {
        if (ready.contains(tool)) {
          assertThat(materials).as(ready).containsIgnoringCase(tool);
          assertThat(tests).as(ready).containsIgnoringCase(tool);
        }
      }
    }
  }
}
