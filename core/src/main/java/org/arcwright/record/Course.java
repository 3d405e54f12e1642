package org.arcwright.record;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.agenda.AgendaItem.Pause;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Kind;
import org.arcwright.live.LogEntry;

/**
 * What was planned beside what happened. All times count from the record's start.
 *
 * @param rows by their planned start, or by their own where they were not planned
 * @param promised when it was to end at the latest; none without an agenda
 */
public record Course(List<Row> rows, Optional<Duration> promised) {
  private static final Duration SAME_DAY = Duration.ofHours(12);

  /**
   * From one time to another.
   *
   * @param to after {@code from}
   */
  public record Span(Duration from, Duration to) {
    /** How long. */
    public Duration length() {
      return to.minus(from);
    }
  }

  /**
   * An exercise or a break.
   *
   * @param number in the agenda, from 1; 0 for breaks and for what was not planned
   * @param title empty for breaks
   * @param kind none for breaks, and for what is not in the catalog
   * @param pause whether it is a break or a meal
   * @param meal whether it is a meal
   * @param planned when it was to be; none if it was not planned
   * @param held when it was; none if it was left out, several if it was taken up again
   */
  public record Row(
      int number,
      String title,
      Optional<Kind> kind,
      boolean pause,
      boolean meal,
      Optional<Span> planned,
      List<Happening> held) {
    /** Takes a copy. */
    public Row {
      held = List.copyOf(held);
    }

    private Row with(Happening happening) {
      return new Row(
          number,
          title,
          kind,
          pause,
          meal,
          planned,
          Stream.concat(held.stream(), Stream.of(happening)).toList());
    }

    /** How much longer it took than was planned; negative if shorter, none if that has no sense. */
    public Optional<Duration> longer() {
      return held.isEmpty()
          ? Optional.empty()
          : planned.map(
              span ->
                  held.stream()
                      .map(Happening::length)
                      .reduce(Duration.ZERO, Duration::plus)
                      .minus(span.length()));
    }

    private boolean isAfter(Duration time) {
      Duration from = held.isEmpty() ? begins() : held.get(0).from();
      return from.compareTo(time) > 0;
    }

    private Duration begins() {
      return planned.map(Span::from).orElseGet(() -> held.get(0).from());
    }
  }

  /** Copies the list. */
  public Course {
    rows = List.copyOf(rows);
  }

  /**
   * Puts the two side by side. An exercise is known by its id, a break by which planned one is
   * nearest. Where both name a start on the same day, the plan stands where the clock has it.
   */
  public static Course of(WorkshopRecord record, Optional<Agenda> agenda, Catalog catalog) {
    List<Row> rows = new ArrayList<>();
    List<String> ids = new ArrayList<>();
    Duration shift = agenda.map(plan -> shift(record, plan)).orElse(Duration.ZERO);
    int number = 0;
    for (AgendaItem item : agenda.map(Agenda::items).orElse(List.of())) {
      Optional<Span> span = Optional.of(new Span(item.start().plus(shift), item.end().plus(shift)));
      if (item instanceof Activity activity) {
        rows.add(
            new Row(++number, activity.title(), activity.kind(), false, false, span, List.of()));
        ids.add(activity.exercise());
      } else if (item instanceof Pause pause) {
        rows.add(new Row(0, "", Optional.empty(), true, pause.meal(), span, List.of()));
        ids.add(LogEntry.BREAK);
      }
    }
    for (Happening happening : record.happened()) {
      int place = happening.isBreak() ? nearest(rows, happening) : ids.indexOf(happening.item());
      if (place >= 0) {
        rows.set(place, rows.get(place).with(happening));
      } else {
        rows.add(unplanned(happening, catalog));
        ids.add(happening.item());
      }
    }
    return new Course(inOrder(rows), agenda.map(plan -> plan.cap().plus(shift)));
  }

  /** As planned, each unplanned one before what was held after it. */
  private static List<Row> inOrder(List<Row> rows) {
    List<Row> ordered = new ArrayList<>();
    rows.stream()
        .filter(row -> row.planned().isPresent())
        .sorted(Comparator.comparing(Row::begins))
        .forEach(ordered::add);
    rows.stream()
        .filter(row -> row.planned().isEmpty())
        .sorted(Comparator.comparing(Row::begins))
        .forEach(extra -> ordered.add(place(ordered, extra), extra));
    return ordered;
  }

  private static int place(List<Row> ordered, Row extra) {
    int place = 0;
    while (place < ordered.size() && !ordered.get(place).isAfter(extra.begins())) {
      place++;
    }
    return place;
  }

  private static Duration shift(WorkshopRecord record, Agenda agenda) {
    Optional<ZonedDateTime> start = record.workshop().start();
    return start
        .flatMap(held -> agenda.start().map(planned -> Duration.between(held, planned)))
        .filter(shift -> shift.abs().compareTo(SAME_DAY) < 0)
        .orElse(Duration.ZERO);
  }

  /** The planned break that was not held yet and is nearest in time; -1 if there is none. */
  private static int nearest(List<Row> rows, Happening happening) {
    int nearest = -1;
    Duration least = Duration.ZERO;
    for (int i = 0; i < rows.size(); i++) {
      Row row = rows.get(i);
      if (row.pause() && row.held().isEmpty()) {
        Duration apart = row.begins().minus(happening.from()).abs();
        if (nearest < 0 || apart.compareTo(least) < 0) {
          nearest = i;
          least = apart;
        }
      }
    }
    return nearest;
  }

  private static Row unplanned(Happening happening, Catalog catalog) {
    Optional<Exercise> exercise = catalog.exercise(happening.item());
    String title =
        happening
            .title()
            .or(() -> exercise.map(Exercise::title))
            .orElseGet(() -> happening.item().replace('-', ' '));
    return new Row(
        0,
        happening.isBreak() ? "" : title,
        exercise.map(Exercise::kind),
        happening.isBreak(),
        false,
        Optional.empty(),
        List.of(happening));
  }

  /** When the first of all began or was to begin; never after the start. */
  public Duration from() {
    return rows.stream()
        .flatMap(row -> Stream.concat(Stream.of(row.begins()), begun(row)))
        .reduce(Duration.ZERO, Course::earlier);
  }

  private static Stream<Duration> begun(Row row) {
    return row.held().stream().map(Happening::from);
  }

  private static Duration earlier(Duration one, Duration other) {
    return one.compareTo(other) < 0 ? one : other;
  }

  /** When the last of all ended or was to end. */
  public Duration to() {
    return Stream.concat(
            promised.stream(), rows.stream().flatMap(row -> row.planned().stream()).map(Span::to))
        .reduce(ended().orElse(Duration.ZERO), Course::later);
  }

  private static Duration later(Duration one, Duration other) {
    return one.compareTo(other) > 0 ? one : other;
  }

  /** When it really began; none if nothing is known to have happened. */
  public Optional<Duration> begun() {
    return rows.stream().flatMap(Course::begun).reduce(Course::earlier);
  }

  /** When it really ended; none if nothing is known to have happened. */
  public Optional<Duration> ended() {
    return rows.stream()
        .flatMap(row -> row.held().stream())
        .map(Happening::to)
        .reduce(Course::later);
  }

  /** How much later than promised it ended; negative if earlier. */
  public Optional<Duration> late() {
    return promised.flatMap(latest -> ended().map(end -> end.minus(latest)));
  }
}
