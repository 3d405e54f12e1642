package org.arcwright.brief;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.arcwright.brief.Group.Acquaintance;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Phase;
import org.arcwright.catalog.Tool;

/**
 * Finds what is allowed but odd in a brief. Each rule names its source where one is known; all
 * others are common practice, without a source.
 */
public final class Oddities {
  private static final Duration REMOTE_MOST = Duration.ofHours(4);

  /** HSE L26: a break of 5 to 10 minutes after 50 to 60 minutes of screen work. */
  private static final Duration SCREEN_STRETCH = Duration.ofMinutes(60);

  private static final Duration SCREEN_BREAK = Duration.ofMinutes(5);

  /** KACEE, "Building your agenda": a break about every 90 minutes. */
  private static final Duration ROOM_STRETCH = Duration.ofMinutes(90);

  private static final Duration MEALLESS = Duration.ofHours(6);
  private static final Duration QUICK_MEAL = Duration.ofMinutes(30);
  private static final LocalTime EARLY = LocalTime.of(7, 0);
  private static final LocalTime LATE = LocalTime.of(21, 0);
  private static final int TALKING_GROUP = 30;

  private final Brief brief;
  private final Catalog catalog;
  private final boolean screens;
  private final List<Oddity> found = new ArrayList<>();

  private Oddities(Brief brief, Catalog catalog) {
    this.brief = brief;
    this.catalog = catalog;
    this.screens = brief.mode() != Mode.IN_PERSON;
  }

  /** What is odd in the brief, from its first key to its last. */
  public static List<Oddity> of(Brief brief, Catalog catalog) {
    Oddities oddities = new Oddities(brief, catalog);
    oddities.group();
    oddities.hours();
    oddities.start();
    oddities.tools();
    oddities.rest();
    oddities.given();
    oddities.wishes();
    oddities.ownItems();
    return List.copyOf(oddities.found);
  }

  /**
   * Adds one.
   *
   * @param remark in which {@code {0}} and so on stand for the details
   */
  private void add(String field, Object value, String name, String remark, Object... details) {
    List<String> texts = Stream.of(details).map(String::valueOf).toList();
    String filled = remark;
    for (int i = 0; i < texts.size(); i++) {
      filled = filled.replace("{" + i + "}", texts.get(i));
    }
    found.add(new Oddity(field, String.valueOf(value), name, texts, filled));
  }

  /** Where one word stands in a list. */
  private static String place(String field, Set<String> list, String word) {
    return field + "[" + list.stream().toList().indexOf(word) + "]";
  }

  private void group() {
    Group group = brief.group();
    if (group.count() < 3) {
      add("people.count", group.count(), "few-people", "most exercises need three people or more");
    }
    if (brief.mode() == Mode.REMOTE && group.count() > TALKING_GROUP) {
      add(
          "people.count",
          group.count(),
          "many-at-screens",
          "so many at screens hardly get a word in; plan for small groups and for two or three who"
              + " help with the tools (common practice, no source)");
    }
    if (group.acquaintance() == Acquaintance.STRANGERS && group.openness() > 1) {
      add(
          "people.openness",
          group.openness(),
          "open-strangers",
          "strangers are asked for more than they may want to tell; 1 is usual for them (common"
              + " practice, no source)");
    }
  }

  private void hours() {
    if (brief.mode() == Mode.REMOTE && brief.cap().compareTo(REMOTE_MOST) > 0) {
      add(
          "cap",
          words(brief.cap()),
          "long-at-screens",
          "at screens people last under four hours; two sittings would serve them better (common"
              + " practice, no source)");
    }
    if (brief.meals().isEmpty() && brief.cap().compareTo(MEALLESS) >= 0) {
      add(
          "cap",
          words(brief.cap()),
          "no-meal",
          "a day as long as this wants a meal, such as {0} (common practice, no source)",
          "meal: {at: 3h..3h30m, minutes: 60}");
    }
  }

  private void start() {
    Optional<ZonedDateTime> start = brief.start();
    if (start.isEmpty()) {
      return;
    }
    DayOfWeek day = start.get().getDayOfWeek();
    if (day == DayOfWeek.SATURDAY || day == DayOfWeek.SUNDAY) {
      add(
          "start",
          start.get().toLocalDate(),
          day == DayOfWeek.SATURDAY ? "saturday" : "sunday",
          "that is a " + (day == DayOfWeek.SATURDAY ? "Saturday" : "Sunday"));
    }
    for (int i = 0; i < brief.zones().size(); i++) {
      night("zones[" + i + "]", start.get().withZoneSameInstant(brief.zones().get(i)));
    }
    ZonedDateTime end = start.get().plus(brief.cap());
    if (start.get().toLocalTime().isBefore(EARLY)) {
      add("start", start.get().toLocalTime(), "early", "that is early in the morning");
    } else if (end.toLocalTime().isAfter(LATE)
        || end.toLocalDate().isAfter(start.get().toLocalDate())) {
      add("start", start.get().toLocalTime(), "late", "it would end at {0}", end.toLocalTime());
    }
  }

  /** People far away for whom it would be night. */
  private void night(String field, ZonedDateTime there) {
    ZonedDateTime end = there.plus(brief.cap());
    if (there.toLocalTime().isBefore(EARLY)
        || end.toLocalTime().isAfter(LATE)
        || end.toLocalDate().isAfter(there.toLocalDate())) {
      add(
          field,
          there.getZone(),
          "night",
          "there it would last from {0} to {1}",
          there.toLocalTime(),
          end.toLocalTime());
    }
  }

  private void tools() {
    if (!brief.tools().isEmpty() && screens && !brief.tools().contains("call")) {
      add("tools", "a list", "no-call", "people far apart need at least a call");
    }
    for (String id : brief.tools()) {
      Tool tool = catalog.tools().get(id);
      if (tool != null && !tool.modes().contains(brief.mode())) {
        add(
            place("tools", brief.tools(), id),
            id,
            "nothing-" + brief.mode().word(),
            "it is nothing for a workshop that is " + brief.mode().word());
      }
    }
  }

  private void rest() {
    Rhythm rhythm = brief.rhythm();
    Duration most = screens ? SCREEN_STRETCH : ROOM_STRETCH;
    String source = screens ? "HSE L26" : "KACEE, Building your agenda";
    String usual = "people want a break about every {0} minutes ({1})";
    if (rhythm.pause().isZero()) {
      if (brief.cap().compareTo(most) > 0) {
        add(
            "rhythm.break",
            "none",
            "no-breaks",
            "nobody can rest; " + usual,
            most.toMinutes(),
            source);
      }
    } else if (rhythm.longest().compareTo(most) > 0) {
      add(
          "rhythm.stretch",
          words(rhythm.longest()),
          "long-stretch",
          usual,
          most.toMinutes(),
          source);
    }
    if (screens && !rhythm.pause().isZero() && rhythm.pause().compareTo(SCREEN_BREAK) < 0) {
      add(
          "rhythm.break",
          words(rhythm.pause()),
          "short-break",
          "under 5 minutes nobody rests (HSE L26)");
    }
    for (int i = 0; i < brief.meals().size(); i++) {
      Duration length = brief.meals().get(i).length();
      if (length.compareTo(QUICK_MEAL) < 0) {
        add(
            "meals[" + i + "].minutes",
            length.toMinutes(),
            "short-meal",
            "that is short for a meal; 45 to 60 minutes are usual (common practice, no source)");
      }
    }
    int usualBuffer = Defaults.bufferPercent(brief.mode());
    if (brief.bufferPercent() * 2 < usualBuffer) {
      add(
          "buffer",
          brief.bufferPercent() + "%",
          "small-buffer",
          "discussions run over, at screens even more; {0}% is usual (common practice, no source)",
          usualBuffer);
    }
  }

  private void given() {
    Optional<Goal> goal = catalog.goal(brief.goal());
    for (String product : brief.given()) {
      if (goal.isPresent() && goal.get().yields().contains(product)) {
        add(
            place("given", brief.given(), product),
            product,
            "given-goal",
            "that is what the workshop is to bring about");
      }
    }
  }

  private void wishes() {
    Wishes wishes = brief.wishes();
    for (String id : wishes.include()) {
      wish(place("wishes.include", wishes.include(), id), id);
    }
    for (int i = 0; i < wishes.pins().size(); i++) {
      wish("wishes.pin[" + i + "].exercise", wishes.pins().get(i).exercise());
    }
  }

  /** A wish that no agenda can have as things stand, or that sits ill with another. */
  private void wish(String field, String id) {
    Optional<Exercise> exercise = catalog.exercise(id);
    int people = brief.group().count();
    String mode = brief.mode().word();
    if (exercise.isEmpty()) {
      return;
    }
    if (!exercise.get().serves(people)) {
      add(
          field,
          id,
          "wrong-size",
          "it does not work with {0} people, so nothing would fit",
          people);
    } else if (exercise.get().in(brief.mode()).fit() == 0) {
      add(field, id, "not-" + mode, "it cannot be done " + mode + ", so nothing would fit");
    } else if (brief.wishes().usedLastTime().contains(id)) {
      add(field, id, "had-last-time", "this group had it last time");
    }
  }

  private void ownItems() {
    Duration all =
        brief.ownItems().stream().map(OwnItem::length).reduce(Duration.ZERO, Duration::plus);
    if (all.multipliedBy(2).compareTo(brief.cap()) > 0) {
      OwnItem longest =
          brief.ownItems().stream().max(Comparator.comparing(OwnItem::length)).orElseThrow();
      add(
          "own-items[" + brief.ownItems().indexOf(longest) + "].minutes",
          longest.length().toMinutes(),
          "much-of-ones-own",
          "your own items take more than half of the time; little is left to work together");
    }
    for (int i = 0; i < brief.ownItems().size(); i++) {
      OwnItem item = brief.ownItems().get(i);
      if (item.at().isEmpty() && item.phase().isEmpty()) {
        add(
            "own-items[" + i + "].title",
            item.title(),
            "any-time",
            "nothing says when it comes, so it may come after all is decided; add at, such as 45m,"
                + " or phase, one of {0}",
            catalog.goal(brief.goal()).stream()
                .flatMap(goal -> goal.arc().stream())
                .map(Phase::name)
                .collect(Collectors.joining(", ")));
      }
    }
  }

  private static String words(Duration duration) {
    long hours = duration.toHours();
    int minutes = duration.toMinutesPart();
    return (hours > 0 ? hours + "h" : "") + (minutes > 0 || hours == 0 ? minutes + "m" : "");
  }
}
