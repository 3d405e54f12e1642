package org.arcwright.cli.document;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Mode;
import org.arcwright.shelf.Comparison;
import org.arcwright.shelf.Comparison.Aspect;

/** Two exercises side by side, and what differs in a sentence. */
public final class ComparisonPage {
  private static final int LABEL = 18;
  private static final String GAP = "  ";

  private final Comparison comparison;
  private final Catalog catalog;
  private final char dash;
  private final int column;
  private final List<String> lines = new ArrayList<>();

  private ComparisonPage(Comparison comparison, Catalog catalog, char dash, int width) {
    this.comparison = comparison;
    this.catalog = catalog;
    this.dash = dash;
    this.column = (width - LABEL - 2 * GAP.length()) / 2;
  }

  /** The page as text; ends with a line break. */
  public static String write(
      Comparison comparison, Catalog catalog, Marks marks, Style style, int width) {
    ComparisonPage page = new ComparisonPage(comparison, catalog, marks.dash(), width);
    page.rows(style);
    page.lines.add("");
    page.lines.addAll(Wrap.lines(page.sentence(), width));
    return Words.untied(String.join("\n", page.lines) + "\n");
  }

  private void rows(Style style) {
    int first = lines.size();
    row("", Exercise::title);
    lines.subList(first, lines.size()).replaceAll(style::heading);
    row("id", Exercise::id);
    row("purpose", Exercise::purpose);
    row("kind", exercise -> exercise.kind().word());
    row("people", exercise -> ShelfWords.people(exercise.people(), dash));
    row(
        "small groups",
        exercise ->
            exercise.breakout().map(size -> "of " + ShelfWords.people(size, dash)).orElse("none"));
    for (int size : comparison.sizes()) {
      row("minutes for " + size, exercise -> ShelfWords.range(exercise.minutes(size), dash));
    }
    row("energy", exercise -> ShelfWords.energy(exercise.energy()));
    row("openness", exercise -> ShelfWords.openness(exercise.openness()));
    row("moves bodies", exercise -> exercise.moves() ? "yes" : "no");
    row("format", ComparisonPage::formats);
    row("needs", exercise -> ShelfWords.products(exercise.needs(), catalog));
    row("leaves", exercise -> ShelfWords.products(exercise.yields(), catalog));
    for (Mode mode : Mode.values()) {
      row(Words.mode(mode), exercise -> mode(exercise, mode));
    }
  }

  private static String formats(Exercise exercise) {
    return Words.list(Comparison.formats(exercise).stream().map(Words::format).toList());
  }

  private String mode(Exercise exercise, Mode mode) {
    String fit = ShelfWords.fit(exercise.in(mode).fit());
    return exercise.in(mode).fit() == 0
        ? fit
        : fit + "; tools: " + ShelfWords.tools(exercise.in(mode).tools(), catalog);
  }

  private void row(String label, Function<Exercise, String> value) {
    List<String> left = Wrap.lines(value.apply(comparison.one()), column);
    List<String> right = Wrap.lines(value.apply(comparison.other()), column);
    for (int i = 0; i < Math.max(left.size(), right.size()); i++) {
      String line =
          Wrap.left(i == 0 ? label : "", LABEL)
              + GAP
              + Wrap.left(i < left.size() ? left.get(i) : "", column)
              + GAP
              + (i < right.size() ? right.get(i) : "");
      lines.add(line.stripTrailing());
    }
  }

  private String sentence() {
    Exercise one = comparison.one();
    Exercise other = comparison.other();
    List<String> parts = new ArrayList<>();
    if (differ(Aspect.KIND)) {
      parts.add(
          "one is " + article(one.kind().word()) + ", the other " + article(other.kind().word()));
    }
    minutes(one, other, parts);
    if (differ(Aspect.ENERGY)) {
      Exercise livelier = one.energy() > other.energy() ? one : other;
      parts.add(Words.quoted(livelier.title()) + " is livelier");
    }
    if (differ(Aspect.OPENNESS)) {
      Exercise opener = one.openness() > other.openness() ? one : other;
      parts.add(Words.quoted(opener.title()) + " is more personal");
    }
    if (differ(Aspect.MOVES)) {
      parts.add("only " + Words.quoted((one.moves() ? one : other).title()) + " moves bodies");
    }
    only("needs", one, other, Exercise::needs, parts);
    only("leaves", one, other, Exercise::yields, parts);
    if (differ(Aspect.TOOLS)) {
      parts.add("they lean on other tools");
    }
    return parts.isEmpty()
        ? "They differ in nothing that is compared here."
        : Words.sentence(String.join("; ", parts)) + ".";
  }

  private void minutes(Exercise one, Exercise other, List<String> parts) {
    if (comparison.sizes().isEmpty()) {
      parts.add("there is no number of people that both serve");
    } else if (differ(Aspect.MINUTES)) {
      int size = comparison.sizes().get(comparison.sizes().size() / 2);
      long difference =
          one.minutes(size).typical().minus(other.minutes(size).typical()).toSeconds();
      if (difference != 0) {
        Exercise longer = difference > 0 ? one : other;
        parts.add(
            Words.quoted(longer.title())
                + " usually takes "
                + ShelfWords.minutes(Duration.ofSeconds(Math.abs(difference)))
                + " min longer with "
                + ShelfWords.people(size));
      }
    }
  }

  private boolean differ(Aspect aspect) {
    return comparison.different().contains(aspect);
  }

  private static String article(String noun) {
    return switch (noun.charAt(0)) {
      case 'a', 'e', 'i', 'o', 'u' -> "an " + noun;
      default -> "a " + noun;
    };
  }

  private void only(
      String verb,
      Exercise one,
      Exercise other,
      Function<Exercise, Set<String>> words,
      List<String> parts) {
    only(verb, one, words.apply(one), words.apply(other), parts);
    only(verb, other, words.apply(other), words.apply(one), parts);
  }

  private void only(
      String verb, Exercise exercise, Set<String> words, Set<String> others, List<String> parts) {
    Set<String> own = new TreeSet<>(words);
    own.removeAll(others);
    if (!own.isEmpty()) {
      parts.add(
          "only "
              + Words.quoted(exercise.title())
              + " "
              + verb
              + " "
              + ShelfWords.products(own, catalog));
    }
  }
}
