package org.arcwright.catalog;

import java.util.function.BiPredicate;

/**
 * A rule that a firm keeps in all its agendas, over and above what a brief asks for: which
 * exercises may not follow each other, or of which there may be only so many. It decides by what is
 * passed to it alone, so that the same brief always has the same answer. It speaks of the catalog's
 * exercises; a brief's own items are the sponsor's affair.
 *
 * <pre>{@code
 * Catalog ours = catalog.withRules(
 *     Rule.neverInARow(
 *         "never two silent exercises in a row",
 *         (exercise, people) -> exercise.format(people) == Format.SOLO));
 * }</pre>
 */
public sealed interface Rule permits Rule.Apart, Rule.AtMost {
  /** What the rule says, in plain words that may follow "the rule"; 1 to 120 characters. */
  String name();

  /**
   * What a rule sees in an exercise.
   *
   * @param <T> values with {@code equals} and {@code hashCode}
   */
  @FunctionalInterface
  interface Trait<T> {
    /**
     * Looks at an exercise.
     *
     * @param people how many do it; the exercise serves that many
     */
    T of(Exercise exercise, int people);
  }

  /** Whether a rule is about an exercise. */
  @FunctionalInterface
  interface Such {
    /**
     * Looks at an exercise.
     *
     * @param people how many do it; the exercise serves that many
     */
    boolean test(Exercise exercise, int people);
  }

  /**
   * Some exercises may not follow each other.
   *
   * @param name in plain words
   * @param trait all that the rule wants to know of an exercise
   * @param never whether an exercise with the first value may not be followed by one with the
   *     second
   * @param acrossBreaks whether that holds with a break or meal between, too
   * @param <T> kind of value
   */
  record Apart<T>(String name, Trait<T> trait, BiPredicate<T, T> never, boolean acrossBreaks)
      implements Rule {
    /** Refuses a blank or long name. */
    public Apart {
      name = Checks.text("rule", name, 120);
    }

    /** The same rule, which a break between does not lift. */
    public Apart<T> evenAcrossBreaks() {
      return new Apart<>(name, trait, never, true);
    }
  }

  /**
   * Only so many of some exercises are in one agenda.
   *
   * @param name in plain words
   * @param most how many, 0 to 100
   * @param such which are counted
   */
  record AtMost(String name, int most, Such such) implements Rule {
    /** Refuses a blank or long name, and a number out of range. */
    public AtMost {
      name = Checks.text("rule", name, 120);
      Checks.range("most", most, 0, 100);
    }
  }

  /** Never two such exercises in a row; a break between parts them. */
  static Apart<Boolean> neverInARow(String name, Such such) {
    return neverNext(name, such::test, (before, after) -> before && after);
  }

  /**
   * Never an exercise of some kind right after one of some other kind; a break between parts them.
   * The trait is asked once for each exercise, the predicate once for each pair of different
   * values: a trait with few values is fast, one with a value for each exercise is slow in a large
   * catalog.
   *
   * @param never told the value of an exercise, and that of the one that would follow it
   */
  static <T> Apart<T> neverNext(String name, Trait<T> trait, BiPredicate<T, T> never) {
    return new Apart<>(name, trait, never, false);
  }

  /** At most so many such exercises in an agenda, 0 to 100. */
  static AtMost atMost(String name, int most, Such such) {
    return new AtMost(name, most, such);
  }
}
