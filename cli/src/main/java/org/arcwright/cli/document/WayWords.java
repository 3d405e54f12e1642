package org.arcwright.cli.document;

import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.arcwright.agenda.AgendaItem.Pause;
import org.arcwright.live.Change;
import org.arcwright.live.Change.Added;
import org.arcwright.live.Change.Closed;
import org.arcwright.live.Change.LeftOut;
import org.arcwright.live.Change.Moved;
import org.arcwright.live.Change.Resized;
import org.arcwright.live.Way;

/** What a way to go on with a day is called, and what it changes, in words. */
final class WayWords {
  /** What these leave out or add, their headline says. */
  private static final Set<Way.Kind> NAMED =
      EnumSet.of(Way.Kind.LEAVE_OUT, Way.Kind.SWAP, Way.Kind.ADD);

  private static final Set<Way.Kind> GAINING =
      EnumSet.of(Way.Kind.CARRY_ON, Way.Kind.LINGER, Way.Kind.ADD);

  private final Clock clock;
  private final Duration now;
  private final UnaryOperator<String> product;

  /**
   * @param now from when on it is told
   * @param product a work product's id in words
   */
  WayWords(Clock clock, Duration now, UnaryOperator<String> product) {
    this.clock = clock;
    this.now = now;
    this.product = product;
  }

  /** What it does. */
  String headline(Way way) {
    return switch (way.kind()) {
      case CARRY_ON -> "Change nothing";
      case SHORTEN ->
          way.changes().stream().allMatch(Moved.class::isInstance)
              ? "Keep everything" + breaks(way)
              : "Keep everything, some of it shorter";
      case SWAP -> "Do " + first(way, Added.class) + " instead of " + first(way, LeftOut.class);
      case LEAVE_OUT -> "Leave out " + first(way, LeftOut.class);
      case ANEW -> "Reach the goal another way";
      case PART -> "Do what can still be done well";
      case LINGER -> "Give the minutes to " + Words.quoted(way.changes().get(0).title());
      case ADD -> "Add " + first(way, Added.class);
    };
  }

  /** Its breaks from now on, where nothing but these is different. */
  private String breaks(Way way) {
    List<String> times =
        way.agenda().items().stream()
            .filter(item -> item instanceof Pause && item.end().compareTo(now) > 0)
            .map(item -> clock.at(item.start()))
            .toList();
    return times.isEmpty()
        ? ", with no more breaks"
        : (times.size() == 1 ? ", with the break at " : ", with breaks at ") + Words.list(times);
  }

  /** When it ends, how surely, and what is lost; where time was gained, nothing is at stake. */
  String outcome(Way way) {
    String ends =
        "Ends at "
            + clock.at(way.agenda().end())
            + "; the chance to be on time is "
            + Words.chance(way.onTime())
            + ".";
    if (!way.lost().isEmpty()) {
      return ends + " Lost: " + Words.list(way.lost().stream().map(product).toList()) + ".";
    }
    return GAINING.contains(way.kind()) ? ends : ends + " No result is lost.";
  }

  /**
   * What changes, one line for each sort of change; what the headline or the follow-up says is left
   * out.
   */
  List<String> changes(Way way) {
    List<String> lines = new ArrayList<>();
    of(way, Closed.class).forEach(closed -> lines.add(closed(way, closed)));
    if (!NAMED.contains(way.kind())) {
      boolean listed = way.kind() == Way.Kind.PART;
      add(lines, "without ", of(way, LeftOut.class).filter(out -> !listed).map(this::timed));
      add(lines, "new: ", of(way, Added.class).map(this::timed));
    }
    add(lines, "shorter: ", of(way, Resized.class).filter(WayWords::isShorter).map(this::resized));
    add(lines, "longer: ", of(way, Resized.class).filter(r -> !isShorter(r)).map(this::resized));
    add(lines, "moved: ", of(way, Moved.class).map(this::moved));
    return lines;
  }

  /** Whether something that is tied to a time moves in a way, as was allowed. */
  boolean moves(Way way, String exercise) {
    return of(way, Moved.class).anyMatch(moved -> moved.exercise().equals(exercise));
  }

  /** Ids of what is new in a way, so that somebody can look up how it runs. */
  List<String> added(Way way) {
    return of(way, Added.class).map(Added::exercise).toList();
  }

  private static <T extends Change> Stream<T> of(Way way, Class<T> type) {
    return way.changes().stream().filter(type::isInstance).map(type::cast);
  }

  private static void add(List<String> lines, String before, Stream<String> changes) {
    List<String> all = changes.toList();
    if (!all.isEmpty()) {
      lines.add(before + Words.list(all));
    }
  }

  private String closed(Way way, Closed closed) {
    String title = Words.quoted(closed.title());
    boolean longer = way.kind() == Way.Kind.LINGER;
    return (longer ? title + " until " : "end " + title + " by ") + clock.at(closed.by());
  }

  private String timed(Change change) {
    return Words.quoted(change.title()) + " (" + Words.time(length(change)) + ")";
  }

  private static boolean isShorter(Resized resized) {
    return resized.to().compareTo(resized.from()) < 0;
  }

  private String resized(Resized resized) {
    return Words.quoted(resized.title())
        + " "
        + Words.time(resized.to())
        + Words.tied(" (not " + Answer.minutes(resized.from()) + ")");
  }

  private String moved(Moved moved) {
    return Words.quoted(moved.title())
        + " "
        + clock.said(moved.to())
        + Words.tied(" (not " + clock.at(moved.from()) + ")");
  }

  /** The first change of a kind, with its minutes. */
  private String first(Way way, Class<? extends Change> type) {
    return way.changes().stream()
        .filter(type::isInstance)
        .findFirst()
        .map(this::timed)
        .orElse("an exercise");
  }

  private static Duration length(Change change) {
    return change instanceof Added added
        ? added.length()
        : change instanceof LeftOut out ? out.length() : Duration.ZERO;
  }
}
