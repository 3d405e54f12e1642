package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.oracle.Enumeration.Best;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;

/** How good the relaxation is that forgets formats, products, and that nothing comes twice. */
class OutlineTest {
  private static final List<Instance> ONCE =
      Relaxable.once().stream().map(Relaxable::plain).toList();
  private static final List<Instance> OFTEN =
      Relaxable.often().stream().map(Relaxable::plain).toList();

  @Test
  void is_the_price_of_the_best_where_there_is_nothing_to_forget() {
    SoftAssertions softly = new SoftAssertions();
    for (Instance instance : ONCE) {
      Model model = Models.of(instance);
      softly
          .assertThat(outline(model).root())
          .describedAs("%d", ONCE.indexOf(instance))
          .isEqualTo(Relaxable.price(model, Enumerated.best(instance)));
    }
    softly.assertAll();
  }

  @Test
  void is_the_cost_of_the_best_where_an_exercise_may_come_twice() {
    SoftAssertions softly = new SoftAssertions();
    for (Instance instance : OFTEN) {
      Model model = Models.of(instance);
      softly
          .assertThat(model.cost(outline(model).root()))
          .describedAs("%d", OFTEN.indexOf(instance))
          .isEqualTo(Search.solve(instance, Models.AMPLE).cost());
    }
    softly.assertAll();
  }

  /**
   * Under a ceiling that only the best agenda keeps, what is left are the states that it passes:
   * its start, one after each item, and one at the beginning of each further phase.
   */
  @Test
  void leaves_nothing_beside_the_best_agenda_under_the_tightest_ceiling() {
    SoftAssertions softly = new SoftAssertions();
    for (Instance instance : ONCE) {
      Optional<Best> best = Enumerated.best(instance);
      if (best.isPresent()) {
        Outline outline = outline(Models.of(instance));
        softly
            .assertThat(states(outline.reach(outline.root() + 1)))
            .describedAs("%d", ONCE.indexOf(instance))
            .isEqualTo(best.get().items().size() + instance.phases().size());
        softly.assertThat(states(outline.reach(outline.root()))).isZero();
      }
    }
    softly.assertAll();
  }

  @Test
  void leaves_more_the_higher_the_ceiling() {
    for (Instance instance : OFTEN) {
      Outline outline = outline(Models.of(instance));
      long[] less = outline.reach(outline.root() + 1).stretches;
      long[] more = outline.reach(outline.root() + outline.root() / 8).stretches;
      long[] all = outline.reach(Model.INFINITE).stretches;
      for (int node = 0; node < all.length; node++) {
        assertThat(less[node] & ~more[node]).isZero();
        assertThat(more[node] & ~all[node]).isZero();
      }
    }
  }

  private static Outline outline(Model model) {
    return Outline.of(model, Models.work());
  }

  private static long states(Reach reach) {
    return Arrays.stream(reach.stretches).map(Long::bitCount).sum();
  }
}
