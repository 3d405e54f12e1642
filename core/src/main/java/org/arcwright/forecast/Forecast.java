package org.arcwright.forecast;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.forecast.Part.Work;

/**
 * When an agenda will really end, if nobody shortens anything on the day. Times are counted from
 * the planned start; chances are rounded to four decimals.
 *
 * @param agenda what is planned
 * @param promised when everybody expects to be free: the time at hand, buffer included
 * @param onTime the chance that the last item is over by then, 0 to 1
 * @param begins when the first item begins
 * @param ends when the last item is over with 1, 2 ... 99 per cent
 * @param parts one for each item of the agenda, in its order
 */
public record Forecast(
    Agenda agenda,
    Duration promised,
    double onTime,
    Band begins,
    List<Duration> ends,
    List<Part> parts) {
  private static final int PERCENTS = 99;

  /** Refuses lists of another length, parts of another kind than their item, and ends that fall. */
  public Forecast {
    Part.chance("onTime", onTime);
    ends = List.copyOf(ends);
    parts = List.copyOf(parts);
    if (ends.size() != PERCENTS) {
      throw new InvalidValueException("ends", ends.size() + " times", PERCENTS + " are right");
    }
    for (int i = 1; i < PERCENTS; i++) {
      if (ends.get(i).compareTo(ends.get(i - 1)) < 0) {
        throw new InvalidValueException(
            "ends[" + i + "]", ends.get(i).toMinutes(), "no earlier than the one before");
      }
    }
    if (parts.size() != agenda.items().size()) {
      throw new InvalidValueException(
          "parts", parts.size(), "one for each item, " + agenda.items().size() + ", is right");
    }
    for (int i = 0; i < parts.size(); i++) {
      boolean pause = agenda.items().get(i) instanceof AgendaItem.Pause;
      if (pause != parts.get(i) instanceof Part.Rest) {
        throw new InvalidValueException(
            "parts[" + i + "]", pause ? "work" : "rest", "it is the item's own kind");
      }
    }
  }

  /**
   * When the last item is over with that many per cent.
   *
   * @param percent 1 to 99
   */
  public Duration end(int percent) {
    if (percent < 1 || percent > PERCENTS) {
      throw new InvalidValueException("percent", percent, "1 to 99 is right");
    }
    return ends.get(percent - 1);
  }

  /**
   * The time to keep free behind the last item so that it suffices with that many per cent.
   *
   * @param percent 1 to 99
   */
  public Duration buffer(int percent) {
    Duration over = end(percent).minus(agenda.end());
    return over.isNegative() ? Duration.ZERO : over;
  }

  /**
   * The place in the agenda of the exercise that carries most of the risk: the one that brings the
   * end with 80 per cent forward most if it keeps to its time, and among those the chance up most.
   * Nothing if none brings either.
   */
  public Optional<Integer> riskiest() {
    Optional<Integer> worst = Optional.empty();
    Duration earliest = end(80);
    double best = onTime;
    for (int i = 0; i < parts.size(); i++) {
      if (parts.get(i) instanceof Work work) {
        int sooner = work.kept().end().compareTo(earliest);
        if (sooner < 0 || (sooner == 0 && work.kept().onTime() > best)) {
          worst = Optional.of(i);
          earliest = work.kept().end();
          best = work.kept().onTime();
        }
      }
    }
    return worst;
  }
}
