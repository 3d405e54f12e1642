package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Bounds;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Instance.Phase;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.search.Solution.Status;
import org.junit.jupiter.api.Test;

/**
 * Rounds, ceilings and beginnings of the label setting, on one phase of two exercises. The cheap
 * one costs 1, the others 10, 11 and so on: the best agenda costs 11, and the cheap one twice 2.
 */
class LabelSettingTest {
  private static final int CHEAP = 0;
  private static final long BEST = 11;
  private static final long TWICE = 2;

  private final Model model = Models.of(instance());
  private final Tracked tracked = new Tracked(model);
  private final List<Long> bounds = new ArrayList<>();
  private final List<Long> costs = new ArrayList<>();
  private final LabelSetting setting = setting();

  @Test
  void what_comes_twice_is_tracked_and_then_the_best_is_proven() {
    assertThat(setting.prove()).isTrue();

    Solution solution = setting.solution(true);
    assertThat(solution.status()).isEqualTo(Status.OPTIMAL);
    assertThat(solution.cost()).isEqualTo(BEST);
    assertThat(solution.bound()).isEqualTo(BEST);
    assertThat(tracked.bit(CHEAP)).isEqualTo(1);
    assertThat(tracked.size()).isEqualTo(1);
    assertThat(bounds).containsExactly(TWICE, BEST);
    assertThat(costs).containsExactly(BEST);
  }

  /** Sixty-four are the most that can be tracked; what is proven by then is still said. */
  @Test
  void with_no_room_to_track_more_the_bound_stays_where_it_is() {
    fill();

    assertThat(setting.prove()).isFalse();

    Solution solution = setting.solution(false);
    assertThat(solution.status()).isEqualTo(Status.STOPPED);
    assertThat(solution.items()).isEmpty();
    assertThat(solution.bound()).isEqualTo(TWICE);
    assertThat(tracked.bit(CHEAP)).isZero();
  }

  @Test
  void an_agenda_found_before_is_kept_where_there_is_no_room_to_prove_it() {
    fill();
    setting.dive(Dive.NARROW);

    assertThat(setting.prove()).isFalse();

    Solution solution = setting.solution(false);
    assertThat(solution.status()).isEqualTo(Status.FEASIBLE);
    assertThat(solution.cost()).isEqualTo(BEST);
    assertThat(solution.bound()).isEqualTo(TWICE);
    assertThat(costs).containsExactly(BEST);
  }

  @Test
  void nothing_below_a_ceiling_is_proven_as_such() {
    setting.below(model.pack(BEST));

    assertThat(setting.prove()).isTrue();

    Solution solution = setting.solution(true);
    assertThat(solution.status()).isEqualTo(Status.INFEASIBLE);
    assertThat(costs).isEmpty();
  }

  @Test
  void what_is_cheaper_than_a_ceiling_is_found() {
    setting.below(model.pack(BEST + 1));
    setting.below(model.pack(BEST + 5)); // the lower one holds

    assertThat(setting.price()).isEqualTo(model.pack(BEST + 1));
    assertThat(setting.prove()).isTrue();
    assertThat(setting.solution(true).cost()).isEqualTo(BEST);
  }

  /** Only so far was it looked; what costs as much or more may still be there. */
  @Test
  void a_look_under_a_mark_raises_the_bound_to_the_mark_and_proves_no_more() {
    assertThat(setting.prove(model.pack(7))).isFalse();
    assertThat(setting.solution(false)).returns(7L, Solution::bound);
    assertThat(setting.solution(false)).returns(Status.STOPPED, Solution::status);

    assertThat(setting.prove(model.pack(BEST + 1))).isTrue();
    assertThat(setting.solution(true)).returns(BEST, Solution::cost);
    assertThat(bounds).containsExactly(TWICE, 7L, BEST);
  }

  /** A mark over the price of what is known proves that. */
  @Test
  void a_mark_over_what_is_known_asks_for_nothing_more() {
    setting.dive(Dive.NARROW);
    assertThat(setting.prove(model.pack(BEST + 20))).isTrue();
    assertThat(setting.solution(true)).returns(Status.OPTIMAL, Solution::status);
  }

  @Test
  void an_agenda_that_is_known_and_best_stays_and_is_not_told_again() {
    setting.prove();
    Solution best = setting.solution(true);
    bounds.clear();
    costs.clear();
    LabelSetting again = setting();
    List<Item> items = best.items();
    again.start(new Scout.Found(items, best.cost(), best.tie()));

    assertThat(again.prove()).isTrue();

    assertThat(again.solution(true).items()).isSameAs(items);
    assertThat(again.solution(true).tie()).isEqualTo(best.tie());
    assertThat(costs).isEmpty();
    assertThat(bounds).containsExactly(TWICE, BEST);
  }

  @Test
  void an_agenda_that_is_known_and_dearer_gives_way() {
    List<Item> dear =
        List.of(new Item.Activity("dear-5", 0, 0, 10), new Item.Activity("dear-9", 0, 10, 10));
    setting.start(new Scout.Found(dear, 15 + 19, 0));

    assertThat(setting.price()).isEqualTo(model.pack(15 + 19));
    assertThat(setting.prove()).isTrue();
    assertThat(setting.solution(true).cost()).isEqualTo(BEST);
  }

  private LabelSetting setting() {
    Listener ear =
        new Listener() {
          @Override
          public void incumbent(long cost, List<Item> items) {
            costs.add(cost);
          }

          @Override
          public void bound(long cost) {
            bounds.add(cost);
          }
        };
    Outline outline = Outline.of(model, Models.work());
    return new LabelSetting(
        model, outline.guide(), Sharing.none(model), tracked, Models.work(), ear);
  }

  /** Tracks as many of the others as can be. */
  private void fill() {
    for (int i = 1; i <= Long.SIZE; i++) {
      tracked.add(i);
    }
  }

  private static Instance instance() {
    List<Candidate> candidates = new ArrayList<>();
    candidates.add(Models.candidate("cheap", "any", 1));
    IntStream.rangeClosed(0, Long.SIZE)
        .mapToObj(i -> Models.candidate("dear-" + i, "any", 10 + i))
        .forEach(candidates::add);
    Phase two = new Phase("any", Set.of("any"), new Bounds(2, 2), new Bounds(0, 60), 0, List.of());
    return Models.hour(two).candidates(candidates).build();
  }
}
