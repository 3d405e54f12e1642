package org.arcwright.cli.document;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Minutes;
import org.arcwright.shelf.Comparison;
import org.arcwright.shelf.Similar;
import org.arcwright.shelf.Similar.Trait;

/** Exercises that are like one, each with the reason. */
public final class SimilarList {
  private SimilarList() {}

  /** The list as text; ends with a line break. */
  public static String write(
      Exercise exercise,
      List<Similar> similar,
      Catalog catalog,
      Marks marks,
      Style style,
      int width) {
    List<String> lines = new ArrayList<>();
    lines.add(style.heading("Most like " + Words.quoted(exercise.title())));
    for (Similar found : similar) {
      Exercise other = found.exercise();
      lines.add(
          Wrap.right(String.valueOf(found.score()), 4) + "  " + other.id() + ", " + other.title());
      lines.addAll(
          Wrap.hanging(" ".repeat(6), reason(exercise, found, catalog, marks.dash()) + ".", width));
    }
    lines.addAll(
        Wrap.lines(
            "Of 100 points: the same work products 30, words 25, kind 15, format, minutes and energy"
                + " 10 each.",
            width));
    return Words.untied(String.join("\n", lines) + "\n");
  }

  private static String reason(Exercise exercise, Similar found, Catalog catalog, char dash) {
    Exercise other = found.exercise();
    Map<Trait, Integer> shares = found.shares();
    List<String> reasons = new ArrayList<>();
    Set<String> both = new TreeSet<>(exercise.yields());
    both.retainAll(new HashSet<>(other.yields()));
    if (!both.isEmpty()) {
      reasons.add("both leave " + ShelfWords.products(both, catalog));
    }
    reasons.add(
        shares.containsKey(Trait.KIND)
            ? "the same kind"
            : other.kind().word() + " instead of " + exercise.kind().word());
    reasons.add(
        other.energy() == exercise.energy()
            ? "as lively"
            : other.energy() > exercise.energy() ? "livelier" : "calmer");
    if (shares.containsKey(Trait.FORMAT)) {
      reasons.add("people sit together in the same way");
    }
    List<Integer> sizes = Comparison.of(exercise, other).sizes();
    if (sizes.isEmpty()) {
      reasons.add("no number of people that both serve");
    } else {
      int people = sizes.get(sizes.size() / 2);
      Minutes minutes = other.minutes(people);
      reasons.add(
          ShelfWords.range(minutes, dash).replace(", usually", " and usually")
              + " for "
              + ShelfWords.people(people));
    }
    int text = shares.getOrDefault(Trait.TEXT, 0) * 100 / Trait.TEXT.most();
    if (text >= 20) {
      reasons.add("much the same words");
    }
    return Words.sentence(String.join("; ", reasons));
  }
}
