package org.arcwright.compose.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * A set of wishes that clash and of which none can be spared, found by halving (Junker 2004,
 * "QuickXplain: preferred explanations and relaxations for over-constrained problems"). With k such
 * wishes among n it asks 2k log(n/k) + 2k times at the most.
 */
final class QuickXplain<T> {
  private final Predicate<List<T>> clash;

  private QuickXplain(Predicate<List<T>> clash) {
    this.clash = clash;
  }

  /**
   * Wishes that clash; those that stand first are preferred. If a set that clashes still does with
   * a wish more, none of them can be spared.
   *
   * @param wishes which clash all together
   * @param clash whether a set of them is known to clash
   */
  static <T> List<T> conflict(List<T> wishes, Predicate<List<T>> clash) {
    if (clash.test(List.of())) {
      return List.of();
    }
    return new QuickXplain<>(clash).conflict(List.of(), false, wishes);
  }

  /** Those of {@code wishes} that clash with each other and with those that are kept anyway. */
  private List<T> conflict(List<T> kept, boolean more, List<T> wishes) {
    if (more && clash.test(kept)) {
      return List.of();
    }
    if (wishes.size() <= 1) {
      return wishes;
    }
    List<T> first = wishes.subList(0, wishes.size() / 2);
    List<T> second = wishes.subList(wishes.size() / 2, wishes.size());
    List<T> ofSecond = conflict(joined(kept, first), true, second);
    List<T> ofFirst = conflict(joined(kept, ofSecond), !ofSecond.isEmpty(), first);
    return joined(ofFirst, ofSecond);
  }

  private static <T> List<T> joined(List<T> one, List<T> other) {
    List<T> joined = new ArrayList<>(one);
    joined.addAll(other);
    return joined;
  }
}
