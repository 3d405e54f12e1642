package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.BitSet;
import java.util.List;
import java.util.Set;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Bounds;
import org.arcwright.compose.instance.Instance.Phase;
import org.junit.jupiter.api.Test;

/** Steps of Held, Wolfe and Crowder (1974), worked by hand. */
class AscentByHandTest {
  private static final int AGENDA = 64;
  private static final double NEAR = 1e-9;
  private static final int HIGHEST = 1000;

  /**
   * Three phases, each with an exercise at 10 that the first agenda holds, and one at 30. At most
   * one may come again, so that the second agenda costs 70. While all three come, two too many, a
   * step makes the toll (1 + gap) / 2 higher, where the gap is what is missing to 70, or a quarter
   * of the bound if that is less. Beyond a toll of 20 none comes, one too few, and the step goes
   * back; then from there.
   */
  @Test
  void tolls_on_an_agenda_rise_while_too_many_of_it_come() {
    Instance instance =
        Models.hour(Models.phase("a", 1), Models.phase("b", 1), Models.phase("c", 1))
            .candidates(
                List.of(
                    Models.candidate("a", "a", 10),
                    Models.candidate("b", "b", 10),
                    Models.candidate("c", "c", 10),
                    Models.candidate("other a", "a", 30),
                    Models.candidate("other b", "b", 30),
                    Models.candidate("other c", "c", 30)))
            .build();
    Model model = Models.of(instance);
    BitSet held = new BitSet();
    held.set(0, 3);
    Ascent ascent = ascent(model, Sharing.of(model, List.of(held), List.of(1)), List.of(1));

    double[] tolls = {0, 4.25, 9.5, 16.25, 20.75, 20.75, 19.75};
    long[] roots = {30, 38, 50, 62, 69, 69, 70};
    for (int step = 0; step < roots.length; step++) {
      assertThat(model.cost(ascent.root())).describedAs("step %d", step).isEqualTo(roots[step]);
      assertThat(ascent.tolls()[AGENDA])
          .describedAs("%d", step)
          .isCloseTo(tolls[step], within(NEAR));
      boolean higher = ascent.step(model.pack(70));
      assertThat(higher).isEqualTo(step + 1 < roots.length && roots[step + 1] > roots[step]);
    }
  }

  /**
   * Three exercises, at 1, 3 and 5, have to come, at 9 in all; the cheapest thrice is 3. It is
   * charged for coming twice too often, and then the next one too.
   */
  @Test
  void tolls_on_what_comes_twice_lead_to_the_best_agenda() {
    Phase three =
        new Phase("any", Set.of("any"), new Bounds(3, 3), new Bounds(0, 60), 0, List.of());
    Instance instance =
        Models.hour(three)
            .candidates(
                List.of(
                    Models.candidate("cheap", "any", 1),
                    Models.candidate("middling", "any", 3),
                    Models.candidate("dear", "any", 5)))
            .build();
    Model model = Models.of(instance);
    Ascent ascent = ascent(model, Sharing.none(model), List.of());
    assertThat(model.cost(ascent.root())).isEqualTo(3);
    ascent.step(model.pack(10));
    assertThat(ascent.tolls()[0]).isCloseTo(0.875, within(NEAR));
    assertThat(model.cost(ascent.root())).isEqualTo(5);
    ascent.step(model.pack(10));
    assertThat(ascent.tolls()[0]).isCloseTo(2, within(NEAR));
    assertThat(model.cost(ascent.root())).isEqualTo(7);
    for (int step = 0; step < 60 && !ascent.over(); step++) {
      ascent.step(model.pack(10));
    }
    assertThat(model.cost(ascent.root())).isBetween(8L, 9L);
  }

  /** Where all that comes may come, there is nothing to charge for. */
  @Test
  void ends_at_once_where_nothing_is_wrong() {
    Model model =
        Models.of(
            Models.hour(Models.phase("a", 1))
                .candidates(List.of(Models.candidate("a", "a", 10)))
                .build());
    Ascent ascent = ascent(model, Sharing.none(model), List.of());
    assertThat(ascent.over()).isFalse();
    assertThat(ascent.step(model.pack(20))).isFalse();
    assertThat(ascent.over()).isTrue();
  }

  private static Ascent ascent(Model model, Sharing sharing, List<Integer> most) {
    Outline outline = Outline.of(model, Models.work());
    return new Ascent(
        outline.prices(),
        outline.reach(Model.INFINITE),
        sharing,
        most,
        new Tracked(model),
        new double[0],
        HIGHEST,
        Models.work());
  }
}
