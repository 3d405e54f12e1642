package org.arcwright.compose.reduce;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Goal;
import org.arcwright.compose.instance.Instance;

/**
 * An instance, and what is needed to read its items as exercises again.
 *
 * @param brief what was reduced
 * @param catalog in which the exercises stand
 * @param goal the brief's
 * @param instance the problem to solve
 * @param leftOut why the brief does not allow an exercise or own item, by id
 * @param costParts what an exercise of that id costs by itself, part by part; nothing for an own
 *     item
 * @param complete whether the whole catalog was read; false if the work was stopped before
 */
public record Reduction(
    Brief brief,
    Catalog catalog,
    Goal goal,
    Instance instance,
    SortedMap<String, Refusal> leftOut,
    Function<String, List<CostPart>> costParts,
    boolean complete) {
  /** Copies the map. */
  public Reduction {
    leftOut = Collections.unmodifiableSortedMap(new TreeMap<>(leftOut));
  }

  /**
   * The same without some exercises. All else stays as it is, so what fits then fits the whole, at
   * the same cost.
   *
   * @param others why, by id, in words that may follow a title and a colon
   */
  public Reduction without(Map<String, String> others) {
    NavigableMap<String, Refusal> all = new TreeMap<>(leftOut);
    others.forEach((id, why) -> all.putIfAbsent(id, new Refusal(Optional.empty(), why)));
    Instance smaller =
        instance.withCandidates(
            instance.candidates().stream()
                .filter(candidate -> !others.containsKey(candidate.id()))
                .toList());
    return new Reduction(brief, catalog, goal, smaller, all, costParts, complete);
  }
}
