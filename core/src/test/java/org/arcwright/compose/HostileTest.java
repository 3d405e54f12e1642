package org.arcwright.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.arcwright.brief.Brief;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Mode;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.Composition.NothingFits;
import org.arcwright.compose.Composition.Stopped;
import org.arcwright.compose.explain.Explainer;
import org.arcwright.compose.reduce.Crowd;
import org.arcwright.compose.reduce.Sample;
import org.arcwright.compose.search.OptionRule;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The largest catalog that there may be, and briefs that ask for as much of it as they can. */
@Tag("slow")
class HostileTest {
  private static final Catalog CATALOG = Sample.only(Crowd.exercises(100_000));
  private static final Composer COMPOSER = Composer.of(CATALOG);

  /** Products and wishes together are 62 at most. */
  private static final int MOST_WISHES = 57;

  /** Milliseconds of the processor, also of those who compile and sweep up meanwhile. */
  private static final long DEAF = 2_000;

  /** Steps between two looks at the limit. */
  private static final long BETWEEN_LOOKS = 8_192;

  @ParameterizedTest
  @CsvSource({"0, 180", "3, 180", "20, 480", "57, 180", "57, 960"})
  void it_ends_at_its_labels_with_a_bound(int wishes, int cap) {
    Budget budget = new Budget(400_000, Duration.ofMinutes(5));

    Composition answer = COMPOSER.compose(wishing(wishes, cap), budget);

    if (answer instanceof Composed composed) {
      assertThat(composed.proof().labels()).isLessThan(budget.labels() + BETWEEN_LOOKS);
      assertThat(composed.proof().bound()).isPositive();
    } else if (answer instanceof Stopped stopped) {
      assertThat(stopped.labels()).isLessThan(budget.labels() + BETWEEN_LOOKS);
      assertThat(stopped.bound()).isPresent();
    }
  }

  /** In processor time, for the machine may have other things to do. */
  @ParameterizedTest
  @ValueSource(ints = {0, 3, MOST_WISHES})
  void somebody_who_cancels_is_heard_in_every_part_of_the_work(int wishes) {
    Brief brief = wishing(wishes, 180);
    Budget budget = Budget.of(Duration.ofSeconds(20));
    OptionRule rule = new OptionRule(3, 50, 25);

    assertThat(deaf(cancel -> COMPOSER.compose(brief, budget, cancel))).isLessThan(DEAF);
    assertThat(deaf(cancel -> COMPOSER.options(brief, rule, budget, cancel))).isLessThan(DEAF);
  }

  @ParameterizedTest
  @ValueSource(ints = {3, MOST_WISHES})
  void an_explanation_keeps_to_its_budget(int wishes) {
    Brief brief = wishing(wishes, 20);
    Composition answer = COMPOSER.compose(brief, Budget.USUAL);
    assertThat(answer).isInstanceOf(NothingFits.class);
    Budget budget = Budget.of(Duration.ofSeconds(5));

    long begin = now();
    long deaf =
        deaf(
            cancel ->
                Explainer.of(CATALOG).whyNothingFits(brief, (NothingFits) answer, budget, cancel));

    assertThat(now() - begin).isLessThan(budget.time().toMillis() + DEAF);
    assertThat(deaf).isLessThan(DEAF);
  }

  /** The longest processor time, in milliseconds, in which nobody is asked whether to cancel. */
  private static long deaf(Consumer<Cancel> work) {
    long[] last = {now()};
    long[] longest = {0};
    work.accept(
        () -> {
          long now = now();
          longest[0] = Math.max(longest[0], now - last[0]);
          last[0] = now;
          return false;
        });
    return Math.max(longest[0], now() - last[0]);
  }

  private static long now() {
    return ProcessHandle.current().info().totalCpuDuration().orElseThrow().toMillis();
  }

  private static Brief wishing(int wishes, int cap) {
    Set<String> include =
        CATALOG.exercises().keySet().stream().limit(wishes).collect(Collectors.toSet());
    return Brief.builder("Everything", Sample.GOAL, Mode.REMOTE, 12, Duration.ofMinutes(cap))
        .wishes(new Wishes(include, Set.of(), List.of(), Set.of()))
        .build();
  }
}
