package org.arcwright.cli.handout;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.arcwright.cli.page.Markdown;
import org.arcwright.cli.page.Pages;
import org.arcwright.cli.page.Sheet;

/** All handouts after a workshop as files. */
public final class AfterBundle {
  /** The calendar's name. */
  public static final String CALENDAR = "follow-ups.ics";

  private AfterBundle() {}

  /**
   * The files by name.
   *
   * @param now when they are written
   * @param before what the calendar said when it was last written
   */
  public static Map<String, String> of(
      Account account, Pages pages, Instant now, Optional<String> before) {
    Map<String, String> files = new LinkedHashMap<>();
    add(files, "report", ReportSheet.of(account), pages);
    if (!HandoverSheet.length(account).isZero()) {
      add(files, "handover", HandoverSheet.of(account), pages);
    }
    FollowUpCalendar.of(account, now, before).ifPresent(calendar -> files.put(CALENDAR, calendar));
    return files;
  }

  private static void add(Map<String, String> files, String name, Sheet sheet, Pages pages) {
    files.put(name + ".html", pages.html(sheet));
    files.put(name + ".md", Markdown.of(sheet));
  }
}
