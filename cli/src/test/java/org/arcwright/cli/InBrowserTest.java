package org.arcwright.cli;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * All pages of six workshops, before and after the day, in a real browser. Without one the tests
 * are skipped.
 */
@Timeout(300)
class InBrowserTest {
  static final List<String> BRIEFS =
      List.of(
          "first-winter",
          "move-risks",
          "new-crew",
          "next-service",
          "open-day-ideas",
          "repair-year");

  /** What else is written: reports with and without an agenda or from a log, and all in German. */
  private static final String AFTER = "after";

  private static final String GERMAN = "german";

  static final List<String> FOLDERS =
      Stream.concat(BRIEFS.stream(), Stream.of(AFTER, GERMAN)).toList();

  private static final Path EXAMPLES = Path.of("../examples/briefs");

  /** Where text stands on A4 and on Letter, between margins of 15 mm, at 96 pixels an inch. */
  private static final List<Integer> PRINTED = List.of(680, 702);

  /** Letter is the lower of the two: 11 inches less two margins of 16 mm. */
  private static final int PRINTED_HIGH = 935;

  private static final int PHONE = 390;
  private static final Pattern PAPER = Pattern.compile("/MediaBox \\[0 0 ([0-9.]+) ([0-9.]+)\\]");

  private static final Pattern SHEET_OF_PAPER = Pattern.compile("/Type\\s*/Page\\b");

  @TempDir static Path folder;
  private static Optional<Browser> browser = Optional.empty();

  @BeforeAll
  static void start() throws IOException {
    Optional<Path> program = Browser.installed();
    assumeTrue(program.isPresent(), "no Chromium is installed, so no page is opened in one");
    browser = Optional.of(Browser.start(program.get()));
    for (String brief : BRIEFS) {
      prepare(brief);
    }
    after();
    german();
  }

  /** Every page lies in the folder itself, each under a name of its own. */
  private static void after() throws IOException {
    Path record = Path.of("../examples/records/next-service.yaml");
    Path agenda = folder.resolve("next-service.json");
    Path log = Path.of("../examples/logs/simulated-1.jsonl");
    collect(AFTER, "planned-", "report", record, "--agenda", agenda);
    collect(AFTER, "unplanned-", "report", record);
    collect(AFTER, "logged-", "report", log);
  }

  private static void german() throws IOException {
    Path record = Path.of("../examples/records/next-service.yaml");
    Path agenda = folder.resolve("next-service.json");
    Path yaml = EXAMPLES.resolve("next-service.yaml");
    collect(GERMAN, "", "prepare", agenda, "--zone", "Asia/Kolkata", "--language", "de");
    collect(GERMAN, "", "report", record, "--agenda", agenda, "--language", "de");
    Path whole = folder.resolve(GERMAN);
    succeed("compose", yaml, "--language", "de", "--out", whole.resolve("agenda.html"));
    succeed(
        "compose",
        yaml,
        "--options",
        "2",
        "--language",
        "de",
        "--out",
        whole.resolve("options.html"));
  }

  /** Runs a command that writes a folder, and puts its pages with the others. */
  private static void collect(String into, String prefix, Object... words) throws IOException {
    Path out = folder.resolve("written-" + into + "-" + prefix + words[0]);
    succeed(Stream.concat(Stream.of(words), Stream.of("--out", out)).toArray());
    Path target = Files.createDirectories(folder.resolve(into));
    try (Stream<Path> files = Files.list(out)) {
      for (Path page : files.filter(file -> file.toString().endsWith(".html")).toList()) {
        Files.copy(page, target.resolve(prefix + page.getFileName()));
      }
    }
  }

  private static void prepare(String brief) {
    Path agenda = folder.resolve(brief + ".json");
    Path yaml = EXAMPLES.resolve(brief + ".yaml");
    succeed("compose", yaml, "--out", agenda);
    succeed("compose", yaml, "--out", folder.resolve(brief + ".html"));
    succeed("prepare", agenda, "--zone", "Asia/Kolkata", "--out", folder.resolve(brief));
    if (brief.equals("next-service")) {
      succeed("compose", yaml, "--options", "3", "--out", folder.resolve("options.html"));
    }
  }

  private static void succeed(Object... words) {
    Run run = Run.of(words);
    assertThat(run.code()).as(run.err()).isZero();
  }

  @AfterAll
  static void stop() {
    browser.ifPresent(Browser::close);
  }

  private static Tab tab() {
    return browser.orElseThrow().tab();
  }

  private static List<Path> pages(String brief) throws IOException {
    try (Stream<Path> files = Files.list(folder.resolve(brief))) {
      return Stream.of(
              files.filter(file -> file.toString().endsWith(".html")).sorted(),
              Stream.of(folder.resolve(brief + ".html")).filter(Files::exists),
              Stream.of(folder.resolve("options.html")).filter(x -> brief.equals("next-service")))
          .flatMap(paths -> paths)
          .toList();
    }
  }

  /** The checker is axe-core, which knows the success criteria of WCAG 2.2 that can be computed. */
  @ParameterizedTest
  @FieldSource("FOLDERS")
  void nobody_is_kept_out(String brief) throws IOException {
    String axe = checker();
    Tab tab = tab();
    tab.look("screen", "light");
    for (Path page : pages(brief)) {
      tab.open(page);
      tab.text(axe + ";''");
      assertThat(violations(tab, "")).as("%s", page).isEqualTo("[]");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"next-service", AFTER, GERMAN})
  void nobody_is_kept_out_in_the_dark(String brief) throws IOException {
    String axe = checker();
    Tab tab = tab();
    tab.look("screen", "dark");
    for (Path page : pages(brief)) {
      tab.open(page);
      tab.text(axe + ";''");
      assertThat(violations(tab, "runOnly: ['color-contrast'], ")).as("%s", page).isEqualTo("[]");
    }
  }

  private static String checker() throws IOException {
    try (InputStream in = InBrowserTest.class.getResourceAsStream("/axe.min.js")) {
      return new String(in.readAllBytes(), UTF_8);
    }
  }

  private static String violations(Tab tab, String options) {
    return tab.text(
        "axe.run(document, {%sresultTypes: ['violations']}).then(r => JSON.stringify(r.violations.map(v => [v.id, v.help, v.nodes.map(n => n.html)])))"
            .formatted(options));
  }

  @ParameterizedTest
  @FieldSource("FOLDERS")
  void a_page_asks_for_nothing_but_itself_and_nothing_goes_wrong_in_it(String brief)
      throws IOException {
    Tab tab = tab();
    for (Path page : pages(brief)) {
      tab.open(page);
      assertThat(tab.requests()).containsExactly(page.toUri().toString());
      assertThat(tab.complaints()).isEmpty();
    }
  }

  @Test
  void the_policy_stops_what_somebody_might_smuggle_in() {
    Tab tab = tab();
    tab.open(folder.resolve("next-service/run-sheet.html"));

    assertThat(
            tab.text(
                """
                new Promise(done => {
                  const stopped = [];
                  document.addEventListener("securitypolicyviolation", event => {
                    stopped.push(event.effectiveDirective);
                    if (stopped.length === 3) done(stopped.sort().join(" "));
                  });
                  const picture = new Image();
                  picture.src = "https://elsewhere.example/x.png";
                  const script = document.createElement("script");
                  script.textContent = "document.title = 'smuggled'";
                  document.body.append(picture, script);
                  fetch("https://elsewhere.example/").catch(() => {});
                })
                """))
        .isEqualTo("connect-src img-src script-src-elem");
    assertThat(tab.text("document.title")).doesNotContain("smuggled");
  }

  @Test
  void one_click_shows_one_option_in_full() {
    Tab tab = tab();
    tab.open(folder.resolve("options.html"));
    String open = "[...document.querySelectorAll('details[open]')].map(d => d.id).join(' ')";

    for (int option : List.of(2, 3, 2)) {
      tab.text(
          "document.querySelector('a[href=\"#option-%d-whole\"]').click();".formatted(option)
              + " new Promise(done => setTimeout(() => done(''), 200))");
      assertThat(tab.text(open)).isEqualTo("option-" + option + "-whole");
    }
  }

  @ParameterizedTest
  @FieldSource("FOLDERS")
  void nothing_is_cut_off_on_a_telephone_or_on_paper(String brief) throws IOException {
    Tab tab = tab();
    for (Path page : pages(brief)) {
      tab.look("screen", "light");
      tab.size(PHONE, 844);
      tab.open(page);
      assertThat(width(tab)).as("%s on a telephone", page).isLessThanOrEqualTo(PHONE);
      tab.look("print", "light");
      for (int wide : PRINTED) {
        tab.size(wide, 900);
        assertThat(width(tab)).as("%s on paper", page).isLessThanOrEqualTo(wide);
      }
    }
  }

  private static int width(Tab tab) {
    return Integer.parseInt(tab.text("String(document.documentElement.scrollWidth)"));
  }

  /** ISO 216 has A4 at 210 by 297 mm; ANSI/ASME Y14.1 has Letter at 8.5 by 11 inches. */
  @ParameterizedTest
  @ValueSource(strings = {"next-service", AFTER})
  void a_page_is_printed_on_paper_of_either_size(String brief) throws IOException {
    Tab tab = tab();
    for (Path page : pages(brief)) {
      tab.open(page);
      assertPaper(page, tab.pdf(210 / 25.4, 297 / 25.4), 210 / 25.4, 297 / 25.4);
      assertPaper(page, tab.pdf(8.5, 11), 8.5, 11);
    }
  }

  /** A PDF measures in points, of which an inch has 72 (ISO 32000). */
  private static void assertPaper(Path page, byte[] pdf, double wide, double high) {
    String text = new String(pdf, ISO_8859_1);
    Matcher box = PAPER.matcher(text);
    assertThat(box.find()).as("%s is a PDF", page).isTrue();
    assertThat(Double.parseDouble(box.group(1))).as("%s", page).isCloseTo(72 * wide, within(1.0));
    assertThat(Double.parseDouble(box.group(2))).as("%s", page).isCloseTo(72 * high, within(1.0));
    assertThat(SHEET_OF_PAPER.matcher(text).results().count()).as("%s", page).isBetween(1L, 12L);
  }

  /** A sponsor reads one page; what follows begins on a new one. */
  @Test
  void what_the_sponsor_reads_of_the_report_fits_on_one_sheet_of_either_size() {
    Tab tab = tab();
    tab.look("print", "light");
    int most = 0;
    for (int wide : PRINTED) {
      tab.size(wide, 900);
      tab.open(folder.resolve(AFTER).resolve("planned-report.html"));
      most =
          Math.max(
              most,
              Integer.parseInt(
                  tab.text(
                      "String(Math.ceil(document.getElementById('details').getBoundingClientRect().top))")));
    }

    assertThat(most).isLessThanOrEqualTo(PRINTED_HIGH);
  }
}
