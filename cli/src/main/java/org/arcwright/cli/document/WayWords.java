package org.arcwright.cli.document;

import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
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

  private final Clock clock;
  private final UnaryOperator<String> product;

  /**
   * @param product a work product's id in words
   */
  WayWords(Clock clock, UnaryOperator<String> product) {
    this.clock = clock;
    this.product = product;
  }

  /** What it does. */
  String headline(Way way) {
    return switch (way.kind()) {
      case CARRY_ON -> "Change nothing";
      case SHORTEN -> "Keep everything, some of it shorter";
      case SWAP -> "Do " + first(way, Added.class) + " instead of " + first(way, LeftOut.class);
      case LEAVE_OUT -> "Leave out " + first(way, LeftOut.class);
      case ANEW -> "Reach the goal another way";
      case PART -> "Do what can still be done well";
      case LINGER -> "Give the minutes to " + Words.quoted(way.changes().get(0).title());
      case ADD -> "Add " + first(way, Added.class);
    };
  }

  /** When it ends, how surely, and what is lost. */
  String outcome(Way way) {
    String lost =
        way.lost().isEmpty()
            ? "No result is lost."
            : "Lost: " + Words.list(way.lost().stream().map(product).toList()) + ".";
    return "Ends at "
        + clock.at(way.agenda().end())
        + "; the chance to be on time is "
        + Words.chance(way.onTime())
        + ". "
        + lost;
  }

  /** Each change; what the headline says already is left out. */
  List<String> changes(Way way) {
    List<String> changes = new ArrayList<>();
    for (Change change : way.changes()) {
      text(way, change).ifPresent(changes::add);
    }
    return changes;
  }

  private Optional<String> text(Way way, Change change) {
    String title = Words.quoted(change.title());
    if (change instanceof Closed closed) {
      boolean longer = way.kind() == Way.Kind.LINGER;
      return Optional.of(
          (longer ? title + " until " : "end " + title + " by ") + clock.at(closed.by()));
    } else if (change instanceof Resized resized) {
      return Optional.of(
          title + " " + Words.time(resized.to()) + " instead of " + Words.time(resized.from()));
    } else if (change instanceof LeftOut out) {
      return NAMED.contains(way.kind())
          ? Optional.empty()
          : Optional.of("without " + title + " (" + Words.time(out.length()) + ")");
    } else if (change instanceof Added added) {
      return NAMED.contains(way.kind())
          ? Optional.empty()
          : Optional.of(
              "new: "
                  + title
                  + " "
                  + clock.said(added.start())
                  + ", "
                  + Words.time(added.length()));
    } else if (change instanceof Moved moved) {
      return Optional.of(
          title + " " + clock.said(moved.to()) + " instead of " + clock.at(moved.from()));
    }
    return Optional.empty();
  }

  /** The first change of a kind, with its minutes. */
  private static String first(Way way, Class<? extends Change> type) {
    return way.changes().stream()
        .filter(type::isInstance)
        .findFirst()
        .map(change -> Words.quoted(change.title()) + " (" + Words.time(length(change)) + ")")
        .orElse("an exercise");
  }

  private static Duration length(Change change) {
    return change instanceof Added added
        ? added.length()
        : change instanceof LeftOut out ? out.length() : Duration.ZERO;
  }
}
