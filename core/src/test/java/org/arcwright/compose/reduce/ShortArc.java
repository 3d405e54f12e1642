package org.arcwright.compose.reduce;

import java.util.List;
import java.util.Set;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Phase;

/** A goal of one phase, which takes divergent exercises only. */
final class ShortArc {
  static final String GOAL = "gather";

  private ShortArc() {}

  static Catalog catalog(Exercise... exercises) {
    Phase explore =
        new Phase(
            "explore",
            "Explore",
            Set.of(Kind.DIVERGENT),
            1,
            3,
            new Phase.Share(80, 100, 100),
            Set.of());
    Goal goal = new Goal(GOAL, "Gather", "To gather.", Set.of(), Set.of(), List.of(explore));
    return Catalog.of(Sample.products(), Sample.tools(), List.of(exercises), List.of(goal));
  }
}
