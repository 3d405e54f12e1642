package org.arcwright.forecast;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;

/**
 * Foresees when agendas will really end. Every exercise takes a {@link BetaPert} time that follows
 * from its range at the group's size and from the time planned for it; a late start and breaks that
 * stretch are added; all of it exact to the minute. Immutable, so any number of threads may share
 * one.
 *
 * <p>Each of these times is taken to be independent of all others. Days are not quite like that: a
 * talkative group overruns every exercise, and who is late at the start is late after breaks. What
 * goes together adds up instead of evening out, so real ends lie further apart than foreseen here:
 * the end at 50 per cent holds, the one at 95 per cent is too early, and a chance to be on time
 * over one half is rather too high. No figure was found for how much; whoever needs to be sure
 * keeps more free, or learns from the logs of such groups.
 */
public final class Forecaster {
  private final Catalog catalog;

  private Forecaster(Catalog catalog) {
    this.catalog = catalog;
  }

  /** A forecaster that takes exercises' ranges from that catalog. */
  public static Forecaster of(Catalog catalog) {
    return new Forecaster(catalog);
  }

  /**
   * How long an exercise takes on average if it is planned to take so long; for a group that it
   * does not serve, as with the nearest that it does.
   *
   * @param planned over zero
   */
  public static Duration expected(Exercise exercise, int people, Duration planned) {
    int size = exercise.serves(people) ? people : exercise.nearest(people);
    double mean = Habits.took(exercise.minutes(size), planned.toSeconds() / 60.0).mean();
    return Duration.ofMillis(Math.round(60_000 * mean));
  }

  /** Foresees an agenda that starts as late as meetings do. */
  public Forecast forecast(Agenda agenda) {
    return forecast(agenda, Optional.empty(), Habits.LATE_START);
  }

  /**
   * The same, knowing the brief: what it ties to a time waits for that time, and the end that it
   * asks for is the one to be kept.
   */
  public Forecast forecast(Agenda agenda, Brief brief) {
    return forecast(agenda, Optional.of(brief), Habits.LATE_START);
  }

  /**
   * The same, with a start of one's own. For n items that take up to r minutes within a day of d
   * minutes the work is of the order n² r d.
   *
   * @param brief if it is known
   * @param begins when the first item begins, in minutes from the planned start; for an agenda that
   *     is what is left of a day, that is about now
   */
  public Forecast forecast(Agenda agenda, Optional<Brief> brief, Distribution begins) {
    List<Leg> legs = new ArrayList<>();
    List<Integer> waits = Waits.of(agenda, brief);
    for (int i = 0; i < agenda.items().size(); i++) {
      AgendaItem item = agenda.items().get(i);
      legs.add(
          item instanceof Activity activity
              ? leg(activity, agenda.people(), waits.get(i))
              : Leg.pause(item, waits.get(i)));
    }
    Duration promised = brief.map(Brief::cap).orElse(agenda.cap());
    return new Course(agenda, legs, begins, promised).forecast();
  }

  /**
   * Foresees a day that is under way, from an agenda that has what is over at its real times: what
   * is over by now took what it took, what runs has run so long already, and what is still to come
   * begins no earlier than now. The end to be kept is the agenda's cap. The work is as above.
   *
   * @param brief what it ties to a time that is still to come waits for that time
   * @param now the time, from the planned start
   */
  public Forecast forecast(Agenda agenda, Brief brief, Duration now) {
    List<Leg> legs = new ArrayList<>();
    List<Integer> waits = Waits.of(agenda, Optional.of(brief));
    for (int i = 0; i < agenda.items().size(); i++) {
      AgendaItem item = agenda.items().get(i);
      int start = (int) item.start().toMinutes();
      if (item.end().compareTo(now) <= 0) {
        legs.add(Leg.over(item, start));
        continue;
      }
      boolean runs = item.start().compareTo(now) < 0;
      int wait = runs ? start : Math.max((int) now.toMinutes(), waits.get(i));
      Leg leg =
          item instanceof Activity activity
              ? leg(activity, agenda.people(), wait)
              : Leg.pause(item, wait);
      legs.add(runs ? leg.running((int) now.toMinutes() - start) : leg);
    }
    Distribution begins = Distribution.at((int) agenda.items().get(0).start().toMinutes());
    return new Course(agenda, legs, begins, agenda.cap()).forecast();
  }

  private Leg leg(Activity activity, int people, int wait) {
    double planned = activity.length().toSeconds() / 60.0;
    Optional<Exercise> exercise = catalog.exercise(activity.exercise());
    if (exercise.isEmpty()) {
      return Leg.work(activity, wait, Basis.ASSUMED, Habits.tookUnknown(planned));
    }
    boolean serves = exercise.get().serves(people);
    int size = serves ? people : exercise.get().nearest(people);
    return Leg.work(
        activity,
        wait,
        serves ? Basis.CATALOG : Basis.NEAREST_SIZE,
        Habits.took(exercise.get().minutes(size), planned));
  }
}
