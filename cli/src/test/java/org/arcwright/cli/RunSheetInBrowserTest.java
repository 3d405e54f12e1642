package org.arcwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The run sheet's clock through a whole day, in a real browser whose time we set. */
@Timeout(300)
class RunSheetInBrowserTest {
  private static final Instant START = Instant.parse("2027-03-02T08:00:00Z");

  @TempDir Path folder;
  private Optional<Browser> browser = Optional.empty();
  private Tab tab;

  @BeforeEach
  void open() throws IOException {
    Optional<Path> program = Browser.installed();
    assumeTrue(program.isPresent(), "no Chromium is installed, so no page is opened in one");
    Path agenda = folder.resolve("agenda.json");
    assertThat(Run.of("compose", Briefs.write(folder, Briefs.SHORT), "--out", agenda).code())
        .isZero();
    assertThat(Run.of("prepare", agenda, "--out", folder.resolve("out")).code()).isZero();
    browser = Optional.of(Browser.start(program.get()));
    tab = browser.get().tab();
    tab.before("{ let time = 0; Date.now = () => time; window.setTime = t => { time = t; }; }");
    tab.open(folder.resolve("out/run-sheet.html"));
  }

  @AfterEach
  void close() {
    browser.ifPresent(Browser::close);
  }

  private void at(double minutes) {
    long time = START.toEpochMilli() + Math.round(minutes * 60_000);
    tab.text("setTime(%d); new Promise(done => setTimeout(() => done(''), 600))".formatted(time));
  }

  private void click(String id) {
    tab.text("document.getElementById('%s').click(); ''".formatted(id));
  }

  private String says(String id) {
    return tab.text("document.getElementById('%s').textContent".formatted(id));
  }

  /** A browser writes down what a page keeps in its own time, which a busy machine makes long. */
  private void reloadUntil(BooleanSupplier settled) {
    int tries = 0;
    do {
      tab.reload();
      at(minutes(0) + 1);
    } while (!settled.getAsBoolean() && ++tries < 10);
  }

  private int number(String expression) {
    return (int) Double.parseDouble(tab.text("String(" + expression + ")"));
  }

  private int minutes(int item) {
    return number("document.querySelectorAll('.item')[%d].dataset.minutes".formatted(item));
  }

  private String title(int item) {
    return tab.text("document.querySelectorAll('.item')[%d].dataset.title".formatted(item));
  }

  private String current() {
    return tab.text("document.querySelector('[aria-current]')?.dataset.title ?? ''");
  }

  @Test
  void it_leads_through_the_whole_day() {
    at(-10);
    assertThat(says("now")).isEqualTo("Begins in 10 min");
    assertThat(says("next")).isEqualTo("Next: " + title(0));

    int items = number("document.querySelectorAll('.item').length");
    assertThat(items).isGreaterThan(3);
    double now = 2;
    at(now);
    for (int i = 0; i < items; i++) {
      click("go");
      assertThat(says("now")).isEqualTo(title(i));
      assertThat(current()).isEqualTo(title(i));
      assertThat(says("left")).isEqualTo(minutes(i) + " min left");
      assertThat(says("ahead")).isEqualTo("2 min behind plan");
      assertThat(says("next"))
          .isEqualTo(i + 1 < items ? "Next: " + title(i + 1) : "This is the last item.");
      now += minutes(i);
      at(now);
    }
    click("go");
    assertThat(says("now")).isEqualTo("That was all. Thank people.");
    assertThat(tab.text("String(document.getElementById('go').disabled)")).isEqualTo("true");
  }

  @Test
  void it_says_how_far_ahead_or_behind_the_day_is() {
    at(0);
    click("go");
    assertThat(says("ahead")).isEqualTo("on plan");
    at(minutes(0) + 3);
    assertThat(says("left")).isEqualTo("3 min over");
    assertThat(says("ahead")).isEqualTo("3 min behind plan");
    click("back");
    at(0);
    click("go");
    at(minutes(0) - 4);
    click("go");
    assertThat(says("ahead")).isEqualTo("4 min ahead of plan");
  }

  @Test
  void it_forgets_nothing_over_a_reload() {
    at(0);
    click("go");
    at(minutes(0));
    click("go");
    reloadUntil(() -> says("now").equals(title(1)));

    assertThat(says("now")).isEqualTo(title(1));
    assertThat(says("left")).isEqualTo(minutes(1) - 1 + " min left");

    click("again");
    reloadUntil(() -> !says("now").equals(title(1)));
    assertThat(says("now")).isNotEqualTo(title(1));
    assertThat(current()).isEmpty();
  }

  @Test
  void a_step_has_a_timer_of_its_own() {
    at(0);
    click("go");
    String timer = "document.querySelector('.timer')";
    int seconds = number(timer + ".dataset.seconds");
    tab.text(timer + ".click(); ''");
    assertThat(tab.text(timer + ".textContent"))
        .isEqualTo("%d:%02d".formatted(seconds / 60, seconds % 60));
    at((seconds + 5) / 60.0);
    assertThat(tab.text(timer + ".textContent")).isEqualTo("+0:05");
  }
}
