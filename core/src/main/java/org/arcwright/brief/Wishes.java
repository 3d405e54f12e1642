package org.arcwright.brief;

import java.util.List;
import java.util.Set;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.InvalidValueException;

/**
 * What the facilitator wants in or out.
 *
 * @param include ids of exercises that must appear
 * @param leaveOut ids of exercises that must not
 * @param pins exercises that must start at a given time
 * @param usedLastTime ids of exercises this group knows already; they come again only if much
 *     better
 */
public record Wishes(
    Set<String> include, Set<String> leaveOut, List<Pin> pins, Set<String> usedLastTime) {
  /** No wishes at all. */
  public static final Wishes NONE = new Wishes(Set.of(), Set.of(), List.of(), Set.of());

  /**
   * An exercise that must start at a given time.
   *
   * @param exercise its id
   * @param at when
   */
  public record Pin(String exercise, Moment at) {
    /** Refuses a malformed id. */
    public Pin {
      Checks.id("exercise", exercise);
    }
  }

  /** Refuses an exercise that is both wished for and left out, and one pinned twice. */
  public Wishes {
    include = Checks.ids("include", include);
    leaveOut = Checks.ids("leave-out", leaveOut);
    usedLastTime = Checks.ids("used-last-time", usedLastTime);
    pins = List.copyOf(pins);
    Set<String> pinned = Checks.ids("pin", pins.stream().map(Pin::exercise).toList());
    for (String id : leaveOut) {
      if (include.contains(id) || pinned.contains(id)) {
        throw new InvalidValueException(
            "leave-out", id, "it is also wished for; strike it from one of the two");
      }
    }
  }
}
