package org.arcwright.gaps;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.SizeRange;

/**
 * Exercises of one sort that many gaps ask for.
 *
 * @param kind what they do to the group's thinking
 * @param yields work products that they must leave
 * @param briefs in how many briefs such a one is missing
 * @param people fewest and most of these
 * @param atMost how long it may take in all of these, if it is kept short
 */
public record Demand(Kind kind, Set<String> yields, int briefs, SizeRange people, Duration atMost) {
  private record Sort(Kind kind, Set<String> yields) {}

  /** All that these gaps ask for, what is missing most often first. */
  static List<Demand> of(List<Gap> gaps) {
    Map<Sort, Demand> demands = new LinkedHashMap<>();
    for (Gap gap : gaps) {
      for (Draft draft : gap.drafts()) {
        demands.merge(
            new Sort(draft.kind(), draft.yields()),
            new Demand(
                draft.kind(),
                draft.yields(),
                gap.lengths().size(),
                new SizeRange(gap.people(), gap.people()),
                draft.atMost()),
            Demand::and);
      }
    }
    List<Demand> sorted = new ArrayList<>(demands.values());
    sorted.sort(Comparator.comparingInt(Demand::briefs).reversed());
    return sorted;
  }

  private Demand and(Demand other) {
    return new Demand(
        kind,
        yields,
        briefs + other.briefs,
        new SizeRange(
            Math.min(people.min(), other.people.min()), Math.max(people.max(), other.people.max())),
        atMost.compareTo(other.atMost) < 0 ? atMost : other.atMost);
  }
}
