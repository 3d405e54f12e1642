package org.arcwright.catalog;

import java.util.Collection;
import java.util.Set;

/**
 * How well an exercise suits one mode.
 *
 * @param fit 0 not possible, 1 possible with effort, 2 works, 3 at its best
 * @param adaptation how it is done in this mode, or why it cannot be
 * @param tools ids of the tools it cannot do without
 */
public record Suitability(int fit, String adaptation, Set<String> tools) {
  /** Refuses a fit outside 0 to 3. */
  public Suitability {
    Checks.range("fit", fit, 0, 3);
    adaptation = Checks.text("how", adaptation, 400);
    tools = Checks.ids("tools", tools);
  }

  /** As the canonical constructor, refusing a tool named twice. */
  public static Suitability of(int fit, String adaptation, Collection<String> tools) {
    return new Suitability(fit, adaptation, Checks.ids("tools", tools));
  }
}
