package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.LongFunction;
import java.util.function.Predicate;
import java.util.stream.LongStream;
import org.arcwright.compose.check.Checker;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.oracle.Enumeration;
import org.arcwright.compose.oracle.Instances;
import org.arcwright.compose.search.Solution.Status;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;

/** Whether anything fits, against enumeration, the exact search and the checker. */
class AnyAgendaTest {
  @Test
  void fits_tiny_instances_where_enumeration_finds_an_agenda() {
    int fits = fits(3000, Instances::tiny, instance -> Enumeration.solve(instance).isPresent());
    assertThat(fits).isBetween(500, 2500);
  }

  @Test
  void fits_middling_instances_where_the_search_finds_an_agenda() {
    int fits =
        fits(
            1000,
            seed -> Instances.demanding(seed).freeOfCharge(),
            instance -> Search.solve(instance, Limit.NONE).status() != Status.INFEASIBLE);
    assertThat(fits).isBetween(200, 800);
  }

  @Test
  void what_has_rules_is_left_to_the_search() {
    Instance ruled =
        LongStream.range(0, 50)
            .mapToObj(seed -> Instances.ruled(Instances.tiny(seed), seed))
            .filter(instance -> !instance.rules().equals(Instance.Rules.NONE))
            .findFirst()
            .orElseThrow();

    assertThat(AnyAgenda.of(ruled, Limit.NONE).status()).isEqualTo(Status.STOPPED);
  }

  @Test
  void a_limit_ends_it() {
    AnyAgenda.Found found =
        AnyAgenda.of(Instances.of(200, 480, 1).freeOfCharge(), Limit.labels(20));

    assertThat(found.status()).isEqualTo(Status.STOPPED);
  }

  /** How many of the first seeds fit; each must as the oracle has it. */
  private static int fits(int seeds, LongFunction<Instance> instances, Predicate<Instance> oracle) {
    SoftAssertions softly = new SoftAssertions();
    int fits = 0;
    for (long seed = 0; seed < seeds; seed++) {
      Instance instance = instances.apply(seed);
      boolean expected = oracle.test(instance);
      fits += expected ? 1 : 0;
      agrees(softly, seed, instance, expected);
    }
    softly.assertAll();
    return fits;
  }

  private static void agrees(
      SoftAssertions softly, long seed, Instance instance, boolean expected) {
    AnyAgenda.Found found = AnyAgenda.of(instance, Limit.NONE);
    softly
        .assertThat(found.status())
        .as("seed %d", seed)
        .isEqualTo(expected ? Status.FEASIBLE : Status.INFEASIBLE);
    if (found.status() == Status.FEASIBLE) {
      softly
          .assertThat(Checker.check(instance, found.items()).findings())
          .as("seed %d", seed)
          .isEmpty();
    }
  }
}
