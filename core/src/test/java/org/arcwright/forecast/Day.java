package org.arcwright.forecast;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.agenda.AgendaItem.Pause;
import org.arcwright.agenda.Figures;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Product;
import org.arcwright.compose.reduce.SampleExercise;

/** An agenda put together item by item, with the catalog its exercises come from. */
final class Day {
  private final List<AgendaItem> items = new ArrayList<>();
  private final List<Exercise> exercises = new ArrayList<>();
  private Duration end = Duration.ZERO;

  /** An exercise of that range, planned for so many minutes. */
  Day exercise(String id, double min, double typical, double max, int planned) {
    exercises.add(
        SampleExercise.of(id, Kind.DIVERGENT, min, typical, max, "items").people(2, 20).build());
    return item(id, planned);
  }

  /** Something that no catalog knows. */
  Day item(String id, int planned) {
    items.add(
        new Activity(
            id,
            "The " + id,
            Optional.of(Kind.DIVERGENT),
            "all",
            end,
            Duration.ofMinutes(planned),
            Format.PLENARY,
            30));
    return until(planned);
  }

  Day pause(int minutes) {
    items.add(new Pause(end, Duration.ofMinutes(minutes), false));
    return until(minutes);
  }

  Day meal(int minutes) {
    items.add(new Pause(end, Duration.ofMinutes(minutes), true));
    return until(minutes);
  }

  /** Nothing for a while. */
  Day gap(int minutes) {
    return until(minutes);
  }

  private Day until(int minutes) {
    end = end.plusMinutes(minutes);
    return this;
  }

  /** The agenda, with a buffer at its close. */
  Agenda agenda(int people, int buffer) {
    return new Agenda(
        "A day",
        "choose-a-direction",
        Mode.REMOTE,
        people,
        end.plusMinutes(buffer),
        Optional.empty(),
        List.of(new Agenda.PhaseTitle("all", "All of it")),
        items,
        Duration.ofMinutes(buffer),
        List.of(),
        Figures.of(items, List.of(), end));
  }

  Catalog catalog() {
    return Catalog.of(
        List.of(new Product("items", "items", "Whatever.")), List.of(), exercises, List.of());
  }

  /** The forecast for eight people. */
  Forecast forecast(int buffer) {
    return Forecaster.of(catalog()).forecast(agenda(8, buffer));
  }
}
