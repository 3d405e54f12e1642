package org.arcwright.compose.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.arcwright.agenda.Figures;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.instance.Item.Activity;

/**
 * Reads any list of items against an instance: which rules it breaks, what it costs and its tie.
 * Written from the problem statement alone; it shares no code with the search.
 *
 * <p>A break may be ordinary or the next meal. The reading that breaks fewest rules is taken, and
 * among those the cheapest, so a list that fits in any reading has no findings. Time is linear in
 * the candidates and the items, times the phases, the cells of an exercise and the square of the
 * meals.
 */
public final class Checker {
  private Checker() {}

  /**
   * Checks a list, which may be anything: written by hand, empty, out of order.
   *
   * @param instance what the list answers
   * @param items in the order they are to be read
   * @return every finding in the order of time; the cost, as if the list were feasible; the tie
   */
  public static Verdict check(Instance instance, List<Item> items) {
    Sheet sheet = Sheet.of(instance, items);
    BreakRules breaks = BreakRules.read(sheet);
    List<Finding> findings = new ArrayList<>();
    findings.addAll(OrderRules.findings(sheet));
    findings.addAll(ExerciseRules.findings(sheet));
    findings.addAll(PhaseRules.findings(sheet));
    findings.addAll(OwnRules.findings(sheet));
    findings.addAll(breaks.findings());
    long buffer = sheet.buffer();
    if (sheet.exerciseMinutes() + sheet.breakMinutes() + buffer > instance.cap()) {
      findings.add(
          new Finding.OverCap(
              sheet.exerciseMinutes(), sheet.breakMinutes(), buffer, instance.cap()));
    }
    findings.sort(Comparator.comparingLong(Finding::at));
    return new Verdict(findings, cost(sheet, breaks), tie(items));
  }

  private static Figures.Cost cost(Sheet sheet, BreakRules breaks) {
    return new Figures.Cost(
        Costs.exercises(sheet),
        Costs.lengths(sheet),
        Costs.energy(sheet),
        Costs.share(sheet),
        Costs.monotony(sheet),
        breaks.rhythmCost(),
        breaks.pauseCost(),
        Costs.idle(sheet));
  }

  /** The sum of the items' hashes, each unsigned. */
  private static long tie(List<Item> items) {
    long sum = 0;
    for (Item item : items) {
      String name = item instanceof Activity a ? a.id() + "/" + a.phase() : "break/";
      sum += Fnv.hash(name + "/" + item.start() + "/" + item.length());
    }
    return sum;
  }
}
