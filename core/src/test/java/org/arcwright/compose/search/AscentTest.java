package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.BitSet;
import java.util.List;
import java.util.Set;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.oracle.Instances;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tolls raise the bound on the second option, as far as they may. */
class AscentTest {
  private static final int HIGHEST = 1000;
  private static final int SHARED = 2;

  /** A likely workshop, its best agenda, and the cheapest that shares at most two exercises. */
  private static final class Case {
    final Model model;
    final Outline outline;
    final Sharing sharing;
    final long second;

    Case(long seed) {
      Instance instance = Instances.of(60, 180, seed);
      OptionRule rule = new OptionRule(2, 30, 1000);
      List<Solution> options = OptionSearch.solve(instance, rule, Models.AMPLE).solutions();
      Set<String> ids = OptionPasses.ids(options.get(0).items());
      assertThat(rule.mostShared(ids.size())).isEqualTo(SHARED);
      this.model = Models.of(instance);
      this.outline = Outline.of(model, Models.work());
      BitSet held = new BitSet();
      for (int i = 0; i < model.ids.length; i++) {
        held.set(i, ids.contains(model.ids[i]));
      }
      this.sharing = Sharing.of(model, List.of(held), List.of(SHARED));
      this.second = options.get(1).cost();
    }

    Ascent ascent(double[] tolls) {
      return new Ascent(
          outline.prices(),
          outline.reach(model.pack(3 * second)),
          sharing,
          List.of(SHARED),
          new Tracked(model),
          tolls,
          HIGHEST,
          Models.work());
    }

    long price() {
      return model.pack(second + 1);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {0, 1, 2, 3})
  void the_bound_rises_most_of_the_way_to_the_second_option_and_never_over(long seed) {
    Case some = new Case(seed);
    Ascent ascent = some.ascent(new double[0]);
    long free = ascent.root();
    int steps = 0;
    while (!ascent.over() && steps < 200) {
      long before = ascent.root();
      boolean higher = ascent.step(some.price());
      assertThat(higher).isEqualTo(ascent.root() > before);
      assertThat(ascent.root()).isGreaterThanOrEqualTo(before);
      steps++;
    }
    assertThat(steps).isBetween(3, 100);
    assertThat(some.model.cost(ascent.root())).isLessThanOrEqualTo(some.second);
    double gap = some.second - some.model.cost(free);
    assertThat((some.model.cost(ascent.root()) - some.model.cost(free)) / gap)
        .describedAs("part of the gap closed in %d steps", steps)
        .isGreaterThan(0.6);
  }

  @Test
  void no_toll_is_negative_or_over_the_highest() {
    Ascent ascent = new Case(1).ascent(new double[0]);
    while (!ascent.over()) {
      ascent.step(Model.INFINITE / 2);
      for (double toll : ascent.tolls()) {
        assertThat(toll).isBetween(0.0, (double) HIGHEST);
      }
    }
  }

  /** One more option starts where the last one's ascent ended. */
  @Test
  void goes_on_from_tolls_that_were_good_before() {
    Case some = new Case(2);
    Ascent first = some.ascent(new double[0]);
    for (int i = 0; i < 20 && !first.over(); i++) {
      first.step(some.price());
    }
    assertThat(some.ascent(first.tolls()).root()).isGreaterThan(some.ascent(new double[0]).root());
  }

  @Test
  void the_guide_is_the_one_under_the_best_tolls() {
    Case some = new Case(0);
    Ascent ascent = some.ascent(new double[0]);
    while (!ascent.over()) {
      ascent.step(some.price());
      assertThat(ascent.guide().root(some.sharing)).isEqualTo(ascent.root());
    }
  }
}
