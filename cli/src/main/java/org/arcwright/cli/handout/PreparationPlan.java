package org.arcwright.cli.handout;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.arcwright.catalog.Mode;
import org.arcwright.cli.page.Block;
import org.arcwright.cli.page.Block.Cell;
import org.arcwright.cli.page.Block.Table;
import org.arcwright.cli.page.Block.Text;
import org.arcwright.cli.page.Sheet;
import org.arcwright.cli.words.Language;

/** What is to be done before the day, dated back from it in working days. */
public final class PreparationPlan {
  /** Days before, minutes and who: common practice, no source. */
  private enum Task {
    SPONSOR("sponsor", 15, 45, "facilitator", true),
    INVITE("invite", 12, 30, "sponsor", true),
    BOARD("board", 6, 90, "producer", false),
    ONBOARD("onboard", 5, 30, "facilitator", true),
    TALKS("talks", 4, 60, "facilitator", true),
    TEST("test", 3, 45, "producer", false),
    SLIDES("slides", 3, 30, "producer", false),
    STANDINS("stand-ins", 2, 20, "facilitator", true),
    REHEARSE("rehearse", 1, 60, "both", true),
    HOUR("hour", 0, 60, "both", true);

    private final String key;
    private final int days;
    private final int minutes;
    private final String owner;
    private final boolean everywhere;

    Task(String key, int days, int minutes, String owner, boolean everywhere) {
      this.key = key;
      this.days = days;
      this.minutes = minutes;
      this.owner = owner;
      this.everywhere = everywhere;
    }
  }

  private PreparationPlan() {}

  /** The sheet. */
  public static Sheet of(Workshop workshop) {
    Language language = workshop.language();
    List<List<Cell>> rows = new ArrayList<>();
    for (Task task : Task.values()) {
      if (task.everywhere || workshop.agenda().mode() != Mode.IN_PERSON) {
        String day =
            workshop
                .hours()
                .day()
                .map(start -> language.date(before(start, task.days)))
                .orElseGet(() -> language.say("plan.before", task.days));
        rows.add(
            List.of(
                Cell.of(day),
                Cell.of(
                    language.say("plan.task." + task.key), language.say("plan.how." + task.key)),
                Cell.of(language.say("plan.owner." + task.owner)),
                Cell.of(language.say("time.minutes", task.minutes))));
      }
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
