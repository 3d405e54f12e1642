package org.arcwright.compose.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.arcwright.compose.check.Finding.KindNotAllowed;
import org.arcwright.compose.check.Finding.PhaseCount;
import org.arcwright.compose.check.Finding.PhaseMinutes;
import org.arcwright.compose.check.Finding.PhaseOutOfOrder;
import org.arcwright.compose.check.Finding.UnknownPhase;
import org.arcwright.compose.check.Finding.YieldMissing;
import org.arcwright.compose.instance.Instance.Bounds;
import org.arcwright.compose.instance.Instance.Phase;
import org.arcwright.compose.instance.Item.Activity;

/**
 * What is asked of phases: rule 3, the yields of rule 4. A phase ends with the last exercise that
 * is in it or in a phase before it, wherever that stands. A phase that is skipped counts no
 * exercise, which is always too few.
 */
final class PhaseRules {
  private PhaseRules() {}

  static List<Finding> findings(Sheet sheet) {
    List<Finding> findings = new ArrayList<>();
    int begun = 0;
    for (Activity activity : sheet.activities()) {
      if (sheet.inPhase(activity)) {
        order(sheet, activity, begun, findings);
        begun = activity.phase();
      } else {
        findings.add(
            new UnknownPhase(
                activity.id(),
                activity.start(),
                activity.phase(),
                sheet.instance().phases().size() - 1));
      }
    }
    for (int number = 0; number < sheet.instance().phases().size(); number++) {
      bounds(sheet, number, findings);
    }
    return findings;
  }

  private static void order(Sheet sheet, Activity activity, int begun, List<Finding> findings) {
    List<Phase> phases = sheet.instance().phases();
    Phase phase = phases.get(activity.phase());
    if (activity.phase() < begun) {
      findings.add(
          new PhaseOutOfOrder(
              activity.id(), activity.start(), phase.name(), phases.get(begun).name()));
    }
    sheet
        .candidate(activity)
        .filter(candidate -> !phase.kinds().contains(candidate.kind()))
        .ifPresent(
            candidate ->
                findings.add(
                    new KindNotAllowed(
                        activity.id(),
                        activity.start(),
                        candidate.kind(),
                        phase.name(),
                        phase.kinds())));
  }

  private static void bounds(Sheet sheet, int number, List<Finding> findings) {
    Phase phase = sheet.instance().phases().get(number);
    List<Activity> activities = sheet.activities();
    Set<String> products = new HashSet<>(sheet.instance().initial());
    int count = 0;
    long minutes = 0;
    long end = 0;
    int last = 0;
    for (int i = 0; i < activities.size(); i++) {
      Activity activity = activities.get(i);
      if (activity.phase() == number) {
        count++;
        minutes += activity.length();
      }
      if (sheet.inPhase(activity) && activity.phase() <= number) {
        last = i + 1;
        end = Sheet.end(activity);
      }
    }
    if (outside(count, phase.count())) {
      findings.add(new PhaseCount(phase.name(), end, count, phase.count()));
    }
    if (outside(minutes, phase.minutes())) {
      findings.add(new PhaseMinutes(phase.name(), end, minutes, phase.minutes()));
    }
    for (Activity activity : activities.subList(0, last)) {
      sheet.candidate(activity).ifPresent(candidate -> products.addAll(candidate.yields()));
    }
    for (String product : phase.yields()) {
      if (!products.contains(product)) {
        findings.add(new YieldMissing(phase.name(), end, product));
      }
    }
  }

  private static boolean outside(long value, Bounds bounds) {
    return value < bounds.min() || value > bounds.max();
  }
}
