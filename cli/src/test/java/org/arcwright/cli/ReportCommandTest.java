package org.arcwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.component.VEvent;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.stream.Stream;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Component;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Everything a facilitator hands out after the day, as it comes from the command line. */
class ReportCommandTest {
  private static final String RECORD =
      """
      title: Winter planning
      mode: remote
      people: 4
      start: 2027-03-02 09:00
      zone: Europe/Vienna
      sponsor: The board
      outcome: We lend repair kits.
      happened:
        - {item: weather-report, from: 09:04, to: 09:16}
        - {item: guest-talk, title: A guest's view, from: 09:16, to: 09:30}
      decisions:
        - what: We lend repair kits.
          by: all four present
          how: dots
          votes:
            - question: Which idea first?
              method: multivoting
              votes-each: 3
              on-one: 2
              options: [Repair kits, Seeds]
              ballots: [{Repair kits: 2, Seeds: 1}, {Seeds: 2, Repair kits: 1}, {Repair kits: 2}]
              result: RESULT
      open-points: [{what: Insurance, who: the chair}, Who keeps the key?]
      parking-lot: [A second branch]
      takeaways: [{said: I did not know how much we have., by: the newest member}]
      actions:
        - {who: The chair, what: Ask for an offer., when: 2027-03-20}
        - {who: The treasurer, what: Write to members.}
      thanks: [To the producer.]
      notes: [{at: 09:20, text: The board was slow.}]
      follow-ups: {handover: 2027-03-04 10:00, first: 2027-03-16, every-weeks: 2, times: 2}
      """;

  @TempDir Path folder;

  private Run report(String record, Object... more) throws IOException {
    Path file = Files.writeString(folder.resolve("record.yaml"), record);
    return Run.of(
        Stream.concat(Stream.of("report", file, "--out", folder.resolve("out")), Stream.of(more))
            .toArray());
  }

  private Document page(String name) throws IOException {
    return Jsoup.parse(Files.readString(folder.resolve("out").resolve(name)));
  }

  private List<VEvent> events() throws IOException {
    return Biweekly.parse(Files.readString(folder.resolve("out/follow-ups.ics")))
        .first()
        .getEvents();
  }

  @Test
  void the_sponsor_reads_one_page_and_the_details_follow() throws IOException {
    Run run = report(RECORD.replace("RESULT", "Repair kits"));

    assertThat(run.code()).as(run.err()).isZero();
    Document page = page("report.html");
    assertThat(page.select("main > section > h2").eachText())
        .containsExactly(
            "What came of it",
            "What was decided",
            "Who does what by when",
            "What is still open",
            "What comes next",
            "In detail");
    assertThat(page.select("#details > section > h3").eachText())
        .containsExactly(
            "What happened",
            "Decision 1: We lend repair kits.",
            "Parking lot",
            "What people take along",
            "Notes of the day",
            "Thanks");
    assertThat(page.select("#open-points li").eachText())
        .containsExactly("Insurance (the chair)", "Who keeps the key?");
    assertThat(page.select("#takeaways blockquote").text())
        .contains("I did not know how much we have.", "– the newest member");
  }

  /** What somebody wrote as a sentence gets no second full stop. */
  @Test
  void how_a_decision_was_reached_is_a_sentence() throws IOException {
    report(RECORD.replace("RESULT", "Repair kits"));
    assertThat(page("report.html").select("#decisions li").text())
        .isEqualTo("We lend repair kits. Decided by: all four present; how: dots.");

    report(RECORD.replace("RESULT", "Repair kits").replace("how: dots", "how: By a vote."));
    assertThat(page("report.html").select("#decisions li").text()).endsWith("how: By a vote.");
  }

  @Test
  void a_vote_is_added_up_in_front_of_the_reader() throws IOException {
    report(RECORD.replace("RESULT", "Repair kits"));

    Element vote = page("report.html").select("#decision-1-vote-1").get(0);
    assertThat(vote.select("p").eachText())
        .containsExactly(
            "Multivoting: 3 people with 3 votes each, at most 2 of them on one option. 8 of 9 votes"
                + " were given.");
    assertThat(vote.select("tbody tr").eachText())
        .containsExactly("Repair kits 2 + 1 + 2 5 1", "Seeds 1 + 2 + 0 3 2");
    assertThat(vote.select("dd").text()).isEqualTo("Repair kits");
    assertThat(vote.select(".note")).isEmpty();
  }

  @Test
  void a_result_that_does_not_follow_is_said_to_be_open() throws IOException {
    report(RECORD.replace("RESULT", "Seeds"));

    assertThat(page("report.html").select("#decision-1-vote-1 .note").text())
        .isEqualTo(
            "To be settled: By the figures, Repair kits comes first; say why it was decided"
                + " otherwise.");
  }

  @Test
  void the_day_stands_below_its_plan_in_picture_and_table() throws IOException {
    Path brief = Briefs.write(folder, Briefs.SHORT);
    Path agenda = folder.resolve("agenda.json");
    assertThat(Run.of("compose", brief, "--out", agenda).code()).isZero();

    Run run = report(RECORD.replace("RESULT", "Repair kits"), "--agenda", agenda);

    assertThat(run.code()).as(run.err()).isZero();
    Document page = page("report.html");
    String said = page.select("#course svg desc").text();
    assertThat(page.select("#course tbody tr")).hasSizeGreaterThan(3);
    for (Element row : page.select("#course tbody th")) {
      assertThat(said).contains(row.ownText());
    }
    assertThat(page.select("#course tbody").text())
        .contains("A guest’s view not planned 09:16–09:30")
        .contains("left out");
    assertThat(said).contains("A guest’s view: not planned, held 09:16–09:30.");
  }

  @Test
  void the_handover_call_has_an_agenda_of_its_own() throws IOException {
    report(RECORD.replace("RESULT", "Repair kits"));

    Document page = page("handover.html");
    assertThat(page.select("h2").eachText())
        .containsExactly(
            "10:00–10:05 What came of it",
            "10:05–10:10 What was decided",
            "10:10–10:20 What is still open, and who takes it",
            "10:20–10:25 Who does what by when",
            "10:25–10:30 What was parked, and where it goes",
            "10:30–10:35 When we look again");
    assertThat(page.text())
        .contains("Who keeps the key? [WHO?]")
        .contains("The treasurer: Write to members. [BY WHEN?]")
        .contains("10:00–10:35 (Europe/Vienna)");
  }

  @Test
  void two_parsers_read_the_follow_ups() throws Exception {
    report(RECORD.replace("RESULT", "Repair kits"));

    List<VEvent> events = events();
    assertThat(events)
        .extracting(event -> event.getSummary().getValue())
        .containsExactly(
            "Handover call: Winter planning",
            "Follow-up 1 of 2: Winter planning",
            "Follow-up 2 of 2: Winter planning");
    assertThat(events.get(2).getDescription().getValue())
        .isEqualTo("Due by then:\nBy 20 March 2027 – The chair: Ask for an offer.");
    List<net.fortuna.ical4j.model.component.VEvent> same =
        new CalendarBuilder()
            .build(new StringReader(Files.readString(folder.resolve("out/follow-ups.ics"))))
            .getComponents(Component.VEVENT);
    assertThat(same)
        .extracting(event -> event.getDateTimeStart().getDate())
        .element(1)
        .isEqualTo(LocalDate.of(2027, 3, 16));
    assertThat(same.get(2).getDateTimeStart().getDate()).isEqualTo(LocalDate.of(2027, 3, 30));
    assertThat(((ZonedDateTime) same.get(0).getDateTimeStart().getDate()).toInstant())
        .isEqualTo(Instant.parse("2027-03-04T09:00:00Z"));
  }

  @Test
  void a_follow_up_keeps_its_uid_and_counts_its_changes() throws IOException {
    String record = RECORD.replace("RESULT", "Repair kits");
    report(record);
    List<VEvent> first = events();
    report(record);
    List<VEvent> again = events();
    report(record.replace("first: 2027-03-16", "first: 2027-03-17"));
    List<VEvent> moved = events();

    assertThat(again).extracting(e -> e.getSequence().getValue()).containsOnly(0);
    assertThat(moved).extracting(e -> e.getSequence().getValue()).containsExactly(0, 1, 1);
    assertThat(moved)
        .extracting(VEvent::getUid)
        .isEqualTo(first.stream().map(VEvent::getUid).toList());
  }

  @Test
  void what_nobody_arranged_is_a_proposal() throws IOException {
    report(RECORD.replace("RESULT", "Seeds").replaceAll("follow-ups: .*\n", ""));

    assertThat(page("report.html").select("#next").text())
        .contains("Follow-ups, as proposed: 16 March 2027, 30 March 2027 and 13 April 2027");
    assertThat(page("handover.html").select(".facts").text()).contains("[DAY AND HOUR]");
    assertThat(events()).hasSize(3).allMatch(event -> event.getStatus().isTentative());
  }

  @Test
  void what_the_record_does_not_have_is_left_out() throws IOException {
    Run run = report("title: T\nmode: remote\npeople: 3\n");

    assertThat(run.code()).isZero();
    assertThat(run.err()).contains("No calendar").contains("begin with");
    assertThat(page("report.html").select("main").text()).isEmpty();
    try (Stream<Path> files = Files.list(folder.resolve("out"))) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .containsExactlyInAnyOrder("report.html", "report.md", ".arcwright-written");
    }
  }

  /** Every text that a record can hold, as an attacker would write it. */
  @Test
  void hostile_texts_harm_nothing() throws IOException {
    String bad =
        "</title></desc><script>alert(1)</script> ../../x \u202E\uD83D\uDE80 [a](b) | ${7}";
    String record =
        """
        title: 'T BAD'
        mode: remote
        people: 4
        start: 2027-03-02 09:00
        zone: Europe/Vienna
        sponsor: 'S BAD'
        outcome: 'O BAD'
        happened: [{item: x, title: 'H BAD', from: 09:04, to: 09:16, note: 'N BAD'}]
        decisions:
          - what: 'D BAD'
            how: 'W BAD'
            by: 'B BAD'
            why: 'Y BAD'
            votes:
              - {question: 'Q BAD', method: approval, options: ['A BAD', B], ballots: [['A BAD']]}
              - {question: 'Q BAD', method: consent, people: 3, objections: ['J BAD']}
        open-points: [{what: 'I BAD', who: 'C BAD'}]
        parking-lot: ['P BAD']
        takeaways: [{said: 'K BAD', by: 'L BAD'}]
        actions: [{who: 'M BAD', what: 'F BAD', when: 2027-03-05}]
        thanks: ['X BAD']
        notes: [{at: 09:20, text: 'Z BAD'}]
        """
            .replace("BAD", bad);
    Run run = report(record);

    assertThat(run.code()).as(run.err()).isZero();
    for (String name : List.of("report", "handover")) {
      Document page = page(name + ".html");
      assertThat(page.select("script, [src], link, iframe, [style], [onclick]")).isEmpty();
      assertThat(page.select("[href]").eachAttr("href")).allMatch(link -> link.startsWith("#"));
      assertThat(page.select("meta[http-equiv=Content-Security-Policy]").attr("content"))
          .startsWith("default-src 'none'");
      assertThat(page.text()).contains("D </title></desc><script>alert(1)</script>", "${7}");
      assertThat(Files.readString(folder.resolve("out/" + name + ".md")))
          .doesNotContain("<script>")
          .doesNotContain("[a](b)");
    }
    assertThat(events()).hasSize(3);
    try (Stream<Path> beside = Files.list(folder)) {
      assertThat(beside.map(file -> file.getFileName().toString()))
          .containsExactlyInAnyOrder("record.yaml", "out");
    }
  }

  @Test
  void a_log_becomes_a_draft_that_is_completed_by_hand() throws IOException {
    Path log =
        Files.writeString(
            folder.resolve("day.log"),
            """
            {"format":"arcwright-log","version":1,"title":"Winter planning","mode":"remote","people":4,"start":"2027-03-02 09:00","zone":"Europe/Vienna"}
            {"at":"2027-03-02T09:04:10+01:00","started":"weather-report","planned":10}
            {"at":"2027-03-02T09:15:40+01:00","ended":"weather-report"}
            {"at":"2027-03-02T09:20:00+01:00","decision":"We lend repair kits."}
            """);
    Path draft = folder.resolve("draft.yaml");

    Run drafted = Run.of("report", log, "--draft", draft);
    Run reported = Run.of("report", draft, "--out", folder.resolve("out"));
    String byHand = page("report.html").select("main").text();
    Run direct = Run.of("report", log, "--out", folder.resolve("out"));

    assertThat(List.of(drafted.code(), reported.code(), direct.code())).containsOnly(0);
    assertThat(draft).content().contains("09:04", "We lend repair kits.");
    assertThat(byHand).contains("09:04–09:16").isEqualTo(page("report.html").select("main").text());
  }

  @Test
  void a_fault_is_told_with_its_place_and_nothing_is_written() throws IOException {
    Run run = report(RECORD.replace("RESULT", "Kits"));

    assertThat(run.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(run.err())
        .isEqualTo(
            folder.resolve("record.yaml")
                + ":22:17: result, Kits: it is none of the options Repair kits, Seeds\n");
    assertThat(folder.resolve("out")).doesNotExist();
  }

  @Test
  void one_of_the_two_targets_is_named() throws IOException {
    Path file = Files.writeString(folder.resolve("record.yaml"), RECORD.replace("RESULT", "Seeds"));

    Run neither = Run.of("report", file);
    Run both =
        Run.of("report", file, "--out", folder.resolve("out"), "--draft", folder.resolve("d"));

    assertThat(neither.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(neither.err()).contains("--out", "--draft");
    assertThat(both.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(folder.resolve("out")).doesNotExist();
  }
}
