package org.arcwright.compose.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.arcwright.compose.check.Finding.LengthNotAllowed;
import org.arcwright.compose.check.Finding.NeedMissing;
import org.arcwright.compose.check.Finding.PinElsewhere;
import org.arcwright.compose.check.Finding.Repeated;
import org.arcwright.compose.check.Finding.UnknownExercise;
import org.arcwright.compose.check.Finding.WishMissing;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Instance.Pin;
import org.arcwright.compose.instance.Item.Activity;

/** What is asked of single exercises: rule 2, the needs of rule 4, the wishes of rule 7. */
final class ExerciseRules {
  private ExerciseRules() {}

  static List<Finding> findings(Sheet sheet) {
    List<Finding> findings = new ArrayList<>();
    Map<String, Integer> earlier = new HashMap<>();
    Set<String> products = new HashSet<>(sheet.instance().initial());
    for (Activity activity : sheet.activities()) {
      String id = activity.id();
      int at = activity.start();
      Integer before = earlier.putIfAbsent(id, at);
      if (before != null) {
        findings.add(new Repeated(id, at, before));
      }
      Candidate candidate = sheet.candidates().get(id);
      if (candidate == null) {
        findings.add(new UnknownExercise(id, at));
        continue;
      }
      if (!candidate.lengths().contains(activity.length())) {
        findings.add(new LengthNotAllowed(id, at, activity.length(), candidate.lengths()));
      }
      for (String need : candidate.needs()) {
        if (!products.contains(need)) {
          findings.add(new NeedMissing(id, at, need));
        }
      }
      products.addAll(candidate.yields());
    }
    wishes(sheet, earlier, findings);
    return findings;
  }

  private static void wishes(Sheet sheet, Map<String, Integer> starts, List<Finding> findings) {
    Set<String> missing = new HashSet<>();
    for (String id : sheet.instance().include()) {
      if (!starts.containsKey(id) && missing.add(id)) {
        findings.add(new WishMissing(id));
      }
    }
    for (Pin pin : sheet.instance().pins()) {
      Integer start = starts.get(pin.id());
      if (start == null) {
        if (missing.add(pin.id())) {
          findings.add(new WishMissing(pin.id()));
        }
      } else if (start != pin.at()) {
        findings.add(new PinElsewhere(pin.id(), start, pin.at()));
      }
    }
  }
}
