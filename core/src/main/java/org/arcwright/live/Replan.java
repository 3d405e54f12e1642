package org.arcwright.live;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.catalog.InvalidValueException;

/**
 * How a day can go on. Times are counted from the planned start.
 *
 * @param now when it was asked
 * @param end when everybody has to be free
 * @param behind how far behind the plan the day is; negative when it is ahead
 * @param unchanged what follows if nothing changes
 * @param ways up to three, the one to take first; none only if nothing is left to do
 * @param followUp what remains for another day, if the goal cannot be met any more
 */
public record Replan(
    Duration now,
    Duration end,
    Duration behind,
    Unchanged unchanged,
    List<Way> ways,
    Optional<FollowUp> followUp) {
  /** Most ways. */
  public static final int MOST = 3;

  /**
   * What follows if nothing changes.
   *
   * @param agenda the whole day
   * @param keeps whether that ends in time and keeps the rules for breaks and what is tied to a
   *     time
   * @param onTime the chance to be over by the end, 0 to 1
   */
  public record Unchanged(Agenda agenda, boolean keeps, double onTime) {}

  /**
   * What a day could not do any more.
   *
   * @param phases titles of the phases that it does not reach
   * @param products ids of the work products that the goal still lacks
   * @param inHand ids of the work products of the arc that there are to go on from
   * @param exercises titles of the planned exercises that do not take place
   */
  public record FollowUp(
      List<String> phases, List<String> products, List<String> inHand, List<String> exercises) {
    /** Copies the lists. */
    public FollowUp {
      phases = List.copyOf(phases);
      products = List.copyOf(products);
      inHand = List.copyOf(inHand);
      exercises = List.copyOf(exercises);
    }
  }

  /** Refuses more than three ways. */
  public Replan {
    ways = List.copyOf(ways);
    if (ways.size() > MOST) {
      throw new InvalidValueException("ways", ways.size(), "at most " + MOST);
    }
  }
}
