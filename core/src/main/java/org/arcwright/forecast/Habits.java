package org.arcwright.forecast;

import org.arcwright.catalog.Minutes;

/** What is assumed about people and their time, each figure with what it rests on. */
final class Habits {
  /**
   * How many minutes late a workshop starts: of 252 meetings 49 % began on time, 37 % five minutes
   * late and 14 % ten minutes late (Allen, Lehmann-Willenbrock and Rogelberg 2018); the 37 % agree
   * with Rogelberg et al. 2014. Workshops are taken to start as meetings do.
   */
  static final Distribution LATE_START =
      Distribution.of(0, 0.49, 0, 0, 0, 0, 0.37, 0, 0, 0, 0, 0.14);

  /**
   * How many minutes a break or a meal stretches. After it people gather anew, so it is taken to
   * end as late as a meeting starts. No figure of its own was found.
   */
  static final Distribution BREAK_STRETCH = LATE_START;

  /** A break counts as on time within so many minutes. Common practice, no source. */
  static final int ON_TIME = 5;

  /**
   * What an item may take of which the catalog knows nothing, as parts of its planned time: three
   * quarters to one and a half of it. Common practice, no source.
   */
  private static final double LEAST_PART = 0.75;

  private static final double MOST_PART = 1.5;

  private Habits() {}

  /**
   * How long an exercise takes that is planned to take so long. The plan is what the facilitator
   * steers by, so it is the most likely time; how far off that it may end is the exercise's own
   * range at this group size, whatever the plan. So of each minute that a plan takes away, only two
   * thirds are saved, and an exercise that is squeezed below its typical time overruns more often
   * and further; of each minute that a plan adds two thirds are used up, whether needed or not.
   *
   * <p>That work takes the time it is given is Parkinson's law (The Economist, 1955), measured by
   * Bryan and Locke, "Parkinson's law as a goal-setting phenomenon" (1967), both from memory; the
   * two thirds are the weight of the most likely time in PERT's mean. Below its shortest time that
   * works an exercise cannot be squeezed; what is planned beyond its longest is used up.
   *
   * @param planned minutes, over 0
   */
  static BetaPert took(Minutes range, double planned) {
    double min = minutes(range.min().toSeconds());
    double max = Math.max(minutes(range.max().toSeconds()), planned);
    return new BetaPert(min, Math.max(min, planned), max);
  }

  /** How long an item takes of which only the plan is known. */
  static BetaPert tookUnknown(double planned) {
    return new BetaPert(LEAST_PART * planned, planned, MOST_PART * planned);
  }

  private static double minutes(long seconds) {
    return seconds / 60.0;
  }
}
