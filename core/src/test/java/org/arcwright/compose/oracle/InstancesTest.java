package org.arcwright.compose.oracle;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import java.util.stream.LongStream;
import org.arcwright.compose.check.Checker;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Meal;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.search.Limit;
import org.arcwright.compose.search.Search;
import org.arcwright.compose.search.Solution;
import org.arcwright.compose.search.Solution.Status;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The generator reaches what it says it reaches, and is the same everywhere. */
class InstancesTest {
  private static final List<Instance> TINY =
      LongStream.range(0, 500).mapToObj(Instances::tiny).toList();

  @Test
  void gives_the_same_instance_for_the_same_seed() {
    assertThat(Instances.tiny(7)).isEqualTo(Instances.tiny(7)).isNotEqualTo(Instances.tiny(8));
    assertThat(Instances.middling(7)).isEqualTo(Instances.middling(7));
    assertThat(Instances.wished(60, 180, 7)).isEqualTo(Instances.wished(60, 180, 7));
  }

  @Test
  void reaches_every_corner() {
    reaches(i -> i.breakMinutes() == 0);
    reaches(i -> i.breakMinutes() > 0 && hasMeal(i, meal -> meal.minutes() == i.breakMinutes()));
    reaches(i -> i.meals().size() == 2);
    reaches(i -> hasMeal(i, meal -> meal.from() > meal.to()));
    reaches(i -> !i.initial().isEmpty());
    reaches(i -> !i.pins().isEmpty());
    reaches(i -> !i.include().isEmpty());
    reaches(i -> !i.candidateIds().containsAll(i.include()));
    reaches(i -> i.phases().stream().anyMatch(p -> p.count().min() > p.count().max()));
    reaches(i -> i.phases().stream().anyMatch(p -> p.minutes().min() > p.minutes().max()));
    reaches(i -> i.phases().stream().anyMatch(p -> p.yields().size() > 1));
    reaches(i -> i.candidates().stream().anyMatch(c -> c.yields().isEmpty()));
    reaches(i -> i.candidates().stream().anyMatch(c -> c.needs().size() > 1));
    reaches(i -> i.stretch().min() > i.stretch().max());
    reaches(i -> i.weights().energy() == 0 && i.weights().rhythm() > 0);
    reaches(i -> i.bufferPercent() == 0);
    reaches(i -> i.grid() == 1);
  }

  @Test
  void demands_what_can_be_met_and_what_cannot() {
    List<Instance> demanding =
        LongStream.range(0, 60).mapToObj(Instances::demanding).filter(this::wishesTwice).toList();
    assertThat(demanding)
        .hasSizeGreaterThan(20)
        .anyMatch(i -> solved(i) == Status.OPTIMAL)
        .anyMatch(i -> solved(i) == Status.INFEASIBLE);
  }

  @Test
  void rules_change_some_answers_and_forbid_some() {
    List<Instance> plain = LongStream.range(0, 60).mapToObj(Instances::middling).toList();
    int changed = 0;
    int forbidden = 0;
    for (int seed = 0; seed < plain.size(); seed++) {
      Solution free = Search.solve(plain.get(seed), Limit.NONE);
      Solution ruled = Search.solve(Instances.ruled(plain.get(seed), seed), Limit.NONE);
      changed += free.items().equals(ruled.items()) ? 0 : 1;
      forbidden += free.items().isEmpty() || !ruled.items().isEmpty() ? 0 : 1;
    }
    assertThat(changed).isGreaterThan(15);
    assertThat(forbidden).isBetween(1, changed / 2);
  }

  private boolean wishesTwice(Instance instance) {
    return instance.include().size() + instance.pins().size() > 1;
  }

  private static Status solved(Instance instance) {
    return Search.solve(instance, Limit.NONE).status();
  }

  private static void reaches(Predicate<Instance> corner) {
    assertThat(TINY).anyMatch(corner);
  }

  private static boolean hasMeal(Instance instance, Predicate<Meal> such) {
    return instance.meals().stream().anyMatch(such);
  }

  @ParameterizedTest
  @CsvSource({"60, 90", "60, 180", "200, 300", "1000, 480", "10000, 960"})
  void likely_workshops_have_an_answer_even_with_wishes(int candidates, int cap) {
    for (long seed = 0; seed < 5; seed++) {
      Instance wished = Instances.wished(candidates, cap, seed);
      assertThat(wished.include()).hasSize(3);
      assertThat(wished.pins()).hasSize(1);
      List<Item> sketch =
          Sketch.draw(Instances.of(candidates, cap, seed), 1000, new SplittableRandom(~seed))
              .orElseThrow();
      assertThat(Checker.check(wished, sketch).findings()).isEmpty();
    }
  }
}
