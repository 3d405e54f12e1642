package org.arcwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.component.VEvent;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.stream.Stream;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Everything a facilitator hands out, as it comes from the command line. */
class PrepareCommandTest {
  private static final String BRIEF =
      """
      title: %s
      goal: generate-ideas
      people: 5
      mode: remote
      cap: 90m
      start: %s
      zone: %s
      """;

  @TempDir Path folder;

  private Path handouts(String title, String start, String zone, String... more)
      throws IOException {
    Path brief = Files.writeString(folder.resolve("b.yaml"), BRIEF.formatted(title, start, zone));
    Path agenda = folder.resolve("a.json");
    Run composed = Run.of("compose", brief.toString(), "--out", agenda.toString());
    assertThat(composed.code()).as(composed.err()).isZero();
    Run prepared = prepare(agenda, more);
    assertThat(prepared.code()).as(prepared.err()).isZero();
    return folder.resolve("out");
  }

  private Run prepare(Path agenda, String... more) {
    return Run.of(
        Stream.concat(
                Stream.of("prepare", agenda.toString(), "--out", folder.resolve("out").toString()),
                Stream.of(more))
            .toArray());
  }

  @Test
  void no_page_asks_for_anything_from_elsewhere() throws IOException {
    Path out = handouts("Ideas", "2027-03-02 09:00", "Europe/Vienna");

    try (Stream<Path> files = Files.list(out)) {
      List<Path> pages = files.filter(file -> file.toString().endsWith(".html")).toList();
      assertThat(pages).hasSize(10);
      for (Path file : pages) {
        Document page = Jsoup.parse(Files.readString(file));
        assertThat(page.select("meta[http-equiv=Content-Security-Policy]").attr("content"))
            .startsWith("default-src 'none'");
        assertThat(page.select("[src], link, iframe, object, [style], [onclick]")).isEmpty();
        assertThat(page.select("[href]").eachAttr("href"))
            .allMatch(link -> link.startsWith("#") || Files.exists(out.resolve(link)));
      }
    }
  }

  /** Whatever is ours is in German; the catalog's texts are in English, and the page says so. */
  @Test
  void pages_in_german_say_what_is_in_english() throws IOException {
    Path out = handouts("Ideen", "2027-03-02 09:00", "Europe/Vienna", "--language", "de");

    Document page = Jsoup.parse(Files.readString(out.resolve("run-sheet.html")));
    assertThat(page.select("html").attr("lang")).isEqualTo("de");
    assertThat(page.select(".kicker").text()).isEqualTo("Regieplan");
    assertThat(page.select(".facts").text()).contains("5 Personen", "Dienstag, 2. März 2027");
    assertThat(page.select("blockquote p")).isNotEmpty();
    for (Element words : page.select("blockquote p, ol li > span")) {
      assertThat(words.select("[lang=en]").text()).isEqualTo(words.text());
    }
    assertThat(page.select("h2 [lang=en]")).hasSizeGreaterThan(2);
  }

  @Test
  void a_hostile_title_harms_nothing() throws IOException {
    String title = "'</title><script>alert(1)</script> ../../x \u202E \uD83D\uDE80 [a](b)'";
    Path out = handouts(title, "2027-03-02 09:00", "Europe/Vienna", "--each-item");

    Document page = Jsoup.parse(Files.readString(out.resolve("participants.html")));
    assertThat(page.select("script")).isEmpty();
    assertThat(page.title()).contains("<script>alert(1)</script>");
    assertThat(Files.readString(out.resolve("participants.md"))).doesNotContain("<script>");
    try (Stream<Path> beside = Files.list(folder)) {
      assertThat(beside)
          .extracting(file -> file.getFileName().toString())
          .containsExactlyInAnyOrder("a.json", "b.yaml", "out");
    }
  }

  /**
   * In Vienna the clock goes forward at 02:00 on 28 March 2027 and back at 03:00 on 31 October, in
   * New York forward at 02:00 on 14 March, on Lord Howe Island by half an hour on 3 October;
   * Kolkata has half an hour always (tz database).
   */
  @Test
  void two_parsers_read_the_same_hours_also_across_a_change_of_the_clock() throws Exception {
    assertHours("2027-03-28 01:30", "Europe/Vienna", "2027-03-28T00:30:00Z");
    assertHours("2027-10-31 01:30", "Europe/Vienna", "2027-10-30T23:30:00Z");
    assertHours("2027-03-14 01:30", "America/New_York", "2027-03-14T06:30:00Z");
    assertHours("2027-10-03 01:30", "Australia/Lord_Howe", "2027-10-02T15:00:00Z");
    assertHours("2027-06-15 09:00", "Europe/Vienna", "2027-06-15T07:00:00Z");
    assertHours("2027-06-15 09:00", "America/New_York", "2027-06-15T13:00:00Z");
    assertHours("2027-06-15 09:00", "Australia/Lord_Howe", "2027-06-14T22:30:00Z");
    assertHours("2027-03-02 09:00", "Asia/Kolkata", "2027-03-02T03:30:00Z");
  }

  private void assertHours(String start, String zone, String instant) throws Exception {
    String title = "Ideen für die Zukunft, 未来のためのたくさんのアイデアを一緒に集めましょう、みんなで";
    Path out = handouts(title, start, zone, "--each-item");
    String text = Files.readString(out.resolve("agenda.ics"));

    VEvent event = Biweekly.parse(text).first().getEvents().get(0);
    assertThat(event.getDateStart().getValue().toInstant()).isEqualTo(Instant.parse(instant));
    assertThat(event.getDateEnd().getValue().toInstant())
        .isEqualTo(Instant.parse(instant).plusSeconds(90 * 60));
    Calendar other = new CalendarBuilder().build(new StringReader(text));
    net.fortuna.ical4j.model.component.VEvent same =
        (net.fortuna.ical4j.model.component.VEvent) other.getComponents(Component.VEVENT).get(0);
    assertThat(same.getSummary().getValue()).isEqualTo(title);
    assertThat(Instant.from(same.getDateTimeStart().getDate())).isEqualTo(Instant.parse(instant));
    assertThat(Instant.from(same.getDateTimeEnd().getDate()))
        .isEqualTo(Instant.parse(instant).plusSeconds(90 * 60));
    assertThat(text.split("\r\n")).allMatch(line -> line.getBytes(UTF_8).length <= 75);
  }

  @Test
  void an_event_keeps_its_uid_and_counts_its_changes() throws IOException {
    Path out = handouts("Ideas", "2027-03-02 09:00", "Europe/Vienna");
    VEvent first = event(out);
    VEvent again = event(handouts("Ideas", "2027-03-02 09:00", "Europe/Vienna"));
    VEvent moved = event(handouts("Ideas", "2027-03-03 09:00", "Europe/Vienna"));

    assertThat(List.of(again.getUid(), moved.getUid())).containsOnly(first.getUid());
    assertThat(first.getSequence().getValue()).isZero();
    assertThat(again.getSequence().getValue()).isZero();
    assertThat(moved.getSequence().getValue()).isOne();
  }

  private static VEvent event(Path out) throws IOException {
    return Biweekly.parse(Files.readString(out.resolve("agenda.ics"))).first().getEvents().get(0);
  }

  /** Tasks are days from Monday to Friday that leave the day free; 2 March 2027 is a Tuesday. */
  @Test
  void two_parsers_read_the_same_tasks_on_working_days_before_the_day() throws Exception {
    Path out = handouts("Ideas", "2027-03-02 09:00", "Asia/Kolkata");
    String text = Files.readString(out.resolve("plan.ics"));

    List<VEvent> tasks = Biweekly.parse(text).first().getEvents();
    Calendar other = new CalendarBuilder().build(new StringReader(text));
    assertThat(tasks).hasSizeGreaterThan(5);
    List<LocalDate> days = new ArrayList<>();
    for (int i = 0; i < tasks.size() - 1; i++) {
      var same =
          (net.fortuna.ical4j.model.component.VEvent) other.getComponents(Component.VEVENT).get(i);
      LocalDate day = (LocalDate) same.getDateTimeStart().getDate();
      assertThat(tasks.get(i).getDateStart().getValue().getRawComponents().toString())
          .startsWith(day.toString().replace("-", ""));
      assertThat(tasks.get(i).getTransparency().isTransparent()).isTrue();
      days.add(day);
    }
    assertThat(days)
        .isSorted()
        .allMatch(day -> day.isBefore(LocalDate.of(2027, 3, 2)))
        .noneMatch(day -> day.getDayOfWeek().getValue() > 5)
        .contains(LocalDate.of(2027, 3, 1));
    VEvent last = tasks.get(tasks.size() - 1);
    assertThat(last.getDateEnd().getValue().toInstant())
        .isEqualTo(Instant.parse("2027-03-02T03:30:00Z"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"../../x", "/etc/passwd", "..", "a b", "<script>"})
  void an_id_that_is_none_is_refused_and_nothing_is_written(String id) throws IOException {
    handouts("Ideas", "2027-03-02 09:00", "Europe/Vienna");
    Path agenda = folder.resolve("a.json");
    String text = Files.readString(agenda);
    Files.writeString(
        agenda,
        text.replaceFirst("(\"exercise\": *\")[^\"]*", "$1" + Matcher.quoteReplacement(id)));

    Run refused = Run.of("prepare", agenda, "--out", folder.resolve("other"));

    assertThat(refused.code()).isEqualTo(2);
    assertThat(refused.err()).contains("a.json:");
    assertThat(folder.resolve("other")).doesNotExist();
  }

  @Test
  void a_title_of_ten_thousand_characters_is_refused_with_its_place() throws IOException {
    String title = "x".repeat(10_000);
    Path brief =
        Files.writeString(
            folder.resolve("b.yaml"), BRIEF.formatted(title, "2027-03-02 09:00", "Europe/Vienna"));

    Run refused = Run.of("compose", brief, "--out", folder.resolve("a.json"));

    assertThat(refused.code()).isEqualTo(2);
    assertThat(refused.err()).contains("b.yaml:1:8: title").hasSizeLessThan(1000);
    assertThat(folder.resolve("a.json")).doesNotExist();
  }

  @Test
  void a_folder_that_holds_anything_else_is_left_alone() throws IOException {
    Path out = handouts("Ideas", "2027-03-02 09:00", "Europe/Vienna");
    Path own = Files.writeString(out.resolve("my-notes.txt"), "dear to me");

    Run refused = prepare(folder.resolve("a.json"));

    assertThat(refused.code()).isEqualTo(2);
    assertThat(refused.err()).contains("my-notes.txt");
    assertThat(own).hasContent("dear to me");
  }
}
