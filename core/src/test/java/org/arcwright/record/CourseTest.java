package org.arcwright.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.agenda.AgendaItem.Pause;
import org.arcwright.agenda.Figures;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Mode;
import org.arcwright.live.Progress.Workshop;
import org.arcwright.record.Course.Row;
import org.junit.jupiter.api.Test;

/** A plan and a day, side by side. */
class CourseTest {
  private static final Optional<ZonedDateTime> NINE =
      Optional.of(ZonedDateTime.parse("2027-03-02T09:00+01:00[Europe/Vienna]"));
  private static final Catalog NOTHING = Catalog.of(List.of(), List.of(), List.of(), List.of());

  /** An hour: a, b, a break, c and a quarter of an hour kept free. */
  private static Agenda plan(Optional<ZonedDateTime> start) {
    List<AgendaItem> items =
        List.of(
            activity("a", 0, 10),
            activity("b", 10, 15),
            new Pause(Duration.ofMinutes(25), Duration.ofMinutes(5), false),
            activity("c", 30, 15));
    return new Agenda(
        "Plan",
        "generate-ideas",
        Mode.REMOTE,
        5,
        Duration.ofMinutes(60),
        start,
        List.of(new Agenda.PhaseTitle("open", "Arrive")),
        items,
        Duration.ofMinutes(15),
        List.of(),
        Figures.of(items, List.of(), Duration.ofMinutes(60)));
  }

  private static Activity activity(String id, int start, int minutes) {
    return new Activity(
        id,
        "Exercise " + id,
        Optional.of(Kind.DIVERGENT),
        "open",
        Duration.ofMinutes(start),
        Duration.ofMinutes(minutes),
        Format.PLENARY,
        30);
  }

  private static Course course(
      Optional<ZonedDateTime> start, Optional<Agenda> plan, Object... day) {
    List<Happening> happened = new ArrayList<>();
    for (int i = 0; i < day.length; i += 3) {
      happened.add(
          new Happening(
              (String) day[i],
              Optional.empty(),
              Duration.ofMinutes((int) day[i + 1]),
              Duration.ofMinutes((int) day[i + 2]),
              Optional.empty()));
    }
    WorkshopRecord record =
        new WorkshopRecord(
            new Workshop("Day", Mode.REMOTE, 5, start),
            Optional.empty(),
            Optional.empty(),
            happened,
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            After.USUAL);
    return Course.of(record, plan, NOTHING);
  }

  private static Course course(Object... day) {
    return course(NINE, Optional.of(plan(NINE)), day);
  }

  /** Each row in short: {@code a 10>12} was to take ten minutes and took twelve. */
  private static List<String> rows(Course course) {
    return course.rows().stream().map(CourseTest::row).toList();
  }

  private static String row(Row row) {
    String name = row.pause() ? "break" : row.title();
    String planned = row.planned().map(span -> span.length().toMinutes() + "").orElse("-");
    List<Long> held = row.held().stream().map(h -> h.length().toMinutes()).toList();
    return name + " " + planned + " " + held;
  }

  @Test
  void a_day_that_went_as_planned() {
    Course course = course("a", 0, 10, "b", 10, 25, "break", 25, 30, "c", 30, 60);

    assertThat(rows(course))
        .containsExactly(
            "Exercise a 10 [10]", "Exercise b 15 [15]", "break 5 [5]", "Exercise c 15 [30]");
    assertThat(course.rows()).extracting(Row::number).containsExactly(1, 2, 0, 3);
    assertThat(course.rows().get(3).longer()).contains(Duration.ofMinutes(15));
    assertThat(course.late()).contains(Duration.ZERO);
  }

  @Test
  void what_was_left_out_added_and_taken_up_again() {
    Course course = course("b", 2, 12, "talk-by-a-guest", 12, 20, "b", 20, 27, "c", 40, 70);

    assertThat(rows(course))
        .containsExactly(
            "Exercise a 10 []",
            "Exercise b 15 [10, 7]",
            "talk by a guest - [8]",
            "break 5 []",
            "Exercise c 15 [30]");
    assertThat(course.rows().get(1).longer()).contains(Duration.ofMinutes(2));
    assertThat(course.rows().get(2).longer()).isEmpty();
    assertThat(course.late()).contains(Duration.ofMinutes(10));
    assertThat(course.begun()).contains(Duration.ofMinutes(2));
  }

  /** By the plan's clock the talk would stand behind b, which it made late. */
  @Test
  void what_nobody_planned_stands_before_what_was_held_after_it() {
    assertThat(rows(course("a", 0, 20, "talk-by-a-guest", 20, 35, "b", 35, 50, "c", 50, 65)))
        .containsExactly(
            "Exercise a 10 [20]",
            "talk by a guest - [15]",
            "Exercise b 15 [15]",
            "break 5 []",
            "Exercise c 15 [15]");
  }

  @Test
  void a_break_more_is_one_that_nobody_planned() {
    Course course = course("a", 0, 10, "break", 22, 27, "c", 30, 45, "break", 45, 50);

    assertThat(rows(course)).contains("break 5 [5]", "break - [5]");
  }

  @Test
  void the_scale_holds_both() {
    Course early = course("a", -5, 10);

    assertThat(early.from()).isEqualTo(Duration.ofMinutes(-5));
    assertThat(early.to()).isEqualTo(Duration.ofMinutes(60));
    assertThat(course("a", 70, 80).to()).isEqualTo(Duration.ofMinutes(80));
  }

  @Test
  void the_clock_puts_the_plan_of_the_same_day_where_it_was_to_be() {
    Course late =
        course(NINE.map(nine -> nine.plusMinutes(20)), Optional.of(plan(NINE)), "a", 0, 10);
    Course moved = course(NINE.map(nine -> nine.plusDays(7)), Optional.of(plan(NINE)), "a", 0, 10);

    assertThat(late.rows().get(0).planned().orElseThrow().from())
        .isEqualTo(Duration.ofMinutes(-20));
    assertThat(late.promised()).contains(Duration.ofMinutes(40));
    assertThat(moved.promised()).contains(Duration.ofMinutes(60));
  }

  @Test
  void without_a_plan_there_is_only_the_day() {
    Course course = course(Optional.empty(), Optional.empty(), "a", 0, 10);

    assertThat(rows(course)).containsExactly("a - [10]");
    assertThat(course.promised()).isEmpty();
    assertThat(course.late()).isEmpty();
  }
}
