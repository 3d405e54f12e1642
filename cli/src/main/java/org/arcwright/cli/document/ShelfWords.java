package org.arcwright.cli.document;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.arcwright.catalog.AtSize.StepAtSize;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Minutes;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Per;
import org.arcwright.catalog.Product;
import org.arcwright.catalog.SizeRange;
import org.arcwright.catalog.Source;
import org.arcwright.catalog.Split;
import org.arcwright.catalog.Step;
import org.arcwright.catalog.Tool;

/** Small phrases that the pages of a shelf say in the same way. */
final class ShelfWords {
  private static final List<String> ENERGY =
      List.of("calm", "quiet work", "easy talk", "brisk", "lively");
  private static final List<String> OPENNESS =
      List.of("nothing personal", "light", "personal", "deeply personal");
  private static final List<String> FIT =
      List.of("not possible", "possible with effort", "works", "at its best");

  private ShelfWords() {}

  /** Minutes with what is left of them: {@code 12}, {@code 2.5}, {@code 0.75}. */
  static String minutes(Duration time) {
    return BigDecimal.valueOf(time.toSeconds())
        .divide(BigDecimal.valueOf(60), 2, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }

  /** {@code 10–14 min, usually 12}; one number where all are the same. */
  static String range(Minutes minutes, char dash) {
    return minutes.min().equals(minutes.max())
        ? minutes(minutes.max()) + " min"
        : minutes(minutes.min())
            + dash
            + minutes(minutes.max())
            + " min, usually "
            + minutes(minutes.typical());
  }

  /** Whole minutes in a narrow column: {@code 12 (10–14)}. */
  static String narrow(Minutes minutes, char dash) {
    return whole(minutes.typical())
        + " ("
        + whole(minutes.min())
        + dash
        + whole(minutes.max())
        + ")";
  }

  private static long whole(Duration time) {
    return (time.toSeconds() + 30) / 60;
  }

  /** Minutes and seconds since the start: {@code 2:30}. */
  static String clock(Duration time) {
    int seconds = time.toSecondsPart();
    return time.toMinutes() + ":" + (seconds < 10 ? "0" : "") + seconds;
  }

  /** {@code 4 groups of 3}, {@code 3 groups of 3 and 1 of 4}, {@code 5 pairs and 1 group of 3}. */
  static String split(Split split, Format format) {
    int smaller = split.groups() - split.larger();
    boolean pairs = format == Format.PAIRS && split.smaller() == 2;
    String usual =
        pairs
            ? smaller + (smaller == 1 ? " pair" : " pairs")
            : smaller + (smaller == 1 ? " group of " : " groups of ") + split.smaller();
    if (split.larger() == 0) {
      return usual;
    }
    String groups = pairs ? split.larger() == 1 ? " group" : " groups" : "";
    return usual + " and " + split.larger() + groups + " of " + (split.smaller() + 1);
  }

  /** How people sit together, and in how many groups. */
  static String seating(StepAtSize step) {
    Format format = step.step().format();
    String seated =
        switch (format) {
          case SOLO -> "everybody alone";
          case PAIRS -> "in pairs";
          case SMALL_GROUPS -> "in small groups";
          case PLENARY -> "all together";
        };
    boolean inGroups = format == Format.PAIRS || format == Format.SMALL_GROUPS;
    return inGroups && step.groups().isPresent()
        ? seated + " (" + split(step.groups().get(), format) + ")"
        : seated;
  }

  /** Who speaks. */
  static String speaker(Step step) {
    boolean apart = step.format() == Format.PAIRS || step.format() == Format.SMALL_GROUPS;
    return switch (step.speaker()) {
      case FACILITATOR -> "you speak";
      case EACH -> "one after another";
      case GROUP -> apart ? "each group by itself" : "one group after another";
      case ALL -> apart ? "they talk" : "whoever likes speaks";
      case NOBODY -> "in silence";
    };
  }

  /** What the minutes are made of: {@code 12 turns of 1 min}; nothing if they count once. */
  static List<String> turns(StepAtSize sized) {
    Step step = sized.step();
    if (step.per() == Per.SESSION) {
      return List.of();
    }
    String what =
        switch (step.per()) {
          case PERSON -> "turn";
          case GROUP -> "group";
          case ROUND, SESSION -> "round";
        };
    String often = sized.times() + " " + what + (sized.times() == 1 ? "" : "s");
    return List.of(often + " of " + minutes(step.minutes().typical()) + " min");
  }

  static String energy(int energy) {
    return energy + " of 5 (" + ENERGY.get(energy - 1) + ")";
  }

  static String openness(int openness) {
    return openness + " of 3 (" + OPENNESS.get(openness) + ")";
  }

  static String fit(int fit) {
    return FIT.get(fit);
  }

  static String people(SizeRange people, char dash) {
    return people.toString().replace('-', dash);
  }

  static String people(int count) {
    return count == 1 ? "1 person" : count + " people";
  }

  /** Where people are, at the start of a line. */
  static String mode(Mode mode) {
    return Words.sentence(Words.mode(mode));
  }

  /** Work products in words. */
  static String products(Set<String> ids, Catalog catalog) {
    Map<String, Product> known = catalog.products();
    return list(ids, id -> known.containsKey(id) ? known.get(id).title() : id);
  }

  /** Tools in words. */
  static String tools(Set<String> ids, Catalog catalog) {
    Map<String, Tool> known = catalog.tools();
    return list(ids, id -> known.containsKey(id) ? known.get(id).title() : id);
  }

  private static String list(Set<String> ids, UnaryOperator<String> title) {
    List<String> titles = new ArrayList<>();
    for (String id : ids) {
      titles.add(title.apply(id));
    }
    return titles.isEmpty() ? "nothing" : Words.list(titles);
  }

  /** Where it comes from, and how sure that is. */
  static String source(Source source) {
    if (source instanceof Source.Published published) {
      return "Published: " + published.citation();
    }
    if (source instanceof Source.Memory memory) {
      String cite = memory.citation();
      return cite.startsWith("From memory") ? cite : "From memory: " + cite;
    }
    return "Common practice of the trade.";
  }
}
