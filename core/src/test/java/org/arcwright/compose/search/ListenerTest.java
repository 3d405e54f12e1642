package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.arcwright.compose.check.Checker;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.oracle.Instances;
import org.arcwright.compose.search.Solution.Status;
import org.junit.jupiter.api.Test;

/** What a listener hears while a search goes on. */
class ListenerTest {
  private static final class Ear implements Listener {
    final List<Long> bounds = new ArrayList<>();
    final List<Long> costs = new ArrayList<>();
    final List<List<Item>> incumbents = new ArrayList<>();

    @Override
    public void incumbent(long cost, List<Item> items) {
      costs.add(cost);
      incumbents.add(items);
    }

    @Override
    public void bound(long cost) {
      bounds.add(cost);
    }
  }

  @Test
  void bounds_rise_and_incumbents_fall_until_they_meet() {
    for (long seed = 0; seed < 5; seed++) {
      Instance instance = Instances.of(100, 180, seed);
      Ear ear = new Ear();
      Solution solution = Search.solve(instance, Models.AMPLE, ear);
      assertThat(ear.bounds).isSorted().doesNotHaveDuplicates();
      assertThat(ear.costs).isSortedAccordingTo((a, b) -> Long.compare(b, a));
      assertThat(ear.bounds.get(ear.bounds.size() - 1)).isEqualTo(solution.cost());
      assertThat(ear.costs.get(ear.costs.size() - 1)).isEqualTo(solution.cost());
      assertThat(ear.incumbents.get(ear.incumbents.size() - 1)).isEqualTo(solution.items());
    }
  }

  /** The outline's bound, and that of the finer guide, which takes longer to make. */
  @Test
  void a_bound_is_heard_as_soon_as_there_is_one() {
    for (long seed = 0; seed < 4; seed++) {
      Instance instance = Instances.of(150, 180, seed);
      Ear ear = new Ear();
      Solution solution = Search.solve(instance, Models.AMPLE, ear);
      Model model = Models.of(instance);
      Outline outline = Outline.of(model, Models.work());
      Reach reach = outline.reach(model.pack(solution.cost() + 1));
      assertThat(ear.bounds)
          .startsWith(model.cost(outline.root()))
          .contains(model.cost(outline.guide(reach).bound.root()));
    }
  }

  @Test
  void every_incumbent_fits() {
    for (long seed = 0; seed < 200; seed++) {
      Instance instance = Instances.tiny(seed);
      Ear ear = new Ear();
      Search.solve(instance, Models.SOON, ear);
      for (int i = 0; i < ear.costs.size(); i++) {
        assertThat(Checker.check(instance, ear.incumbents.get(i)).cost().total())
            .isEqualTo(ear.costs.get(i));
        assertThat(Checker.check(instance, ear.incumbents.get(i)).findings()).isEmpty();
      }
    }
  }

  @Test
  void hears_of_nothing_that_does_not_fit() {
    for (long seed = 0; seed < 200; seed++) {
      Instance instance = Instances.tiny(seed);
      Ear ear = new Ear();
      if (Search.solve(instance, Models.SOON, ear).status() == Status.INFEASIBLE) {
        assertThat(ear.incumbents).isEmpty();
      }
    }
  }

  @Test
  void what_it_throws_reaches_the_caller() {
    Listener torn =
        new Listener() {
          @Override
          public void bound(long cost) {
            throw new IllegalStateException("torn");
          }
        };
    Instance instance = Instances.of(60, 90, 1);
    assertThatThrownBy(() -> Search.solve(instance, Models.AMPLE, torn)).hasMessage("torn");
  }
}
