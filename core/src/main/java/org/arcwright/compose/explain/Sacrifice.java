package org.arcwright.compose.explain;

import java.time.Duration;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.arcwright.brief.Brief;
import org.arcwright.brief.Moment;
import org.arcwright.brief.OwnItem;

/**
 * How much a facilitator gives up with a wish, so that ways out can be put in order. The coin is a
 * minute more of everybody's time. Every figure is common practice, no source: it says which of two
 * most would rather give up.
 *
 * <table>
 *   <caption>As dear as so many minutes more</caption>
 *   <tr><th>what</th><th>minutes</th></tr>
 *   <tr><td>a minute more in all</td><td>1</td></tr>
 *   <tr><td>a minute longer without a break</td><td>1</td></tr>
 *   <tr><td>a minute less in each break</td><td>2</td></tr>
 *   <tr><td>a hundredth of the whole time less kept free</td><td>a hundredth of it</td></tr>
 *   <tr><td>an exercise or own item starts ten minutes earlier or later</td><td>5</td></tr>
 *   <tr><td>a meal may start ten minutes earlier or later</td><td>5</td></tr>
 *   <tr><td>a meal is a minute shorter</td><td>2</td></tr>
 *   <tr><td>a tool more at hand</td><td>20</td></tr>
 *   <tr><td>an own item in another phase</td><td>20</td></tr>
 *   <tr><td>an exercise not in, or allowed after all</td><td>45</td></tr>
 *   <tr><td>a work product made beforehand</td><td>60</td></tr>
 *   <tr><td>exercises one level more personal</td><td>60</td></tr>
 *   <tr><td>a rule of the catalog set aside</td><td>60</td></tr>
 *   <tr><td>an own item not in</td><td>90</td></tr>
 *   <tr><td>other people than come, for each</td><td>30</td></tr>
 *   <tr><td>no meal</td><td>180</td></tr>
 * </table>
 */
final class Sacrifice {
  private static final int BREAK_MINUTE = 2;
  private static final int MEAL_MINUTE = 2;
  private static final int TOOL = 20;
  private static final int OTHER_PHASE = 20;
  private static final int EXERCISE = 45;
  private static final int PRODUCT = 60;
  private static final int OPENNESS = 60;
  private static final int RULE = 60;
  private static final int OWN_ITEM = 90;
  private static final int PERSON = 30;
  private static final int MEAL = 180;

  private final Brief brief;

  Sacrifice(Brief brief) {
    this.brief = brief;
  }

  /** In minutes, over zero. */
  int of(Wish wish, Optional<Wish> instead) {
    return instead.map(other -> of(wish, other)).orElseGet(() -> without(wish));
  }

  private static int without(Wish wish) {
    if (wish instanceof Wish.Own) {
      return OWN_ITEM;
    }
    if (wish instanceof Wish.Rule) {
      return RULE;
    }
    return wish instanceof Wish.Meal ? MEAL : EXERCISE;
  }

  private int of(Wish wish, Wish other) {
    if (wish instanceof Wish.Cap before && other instanceof Wish.Cap after) {
      return minutes(after.most().minus(before.most()));
    }
    if (wish instanceof Wish.Stretch before && other instanceof Wish.Stretch after) {
      return minutes(after.longest().minus(before.longest()));
    }
    if (wish instanceof Wish.Pause before && other instanceof Wish.Pause after) {
      return BREAK_MINUTE * Math.abs(minutes(before.length().minus(after.length())));
    }
    if (wish instanceof Wish.Buffer before && other instanceof Wish.Buffer after) {
      return Math.max(1, (before.percent() - after.percent()) * minutes(brief.cap()) / 100);
    }
    if (wish instanceof Wish.Pinned before && other instanceof Wish.Pinned after) {
      return moved(before.pin().at(), after.pin().at());
    }
    if (wish instanceof Wish.Own before && other instanceof Wish.Own after) {
      return own(before.item(), after.item());
    }
    if (wish instanceof Wish.Meal before && other instanceof Wish.Meal after) {
      return meal(before.meal(), after.meal());
    }
    if (wish instanceof Wish.Tools before && other instanceof Wish.Tools after) {
      return TOOL * more(before.atHand(), after.atHand());
    }
    if (wish instanceof Wish.Given before && other instanceof Wish.Given after) {
      return PRODUCT * more(before.products(), after.products());
    }
    if (wish instanceof Wish.Openness before && other instanceof Wish.Openness after) {
      return OPENNESS * (after.most() - before.most());
    }
    if (wish instanceof Wish.People before && other instanceof Wish.People after) {
      return PERSON * Math.abs(before.count() - after.count());
    }
    throw new IllegalArgumentException(wish + " is not of the kind of " + other);
  }

  private int own(OwnItem before, OwnItem after) {
    int phase = before.phase().equals(after.phase()) ? 0 : OTHER_PHASE;
    return before.at().equals(after.at())
        ? phase
        : phase + moved(before.at().orElseThrow(), after.at().orElseThrow());
  }

  private int moved(Moment before, Moment after) {
    return Math.max(1, minutes(brief.offset(before).minus(brief.offset(after)).abs()) / 2);
  }

  private static int meal(org.arcwright.brief.Meal before, org.arcwright.brief.Meal after) {
    Duration earlier = before.earliest().minus(after.earliest());
    Duration later = after.latest().minus(before.latest());
    Duration wider = earlier.compareTo(later) > 0 ? earlier : later;
    return MEAL_MINUTE * minutes(before.length().minus(after.length())) + (minutes(wider) + 1) / 2;
  }

  private static int more(Set<String> before, Set<String> after) {
    Set<String> more = new HashSet<>(after);
    more.removeAll(before);
    return more.size();
  }

  private static int minutes(Duration duration) {
    return (int) duration.toMinutes();
  }
}
