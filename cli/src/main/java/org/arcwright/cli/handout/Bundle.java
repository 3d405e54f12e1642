package org.arcwright.cli.handout;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.arcwright.cli.page.Block;
import org.arcwright.cli.page.Block.Part;
import org.arcwright.cli.page.Block.Point;
import org.arcwright.cli.page.Block.Points;
import org.arcwright.cli.page.Markdown;
import org.arcwright.cli.page.Pages;
import org.arcwright.cli.page.Sheet;
import org.arcwright.cli.words.Language;
import org.arcwright.standin.StandIns;

/** All handouts of a workshop as files, with a page that leads to each. */
public final class Bundle {
  /** The name of the workshop's calendar. */
  public static final String CALENDAR = "agenda.ics";

  private static final String PLAN = "plan.ics";

  private final Workshop workshop;
  private final Language language;
  private final Pages pages;
  private final Map<String, String> files = new LinkedHashMap<>();
  private final List<Block> parts = new ArrayList<>();
  private final List<Point> links = new ArrayList<>();

  private Bundle(Workshop workshop, Pages pages) {
    this.workshop = workshop;
    this.language = workshop.language();
    this.pages = pages;
  }

  /**
   * The files by name.
   *
   * @param standIns what takes the place of what fails
   * @param zones in which people are
   * @param items whether the calendar has an event for each item
   * @param now when they are written
   * @param before what a file of a name said when it was last written
   */
  public static Map<String, String> of(
      Workshop workshop,
      StandIns standIns,
      Pages pages,
      List<ZoneId> zones,
      boolean items,
      Instant now,
      Function<String, Optional<String>> before) {
    return new Bundle(workshop, pages).files(standIns, zones, items, now, before);
  }

  private Map<String, String> files(
      StandIns standIns,
      List<ZoneId> zones,
      boolean items,
      Instant now,
      Function<String, Optional<String>> before) {
    add("sponsor-call", "sponsor", SponsorSheet.of(workshop));
    add("preparation-plan", "plan", PreparationPlan.of(workshop, standIns));
    PreparationPlan.calendar(workshop, standIns, now, before.apply(PLAN))
        .ifPresent(file -> calendar(PLAN, "index.plan-calendar", "index.plan-calendar.what", file));
    BoardPlan.of(workshop)
        .ifPresent(sheet -> add("board-plan", workshop.boardPlan(), "board", sheet));
    add("materials", "materials", MaterialsList.of(workshop, standIns));
    add("tool-test", "test", ToolTestSheet.of(workshop, standIns));
    part("before");
    add("onboarding", "invite", Invitation.of(workshop));
    files.put("onboarding.txt", Invitation.text(workshop));
    add(
        "participants",
        language.say("index.people.title"),
        "people",
        ParticipantsSheet.of(workshop, zones));
    CalendarFile.of(workshop, items, now, before.apply(CALENDAR))
        .ifPresent(file -> calendar(CALENDAR, "index.calendar", "index.calendar.what", file));
    part("send");
    add(
        "run-sheet",
        language.say("run.kicker"),
        "run",
        RunSheet.of(workshop, standIns),
        RunSheet.html(workshop, standIns, pages));
    add("stand-ins", "standins", StandInSheet.of(workshop, standIns));
    part("day");
    Sheet index =
        new Sheet(workshop.agenda().title(), language.say("index.kicker"), workshop.facts(), parts);
    files.put("index.html", pages.html(index));
    return files;
  }

  /** Ends a part of the index. */
  private void part(String id) {
    parts.add(Part.of(id, language.say("index.part." + id), new Points(links)));
    links.clear();
  }

  private void calendar(String name, String key, String what, String file) {
    files.put(name, file);
    links.add(new Point(language.say(key), language.say(what), name));
  }

  private void add(String name, String key, Sheet sheet) {
    add(name, language.say(key + ".kicker"), key, sheet);
  }

  private void add(String name, String title, String key, Sheet sheet) {
    add(name, title, key, sheet, pages.html(sheet));
  }

  private void add(String name, String title, String key, Sheet sheet, String html) {
    files.put(name + ".html", html);
    files.put(name + ".md", Markdown.of(sheet));
    links.add(new Point(title, language.say("index." + key), name + ".html"));
  }
}
