package org.arcwright.cli.document;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.agenda.AgendaItem.Pause;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Product;
import org.arcwright.live.Replan;
import org.arcwright.live.Replan.FollowUp;
import org.arcwright.live.Way;

/** Ways to go on with a day, short enough to be read while people wait. */
public final class ReplanDocument {
  private static final String INDENT = "   ";
  private static final String GOES_ON = " ...";

  private final Replan replan;
  private final Agenda plan;
  private final Brief brief;
  private final Catalog catalog;
  private final Clock clock;
  private final WayWords words;

  /**
   * @param plan what was planned
   * @param brief what ties something to a time
   * @param catalog where its work products have their names from
   */
  public ReplanDocument(Replan replan, Agenda plan, Brief brief, Catalog catalog) {
    this.replan = replan;
    this.plan = plan;
    this.brief = brief;
    this.catalog = catalog;
    this.clock = new Clock(plan.start());
    this.words = new WayWords(clock, replan.now(), this::product);
  }

  /**
   * All of it: how things stand, the ways, what remains for another day, and how to take a way.
   *
   * @param width of a line in characters, 60 or more
   */
  public String text(Marks marks, Style style, int width) {
    List<String> lines = new ArrayList<>(advice(marks, style, width));
    List<String> hints = new ArrayList<>();
    if (!replan.ways().isEmpty()) {
      hints.add("To take a way and see all its times, add --take 1 --out today.json");
    }
    Set<String> added = new LinkedHashSet<>();
    replan.ways().forEach(way -> added.addAll(words.added(way)));
    added.removeIf(id -> catalog.exercise(id).isEmpty());
    if (!added.isEmpty()) {
      hints.add("How what is new runs: catalog show ID, with " + String.join(", ", added));
    }
    for (Activity activity : missed()) {
      if (replan.ways().stream().noneMatch(way -> words.moves(way, activity.exercise()))) {
        hints.add(
            Words.quoted(activity.title())
                + " keeps its time; to let it move, add --may-move "
                + activity.exercise());
      }
    }
    lines.add("");
    hints.forEach(hint -> lines.addAll(Wrap.lines(hint, width)));
    return Words.untied(String.join("\n", lines)) + "\n";
  }

  /** The same, line by line, without how to take a way. */
  public List<String> advice(Marks marks, Style style, int width) {
    return advice(marks, style, width, Integer.MAX_VALUE);
  }

  /**
   * The same on a screen of so many rows: what is too long first says no times of the later ways,
   * then none at all.
   */
  public List<String> advice(Marks marks, Style style, int width, int rows) {
    List<String> lines = advice(marks, style, width, Times.FIRST_AND_NEXT);
    if (lines.size() > rows) {
      lines = advice(marks, style, width, Times.FIRST);
    }
    return lines.size() > rows ? advice(marks, style, width, Times.NONE) : lines;
  }

  /** Of which ways the times are there: all of the first, and what comes next in the others. */
  private enum Times {
    FIRST_AND_NEXT,
    FIRST,
    NONE
  }

  private List<String> advice(Marks marks, Style style, int width, Times times) {
    List<String> lines = new ArrayList<>(Wrap.lines(situation(), width));
    int number = 0;
    for (Way way : replan.ways()) {
      lines.add("");
      String first = ++number + "  ";
      Wrap.hanging(first, headline(way), width).forEach(line -> lines.add(style.heading(line)));
      lines.addAll(Wrap.hanging(INDENT, words.outcome(way), width));
      for (String change : words.changes(way)) {
        lines.addAll(Wrap.hanging(INDENT + "- ", change, width));
      }
      if (meals(plan) > meals(way.agenda())) {
        String late = "no meal any more before the end: let people eat after it";
        lines.addAll(Wrap.hanging(INDENT + "- ", late, width));
      }
      if (number == 1 && times != Times.NONE) {
        Wrap.hanging(INDENT, course(way, marks), width)
            .forEach(line -> lines.add(style.faint(line)));
      } else if (times == Times.FIRST_AND_NEXT) {
        begun(way, marks, width).forEach(line -> lines.add(style.faint(line)));
      }
    }
    replan.followUp().ifPresent(followUp -> followUp(followUp, style, width, lines));
    return lines.stream().map(Words::untied).toList();
  }

  /** One line of it, with a sign that it goes on: enough to see what comes next. */
  private List<String> begun(Way way, Marks marks, int width) {
    List<String> course = Wrap.hanging(INDENT, course(way, marks), width - GOES_ON.length());
    return course.size() == 1 ? course : List.of(course.get(0) + GOES_ON);
  }

  private String headline(Way way) {
    boolean early = way.kind() == Way.Kind.CARRY_ON && replan.behind().isNegative();
    return words.headline(way)
        + (early ? ", and be done " + Words.time(replan.behind().abs()) + " early" : "");
  }

  private static long meals(Agenda agenda) {
    return agenda.items().stream()
        .filter(item -> item instanceof Pause pause && pause.meal())
        .count();
  }

  /** What follows from now on when a way is taken, row by row. */
  public String taken(Way way, Style style, int width) {
    List<String> lines = new ArrayList<>();
    Wrap.lines("Agreed: " + headline(way), width).forEach(line -> lines.add(style.heading(line)));
    for (AgendaItem item : ahead(way)) {
      String times =
          "  " + clock.at(item.start()) + "  " + Wrap.right(Words.time(item.length()), 10) + "  ";
      lines.addAll(Wrap.hanging(times, name(item), width));
    }
    lines.add("  " + clock.at(way.agenda().end()) + "  " + Wrap.right("", 10) + "  the end");
    return Words.untied(String.join("\n", lines)) + "\n";
  }

  private String situation() {
    String now = "It is " + clock.at(replan.now()) + (clock.ofDay() ? "" : " from the start");
    long behind = replan.behind().toMinutes();
    String stands =
        behind == 0
            ? ", and you are on time."
            : ", and you are "
                + Words.time(replan.behind().abs())
                + (behind > 0 ? " behind." : " ahead.");
    Replan.Unchanged unchanged = replan.unchanged();
    String end = clock.at(replan.end());
    String carryOn =
        unchanged.agenda().end().compareTo(replan.end()) > 0
            ? " Change nothing, and you end at "
                + clock.at(unchanged.agenda().end())
                + ", "
                + Words.time(unchanged.agenda().end().minus(replan.end()))
                + " over."
            : " Change nothing, and you end at "
                + clock.at(unchanged.agenda().end())
                + "; the chance to be done by "
                + end
                + " is "
                + Words.chance(unchanged.onTime())
                + (unchanged.keeps() ? "." : ", but " + amiss(unchanged) + ".");
    return now + stands + carryOn + overdue();
  }

  /** Where people have been at work for longer than the brief allows at a stretch. */
  private String overdue() {
    Duration since = replan.now();
    Optional<Duration> before = Optional.empty();
    for (AgendaItem item : replan.unchanged().agenda().items()) {
      if (item.start().compareTo(replan.now()) >= 0) {
        break;
      }
      since = rested(before, item.start()) ? item.start() : since;
      before = item instanceof Pause ? Optional.empty() : Optional.of(item.end());
    }
    Duration worked = rested(before, replan.now()) ? Duration.ZERO : replan.now().minus(since);
    return worked.compareTo(brief.rhythm().longest()) > 0
        ? " Nobody has had a break for " + Words.time(worked) + "."
        : "";
  }

  /** Whether people had a rest before a time: a break, or a while as long in which nothing ran. */
  private boolean rested(Optional<Duration> before, Duration time) {
    Duration pause = brief.rhythm().pause();
    return before.isEmpty() || (!pause.isZero() && time.minus(before.get()).compareTo(pause) >= 0);
  }

  /** What the brief ties to a time that it would miss if nothing changed. */
  private List<Activity> missed() {
    Map<String, Duration> tied = new HashMap<>();
    brief.wishes().pins().forEach(pin -> tied.put(pin.exercise(), brief.offset(pin.at())));
    brief
        .ownItems()
        .forEach(item -> item.at().ifPresent(at -> tied.put(item.id(), brief.offset(at))));
    tied.values().removeIf(time -> time.compareTo(replan.now()) <= 0);
    return replan.unchanged().agenda().activities().stream()
        .filter(activity -> tied.containsKey(activity.exercise()))
        .filter(activity -> !activity.start().equals(tied.get(activity.exercise())))
        .toList();
  }

  private String amiss(Replan.Unchanged unchanged) {
    Duration longest = unchanged.agenda().figures().longestStretch();
    if (longest.compareTo(plan.figures().longestStretch()) > 0) {
      return "people work " + Words.time(longest) + " without a break";
    }
    return missed().stream()
        .findFirst()
        .map(activity -> Words.quoted(activity.title()) + " misses its fixed time")
        .orElse("a break or a fixed time is missed");
  }

  /** From now on in one flow: {@code 10:45 break · 10:55 Dot voting · 11:10 the end}. */
  private String course(Way way, Marks marks) {
    List<String> steps = new ArrayList<>();
    for (AgendaItem item : ahead(way)) {
      boolean runs = item.start().compareTo(replan.now()) < 0;
      steps.add(Words.tied((runs ? "now:" : clock.at(item.start())) + " ") + name(item));
    }
    steps.add(Words.tied(clock.at(way.agenda().end()) + " the end"));
    return String.join(marks.equals(Marks.ASCII) ? " | " : " · ", steps);
  }

  private List<AgendaItem> ahead(Way way) {
    return way.agenda().items().stream()
        .filter(item -> item.end().compareTo(replan.now()) > 0)
        .toList();
  }

  private static String name(AgendaItem item) {
    return item instanceof Pause pause
        ? pause.meal() ? "meal" : "break"
        : ((Activity) item).title();
  }

  private void followUp(FollowUp followUp, Style style, int width, List<String> lines) {
    lines.add("");
    boolean allDone =
        followUp.phases().isEmpty()
            && followUp.products().isEmpty()
            && followUp.exercises().isEmpty();
    if (!allDone) {
      String all = "The whole goal cannot be reached by " + clock.at(replan.end()) + " any more.";
      lines.addAll(Wrap.lines(all, width));
    }
    lines.add(style.heading("For a follow-up"));
    if (!followUp.products().isEmpty()) {
      bullet(lines, width, "still to be made: " + products(followUp.products()));
    }
    if (!followUp.phases().isEmpty()) {
      bullet(lines, width, "still to be gone through: " + quoted(followUp.phases()));
    }
    if (!followUp.exercises().isEmpty()) {
      bullet(lines, width, "prepared and not used: " + quoted(followUp.exercises()));
    }
    if (!followUp.inHand().isEmpty()) {
      bullet(lines, width, "hand over: " + products(followUp.inHand()));
    }
  }

  private static void bullet(List<String> lines, int width, String text) {
    lines.addAll(Wrap.hanging("- ", text, width));
  }

  private String products(List<String> ids) {
    return Words.list(ids.stream().map(this::product).toList());
  }

  private static String quoted(List<String> titles) {
    return Words.list(titles.stream().map(Words::quoted).toList());
  }

  private String product(String id) {
    Product product = catalog.products().get(id);
    return "the " + (product == null ? id : product.title());
  }
}
