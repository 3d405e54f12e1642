package org.arcwright.shelf;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Step;

/**
 * Two exercises side by side.
 *
 * @param one the first
 * @param other the second
 * @param different in what they differ
 * @param sizes up to three numbers of people that both serve: small, usual and large
 */
public record Comparison(Exercise one, Exercise other, Set<Aspect> different, List<Integer> sizes) {
  /** A usual size of a workshop. Common practice, no source. */
  private static final int USUAL = 12;

  /** What can differ. */
  public enum Aspect {
    /** What it does to the group's thinking. */
    KIND,
    /** How many people it serves. */
    PEOPLE,
    /** How long it takes with the same number of people. */
    MINUTES,
    /** How lively it is. */
    ENERGY,
    /** How personal it gets. */
    OPENNESS,
    /** Whether it moves bodies. */
    MOVES,
    /** How people sit together. */
    FORMATS,
    /** What must exist before it. */
    NEEDS,
    /** What it leaves behind. */
    YIELDS,
    /** Where it can be run, and how well. */
    FIT,
    /** What it cannot do without. */
    TOOLS
  }

  /** Takes copies. */
  public Comparison {
    Set<Aspect> copy = EnumSet.noneOf(Aspect.class);
    copy.addAll(different);
    different = Collections.unmodifiableSet(copy);
    sizes = List.copyOf(sizes);
  }

  /** Holds one exercise against the other. Linear in the sizes that they serve. */
  public static Comparison of(Exercise one, Exercise other) {
    List<Integer> sizes = sizes(one, other);
    Set<Aspect> different = EnumSet.noneOf(Aspect.class);
    mark(different, Aspect.KIND, one.kind(), other.kind());
    mark(different, Aspect.PEOPLE, one.people(), other.people());
    for (int size : sizes) {
      mark(different, Aspect.MINUTES, one.minutes(size), other.minutes(size));
    }
    mark(different, Aspect.ENERGY, one.energy(), other.energy());
    mark(different, Aspect.OPENNESS, one.openness(), other.openness());
    mark(different, Aspect.MOVES, one.moves(), other.moves());
    mark(different, Aspect.FORMATS, formats(one), formats(other));
    mark(different, Aspect.NEEDS, one.needs(), other.needs());
    mark(different, Aspect.YIELDS, one.yields(), other.yields());
    for (Mode mode : Mode.values()) {
      mark(different, Aspect.FIT, one.in(mode).fit(), other.in(mode).fit());
      mark(different, Aspect.TOOLS, one.in(mode).tools(), other.in(mode).tools());
    }
    return new Comparison(one, other, different, sizes);
  }

  private static void mark(Set<Aspect> different, Aspect aspect, Object one, Object other) {
    if (!one.equals(other)) {
      different.add(aspect);
    }
  }

  /** How people sit together in its steps. */
  public static Set<Format> formats(Exercise exercise) {
    return exercise.steps().stream()
        .map(Step::format)
        .collect(Collectors.toCollection(() -> EnumSet.noneOf(Format.class)));
  }

  private static List<Integer> sizes(Exercise one, Exercise other) {
    int least = Math.max(one.people().min(), other.people().min());
    int most = Math.min(one.people().max(), other.people().max());
    List<Integer> both =
        IntStream.rangeClosed(least, most)
            .filter(size -> one.serves(size) && other.serves(size))
            .boxed()
            .toList();
    if (both.isEmpty()) {
      return List.of();
    }
    List<Integer> sizes = new ArrayList<>();
    sizes.add(both.get(0));
    both.stream().filter(size -> size <= USUAL).reduce((a, b) -> b).ifPresent(sizes::add);
    sizes.add(both.get(both.size() - 1));
    return sizes.stream().distinct().sorted().toList();
  }
}
