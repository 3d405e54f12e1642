package org.arcwright.cli.handout;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.arcwright.cli.page.Block;
import org.arcwright.cli.page.Block.Point;
import org.arcwright.cli.page.Block.Points;
import org.arcwright.cli.page.Markdown;
import org.arcwright.cli.page.Pages;
import org.arcwright.cli.page.Sheet;
import org.arcwright.cli.words.Language;

/** All handouts of a workshop as files, with a page that leads to each. */
public final class Bundle {
  /** The calendar's name. */
  public static final String CALENDAR = "agenda.ics";

  private final Workshop workshop;
  private final Pages pages;
  private final Map<String, String> files = new LinkedHashMap<>();
  private final List<Point> links = new ArrayList<>();

  private Bundle(Workshop workshop, Pages pages) {
    this.workshop = workshop;
    this.pages = pages;
  }

  /**
   * The files by name.
   *
   * @param zones in which people are
   * @param items whether the calendar has an event for each item
   * @param now when they are written
   * @param before what the calendar said when it was last written
   */
  public static Map<String, String> of(
      Workshop workshop,
      Pages pages,
      List<ZoneId> zones,
      boolean items,
      Instant now,
      Optional<String> before) {
    return new Bundle(workshop, pages).files(zones, items, now, before);
  }

  private Map<String, String> files(
      List<ZoneId> zones, boolean items, Instant now, Optional<String> before) {
    add("preparation-plan", "plan", PreparationPlan.of(workshop));
    add("onboarding", "invite", Invitation.of(workshop));
    files.put("onboarding.txt", Invitation.text(workshop));
    add("participants", "people", ParticipantsSheet.of(workshop, zones));
    add("run-sheet", "run", RunSheet.of(workshop), RunSheet.html(workshop, pages));
    Language language = workshop.language();
    CalendarFile.of(workshop, items, now, before)
        .ifPresent(
            calendar -> {
              files.put(CALENDAR, calendar);
              links.add(
                  new Point(
                      language.say("index.calendar"),
                      language.say("index.calendar.what"),
                      CALENDAR));
            });
    List<Block> blocks = List.of(new Points(links));
    Sheet index =
        new Sheet(
            workshop.agenda().title(), language.say("index.kicker"), workshop.facts(), blocks);
    files.put("index.html", pages.html(index));
    return files;
  }

  private void add(String name, String key, Sheet sheet) {
    add(name, key, sheet, pages.html(sheet));
  }

  private void add(String name, String key, Sheet sheet, String html) {
    Language language = workshop.language();
    files.put(name + ".html", html);
    files.put(name + ".md", Markdown.of(sheet));
    links.add(
        new Point(language.say(key + ".kicker"), language.say("index." + key), name + ".html"));
  }
}
