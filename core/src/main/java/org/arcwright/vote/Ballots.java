package org.arcwright.vote;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.InvalidValueException;

/** The checks that the methods share. Ballots are numbered from 1, as people count them. */
final class Ballots {
  static final int MOST_OPTIONS = 500;

  /** As many as a workshop has people at most. */
  static final int MOST_BALLOTS = 1000;

  private Ballots() {}

  /** Returns the names; refuses too few, too many, a blank one and one that stands twice. */
  static List<String> names(String field, List<String> names, int least, int most) {
    List<String> clean = new ArrayList<>(Checks.lines(field, names, 200));
    Checks.range("number of " + field, clean.size(), least, most);
    once(field, clean);
    return List.copyOf(clean);
  }

  static List<String> options(List<String> options) {
    return names("options", options, 2, MOST_OPTIONS);
  }

  /** Refuses no ballots, and more than can be. */
  static void count(Collection<?> ballots) {
    Checks.range("number of ballots", ballots.size(), 1, MOST_BALLOTS);
  }

  static String field(int index) {
    return "ballot " + (index + 1);
  }

  /** Refuses names that are not among those there are. */
  static void known(String field, Collection<String> names, List<String> options) {
    Set<String> all = new LinkedHashSet<>(options);
    for (String name : names) {
      if (!all.contains(name)) {
        throw new InvalidValueException(field, name, "one of " + listed(options) + " is right");
      }
    }
  }

  /** Refuses a name that stands twice. */
  static void once(String field, Collection<String> names) {
    Set<String> seen = new LinkedHashSet<>();
    for (String name : names) {
      if (!seen.add(name)) {
        throw new InvalidValueException(field, name, "it stands here twice; name it once");
      }
    }
  }

  /** Names for a message, not more than a dozen. */
  static String listed(List<String> names) {
    return names.size() <= 12
        ? String.join(", ", names)
        : String.join(", ", names.subList(0, 12)) + " and " + (names.size() - 12) + " more";
  }
}
