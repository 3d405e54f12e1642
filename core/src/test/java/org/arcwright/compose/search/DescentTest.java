package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.oracle.Enumeration.Best;
import org.junit.jupiter.api.Test;

/** The way down a guide. */
class DescentTest {
  @Test
  void leads_to_the_best_agenda_where_nothing_could_come_twice() {
    for (Instance instance : Relaxable.once()) {
      Optional<Best> best = Enumerated.best(instance);
      if (best.isPresent()) {
        Model model = Models.of(instance);
        assertThat(descend(model)).isEqualTo(exercises(best.get().items()));
      }
    }
  }

  /** One exercise is cheaper than all others, and three have to come. */
  @Test
  void takes_the_cheapest_again_and_again() {
    Instance instance =
        Models.hour(
                new Instance.Phase(
                    "any",
                    Set.of("any"),
                    new Instance.Bounds(3, 3),
                    new Instance.Bounds(30, 30),
                    30,
                    List.of()))
            .candidates(
                List.of(
                    Models.candidate("dear", "any", 5),
                    Models.candidate("cheap", "any", 1),
                    Models.candidate("middling", "any", 3)))
            .build();
    assertThat(descend(Models.of(instance))).containsExactly("cheap", "cheap", "cheap");
  }

  /** A toll is paid like a price, though what it leads to costs no more for it. */
  @Test
  void goes_round_what_is_charged() {
    Model model =
        Models.of(
            Models.hour(Models.phase("any", 1))
                .candidates(
                    List.of(
                        Models.candidate("cheap", "any", 1),
                        Models.candidate("held", "any", 0),
                        Models.candidate("dear", "any", 5)))
                .build());
    BitSet held = new BitSet();
    held.set(1);
    Sharing sharing = Sharing.of(model, List.of(held), List.of(0));
    Outline outline = Outline.of(model, Models.work());
    for (int toll = 0; toll < 4; toll += 3) {
      Tracked tracked = new Tracked(model);
      Guide guide =
          Guide.tolled(
              outline.prices(),
              outline.reach(Model.INFINITE),
              sharing,
              tracked,
              new int[] {toll},
              new int[0],
              Models.work());
      assertThat(Descent.of(model, sharing, guide, tracked, Models.work()))
          .containsExactly(toll == 0 ? 1 : 0);
    }
  }

  private static List<String> descend(Model model) {
    Outline outline = Outline.of(model, Models.work());
    Guide guide = outline.guide(outline.reach(Model.INFINITE));
    return Descent.of(model, Sharing.none(model), guide, new Tracked(model), Models.work()).stream()
        .map(candidate -> model.ids[candidate])
        .toList();
  }

  private static List<String> exercises(List<Item> items) {
    return items.stream()
        .filter(Item.Activity.class::isInstance)
        .map(item -> ((Item.Activity) item).id())
        .toList();
  }
}
