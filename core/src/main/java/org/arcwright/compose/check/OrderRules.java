package org.arcwright.compose.check;

import java.util.ArrayList;
import java.util.List;
import org.arcwright.compose.check.Finding.BreakAtEdge;
import org.arcwright.compose.check.Finding.Gap;
import org.arcwright.compose.check.Finding.NoExercise;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.instance.Item.Activity;
import org.arcwright.compose.instance.Item.Pause;

/** Rule 1: no gaps, no overlaps, an exercise at either end. */
final class OrderRules {
  private OrderRules() {}

  static List<Finding> findings(Sheet sheet) {
    List<Finding> findings = new ArrayList<>();
    if (sheet.activities().isEmpty()) {
      findings.add(new NoExercise());
    }
    long expected = 0;
    for (Item item : sheet.items()) {
      if (item.start() != expected) {
        String what = item instanceof Activity a ? "Exercise " + a.id() : "The break";
        findings.add(new Gap(what, item.start(), expected));
      }
      expected = Sheet.end(item);
    }
    if (!sheet.items().isEmpty()) {
      if (sheet.items().get(0) instanceof Pause first) {
        findings.add(new BreakAtEdge(first.start(), true));
      }
      if (sheet.items().get(sheet.items().size() - 1) instanceof Pause last) {
        findings.add(new BreakAtEdge(last.start(), false));
      }
    }
    return findings;
  }
}
