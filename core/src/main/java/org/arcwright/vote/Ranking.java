package org.arcwright.vote;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.arcwright.catalog.InvalidValueException;

/**
 * Options by their sums, the highest first. Equal sums share a place, and the places they fill stay
 * empty: 1, 2, 2, 4.
 *
 * @param standings at least one; level options stand in the order of the tally
 */
public record Ranking(List<Standing> standings) {
  /**
   * An option and its place.
   *
   * @param place 1 for the highest sum
   * @param option the option
   * @param sum its sum
   */
  public record Standing(int place, String option, Fraction sum) {}

  /**
   * A line below the options that are kept.
   *
   * @param kept the options above the line, the highest first
   * @param gap by how much the last one kept is above the first one that goes; over 0
   */
  public record Cut(List<String> kept, Fraction gap) {
    /** Copies the list. */
    public Cut {
      kept = List.copyOf(kept);
    }
  }

  /** Copies the list; refuses an empty one. */
  public Ranking {
    standings = List.copyOf(standings);
    if (standings.isEmpty()) {
      throw new InvalidValueException("ranking", "empty", "it needs at least one option");
    }
  }

  /** Ranks the scores by their sums. */
  static Ranking of(List<Score> scores) {
    List<Standing> sorted =
        scores.stream()
            .map(score -> new Standing(1, score.option(), score.sum()))
            .sorted(Comparator.comparing(Standing::sum).reversed())
            .toList();
    List<Standing> standings = new ArrayList<>();
    for (Standing next : sorted) {
      int last = standings.size() - 1;
      boolean level = last >= 0 && standings.get(last).sum().equals(next.sum());
      int place = level ? standings.get(last).place() : last + 2;
      standings.add(new Standing(place, next.option(), next.sum()));
    }
    return new Ranking(standings);
  }

  /** The options, the highest first. */
  public List<String> options() {
    return standings.stream().map(Standing::option).toList();
  }

  /** The options in the first place. */
  public List<String> first() {
    return standings.stream().filter(s -> s.place() == 1).map(Standing::option).toList();
  }

  /** The winner, or the tie in the first place. */
  public Outcome outcome() {
    List<String> first = first();
    return first.size() == 1 ? new Outcome.Winner(first.get(0)) : new Outcome.Tie(first);
  }

  /**
   * Draws the line at the widest gap that keeps a number of options in a range. A line never parts
   * options with equal sums; of equal gaps the one that keeps more counts.
   *
   * @param least fewest options to keep, 1 or more
   * @param most most options to keep, {@code least} or more
   * @return empty if every line in the range would go through a tie or below the last option
   */
  public Optional<Cut> cut(int least, int most) {
    if (least < 1 || most < least) {
      throw new InvalidValueException(
          "cut", least + " to " + most, "keep 1 option or more, and write the fewest first");
    }
    Optional<Cut> best = Optional.empty();
    for (int kept = least; kept <= most && kept < standings.size(); kept++) {
      Fraction gap = standings.get(kept - 1).sum().minus(standings.get(kept).sum());
      if (gap.signum() > 0 && (best.isEmpty() || gap.compareTo(best.get().gap()) >= 0)) {
        best = Optional.of(new Cut(options().subList(0, kept), gap));
      }
    }
    return best;
  }
}
