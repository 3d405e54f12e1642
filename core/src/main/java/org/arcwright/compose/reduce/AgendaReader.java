package org.arcwright.compose.reduce;

import java.time.Duration;
import java.util.List;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.catalog.Phase;
import org.arcwright.compose.instance.Item;

/** Turns any agenda, also one written by hand, into items that can be checked. */
public final class AgendaReader {
  /** Four weeks: a later minute is as wrong as this one, and sums stay within range. */
  private static final long MOST = 40_000;

  private AgendaReader() {}

  /**
   * The agenda's items in whole minutes, seconds dropped. Nothing is refused: exercises and phases
   * that nobody knows are for the checker to find; such a phase is number -1.
   */
  public static List<Item> items(Reduction reduction, Agenda agenda) {
    List<String> phases = reduction.goal().arc().stream().map(Phase::name).toList();
    return agenda.items().stream().map(item -> item(item, phases)).toList();
  }

  private static Item item(AgendaItem item, List<String> phases) {
    int start = minutes(item.start());
    int length = minutes(item.end()) - start;
    if (item instanceof AgendaItem.Activity activity) {
      int phase = phases.indexOf(activity.phase());
      return new Item.Activity(activity.exercise(), phase, start, length);
    }
    return new Item.Pause(start, length);
  }

  private static int minutes(Duration duration) {
    return (int) Math.min(duration.toMinutes(), MOST);
  }
}
