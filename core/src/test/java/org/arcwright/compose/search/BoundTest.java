package org.arcwright.compose.search;

import java.util.List;
import org.arcwright.compose.instance.Instance;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;

/**
 * How good the bound at the start is. Any bound that is not too high leads to the best agenda; one
 * that is too low leads there slowly.
 */
class BoundTest {
  @Test
  void is_the_price_of_the_best_where_nothing_could_come_twice() {
    SoftAssertions softly = new SoftAssertions();
    List<Instance> instances = Relaxable.once();
    for (int i = 0; i < instances.size(); i++) {
      Model model = Models.of(instances.get(i));
      softly
          .assertThat(fine(model))
          .describedAs("%d", i)
          .isEqualTo(Relaxable.price(model, Enumerated.best(instances.get(i))));
    }
    softly.assertAll();
  }

  @Test
  void is_the_cost_of_the_best_where_an_exercise_may_come_twice() {
    SoftAssertions softly = new SoftAssertions();
    List<Instance> instances = Relaxable.often();
    for (int i = 0; i < instances.size(); i++) {
      Model model = Models.of(instances.get(i));
      softly
          .assertThat(model.cost(fine(model)))
          .describedAs("%d", i)
          .isEqualTo(Search.solve(instances.get(i), Models.AMPLE).cost());
    }
    softly.assertAll();
  }

  private static long fine(Model model) {
    Outline outline = Outline.of(model, Models.work());
    return outline.guide(outline.reach(Model.INFINITE)).bound.root();
  }
}
