package org.arcwright.shelf;

import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Minutes;

/**
 * An exercise that is like another, such as one to take in its place.
 *
 * @param exercise the exercise
 * @param score how like it is, from 0 to 100
 * @param shares what each trait adds to the score; traits that add nothing are left out
 */
public record Similar(Exercise exercise, int score, Map<Trait, Integer> shares) {
  /**
   * What makes two exercises alike, and the most it adds to the score. A stand-in must first of all
   * leave what the other would have left. Weights: common practice, no source.
   */
  public enum Trait {
    /** Both leave the same work products. */
    YIELDS(30),
    /** They tell of it in the same words. */
    TEXT(25),
    /** Both do the same to the group's thinking. */
    KIND(15),
    /** People sit together in the same way most of the time. */
    FORMAT(10),
    /** They last as long. */
    MINUTES(10),
    /** They are as lively. */
    ENERGY(10);

    private final int most;

    Trait(int most) {
      this.most = most;
    }

    /** The most it adds. */
    public int most() {
      return most;
    }
  }

  /** Energies farther apart than that have nothing in common. */
  private static final int FAR = 3;

  /** Takes a copy. */
  public Similar {
    Map<Trait, Integer> copy = new EnumMap<>(Trait.class);
    copy.putAll(shares);
    shares = Collections.unmodifiableMap(copy);
  }

  /**
   * The exercises most like one, the most like first and by id among equals. Linear in the catalog.
   *
   * @param count how many at the most
   */
  public static List<Similar> to(Exercise exercise, Catalog catalog, Likeness likeness, int count) {
    return catalog.exercises().values().stream()
        .filter(other -> !other.id().equals(exercise.id()))
        .map(other -> of(exercise, other, likeness))
        .sorted(
            Comparator.comparingInt(Similar::score)
                .reversed()
                .thenComparing(similar -> similar.exercise().id()))
        .limit(count)
        .toList();
  }

  private static Similar of(Exercise exercise, Exercise other, Likeness likeness) {
    Map<Trait, Integer> shares = new EnumMap<>(Trait.class);
    put(shares, Trait.YIELDS, overlap(exercise.yields(), other.yields()));
    put(shares, Trait.TEXT, Math.min(1, likeness.of(exercise, other)));
    put(shares, Trait.KIND, exercise.kind() == other.kind() ? 1 : 0);
    Optional<Integer> people = people(exercise, other);
    if (people.isPresent()) {
      boolean same = exercise.format(people.get()) == other.format(people.get());
      put(shares, Trait.FORMAT, same ? 1 : 0);
      put(
          shares,
          Trait.MINUTES,
          overlap(exercise.minutes(people.get()), other.minutes(people.get())));
    }
    int apart = Math.abs(exercise.energy() - other.energy());
    put(shares, Trait.ENERGY, Math.max(0, FAR - apart) / (double) FAR);
    int score = shares.values().stream().mapToInt(Integer::intValue).sum();
    return new Similar(other, score, shares);
  }

  private static void put(Map<Trait, Integer> shares, Trait trait, double part) {
    int share = (int) Math.round(part * trait.most());
    if (share > 0) {
      shares.put(trait, share);
    }
  }

  /** A number of people at which they can be held against each other. */
  private static Optional<Integer> people(Exercise exercise, Exercise other) {
    List<Integer> sizes = Comparison.of(exercise, other).sizes();
    return sizes.isEmpty() ? Optional.empty() : Optional.of(sizes.get(sizes.size() / 2));
  }

  /** Jaccard (1901): what both have, as a part of what either has. */
  private static double overlap(Set<String> one, Set<String> other) {
    Set<String> both = new HashSet<>(one);
    both.retainAll(other);
    int either = one.size() + other.size() - both.size();
    return either == 0 ? 0 : both.size() / (double) either;
  }

  /** The same of two ranges of minutes. */
  private static double overlap(Minutes one, Minutes other) {
    long from = Math.max(one.min().toSeconds(), other.min().toSeconds());
    long to = Math.min(one.max().toSeconds(), other.max().toSeconds());
    long least = Math.min(one.min().toSeconds(), other.min().toSeconds());
    long most = Math.max(one.max().toSeconds(), other.max().toSeconds());
    if (most == least) {
      return 1;
    }
    return Math.max(0, to - from) / (double) (most - least);
  }
}
