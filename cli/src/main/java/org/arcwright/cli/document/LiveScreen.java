package org.arcwright.cli.document;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.agenda.AgendaItem.Pause;
import org.arcwright.live.Day;
import org.arcwright.live.LogEntry;
import org.arcwright.live.LogEntry.Agreed;
import org.arcwright.live.LogEntry.Decision;
import org.arcwright.live.LogEntry.Ended;
import org.arcwright.live.LogEntry.EnergyCheck;
import org.arcwright.live.LogEntry.Note;
import org.arcwright.live.LogEntry.Started;
import org.arcwright.live.Progress;

/** A day that is being run, as lines on a screen: what now, what next, and how time stands. */
public final class LiveScreen {
  private static final int LABEL = 6;
  private static final int NEXT = 4;
  private static final int BAR = 40;
  private static final int ASIDE = 16;

  /** Nobody calls it late or early before so many minutes. */
  private static final long NOTICED = 2;

  private final Day day;
  private final OffsetDateTime now;
  private final Marks marks;
  private final Style style;
  private final int width;
  private final Clock clock;
  private final List<String> lines = new ArrayList<>();

  private LiveScreen(Day day, OffsetDateTime now, Marks marks, Style style, int width) {
    this.day = day;
    this.now = now;
    this.marks = marks;
    this.style = style;
    this.width = width;
    this.clock = new Clock(day.plan().start());
  }

  /**
   * Draws it.
   *
   * @param width of a line in characters, 40 or more
   */
  public static List<String> draw(
      Day day, OffsetDateTime now, Marks marks, Style style, int width) {
    LiveScreen screen = new LiveScreen(day, now, marks, style, width);
    screen.draw();
    return screen.lines.stream().map(Words::untied).toList();
  }

  private void draw() {
    String time = at(day.since(now));
    String title = fitting(day.plan().title(), width - time.length() - 2);
    lines.add(style.heading(Wrap.left(title, width - time.length()) + time));
    lines.add("");
    running();
    lines.add("");
    ahead();
    lines.add("");
    lines.addAll(Wrap.lines(end(), width));
    last()
        .ifPresent(
            said -> {
              lines.add("");
              lines.add(style.faint(fitting(said, width)));
            });
  }

  private void running() {
    Optional<Progress.Run> running = day.running();
    if (running.isEmpty()) {
      boolean over = day.ahead(now).isEmpty();
      lines.add(
          label("now")
              + (over ? "all is done" : begun() ? "nothing runs" : "not begun yet" + planned()));
      return;
    }
    Progress.Run run = running.get();
    Optional<AgendaItem> item = day.runningItem();
    String name = item.map(LiveScreen::name).orElse(run.item());
    String left = left();
    int room = width - LABEL - ASIDE;
    lines.add(
        label("now")
            + style.heading(Wrap.left(fitting(name, room), room))
            + style.heading(Wrap.right(left, ASIDE)));
    Duration since = day.since(now).minus(Duration.between(run.start(), now));
    String span = "since " + at(since);
    Optional<Duration> allowed = day.allowed();
    if (allowed.isPresent()) {
      span += ", for " + Words.time(allowed.get());
    }
    if (item.isPresent() && item.get() instanceof Activity activity) {
      span += ", " + Words.format(activity.format());
    }
    lines.add(label("") + style.faint(span));
    allowed.ifPresent(planned -> lines.add(label("") + bar(run, planned)));
  }

  /** How much of its time is used. */
  private String bar(Progress.Run run, Duration planned) {
    long used = Duration.between(run.start(), now).toSeconds();
    int full = (int) Math.max(0, Math.min(BAR, BAR * used / Math.max(1, planned.toSeconds())));
    return String.valueOf(marks.inner()).repeat(full)
        + String.valueOf(marks.open()).repeat(BAR - full);
  }

  private String left() {
    Optional<Duration> left = day.left(now);
    if (left.isEmpty()) {
      return "not planned";
    }
    long seconds = left.get().toSeconds();
    return seconds < 0
        ? Words.time((int) (-seconds / 60)) + " over"
        : Words.time((int) ((seconds + 59) / 60)) + " left";
  }

  private void ahead() {
    List<Day.Ahead> ahead = day.ahead(now);
    for (int i = 0; i < Math.min(NEXT, ahead.size()); i++) {
      AgendaItem item = ahead.get(i).item();
      String row =
          clock.at(ahead.get(i).start()) + "  " + name(item) + ", " + Words.time(item.length());
      lines.add(label(i == 0 ? "next" : "") + fitting(row, width - LABEL));
    }
    if (ahead.size() > NEXT) {
      lines.add(label("") + style.faint("and " + (ahead.size() - NEXT) + " more"));
    }
  }

  private boolean begun() {
    return !day.progress().runs().isEmpty();
  }

  /** When it was to begin, as long as that is worth knowing. */
  private String planned() {
    long late = day.since(now).toMinutes();
    if (Math.abs(late) < NOTICED) {
      return "";
    }
    String minutes = Words.time((int) Math.abs(late));
    return ", planned for "
        + clock.at(Duration.ZERO)
        + (late < 0 ? ", in " + minutes : ", " + minutes + " ago");
  }

  /**
   * When it ends. Before the first item has begun nobody is behind: people may still be on their
   * way in, and a late start is told where it says when it was to begin.
   */
  private String end() {
    String free = "; everybody is to be free by " + clock.at(day.plan().cap()) + ".";
    if (!begun()) {
      boolean early = day.since(now).isNegative();
      return (early ? "Ends at " : "Begun now, it ends at ") + clock.at(day.end(now)) + free;
    }
    long behind = day.behind(now).toMinutes();
    String stands =
        Math.abs(behind) < NOTICED
            ? ", on time"
            : ", " + Words.time((int) Math.abs(behind)) + (behind > 0 ? " behind" : " ahead");
    return "Ends at " + clock.at(day.end(now)) + " as things stand" + stands + free;
  }

  /** What was entered last and still stands, in words. */
  public static Optional<String> entered(Day day) {
    List<LogEntry> standing = day.progress().standing();
    LiveScreen screen =
        new LiveScreen(day, OffsetDateTime.MIN, Marks.ASCII, Style.PLAIN, Integer.MAX_VALUE);
    return standing.isEmpty()
        ? Optional.empty()
        : Optional.of(screen.said(standing.get(standing.size() - 1)));
  }

  /** What was entered last and still stands. */
  private Optional<String> last() {
    List<LogEntry> standing = day.progress().standing();
    if (standing.isEmpty()) {
      return Optional.empty();
    }
    LogEntry last = standing.get(standing.size() - 1);
    Duration since = day.since(now).minus(Duration.between(last.at(), now));
    return Optional.of("last: " + at(since) + " " + said(last));
  }

  private String said(LogEntry entry) {
    if (entry instanceof Started started) {
      return Words.quoted(title(started.item())) + " begun";
    } else if (entry instanceof Ended ended) {
      return Words.quoted(title(ended.item())) + " over";
    } else if (entry instanceof Note note) {
      return "note: " + note.text();
    } else if (entry instanceof Decision decision) {
      return "decided: " + decision.text();
    } else if (entry instanceof EnergyCheck check) {
      return "energy " + check.level() + " of 5";
    } else if (entry instanceof Agreed) {
      return "another plan agreed";
    }
    return "";
  }

  private String title(String id) {
    return day.plan().activities().stream()
        .filter(activity -> activity.exercise().equals(id))
        .map(Activity::title)
        .findFirst()
        .orElse(id);
  }

  private static String name(AgendaItem item) {
    return item instanceof Pause pause
        ? pause.meal() ? "meal" : "break"
        : ((Activity) item).title();
  }

  private static String label(String word) {
    return Wrap.left(word, LABEL);
  }

  private static String fitting(String text, int width) {
    String line = text.replace('\n', ' ');
    return line.length() <= width ? line : line.substring(0, Math.max(0, width - 3)) + "...";
  }

  /** A time of day; from the start, one before it is the start. */
  private String at(Duration since) {
    return clock.at(since.isNegative() && !clock.ofDay() ? Duration.ZERO : since);
  }
}
