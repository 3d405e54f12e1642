package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Bounds;
import org.arcwright.compose.instance.Instance.Phase;
import org.arcwright.compose.oracle.Enumeration;
import org.arcwright.compose.oracle.Enumeration.Best;
import org.arcwright.compose.oracle.Instances;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;

/** The bound under tolls on what an earlier agenda holds. */
class GuideTest {
  /** The best agenda of an instance, and what differs from it. */
  private static final class Case {
    final Model model;
    final Outline outline;
    final BitSet held = new BitSet();
    final Map<Set<String>, Best> others = new HashMap<>();
    final Sharing sharing;

    Case(Instance instance, Best best, int most) {
      this.model = Models.of(instance);
      this.outline = Outline.of(model, Models.work());
      Set<String> ids = OptionPasses.ids(best.items());
      for (int i = 0; i < model.ids.length; i++) {
        held.set(i, ids.contains(model.ids[i]));
      }
      others.putAll(Enumerated.ofEachSet(instance));
      others.keySet().removeIf(set -> set.stream().filter(ids::contains).count() > most);
      this.sharing = Sharing.of(model, List.of(held), List.of(most));
    }

    long root(Tracked tracked, int again, int... twice) {
      Guide guide =
          Guide.tolled(
              outline.prices(),
              outline.reach(Model.INFINITE),
              sharing,
              tracked,
              new int[] {again},
              twice,
              Models.work());
      return Math.min(Model.INFINITE, guide.root(sharing));
    }

    long price() {
      return Relaxable.price(model, Enumeration.best(others.values()));
    }
  }

  /** Lagrangian relaxation: what is charged is given back for as many as may come. */
  @Test
  void is_a_bound_whatever_the_tolls_are() {
    SoftAssertions softly = new SoftAssertions();
    for (long seed = 0; seed < 150; seed++) {
      Instance instance = Instances.tiny(seed);
      Optional<Best> best = Enumerated.best(instance);
      if (best.isPresent()) {
        SplittableRandom random = new SplittableRandom(seed);
        Case some = new Case(instance, best.get(), random.nextInt(3));
        Tracked tracked = new Tracked(some.model);
        tracked.add(random.nextInt(some.model.ids.length));
        tracked.add(random.nextInt(some.model.ids.length));
        int[] twice = random.ints(tracked.size(), 0, 50).toArray();
        softly
            .assertThat(some.root(tracked, random.nextInt(50), twice))
            .describedAs("%d", seed)
            .isLessThanOrEqualTo(some.price());
      }
    }
    softly.assertAll();
  }

  /** So high a toll leaves only what does not pay it; and here nothing could come twice. */
  @Test
  void is_the_price_of_the_best_that_shares_nothing_if_the_toll_is_high() {
    SoftAssertions softly = new SoftAssertions();
    int found = 0;
    for (Instance instance : Relaxable.once()) {
      Optional<Best> best = Enumerated.best(instance);
      if (best.isPresent()) {
        Case some = new Case(instance, best.get(), 0);
        long price = some.price();
        if (price < Model.INFINITE) {
          found++;
          softly.assertThat(some.root(new Tracked(some.model), 5_000)).isEqualTo(price);
        }
      }
    }
    softly.assertAll();
    assertThat(found).isGreaterThan(20);
  }

  /** Two exercises of the first phase are tracked, and one that both phases can use. */
  @Test
  void what_can_no_longer_come_is_not_given_back() {
    Model model =
        Models.of(
            Models.hour(
                    Models.phase("a", 3),
                    new Phase(
                        "c", Set.of("b", "c"), new Bounds(1, 3), new Bounds(0, 60), 0, List.of()),
                    Models.phase("b", 3))
                .candidates(
                    List.of(
                        Models.candidate("first", "a", 0),
                        Models.candidate("also first", "a", 0),
                        Models.candidate("later", "b", 0),
                        Models.candidate("between", "c", 0)))
                .build());
    Tracked tracked = new Tracked(model);
    tracked.add(0);
    tracked.add(1);
    tracked.add(2);
    BitSet held = new BitSet();
    held.set(0, 2);
    Sharing sharing = Sharing.of(model, List.of(held), List.of(1));
    Outline outline = Outline.of(model, Models.work());
    Reach reach = outline.reach(Model.INFINITE);
    int[] twice = {100, 200, 400};
    Guide guide =
        Guide.tolled(
            outline.prices(), reach, sharing, tracked, new int[] {1000}, twice, Models.work());
    long start = sharing.start();

    assertThat(model.cost(guide.back(sharing, start, 0, 0))).isEqualTo(1700);
    assertThat(model.cost(guide.back(sharing, start, 0, 0b001))).isEqualTo(1600);
    assertThat(model.cost(guide.back(sharing, start, 0, 0b110))).isEqualTo(1100);
    assertThat(model.cost(guide.back(sharing, start, 1, 0))).isEqualTo(1400);
    assertThat(model.cost(guide.back(sharing, start, 2, 0b100))).isEqualTo(1000);
    assertThat(model.cost(guide.back(sharing, sharing.after(start, 0), 2, 0))).isEqualTo(400);
    assertThat(guide.toll(0)).isEqualTo(1100);
    assertThat(guide.toll(2)).isEqualTo(400);
    assertThat(guide.toll(3)).isZero();
    assertThat(guide.keeping().back(sharing, start, 0, 0)).isZero();
  }

  /** The same as the bound without agendas. */
  @Test
  void without_tolls_is_the_free_bound() {
    for (Instance instance : Relaxable.once()) {
      Optional<Best> best = Enumerated.best(instance);
      if (best.isPresent()) {
        Case some = new Case(instance, best.get(), 1);
        assertThat(some.root(new Tracked(some.model), 0))
            .isEqualTo(Relaxable.price(some.model, best));
      }
    }
  }
}
