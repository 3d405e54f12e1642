package org.arcwright.compose.check;

import java.util.List;
import java.util.Optional;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Instance.Phase;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.instance.Item.Activity;

/**
 * The cost's parts, but for the breaks' own. Unknown exercises cost nothing, a length that is not
 * allowed has no length cost, and energy is weighed on those minutes that lie in the cap.
 */
final class Costs {
  private Costs() {}

  static long exercises(Sheet sheet) {
    return known(sheet).stream().mapToLong(placed -> placed.candidate.cost()).sum();
  }

  static long lengths(Sheet sheet) {
    long sum = 0;
    for (Placed placed : known(sheet)) {
      int index = placed.candidate.lengths().indexOf(placed.activity.length());
      sum += index < 0 ? 0 : placed.candidate.lengthCosts().get(index);
    }
    return sum;
  }

  static long energy(Sheet sheet) {
    Instance instance = sheet.instance();
    long sum = 0;
    for (Placed placed : known(sheet)) {
      for (int cell = 0; cell < instance.curve().size(); cell++) {
        long from = Math.max(placed.activity.start(), (long) cell * instance.grid());
        long to = Math.min(Sheet.end(placed.activity), (cell + 1L) * instance.grid());
        long off = Math.abs((long) placed.candidate.energy() - instance.curve().get(cell));
        sum += Math.max(0, to - from) * off;
      }
    }
    return instance.weights().energy() * sum;
  }

  static long share(Sheet sheet) {
    List<Phase> phases = sheet.instance().phases();
    long sum = 0;
    for (int i = 0; i < phases.size(); i++) {
      int number = i;
      long minutes =
          sheet.activities().stream()
              .filter(activity -> activity.phase() == number)
              .mapToLong(Activity::length)
              .sum();
      sum += Math.abs(minutes - phases.get(i).target());
    }
    return sheet.instance().weights().share() * sum;
  }

  static long monotony(Sheet sheet) {
    long sum = 0;
    Optional<String> before = Optional.empty();
    boolean breakBetween = false;
    for (Item item : sheet.items()) {
      if (item instanceof Activity activity) {
        Optional<String> format = sheet.candidate(activity).map(Candidate::format);
        if (format.isPresent() && format.equals(before)) {
          sum +=
              breakBetween
                  ? sheet.instance().weights().monotonyAcrossBreak()
                  : sheet.instance().weights().monotony();
        }
        before = format;
        breakBetween = false;
      } else {
        breakBetween = true;
      }
    }
    return sum;
  }

  /** Nothing when the list is over the cap. */
  static long idle(Sheet sheet) {
    List<Activity> activities = sheet.activities();
    long end = activities.isEmpty() ? 0 : Sheet.end(activities.get(activities.size() - 1));
    long left = sheet.instance().cap() - end - sheet.buffer();
    return sheet.instance().weights().idle() * Math.max(0, left);
  }

  private record Placed(Activity activity, Candidate candidate) {}

  private static List<Placed> known(Sheet sheet) {
    return sheet.activities().stream()
        .flatMap(activity -> sheet.candidate(activity).map(c -> new Placed(activity, c)).stream())
        .toList();
  }
}
