package org.arcwright.brief;

import java.time.Duration;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.catalog.Mode;

/**
 * Everything a composer needs to know about one workshop. Only goal, people, mode and cap must be
 * said; {@link #builder} fills in the rest from {@link Defaults}.
 *
 * @param title in words
 * @param goal id of the goal
 * @param group who takes part
 * @param mode where they are
 * @param cap from the first start to the last end, breaks and buffer included; 15 minutes to 40
 *     hours
 * @param start when it starts and in which zone, if that is known
 * @param zones further time zones in which people take part, each once
 * @param tools ids of the tools at hand; empty means those usual for the mode
 * @param rhythm stretches and breaks
 * @param meals long breaks, in order
 * @param curve target energy over time
 * @param bufferPercent closing buffer, in per cent of the exercise minutes, 0 to 100
 * @param given work products that exist beforehand, beside those the goal takes for granted
 * @param wishes what must be in or out
 * @param ownItems the sponsor's own items
 */
public record Brief(
    String title,
    String goal,
    Group group,
    Mode mode,
    Duration cap,
    Optional<ZonedDateTime> start,
    List<ZoneId> zones,
    Set<String> tools,
    Rhythm rhythm,
    List<Meal> meals,
    EnergyCurve curve,
    int bufferPercent,
    Set<String> given,
    Wishes wishes,
    List<OwnItem> ownItems) {
  /** Refuses what no workshop can be; see each component. */
  public Brief {
    title = Checks.text("title", title, 120);
    Checks.id("goal", goal);
    if (cap.toMinutes() < 15 || cap.toMinutes() > 40 * 60) {
      throw new InvalidValueException(
          "cap", cap.toMinutes() + " min", "from 15 minutes to 40 hours is right");
    }
    zones = once(zones);
    tools = Checks.ids("tools", tools);
    Checks.range("buffer", bufferPercent, 0, 100);
    given = Checks.ids("given", given);
    meals = List.copyOf(meals);
    ownItems = List.copyOf(ownItems);
    Checks.ids("own-items", ownItems.stream().map(OwnItem::id).toList());
    for (int i = 0; i < meals.size(); i++) {
      within("meals[" + i + "].at", meals.get(i).earliest(), cap);
    }
    for (int i = 0; i < wishes.pins().size(); i++) {
      String field = "wishes.pin[" + i + "].at";
      within(field, offset(field, wishes.pins().get(i).at(), start), cap);
    }
    for (int i = 0; i < ownItems.size(); i++) {
      String field = "own-items[" + i + "].at";
      Optional<Moment> at = ownItems.get(i).at();
      if (at.isPresent()) {
        within(field, offset(field, at.get(), start), cap);
      }
    }
  }

  private static List<ZoneId> once(List<ZoneId> zones) {
    Set<ZoneId> seen = new HashSet<>();
    for (ZoneId zone : zones) {
      if (!seen.add(zone)) {
        throw new InvalidValueException("zones", zone, "it stands here twice; name it once");
      }
    }
    return List.copyOf(zones);
  }

  private static void within(String field, Duration offset, Duration cap) {
    if (offset.compareTo(cap) >= 0) {
      throw new InvalidValueException(
          field,
          offset.toMinutes() + " min after the start",
          "it must start before the workshop ends at " + cap.toMinutes() + " min");
    }
  }

  /**
   * How long after the start a moment is. A clock time before the start's counts for the next day.
   *
   * @throws InvalidValueException if it is a clock time and the brief does not say when it starts
   */
  public Duration offset(Moment at) {
    return offset("at", at, start);
  }

  private static Duration offset(String field, Moment at, Optional<ZonedDateTime> start) {
    if (at instanceof Moment.After after) {
      return after.duration();
    }
    ZonedDateTime begin =
        start.orElseThrow(
            () ->
                new InvalidValueException(
                    field,
                    ((Moment.Clock) at).time(),
                    "a time of day needs a start; add start and zone to the brief"));
    return at.after(begin);
  }

  /** Starts another brief, which says the same until something is set anew. */
  public BriefBuilder toBuilder() {
    return new BriefBuilder(this);
  }

  /** Starts a brief; all else comes from {@link Defaults} until it is set. */
  public static BriefBuilder builder(
      String title, String goal, Mode mode, int people, Duration cap) {
    return new BriefBuilder(title, goal, mode, people, cap);
  }
}
