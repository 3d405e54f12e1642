package org.arcwright.compose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.IntStream;
import org.arcwright.agenda.Agenda;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.catalog.Mode;
import org.arcwright.compose.CachingComposer.Use;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.reduce.Sample;
import org.arcwright.compose.search.OptionRule;
import org.junit.jupiter.api.Test;

/** What is proven is remembered, once, and nothing else is. */
class CachingComposerTest {
  private final Composer composer = Composer.of(Sample.catalog());

  @Test
  void an_equal_brief_gets_the_same_answer_without_a_search() {
    CachingComposer caching = CachingComposer.of(composer, 10_000);
    Composition first = caching.compose(brief(90), Budget.USUAL);
    assertThat(caching.compose(brief(90), Budget.USUAL)).isSameAs(first);
    assertThat(caching.statistics().answers()).isEqualTo(new Use(1, 1, 0, 1));
  }

  @Test
  void that_nothing_fits_is_remembered_too() {
    CachingComposer caching = CachingComposer.of(composer, 10_000);
    assertThat(caching.compose(brief(25), Budget.USUAL))
        .isInstanceOf(Composition.NothingFits.class);
    caching.compose(brief(25), Budget.USUAL);
    assertThat(caching.statistics().answers().found()).isEqualTo(1);
  }

  @Test
  void equal_choices_get_the_same_options_without_a_search() {
    CachingComposer caching = CachingComposer.of(composer, 10_000);
    OptionRule rule = new OptionRule(3, 50, 25);
    Options first = caching.options(brief(90), rule, Budget.USUAL);

    assertThat(caching.options(brief(90), rule, Budget.USUAL)).isSameAs(first);
    assertThat(caching.options(brief(90), new OptionRule(2, 50, 25), Budget.USUAL))
        .isNotEqualTo(first);
    assertThat(caching.options(brief(25), rule, Budget.USUAL)).isInstanceOf(Options.NotOne.class);
    assertThat(caching.statistics().options()).isEqualTo(new Use(1, 3, 0, 3));
    assertThat(agendas(first)).isEqualTo(agendas(composer.options(brief(90), rule, Budget.USUAL)));
  }

  @Test
  void options_without_proof_are_not_remembered() {
    CachingComposer caching = CachingComposer.of(composer, 10_000);
    OptionRule rule = new OptionRule(3, 50, 25);
    for (long labels : new long[] {1, 200}) {
      caching.options(brief(90), rule, new Budget(labels, Duration.ofSeconds(10)));
      assertThat(caching.statistics().options().kept()).isZero();
    }
    assertThat(agendas(caching.options(brief(90), rule, Budget.USUAL))).isNotEmpty();
  }

  private static List<Agenda> agendas(Options options) {
    return ((Options.Found) options)
        .options().stream().map(option -> option.composed().agenda()).toList();
  }

  @Test
  void an_answer_without_proof_is_not_remembered() {
    CachingComposer caching = CachingComposer.of(composer, 10_000);
    caching.compose(brief(90), new Budget(1, Duration.ofSeconds(10)));
    assertThat(caching.statistics().answers().kept()).isZero();
    assertThat(caching.compose(brief(90), Budget.USUAL)).isInstanceOf(Composition.Composed.class);
  }

  @Test
  void a_refused_brief_is_refused_again() {
    CachingComposer caching = CachingComposer.of(composer, 10_000);
    Brief wrong =
        Brief.builder("Wrong", "no-such-goal", Mode.REMOTE, 8, Duration.ofHours(2)).build();
    for (int i = 0; i < 2; i++) {
      assertThatThrownBy(() -> caching.compose(wrong, Budget.USUAL))
          .isInstanceOf(InvalidValueException.class);
    }
    assertThat(caching.statistics().answers().kept()).isZero();
  }

  @Test
  void answers_make_room_for_each_other() {
    Composition one = composer.compose(brief(90), Budget.USUAL);
    CachingComposer caching = CachingComposer.of(composer, one.instance().candidates().size() + 1);
    IntStream.of(90, 95, 100).forEach(cap -> caching.compose(brief(cap), Budget.USUAL));
    assertThat(caching.statistics().answers().kept()).isLessThanOrEqualTo(1);
  }

  @Test
  void briefs_that_differ_in_words_alone_share_a_solution() {
    CachingComposer caching = CachingComposer.of(composer, 10_000);
    Composed first = (Composed) caching.compose(brief(90), Budget.USUAL);
    Brief renamed =
        Brief.builder("Another name", Sample.GOAL, Mode.REMOTE, 8, Duration.ofMinutes(90)).build();

    Composed second = (Composed) caching.compose(renamed, Budget.USUAL);

    assertThat(second.agenda().title()).isEqualTo("Another name");
    assertThat(second.agenda().items()).isEqualTo(first.agenda().items());
    assertThat(caching.statistics().solutions()).isEqualTo(new Use(1, 1, 0, 1));
  }

  @Test
  void a_brief_is_reduced_once_though_its_answer_is_not_remembered() {
    CachingComposer caching = CachingComposer.of(composer, 10_000);
    caching.compose(brief(90), new Budget(1, Duration.ofSeconds(10)));
    caching.compose(brief(90), Budget.USUAL);

    assertThat(caching.statistics().reductions()).isEqualTo(new Use(1, 1, 0, 1));
  }

  @Test
  void who_waits_for_anothers_search_may_still_cancel() throws Exception {
    Brief day = Sample.brief(480).build();
    CountDownLatch searching = new CountDownLatch(1);
    AtomicBoolean enough = new AtomicBoolean();
    CachingComposer caching = CachingComposer.of(composer, 10_000);
    ExecutorService threads = Executors.newSingleThreadExecutor();
    try {
      Future<Composition> first =
          threads.submit(
              () ->
                  caching.compose(
                      day,
                      Budget.of(Duration.ofMinutes(5)),
                      () -> {
                        searching.countDown();
                        return !hold(enough);
                      }));
      searching.await();

      Composition impatient = caching.compose(day, Budget.of(Duration.ofMinutes(5)), () -> true);

      assertThat(impatient).isInstanceOf(Composition.Stopped.class);
      enough.set(true);
      assertThat(first.get()).isInstanceOf(Composition.Stopped.class);
    } finally {
      threads.shutdownNow();
    }
  }

  /** Keeps a search where it is until there is enough of it. */
  private static boolean hold(AtomicBoolean enough) {
    while (!enough.get()) {
      Thread.onSpinWait();
    }
    return false;
  }

  @Test
  void who_waits_in_vain_searches_with_the_other_half_of_the_budget() throws Exception {
    CountDownLatch searching = new CountDownLatch(1);
    AtomicBoolean enough = new AtomicBoolean();
    CachingComposer caching = CachingComposer.of(composer, 10_000);
    ExecutorService threads = Executors.newSingleThreadExecutor();
    try {
      Future<Composition> first =
          threads.submit(
              () ->
                  caching.compose(
                      brief(90),
                      Budget.of(Duration.ofMinutes(5)),
                      () -> {
                        searching.countDown();
                        return !hold(enough);
                      }));
      searching.await();

      Composition second = caching.compose(brief(90), Budget.of(Duration.ofSeconds(2)));

      assertThat(second).isInstanceOf(Composed.class);
      enough.set(true);
      first.get();
    } finally {
      threads.shutdownNow();
    }
  }

  @Test
  void many_at_once_are_searched_for_once() throws Exception {
    CachingComposer caching = CachingComposer.of(composer, 10_000);
    ExecutorService threads = Executors.newFixedThreadPool(8);
    try {
      Callable<Composition> call = () -> caching.compose(brief(90), Budget.USUAL);
      List<Future<Composition>> answers =
          threads.invokeAll(IntStream.range(0, 64).mapToObj(i -> call).toList());
      Composition first = answers.get(0).get();
      for (Future<Composition> answer : answers) {
        assertThat(answer.get()).isSameAs(first);
      }
    } finally {
      threads.shutdownNow();
    }
    assertThat(caching.statistics().answers().missed()).isEqualTo(1);
  }

  private static Brief brief(int cap) {
    return Sample.brief(cap).build();
  }
}
