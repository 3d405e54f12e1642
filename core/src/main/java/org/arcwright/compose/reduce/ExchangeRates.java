package org.arcwright.compose.reduce;

import java.util.Set;
import org.arcwright.compose.instance.Instance.Weights;

/**
 * What the composer weighs against what, and the rules of thumb it counts with. A point is one
 * minute in which people are a tenth of a level livelier or calmer than the curve asks, so <b>ten
 * minutes one level off the energy curve cost 100 points</b>, and all else is said in that coin:
 *
 * <table>
 *   <caption>As bad as so many minutes one level off the energy curve</caption>
 *   <tr><th>what</th><th>points</th><th>minutes one level off</th></tr>
 *   <tr><td>the same format twice in a row, such as two plenaries</td><td>150</td><td>15</td></tr>
 *   <tr><td>the same with a break between</td><td>50</td><td>5</td></tr>
 *   <tr><td>suitability 2 (works) instead of 3 (at its best)</td><td>100</td><td>10</td></tr>
 *   <tr><td>suitability 1 (possible with effort) instead of 3</td><td>400</td><td>40</td></tr>
 *   <tr><td>an exercise used last time</td><td>500</td><td>50</td></tr>
 *   <tr><td>an exercise more, which has to be explained</td><td>50</td><td>5</td></tr>
 *   <tr><td>an exercise beside the point of the goal</td><td>600</td><td>60</td></tr>
 *   <tr><td>an exercise of some use for any goal, that nothing in this one asks for</td><td>150</td>
 *       <td>15</td></tr>
 *   <tr><td>five minutes squeezed out of an exercise</td><td>100</td><td>10</td></tr>
 *   <tr><td>five minutes more than an exercise usually takes</td><td>50</td><td>5</td></tr>
 *   <tr><td>five minutes too many or too few in a phase</td><td>25</td><td>2½</td></tr>
 *   <tr><td>five minutes left over at the close</td><td>50</td><td>5</td></tr>
 *   <tr><td>a break, beside the time it takes</td><td>as its minutes left over</td><td>as long as
 *       it lasts</td></tr>
 *   <tr><td>a stretch ten minutes too short to be worth a break</td><td>50</td><td>5</td></tr>
 *   <tr><td>strangers warm up without learning who is there</td><td>200</td><td>20</td></tr>
 *   <tr><td>colleagues introduce themselves to each other</td><td>100</td><td>10</td></tr>
 *   <tr><td>each small group that the facilitators cannot look after</td><td>20</td><td>2</td></tr>
 * </table>
 *
 * <p>Where no source is named the figure is common practice, no source: it says how we would decide
 * if both could not be had.
 */
final class ExchangeRates {
  /**
   * Minutes in a cell. People keep appointments by five minutes; a finer plan looks exact, and no
   * exercise is. A finer grid is taken only where the brief names a time between two cells. Common
   * practice, no source.
   */
  static final int GRID = 5;

  /** Points for each tenth of a level off the curve, for each minute: the unit. */
  static final int ENERGY = 1;

  /**
   * Points for the same format twice in a row. People tire of sitting in one way: alternate. KACEE,
   * "Building your agenda", says so of energy; for formats common practice, no source.
   */
  static final int SAME_FORMAT = 150;

  /** Points for the same format on both sides of a break, which has refreshed people. */
  static final int SAME_FORMAT_ACROSS_BREAK = 50;

  /** Points for an exercise that works in this mode, but is at its best elsewhere (fit 2). */
  static final int WORKS = 100;

  /** Points for an exercise that is possible in this mode only with effort (fit 1). */
  static final int WITH_EFFORT = 400;

  /** Points for an exercise that this group knows already. */
  static final int USED_LAST_TIME = 500;

  /** Points for each exercise: it has to be explained, and people have to settle into it. */
  static final int EACH = 50;

  /** Points for an exercise that does not lead to the goal; see {@link Purpose}. */
  static final int BESIDE_THE_POINT = 600;

  /** Points for an exercise that is of some use for any goal, but that nothing here asks for. */
  static final int NOT_ASKED_FOR = 150;

  /** Work products that say nothing of what they are about: any list is one. */
  static final Set<String> OF_ANY_MATTER = Set.of("items");

  /** Work products with which a group has found the words, or chosen among what it gathered. */
  static final Set<String> PICKED = Set.of("question", "shortlist", "ranking", "decision");

  /** Work products on which a group can go on in the phase that must leave them. */
  static final Set<String> GOES_ON = Set.of("ranking", "decision");

  /** Work products that criteria are good for. */
  static final Set<String> BY_CRITERIA = Set.of("ranking", "decision");

  /** Work products that help to choose, and are of no use afterwards. */
  static final Set<String> BEFORE_PICKING = Set.of("themes", "criteria");

  /** Work products that can only be made when all is done. */
  static final Set<String> AT_THE_CLOSE = Set.of("feedback");

  /** Points for each minute under the usual length: people feel hurried. */
  static final int SQUEEZED = 20;

  /** Points for each minute over the usual length: people feel dragged, but get done. */
  static final int DRAWN_OUT = 10;

  /** Points for each minute that a phase is off its share of the time. */
  static final int SHARE = 5;

  /** Points for each minute left over after the closing buffer. */
  static final int IDLE = 10;

  /**
   * Points for each minute of an ordinary break. The same as for a minute left over, so that a
   * break is never put in to pass the time, and never left out to end early.
   */
  static final int BREAK_MINUTE = IDLE;

  /** Points for each minute that a stretch next to an ordinary break is under the shortest. */
  static final int SHORT_STRETCH = 5;

  /** Points for an icebreaker after which strangers still do not know who is there. */
  static final int NO_INTRODUCTIONS = 200;

  /** Points for introductions among colleagues, who need none. */
  static final int NEEDLESS_INTRODUCTIONS = 100;

  /** Small groups that a facilitator and a producer can look after at the same time. */
  static final int GROUPS_IN_SIGHT = 6;

  /** Points for each small group more than {@link #GROUPS_IN_SIGHT}. */
  static final int GROUP_OUT_OF_SIGHT = 20;

  /** The most that {@link #GROUP_OUT_OF_SIGHT} adds up to: beyond ten more nobody tries. */
  static final int MOST_OUT_OF_SIGHT = 200;

  /**
   * Part of the longest stretch, in per cent, that exercises usually fill; so many breaks are
   * expected when the working time is worked out. At screens this is 54 of 60 minutes, within the
   * 50 to 60 minutes of HSE L26.
   */
  static final int STRETCH_FILLED = 90;

  private ExchangeRates() {}

  /** Points for an exercise of that suitability, 1 to 3. */
  static int suitability(int fit) {
    return switch (fit) {
      case 3 -> 0;
      case 2 -> WORKS;
      default -> WITH_EFFORT;
    };
  }

  /** The prices that an instance states for the whole agenda. */
  static Weights weights(int breakMinutes) {
    return new Weights(
        ENERGY,
        SHARE,
        SAME_FORMAT,
        SAME_FORMAT_ACROSS_BREAK,
        SHORT_STRETCH,
        BREAK_MINUTE * breakMinutes,
        IDLE);
  }
}
