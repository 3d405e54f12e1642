package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.arcwright.compose.check.Checker;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Bounds;
import org.arcwright.compose.instance.Instance.Phase;
import org.arcwright.compose.oracle.Instances;
import org.arcwright.compose.search.OptionList.End;
import org.arcwright.compose.search.Solution.Status;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How a search for options ends. */
class OptionSearchTest {
  private static final OptionRule FIVE = new OptionRule(5, 50, 25);

  @Test
  void the_first_option_is_the_best_and_takes_no_longer() {
    Instance instance = Instances.of(60, 120, 4);
    OptionList options = OptionSearch.solve(instance, new OptionRule(1, 50, 25), Models.AMPLE);
    Solution best = Search.solve(instance, Models.AMPLE);
    assertThat(options.solutions()).hasSize(1);
    assertThat(options.solutions().get(0).items()).isEqualTo(best.items());
    assertThat(options.end()).isEqualTo(End.ENOUGH);
    assertThat(options.labels()).isLessThan(2 * best.labels());
  }

  @Test
  void where_nothing_fits_there_is_nothing_left() {
    Phase two = new Phase("any", Set.of("any"), new Bounds(2, 2), new Bounds(0, 60), 0, List.of());
    Instance instance =
        Models.hour(two).candidates(List.of(Models.candidate("only", "any", 0))).build();
    OptionList options = OptionSearch.solve(instance, FIVE, Models.SOON);
    assertThat(options.end()).isEqualTo(End.NONE_LEFT);
    assertThat(options.next()).isEmpty();
    assertThat(options.solutions()).extracting(Solution::status).containsExactly(Status.INFEASIBLE);
  }

  /** Each further one comes in its turn or not at all, and no more is said than is proven. */
  @Test
  void wherever_a_limit_ends_it_the_options_proven_so_far_are_there() {
    Instance instance = Instances.of(60, 90, 1);
    OptionList all = OptionSearch.solve(instance, FIVE, Models.AMPLE);
    List<Integer> seen = new ArrayList<>();
    for (long most = 0; most < all.labels() - 2048; most += 1 + most / 8) {
      OptionList some = OptionSearch.solve(instance, FIVE, Limit.labels(most));
      assertThat(some.end()).isEqualTo(End.STOPPED);
      assertThat(some.next()).isEmpty();
      assertThat(some.labels()).isBetween(most, most + 4096);
      List<Solution> proven =
          some.solutions().stream().filter(s -> s.status() == Status.OPTIMAL).toList();
      assertThat(proven).isEqualTo(all.solutions().subList(0, proven.size()));
      assertThat(some.solutions().size() - proven.size()).isBetween(0, 1);
      assertThat(proven.size()).isLessThan(all.solutions().size());
      seen.add(proven.size());
    }
    assertThat(seen).isSorted().contains(0, 1, 3);
  }

  /** What comes next costs too much; how much is looked for no longer than all took before. */
  @ParameterizedTest
  @ValueSource(longs = {0, 1, 2, 3})
  void the_next_is_told_if_it_is_soon_found(long seed) {
    Instance instance = Instances.of(60, 180, seed);
    OptionRule rule = new OptionRule(5, 0, 5);
    OptionList options = OptionSearch.solve(instance, rule, Models.AMPLE);
    Solution best = options.solutions().get(0);
    assertThat(options.end()).isEqualTo(End.TOO_DEAR);
    assertThat(options.solutions()).containsExactly(best);
    assertThat(options.labels()).isLessThan(4 * best.labels() + 20_000);

    Solution next = options.next().orElseThrow();
    assertThat(next.cost()).isGreaterThan(rule.ceiling(best.cost()));
    assertThat(Checker.check(instance, next.items()).feasible()).isTrue();
    Set<String> ids = OptionPasses.ids(best.items());
    assertThat(OptionPasses.ids(next.items())).doesNotContainAnyElementsOf(ids);
    if (next.status() != Status.OPTIMAL) {
      assertThat(next.bound()).isLessThan(next.cost());
    }
  }

  @Test
  void the_next_is_called_cheapest_only_if_that_is_proven() {
    List<Status> said = new ArrayList<>();
    for (long seed = 0; seed < 10; seed++) {
      OptionRule rule = new OptionRule(5, 0, 5);
      OptionList options = OptionSearch.solve(Instances.of(60, 180, seed), rule, Models.AMPLE);
      said.add(options.next().orElseThrow().status());
      OptionRule wide = new OptionRule(2, 0, 1000);
      Solution second =
          OptionSearch.solve(Instances.of(60, 180, seed), wide, Models.AMPLE).solutions().get(1);
      Solution next = options.next().get();
      if (next.status() == Status.OPTIMAL) {
        assertThat(next.cost()).isEqualTo(second.cost());
      } else {
        assertThat(second.cost()).isBetween(next.bound(), next.cost());
      }
    }
    assertThat(said).contains(Status.OPTIMAL, Status.FEASIBLE);
  }
}
