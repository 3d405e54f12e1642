package org.arcwright.vote;

import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.arcwright.catalog.Checks;

/**
 * Everybody shows 0 to 5 fingers at once. The proposal passes if all show three or more; a fist
 * blocks it; whoever shows fewer than three is to be heard.
 *
 * @param fingers 0 (a fist) to 5, one number for each person
 */
public record FistToFive(List<Integer> fingers) implements ProposalVote {
  /** How many fingers let a proposal pass. */
  public static final int ENOUGH = 3;

  /** Refuses a number outside 0 to 5. */
  public FistToFive {
    Ballots.count(fingers);
    fingers = List.copyOf(fingers);
    for (int i = 0; i < fingers.size(); i++) {
      Checks.range(Ballots.field(i), fingers.get(i), 0, 5);
    }
  }

  /** How many people showed so many fingers: six counts, for 0 to 5. */
  public List<Integer> counts() {
    return IntStream.rangeClosed(0, 5).mapToObj(n -> people(f -> f == n).size()).toList();
  }

  /** Whoever showed fewer than three, fists too, numbered from 1. */
  public List<Integer> toBeHeard() {
    return people(f -> f < ENOUGH);
  }

  @Override
  public ProposalOutcome outcome() {
    List<Integer> fists = people(f -> f == 0);
    if (!fists.isEmpty()) {
      return new ProposalOutcome.Blocked(fists);
    }
    List<Integer> low = toBeHeard();
    return low.isEmpty() ? new ProposalOutcome.Passed() : new ProposalOutcome.ToBeHeard(low);
  }

  private List<Integer> people(IntPredicate shows) {
    return IntStream.range(0, fingers.size())
        .filter(i -> shows.test(fingers.get(i)))
        .mapToObj(i -> i + 1)
        .toList();
  }
}
