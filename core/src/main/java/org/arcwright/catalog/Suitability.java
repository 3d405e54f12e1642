package org.arcwright.catalog;

import java.util.Collection;
import java.util.List;
import java.util.Set;

/**
 * How well an exercise suits one mode.
 *
 * @param fit 0 not possible, 1 possible with effort, 2 works, 3 at its best
 * @param adaptation how it is done in this mode, or why it cannot be
 * @param tools ids of the tools it cannot do without
 * @param cautions what can hurt in this mode alone, such as a crowd before a wall
 */
public record Suitability(int fit, String adaptation, Set<String> tools, List<String> cautions) {
  /** Refuses a fit outside 0 to 3. */
  public Suitability {
    Checks.range("fit", fit, 0, 3);
    adaptation = Checks.text("how", adaptation, 400);
    tools = Checks.ids("tools", tools);
    cautions = Checks.lines("cautions", cautions, 400);
  }

  /** Without cautions of its own. */
  public Suitability(int fit, String adaptation, Set<String> tools) {
    this(fit, adaptation, tools, List.of());
  }

  /** As the canonical constructor, refusing a tool named twice. */
  public static Suitability of(
      int fit, String adaptation, Collection<String> tools, List<String> cautions) {
    return new Suitability(fit, adaptation, Checks.ids("tools", tools), cautions);
  }
}
