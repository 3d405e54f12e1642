package org.arcwright.catalog;

import java.util.Optional;

/**
 * One step of an exercise.
 *
 * @param text what happens, at most 600 characters
 * @param speaker who speaks
 * @param format how people sit together
 * @param minutes how long, for each {@code per}
 * @param per what the minutes are counted for
 * @param rounds how many rounds: 1 or more with {@link Per#ROUND}, else 1
 */
public record Step(
    String text, Speaker speaker, Format format, Minutes minutes, Per per, int rounds) {
  /** Refuses what cannot be run: turns taken alone, rounds without {@link Per#ROUND}. */
  public Step {
    text = Checks.text("text", text, 600);
    Checks.range("rounds", rounds, 1, 50);
    if (rounds > 1 && per != Per.ROUND) {
      throw new InvalidValueException("rounds", rounds, "rounds go with \"per: round\" only");
    }
    if (per == Per.PERSON && format == Format.SOLO) {
      throw new InvalidValueException(
          "per", per.word(), "working alone, all work at once: write \"per: session\"");
    }
    if (minutes.max().isZero()) {
      throw new InvalidValueException("minutes", minutes, "a step takes some time");
    }
  }

  /**
   * How often the minutes count for {@code people}, whose small groups are of {@code breakout}
   * size. Turns are taken inside the format: in a plenary one for each person, in pairs two, in
   * small groups as many as the largest group has people.
   */
  public int times(int people, Optional<SizeRange> breakout) {
    return switch (per) {
      case SESSION -> 1;
      case ROUND -> rounds;
      case GROUP -> breakout.map(size -> size.groups(people)).orElse(1);
      case PERSON ->
          switch (format) {
            case SOLO -> 1;
            case PAIRS -> 2;
            case SMALL_GROUPS -> breakout.map(size -> size.largestGroup(people)).orElse(people);
            case PLENARY -> people;
          };
    };
  }
}
