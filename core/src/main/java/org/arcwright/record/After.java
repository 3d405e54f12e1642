package org.arcwright.record;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.arcwright.catalog.Checks;

/**
 * What is arranged for the time after the workshop.
 *
 * @param handover when the handover call is, in the workshop's zone
 * @param first day of the first follow-up
 * @param everyWeeks weeks from one follow-up to the next, 1 to 26
 * @param times how many follow-ups, 0 to 52
 */
public record After(
    Optional<LocalDateTime> handover, Optional<LocalDate> first, int everyWeeks, int times) {
  /** Every other week, three times. Common practice, no source. */
  public static final After USUAL = new After(Optional.empty(), Optional.empty(), 2, 3);

  /** Refuses numbers outside their range. */
  public After {
    Checks.range("every-weeks", everyWeeks, 1, 26);
    Checks.range("times", times, 0, 52);
  }

  /**
   * The days of the follow-ups; where none was named, the first is as long after the workshop as
   * each next one after the one before, or on the Monday after where that is at a weekend.
   */
  public List<LocalDate> days(LocalDate workshop) {
    LocalDate begin = first.orElseGet(() -> workday(workshop.plusWeeks(everyWeeks)));
    return IntStream.range(0, times).mapToObj(i -> begin.plusWeeks((long) everyWeeks * i)).toList();
  }

  /**
   * Whether they are on Mondays since the workshop was at a weekend, and nobody named another day.
   */
  public boolean afterWeekend(LocalDate workshop) {
    return first.isEmpty() && !workday(workshop).equals(workshop);
  }

  private static LocalDate workday(LocalDate day) {
    return day.getDayOfWeek().compareTo(DayOfWeek.SATURDAY) < 0
        ? day
        : day.with(TemporalAdjusters.next(DayOfWeek.MONDAY));
  }
}
