package org.arcwright.compose.check;

import java.util.ArrayList;
import java.util.List;
import org.arcwright.compose.check.Finding.NotNext;
import org.arcwright.compose.check.Finding.TooMany;
import org.arcwright.compose.instance.Instance.Apart;
import org.arcwright.compose.instance.Instance.AtMost;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.instance.Item.Activity;

/** Rule 8: what an instance asks beyond the rules that hold for all. */
final class OwnRules {
  private OwnRules() {}

  static List<Finding> findings(Sheet sheet) {
    List<Finding> findings = new ArrayList<>();
    for (Apart rule : sheet.instance().rules().apart()) {
      neighbours(sheet, rule, findings);
    }
    for (AtMost rule : sheet.instance().rules().atMost()) {
      count(sheet, rule, findings);
    }
    return findings;
  }

  private static void neighbours(Sheet sheet, Apart rule, List<Finding> findings) {
    String before = "";
    boolean watched = false;
    boolean breakBetween = false;
    for (Item item : sheet.items()) {
      if (item instanceof Activity activity) {
        String id = activity.id();
        if (watched && rule.then().contains(id)) {
          findings.add(new NotNext(id, activity.start(), before, breakBetween, rule.name()));
        }
        before = id;
        watched = rule.first().contains(id);
        breakBetween = false;
      } else {
        breakBetween = true;
        watched &= rule.acrossBreaks();
      }
    }
  }

  private static void count(Sheet sheet, AtMost rule, List<Finding> findings) {
    List<Activity> counted =
        sheet.activities().stream().filter(activity -> rule.of().contains(activity.id())).toList();
    if (counted.size() > rule.most()) {
      Activity extra = counted.get(rule.most());
      findings.add(
          new TooMany(extra.id(), extra.start(), counted.size(), rule.most(), rule.name()));
    }
  }
}
