package org.arcwright.vote;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.arcwright.catalog.InvalidValueException;

/**
 * One person's order of the options.
 *
 * @param tiers the best first; options in one tier are level
 */
public record RankedBallot(List<List<String>> tiers) {
  /** Refuses an empty ballot, an empty tier and an option that stands twice. */
  public RankedBallot {
    tiers = tiers.stream().map(List::copyOf).toList();
    if (tiers.isEmpty() || tiers.stream().anyMatch(List::isEmpty)) {
      throw new InvalidValueException(
          "order", tiers.isEmpty() ? "empty" : tiers, "every place holds at least one option");
    }
    Ballots.once("order", tiers.stream().flatMap(List::stream).toList());
  }

  /** An order without ties, the best first. */
  public static RankedBallot of(String... options) {
    return new RankedBallot(List.of(options).stream().map(List::of).toList());
  }

  /** All options named, the best first. */
  public List<String> named() {
    return tiers.stream().flatMap(List::stream).toList();
  }

  /** The place of each option named, from 0; level options share one. */
  Map<String, Integer> places() {
    Map<String, Integer> places = new HashMap<>();
    for (int i = 0; i < tiers.size(); i++) {
      for (String option : tiers.get(i)) {
        places.put(option, i);
      }
    }
    return places;
  }

  /**
   * Refuses ballots that name an unknown option or leave one out: a gap is no last place, and
   * whoever meant it so puts the rest into one last tier.
   */
  static List<RankedBallot> complete(Collection<RankedBallot> ballots, List<String> options) {
    Ballots.count(ballots);
    int index = 0;
    for (RankedBallot ballot : ballots) {
      String field = Ballots.field(index++);
      List<String> named = ballot.named();
      Ballots.known(field, named, options);
      List<String> missing = options.stream().filter(o -> !named.contains(o)).toList();
      if (!missing.isEmpty()) {
        throw new InvalidValueException(
            field,
            named.size() + " options",
            Ballots.listed(missing) + " is missing; hand it back, or put it in the last place");
      }
    }
    return List.copyOf(ballots);
  }
}
