package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;

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
    SoftAssertions softly = new SoftAssertions();
    int fits = 0;
    for (long seed = 0; seed < 3000; seed++) {
      Instance instance = Instances.tiny(seed);
      boolean expected = Enumeration.solve(instance).isPresent();
      fits += expected ? 1 : 0;
      agrees(softly, seed, instance, expected);
    }
    softly.assertAll();
    assertThat(fits).isBetween(500, 2500);
  }

  @Test
  void fits_middling_instances_where_the_search_finds_an_agenda() {
    SoftAssertions softly = new SoftAssertions();
    int fits = 0;
    for (long seed = 0; seed < 1000; seed++) {
      Instance instance = Instances.demanding(seed).freeOfCharge();
      boolean expected = Search.solve(instance, Limit.NONE).status() != Status.INFEASIBLE;
      fits += expected ? 1 : 0;
      agrees(softly, seed, instance, expected);
    }
    softly.assertAll();
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
