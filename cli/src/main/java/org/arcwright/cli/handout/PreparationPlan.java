package org.arcwright.cli.handout;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.arcwright.catalog.Mode;
import org.arcwright.cli.page.Block;
import org.arcwright.cli.page.Block.Cell;
import org.arcwright.cli.page.Block.Table;
import org.arcwright.cli.page.Block.Text;
import org.arcwright.cli.page.Sheet;
import org.arcwright.cli.words.Language;
import org.arcwright.standin.StandIn;
import org.arcwright.standin.StandIns;

/** What is to be done before the day, dated back from it in working days. */
public final class PreparationPlan {
  /** Days before, minutes and who: common practice, no source. */
  private enum Task {
    SPONSOR("sponsor", 15, 45, "facilitator", Where.EVERYWHERE),
    INVITE("invite", 12, 30, "sponsor", Where.EVERYWHERE),
    MATERIALS("materials", 7, 45, "producer", Where.ROOM),
    BOARD("board", 6, 90, "producer", Where.BOARD),
    SPARE_BOARD("spare-board", 6, 30, "producer", Where.SPARE_BOARD),
    DOCUMENT("document", 6, 30, "producer", Where.DOCUMENT),
    ONBOARD("onboard", 5, 30, "facilitator", Where.EVERYWHERE),
    TALKS("talks", 4, 60, "facilitator", Where.EVERYWHERE),
    TEST("test", 3, 45, "producer", Where.SCREENS),
    TRY("try", 3, 30, "producer", Where.ROOM),
    SLIDES("slides", 3, 30, "producer", Where.BOARD),
    STANDINS("stand-ins", 2, 20, "facilitator", Where.EVERYWHERE),
    REHEARSE("rehearse", 1, 60, "both", Where.EVERYWHERE),
    HOUR("hour", 0, 60, "both", Where.EVERYWHERE);

    private final String key;
    private final int days;
    private final int minutes;
    private final String owner;
    private final Where where;

    Task(String key, int days, int minutes, String owner, Where where) {
      this.key = key;
      this.days = days;
      this.minutes = minutes;
      this.owner = owner;
      this.where = where;
    }
  }

  private enum Where {
    EVERYWHERE,
    SCREENS,
    BOARD,
    SPARE_BOARD,
    DOCUMENT,
    ROOM
  }

  private final Workshop workshop;
  private final Language language;

  /** The stand-ins that need a board where the agenda itself has none. */
  private final List<StandIn> onSpareBoard;

  private PreparationPlan(Workshop workshop, StandIns standIns) {
    this.workshop = workshop;
    this.language = workshop.language();
    this.onSpareBoard = Spares.tools(workshop, standIns).getOrDefault("board", List.of());
  }

  private List<Task> tasks() {
    Mode mode = workshop.agenda().mode();
    List<Task> tasks = new ArrayList<>();
    for (Task task : Task.values()) {
      boolean wanted =
          switch (task.where) {
            case EVERYWHERE -> true;
            case SCREENS -> mode != Mode.IN_PERSON;
            case BOARD -> workshop.leansOnBoard();
            case SPARE_BOARD -> !onSpareBoard.isEmpty();
            case DOCUMENT -> !workshop.using("document").isEmpty();
            case ROOM -> mode != Mode.REMOTE;
          };
      if (wanted) {
        tasks.add(task);
      }
    }
    return tasks;
  }

  /** The sheet. */
  public static Sheet of(Workshop workshop, StandIns standIns) {
    return new PreparationPlan(workshop, standIns).sheet();
  }

  private Sheet sheet() {
    List<List<Cell>> rows = new ArrayList<>();
    for (Task task : tasks()) {
      String day =
          workshop
              .hours()
              .day()
              .map(start -> language.date(before(start, task.days)))
              .orElseGet(() -> language.say("plan.before", task.days));
      rows.add(
          List.of(
              Cell.of(day),
              Cell.of(language.say("plan.task." + task.key), how(task)),
              Cell.of(owner(task)),
              Cell.of(language.say("time.minutes", task.minutes))));
    }
    List<Block> blocks =
        List.of(
            new Text(language.say("plan.lead")),
            new Table(
                language.say("plan.kicker"),
                List.of(
                    language.say("plan.day"),
                    language.say("plan.what"),
                    language.say("plan.who"),
                    language.say("plan.minutes")),
                rows));
    return new Sheet(
        workshop.agenda().title(), language.say("plan.kicker"), workshop.facts(), blocks);
  }

  /**
   * The plan as a calendar file; none if the agenda has no start. A task is an event on its day
   * that leaves the day free, for many calendars do not show tasks.
   *
   * @param stamp when it is written
   * @param before what the earlier file said, if there is one
   */
  public static Optional<String> calendar(
      Workshop workshop, StandIns standIns, Instant stamp, Optional<String> before) {
    PreparationPlan plan = new PreparationPlan(workshop, standIns);
    return workshop.agenda().start().flatMap(start -> plan.write(start, stamp, before));
  }

  private Optional<String> write(ZonedDateTime start, Instant stamp, Optional<String> before) {
    CalendarEvents events = new CalendarEvents(workshop.whose(), stamp, before);
    for (Task task : tasks()) {
      Duration length = Duration.ofMinutes(task.minutes);
      String word = "plan:" + task.key;
      String title =
          language.say(
              "plan.event", language.say("plan.task." + task.key), workshop.agenda().title());
      String more = language.say("plan.event.more", how(task), owner(task), language.time(length));
      if (task.days == 0) {
        events.add(word, title, more, start.minus(length), start);
      } else {
        events.add(word, title, more, before(start.toLocalDate(), task.days));
      }
    }
    return events.write();
  }

  /** The last hour is another one at screens, in a room, and in both. */
  private String how(Task task) {
    return switch (task) {
      case HOUR -> language.say("plan.how.hour." + workshop.agenda().mode().word());
      case SPARE_BOARD ->
          language.say(
              "plan.how.spare-board",
              language.list(
                  onSpareBoard.stream()
                      .map(standIn -> language.say("quoted", standIn.title()))
                      .toList()));
      default -> language.say("plan.how." + task.key);
    };
  }

  private String owner(Task task) {
    return language.say("plan.owner." + task.owner);
  }

  /** So many days from Monday to Friday earlier. */
  static LocalDate before(LocalDate day, int workingDays) {
    LocalDate date = day;
    for (int left = workingDays; left > 0; ) {
      date = date.minusDays(1);
      if (date.getDayOfWeek().getValue() < DayOfWeek.SATURDAY.getValue()) {
        left--;
      }
    }
    return date;
  }
}
