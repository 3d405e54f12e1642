package org.arcwright.forecast;

import org.arcwright.agenda.AgendaItem;

/**
 * An item of an agenda on its way to a forecast.
 *
 * @param item what is planned
 * @param earliest the minute before which it does not begin
 * @param basis what its time rests on; a break's is of no interest
 * @param took how many minutes it takes
 */
record Leg(AgendaItem item, int earliest, Basis basis, Distribution took) {
  static Leg work(AgendaItem item, int earliest, Basis basis, BetaPert took) {
    return new Leg(item, earliest, basis, took.inWholeMinutes());
  }

  static Leg pause(AgendaItem item, int earliest) {
    return new Leg(item, earliest, Basis.ASSUMED, exactly(item).plus(Habits.BREAK_STRETCH));
  }

  /** What is over: it began then, and took what it says. */
  static Leg over(AgendaItem item, int start) {
    return new Leg(item, start, Basis.ASSUMED, exactly(item));
  }

  /** The same item, knowing that it has run so many minutes. */
  Leg running(int minutes) {
    return new Leg(item, earliest, basis, took.given(minutes));
  }

  /** The same item, if it took exactly its planned time. */
  Leg kept() {
    return new Leg(item, earliest, basis, exactly(item));
  }

  /** When it ends, if it may begin then. */
  Distribution ends(Distribution ready) {
    return begins(ready).plus(took);
  }

  Distribution begins(Distribution ready) {
    return ready.notBefore(earliest);
  }

  private static Distribution exactly(AgendaItem item) {
    return Distribution.at((int) item.length().plusSeconds(30).toMinutes());
  }
}
