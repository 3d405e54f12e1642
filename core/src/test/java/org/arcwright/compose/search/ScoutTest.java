package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.LongFunction;
import java.util.stream.LongStream;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.oracle.Instances;
import org.arcwright.compose.search.Solution.Status;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A first agenda, before anything is bounded. */
class ScoutTest {
  @ParameterizedTest
  @CsvSource({"60, 90", "150, 180", "1000, 180", "150, 480"})
  void is_found_for_every_likely_workshop(int candidates, int cap) {
    SoftAssertions softly = new SoftAssertions();
    for (long seed = 0; seed < 20; seed++) {
      Instance instance = Instances.of(candidates, cap, seed);
      Optional<Solution> first = first(instance);
      softly.assertThat(first).describedAs("seed %d", seed).isPresent();
      first.ifPresent(solution -> Passes.theChecker(softly, 0, instance, solution));
    }
    softly.assertAll();
  }

  @ParameterizedTest
  @CsvSource({"150, 180", "1000, 180", "150, 480"})
  void is_mostly_found_with_three_wishes_and_a_pin(int candidates, int cap) {
    assertThat(found(seed -> Instances.wished(candidates, cap, seed), 20)).isGreaterThan(15);
  }

  /** It is only a beginning, but one to be shown: on the average not twice as dear as the best. */
  @ParameterizedTest
  @CsvSource({"60, 90", "150, 180", "1000, 180", "150, 480"})
  void is_not_twice_as_dear_as_the_best(int candidates, int cap) {
    long dear = 0;
    long best = 0;
    for (long seed = 0; seed < 9; seed++) {
      Instance instance = Instances.of(candidates, cap, seed);
      dear += first(instance).orElseThrow().cost();
      best += Search.solve(instance, Limit.NONE).cost();
    }
    assertThat(dear).isLessThan(2 * best);
  }

  /** Meals, pins, wishes, odd bounds, and in every second one rules of its own. */
  @Test
  void fits_whatever_is_asked() {
    assertThat(found(Instances::tiny, 500)).isGreaterThan(100);
    assertThat(found(seed -> Instances.ruled(Instances.tiny(seed), seed), 500)).isGreaterThan(100);
    assertThat(found(Instances::demanding, 300)).isGreaterThan(75);
  }

  /** How many of the first seeds it finds one for; each must pass the checker. */
  private static long found(LongFunction<Instance> instances, long seeds) {
    SoftAssertions softly = new SoftAssertions();
    long found =
        LongStream.range(0, seeds)
            .filter(
                seed -> {
                  Instance instance = instances.apply(seed);
                  Optional<Solution> first = first(instance);
                  first.ifPresent(s -> Passes.theChecker(softly, seed, instance, s));
                  first.ifPresent(
                      s ->
                          softly
                              .assertThat(s.bound())
                              .isLessThanOrEqualTo(Search.solve(instance, Limit.NONE).cost()));
                  return first.isPresent();
                })
            .count();
    softly.assertAll();
    return found;
  }

  private static Optional<Solution> first(Instance instance) {
    Work work = new Work(Limit.NONE);
    return Facts.of(instance, work)
        .flatMap(facts -> Scout.run(facts, work).map(found -> found.solution(facts, work.done())));
  }

  /** Half a day, in steps, which are the same on every machine. */
  @Test
  void is_heard_in_the_first_tenth_of_the_way_to_the_proof() {
    for (long seed = 0; seed < 9; seed++) {
      Instance instance = Instances.of(150, 180, seed);
      AtomicLong steps = new AtomicLong();
      AtomicLong first = new AtomicLong(-1);
      Listener listener =
          new Listener() {
            @Override
            public void incumbent(long cost, List<Item> items) {
              first.compareAndSet(-1, steps.get());
            }
          };
      Limit counting =
          done -> {
            steps.set(done);
            return false;
          };
      long proof = Search.solve(instance, counting, listener).labels();
      assertThat(first.get()).isBetween(0L, proof / 10);
    }
  }

  /** The answer to a budget that ends while the first bound is worked out. */
  @Test
  void is_the_answer_when_the_limit_ends_before_any_bound() {
    Instance instance = Instances.of(150, 480, 1);
    Solution solution = Search.solve(instance, Limit.labels(2000));
    SoftAssertions softly = new SoftAssertions();
    softly.assertThat(solution.status()).isEqualTo(Status.FEASIBLE);
    softly.assertThat(solution.items()).isNotEmpty();
    softly.assertThat(solution.bound()).isBetween(1L, Search.solve(instance, Limit.NONE).cost());
    Passes.theChecker(softly, 1, instance, solution);
    softly.assertAll();
  }

  /** A break as long as the meal could be read as either, at another cost. */
  @Test
  void is_not_looked_for_where_a_break_could_be_a_meal() {
    long seed =
        LongStream.range(0, 2000)
            .filter(
                s ->
                    Instances.tiny(s).meals().stream()
                        .anyMatch(m -> m.minutes() == Instances.tiny(s).breakMinutes()))
            .filter(s -> Search.solve(Instances.tiny(s), Limit.NONE).status() == Status.OPTIMAL)
            .findFirst()
            .orElseThrow();
    assertThat(first(Instances.tiny(seed))).isEmpty();
  }
}
