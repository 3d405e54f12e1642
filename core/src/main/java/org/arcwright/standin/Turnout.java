package org.arcwright.standin;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.catalog.Split;

/**
 * What becomes of one exercise when fewer people come than planned, down to half of them.
 *
 * @param place of the exercise among the agenda's items, from 0
 * @param impossible head counts with which it cannot be done, descending
 * @param least so many people at the least were asked about
 * @param groups the small groups of so few, if the exercise has any and can be done
 * @param usual how long it usually takes with so few, if it can be done
 * @param standIn what serves all of the head counts with which it cannot be done, if there is any
 */
public record Turnout(
    int place,
    List<Integer> impossible,
    int least,
    Optional<Split> groups,
    Optional<Duration> usual,
    Optional<StandIn> standIn) {
  /** Refuses a stand-in for what needs none, and head counts that do not descend. */
  public Turnout {
    Checks.range("place", place, 0, Integer.MAX_VALUE);
    Checks.range("least", least, 1, 1000);
    impossible = List.copyOf(impossible);
    for (int i = 1; i < impossible.size(); i++) {
      if (impossible.get(i) >= impossible.get(i - 1)) {
        throw new InvalidValueException(
            "impossible[" + i + "]", impossible.get(i), "fewer than the one before is right");
      }
    }
    if (impossible.isEmpty() && standIn.isPresent()) {
      throw new InvalidValueException(
          "standIn", standIn.get().exercise(), "it is not needed: the exercise always works");
    }
  }

  /** Whether it works with every head count. */
  public boolean always() {
    return impossible.isEmpty();
  }
}
