package org.arcwright.catalog;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What a workshop is for, and the arc of phases that leads there.
 *
 * @param id such as {@code choose-a-direction}
 * @param title in words
 * @param purpose when to choose it, in one line
 * @param yields work products that exist at the end
 * @param given work products that the sponsor and the facilitator bring along, such as the question
 * @param cautions what can hurt in such a workshop, and what the facilitator heeds
 * @param arc its phases, in order, 1 to 15
 */
public record Goal(
    String id,
    String title,
    String purpose,
    Set<String> yields,
    Set<String> given,
    List<String> cautions,
    List<Phase> arc) {
  /** Most phases of an arc. */
  private static final int MOST_PHASES = 15;

  /** Refuses an empty arc, a phase name used twice, and a yield that no phase must leave. */
  public Goal {
    Checks.id("id", id);
    title = Checks.text("title", title, 60);
    purpose = Checks.text("purpose", purpose, 200);
    yields = Checks.ids("yields", yields);
    given = Checks.ids("given", given);
    cautions = Checks.lines("cautions", cautions, 400);
    arc = List.copyOf(arc);
    if (arc.isEmpty() || arc.size() > MOST_PHASES) {
      throw new InvalidValueException(
          "arc",
          arc.isEmpty() ? "empty" : arc.size() + " phases",
          "a goal is reached in phases; list 1 to " + MOST_PHASES);
    }
    List<String> names = new ArrayList<>();
    Set<String> left = new HashSet<>(given);
    for (Phase phase : arc) {
      names.add(phase.name());
      left.addAll(phase.yields());
    }
    Checks.ids("arc", names);
    for (String product : yields) {
      if (!left.contains(product)) {
        throw new InvalidValueException(
            "yields", product, "a phase of the arc must leave it; add it to that phase's yields");
      }
    }
  }

  /** A goal without cautions. */
  public Goal(
      String id,
      String title,
      String purpose,
      Set<String> yields,
      Set<String> given,
      List<Phase> arc) {
    this(id, title, purpose, yields, given, List.of(), arc);
  }
}
