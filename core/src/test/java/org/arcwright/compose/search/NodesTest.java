package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Bounds;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Instance.Meal;
import org.arcwright.compose.instance.Instance.Phase;
import org.arcwright.compose.instance.Instance.Pin;
import org.arcwright.compose.instance.Instance.Weights;
import org.arcwright.compose.oracle.Draft;
import org.arcwright.compose.oracle.Enumeration.Best;
import org.arcwright.compose.oracle.Instances;
import org.arcwright.compose.search.Solution.Status;
import org.junit.jupiter.api.Test;

/** Which states a relaxation tells apart, and which of them it can reach. */
class NodesTest {
  /**
   * Fifteen phases that each tell apart 100 numbers of cells, the counts up to the fewest, and a
   * beginning, at 500 times and with or without a meal: 16 exercises are 24,015,000 nodes.
   */
  @Test
  void cells_of_a_phase_are_told_apart_up_to24_million_nodes() {
    assertThat(new Nodes(Models.of(large(15)), true).exact).isTrue();
    assertThat(new Nodes(Models.of(large(16)), true).exact).isFalse();
    assertThat(new Nodes(Models.of(large(15)), false).exact).isFalse();
  }

  private static Instance large(int fewest) {
    List<Phase> phases = new ArrayList<>();
    for (int i = 0; i < Instance.MOST_PHASES; i++) {
      phases.add(
          new Phase(
              "phase", Set.of("any"), new Bounds(fewest, 50), new Bounds(0, 99), 0, List.of()));
    }
    return new Draft(1, 499)
        .phases(phases)
        .meals(new Meal(100, 200, 30))
        .candidates(List.of(Models.candidate("only", "any", 0, 1)))
        .build();
  }

  /** Coarse nodes forget a phase's minutes, and how many exercises it has over the fewest. */
  @Test
  void coarse_ones_are_as_good_where_there_is_nothing_to_forget() {
    int found = 0;
    for (Instance instance : Relaxable.once()) {
      Instance plain = shortest(Relaxable.plain(instance));
      Optional<Best> best = Enumerated.best(plain);
      if (best.isPresent()) {
        Model model = Models.of(plain);
        Prices prices = new Prices(model);
        Nodes coarse = new Nodes(model, false);
        Reach reach = Reach.of(coarse, model.outline, prices, Models.work());
        assertThat(Bound.withoutFormats(reach, prices, Models.work()).root())
            .isEqualTo(Relaxable.price(model, best));
        Nodes exact = new Nodes(model, true);
        assertThat(coarse.size()).isLessThanOrEqualTo(exact.size());
        found++;
      }
    }
    assertThat(found).isGreaterThan(50);
  }

  /** Nothing is to be had by more exercises than the fewest. */
  private static Instance shortest(Instance instance) {
    return Draft.of(instance)
        .meals()
        .pins()
        .weights(Weights.NONE)
        .phases(
            instance.phases().stream()
                .map(
                    p ->
                        new Phase(
                            p.name(),
                            p.kinds(),
                            p.count(),
                            new Bounds(0, instance.cap()),
                            p.target(),
                            p.yields()))
                .toList())
        .build();
  }

  /** The start, the end of the one exercise, and of a break after it. */
  @Test
  void one_break_does_not_follow_another() {
    Instance instance =
        Models.hour(Models.phase("any", 1))
            .breakMinutes(10)
            .candidates(List.of(Models.candidate("only", "any", 0)))
            .build();
    assertThat(Arrays.stream(reach(instance).stretches).map(Long::bitCount).sum()).isEqualTo(3);
  }

  /**
   * Half an hour of the second phase, ten minutes at least of the first, and a buffer of half of
   * both: the first can end after ten minutes, and no later.
   */
  @Test
  void a_phase_ends_in_time_for_those_after_it() {
    for (Phase second :
        List.of(
            new Phase("b", Set.of("b"), new Bounds(1, 3), new Bounds(30, 60), 0, List.of()),
            new Phase("b", Set.of("b"), new Bounds(3, 3), new Bounds(0, 60), 0, List.of()))) {
      Instance instance =
          Models.hour(Models.phase("a", 4), second)
              .bufferPercent(50)
              .candidates(List.of(Models.candidate("a", "a", 0), Models.candidate("b", "b", 0)))
              .build();
      Reach reach = reach(instance);
      List<Integer> ends = new ArrayList<>();
      for (int t = 1; t <= instance.cells(); t++) {
        long any = 0;
        for (int cells = 1; cells <= t; cells++) {
          any |= reach.stretches[reach.nodes.node(t, 0, 0, 1, cells)];
        }
        if (any != 0) {
          ends.add(t);
        }
      }
      assertThat(ends).containsExactly(1);
    }
  }

  private static Reach reach(Instance instance) {
    Model model = Models.of(instance);
    Nodes nodes = new Nodes(model, true);
    return Reach.of(nodes, model.outline, new Prices(model), Models.work());
  }

  /** Four of twenty minutes are more than an hour. */
  @Test
  void too_many_exercises_for_a_phase_are_told_without_a_search() {
    Candidate candidate = Models.candidate("only", "any", 0, 20);
    for (int fewest = 3; fewest <= 4; fewest++) {
      Phase phase =
          new Phase("any", Set.of("any"), new Bounds(fewest, 5), new Bounds(0, 60), 0, List.of());
      Solution solution =
          Search.solve(Models.hour(phase).candidates(List.of(candidate)).build(), Models.AMPLE);
      assertThat(solution.status()).isEqualTo(Status.INFEASIBLE);
      assertThat(solution.labels() > 1).isEqualTo(fewest == 3);
    }
  }

  /** The dear one is pinned, and the bound knows that no break takes its place. */
  @Test
  void a_pinned_start_is_no_place_for_a_break() {
    Phase two = new Phase("any", Set.of("any"), new Bounds(2, 3), new Bounds(0, 60), 0, List.of());
    Instance instance =
        Models.hour(two)
            .breakMinutes(10)
            .candidates(
                List.of(
                    Models.candidate("pinned", "any", 50),
                    Models.candidate("a", "any", 0, 20),
                    Models.candidate("b", "any", 0)))
            .pins(new Pin("pinned", 20))
            .build();
    Model model = Models.of(instance);
    Outline outline = Outline.of(model, Models.work());
    long price = Relaxable.price(model, Enumerated.best(instance));
    assertThat(model.cost(price)).isEqualTo(50);
    assertThat(outline.root()).isEqualTo(price);
    Guide guide = outline.guide(outline.reach(Model.INFINITE));
    assertThat(guide.bound.root()).isEqualTo(price);
  }

  /** A limit is asked in time only if every part of the work counts its steps. */
  @Test
  void all_passes_count_their_steps() {
    Model model = Models.of(Instances.of(60, 180, 0));
    Work work = Models.work();
    Nodes nodes = new Nodes(model, true);
    Prices prices = new Prices(model);
    Reach reach = Reach.of(nodes, model.outline, prices, work);
    assertThat(work.done()).isGreaterThan(reach.values / 64);
    long before = work.done();
    Bound bound = Bound.withoutFormats(reach, prices, work);
    assertThat(work.done() - before).isGreaterThan(reach.values / 2);
    before = work.done();
    Corridor.of(reach, prices, bound, Model.INFINITE, work);
    assertThat(work.done() - before).isGreaterThan(reach.values / 4);
  }
}
