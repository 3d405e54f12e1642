package org.arcwright.forecast;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem.Activity;

/** Adds up the legs of a day, one after the other. */
final class Course {
  private static final double DECIMALS = 10_000;

  private final Agenda agenda;
  private final List<Leg> legs;
  private final Distribution begins;
  private final Duration promised;

  Course(Agenda agenda, List<Leg> legs, Distribution begins, Duration promised) {
    this.agenda = agenda;
    this.legs = legs;
    this.begins = begins;
    this.promised = promised;
  }

  Forecast forecast() {
    List<Part> parts = new ArrayList<>();
    Distribution ready = begins;
    for (int i = 0; i < legs.size(); i++) {
      parts.add(part(i, ready));
      ready = legs.get(i).ends(ready);
    }
    List<Duration> ends = new ArrayList<>();
    for (int percent = 1; percent < 100; percent++) {
      ends.add(Duration.ofMinutes(ready.percentile(percent)));
    }
    return new Forecast(
        agenda, promised, onTime(ready), Band.of(legs.get(0).begins(begins)), ends, parts);
  }

  private Part part(int place, Distribution ready) {
    Leg leg = legs.get(place);
    Distribution starts = leg.begins(ready);
    Band took = Band.of(leg.took());
    Band from = Band.of(starts);
    Band to = Band.of(leg.ends(ready));
    if (leg.item() instanceof Activity) {
      Distribution end = rest(place + 1, leg.kept().ends(ready));
      Duration by = Duration.ofMinutes(end.percentile(80));
      return new Part.Work(leg.basis(), took, from, to, new Part.Kept(onTime(end), by));
    }
    int planned = (int) leg.item().start().toMinutes();
    double within = starts.chanceWithin(planned - Habits.ON_TIME, planned + Habits.ON_TIME);
    return new Part.Rest(rounded(within), took, from, to);
  }

  /** When the day ends, if the leg of that number may begin then. */
  private Distribution rest(int place, Distribution ready) {
    Distribution end = ready;
    for (Leg leg : legs.subList(place, legs.size())) {
      end = leg.ends(end);
    }
    return end;
  }

  private double onTime(Distribution end) {
    return rounded(end.chanceUpTo((int) promised.toMinutes()));
  }

  private static double rounded(double chance) {
    return Math.round(chance * DECIMALS) / DECIMALS;
  }
}
