package org.arcwright.gaps;

import java.util.Optional;
import java.util.Set;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.Mode;

/**
 * Where people are, and what is at hand there.
 *
 * @param mode where they are
 * @param name in a word or two, such as "usual" or "barest"
 * @param tools ids of tools; empty means those usual for the mode
 */
public record ToolSet(Mode mode, String name, Set<String> tools) {
  /** Takes a copy; refuses a blank name and malformed ids. */
  public ToolSet {
    name = Checks.text("name", name, 200);
    tools = Checks.ids("tools", tools);
  }

  /** What a brief has that names no tools. */
  public static ToolSet usual(Mode mode) {
    return new ToolSet(mode, "usual", Set.of());
  }

  /**
   * What nobody is without: remotely a call, in a room paper and pens. Nothing if the catalog does
   * not know these.
   */
  public static Optional<ToolSet> barest(Mode mode, Catalog catalog) {
    Set<String> tools =
        switch (mode) {
          case REMOTE -> Set.of("call");
          case IN_PERSON -> Set.of("paper");
          case HYBRID -> Set.of("call", "paper");
        };
    return catalog.tools().keySet().containsAll(tools)
        ? Optional.of(new ToolSet(mode, "barest", tools))
        : Optional.empty();
  }
}
