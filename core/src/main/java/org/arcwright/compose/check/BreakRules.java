package org.arcwright.compose.check;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.arcwright.compose.check.Finding.BreakLength;
import org.arcwright.compose.check.Finding.MealElsewhere;
import org.arcwright.compose.check.Finding.MealMissing;
import org.arcwright.compose.check.Finding.SideBySide;
import org.arcwright.compose.check.Finding.StretchTooLong;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Meal;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.instance.Item.Pause;

/**
 * Rule 5, and what breaks cost. Each break is read as ordinary or as a meal. A price is the number
 * of rules broken, then the cost; {@code best(i, m)} is the least price of the breaks from number
 * {@code i} on when the meals before number {@code m} are over, found backwards by dynamic
 * programming. Among equal prices the earlier meal is taken at the earlier break.
 */
final class BreakRules {
  /** A break and the exercise minutes since the start or the break before it. */
  private record Rest(Pause pause, long stretch) {}

  private record Price(long broken, long cost) {
    Price plus(long moreBroken, long moreCost) {
      return new Price(broken + moreBroken, cost + moreCost);
    }

    boolean under(Price other) {
      return broken < other.broken || (broken == other.broken && cost < other.cost);
    }
  }

  /** That a break is ordinary: no meal's number. */
  private static final int ORDINARY = -1;

  private final Instance instance;
  private final List<Rest> rests = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();
  private final Price[][] best;
  private long rhythmCost;
  private long pauseCost;

  private BreakRules(Sheet sheet) {
    this.instance = sheet.instance();
    long last = stretches(sheet);
    this.best = new Price[rests.size() + 1][instance.meals().size() + 1];
    price();
    take();
    if (!rests.isEmpty()) {
      rhythmCost += rhythm(last);
    }
  }

  static BreakRules read(Sheet sheet) {
    return new BreakRules(sheet);
  }

  List<Finding> findings() {
    return findings;
  }

  long rhythmCost() {
    return rhythmCost;
  }

  long pauseCost() {
    return pauseCost;
  }

  /** Cuts the list at its breaks and returns the minutes of the last stretch. */
  private long stretches(Sheet sheet) {
    long minutes = 0;
    long from = 0;
    boolean rested = false;
    for (Item item : sheet.items()) {
      if (item instanceof Pause pause) {
        if (rested) {
          findings.add(new SideBySide(pause.start()));
        }
        longest(from, minutes);
        rests.add(new Rest(pause, minutes));
        minutes = 0;
        from = Sheet.end(pause);
      } else {
        minutes += item.length();
      }
      rested = item instanceof Pause;
    }
    longest(from, minutes);
    return minutes;
  }

  private void longest(long from, long minutes) {
    if (minutes > instance.stretch().max()) {
      findings.add(new StretchTooLong(from, minutes, instance.stretch().max()));
    }
  }

  private void price() {
    int meals = instance.meals().size();
    for (int i = rests.size(); i >= 0; i--) {
      for (int over = 0; over <= meals; over++) {
        if (i == rests.size()) {
          best[i][over] = new Price(meals - over, 0);
          continue;
        }
        Price least = price(i, over, ORDINARY);
        for (int meal = over; meal < meals; meal++) {
          if (mayMean(rests.get(i).pause, instance.meals().get(meal))) {
            Price price = price(i, over, meal);
            least = least.under(price) ? least : price;
          }
        }
        best[i][over] = least;
      }
    }
  }

  /** Of this break, read so, and the best of all that follows. */
  private Price price(int i, int over, int reading) {
    Rest rest = rests.get(i);
    if (reading == ORDINARY) {
      long wrong = rest.pause.length() == instance.breakMinutes() && ordinaries() ? 0 : 1;
      return best[i + 1][over].plus(wrong, rhythm(rest.stretch) + instance.weights().pause());
    }
    Meal meal = instance.meals().get(reading);
    int wrong = (inWindow(rest.pause, meal) ? 0 : 1) + (sameLength(rest.pause, meal) ? 0 : 1);
    int skipped = reading - over;
    return best[i + 1][reading + 1].plus(skipped + wrong, 0);
  }

  /** Follows the best prices forwards, finding and paying on the way. */
  private void take() {
    int over = 0;
    for (int i = 0; i < rests.size(); i++) {
      Pause pause = rests.get(i).pause;
      int reading = reading(i, over);
      if (reading == ORDINARY) {
        rhythmCost += rhythm(rests.get(i).stretch);
        pauseCost += instance.weights().pause();
        if (pause.length() != instance.breakMinutes() || !ordinaries()) {
          findings.add(new BreakLength(pause.start(), pause.length(), lengths(pause, over)));
        }
        continue;
      }
      missing(over, reading);
      Meal meal = instance.meals().get(reading);
      if (!inWindow(pause, meal)) {
        findings.add(new MealElsewhere(pause.start(), meal));
      } else if (!sameLength(pause, meal)) {
        findings.add(new BreakLength(pause.start(), pause.length(), lengths(pause, reading)));
      }
      over = reading + 1;
    }
    missing(over, instance.meals().size());
  }

  private int reading(int i, int over) {
    for (int meal = over; meal < instance.meals().size(); meal++) {
      if (mayMean(rests.get(i).pause, instance.meals().get(meal))
          && price(i, over, meal).equals(best[i][over])) {
        return meal;
      }
    }
    return ORDINARY;
  }

  private void missing(int from, int to) {
    instance.meals().subList(from, to).forEach(meal -> findings.add(new MealMissing(meal)));
  }

  /** What a break here may last: as an ordinary one, or as the next meal if it is in its window. */
  private List<Integer> lengths(Pause pause, int next) {
    TreeSet<Integer> lengths = new TreeSet<>();
    if (ordinaries()) {
      lengths.add(instance.breakMinutes());
    }
    if (next < instance.meals().size() && inWindow(pause, instance.meals().get(next))) {
      lengths.add(instance.meals().get(next).minutes());
    }
    return List.copyOf(lengths);
  }

  private long rhythm(long stretch) {
    return instance.weights().rhythm() * Math.max(0, instance.stretch().min() - stretch);
  }

  private boolean ordinaries() {
    return instance.breakMinutes() > 0;
  }

  private static boolean mayMean(Pause pause, Meal meal) {
    return inWindow(pause, meal) || sameLength(pause, meal);
  }

  private static boolean inWindow(Pause pause, Meal meal) {
    return pause.start() >= meal.from() && pause.start() <= meal.to();
  }

  private static boolean sameLength(Pause pause, Meal meal) {
    return pause.length() == meal.minutes();
  }
}
