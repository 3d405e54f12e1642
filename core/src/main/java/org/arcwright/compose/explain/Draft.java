package org.arcwright.compose.explain;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.arcwright.brief.Brief;
import org.arcwright.brief.Group;
import org.arcwright.brief.Meal;
import org.arcwright.brief.OwnItem;
import org.arcwright.brief.Rhythm;
import org.arcwright.brief.Wishes;

/** A brief while one wish after the other is changed in it, and rules are set aside. */
final class Draft {
  private final Brief brief;
  private Group group;
  private Duration cap;
  private Set<String> tools;
  private Rhythm rhythm;
  private final List<Meal> meals;
  private int bufferPercent;
  private Set<String> given;
  private final Set<String> include;
  private final Set<String> leaveOut;
  private final List<Wishes.Pin> pins;
  private final List<OwnItem> ownItems;

  private final Set<String> setAside;

  private Draft(Case before) {
    this.brief = before.brief();
    this.setAside = new LinkedHashSet<>(before.setAside());
    this.group = brief.group();
    this.cap = brief.cap();
    this.tools = brief.tools();
    this.rhythm = brief.rhythm();
    this.meals = new ArrayList<>(brief.meals());
    this.bufferPercent = brief.bufferPercent();
    this.given = brief.given();
    this.include = new LinkedHashSet<>(brief.wishes().include());
    this.leaveOut = new LinkedHashSet<>(brief.wishes().leaveOut());
    this.pins = new ArrayList<>(brief.wishes().pins());
    this.ownItems = new ArrayList<>(brief.ownItems());
  }

  static Draft of(Brief brief) {
    return of(new Case(brief, Set.of()));
  }

  static Draft of(Case before) {
    return new Draft(before);
  }

  /** Puts another wish of the same kind in a wish's place, or strikes it. */
  Draft change(Wish wish, Optional<Wish> instead) {
    if (instead.equals(Optional.of(wish))) {
      return this;
    }
    if (wish instanceof Wish.Include in) {
      include.remove(in.exercise());
    } else if (wish instanceof Wish.LeaveOut out) {
      leaveOut.remove(out.exercise());
    } else if (wish instanceof Wish.Rule rule) {
      setAside.add(rule.name());
    } else if (wish instanceof Wish.Pinned pinned) {
      put(pins, pinned.pin(), instead.map(other -> ((Wish.Pinned) other).pin()));
      include.remove(pinned.pin().exercise());
    } else if (wish instanceof Wish.Own own) {
      put(ownItems, own.item(), instead.map(other -> ((Wish.Own) other).item()));
    } else if (wish instanceof Wish.Meal meal) {
      put(meals, meal.meal(), instead.map(other -> ((Wish.Meal) other).meal()));
    } else {
      put(instead.orElseThrow(() -> new IllegalArgumentException(wish + " cannot be struck")));
    }
    return this;
  }

  private static <T> void put(List<T> list, T old, Optional<T> instead) {
    int at = list.indexOf(old);
    list.remove(at);
    instead.ifPresent(other -> list.add(at, other));
  }

  private void put(Wish wish) {
    if (wish instanceof Wish.Cap other) {
      cap = other.most();
    } else if (wish instanceof Wish.Tools other) {
      tools = other.atHand();
    } else if (wish instanceof Wish.Openness other) {
      group = new Group(group.count(), group.acquaintance(), other.most());
    } else if (wish instanceof Wish.People other) {
      group = new Group(other.count(), group.acquaintance(), group.openness());
    } else if (wish instanceof Wish.Stretch other) {
      rhythm = new Rhythm(rhythm.shortest(), other.longest(), rhythm.pause());
    } else if (wish instanceof Wish.Pause other) {
      rhythm = new Rhythm(rhythm.shortest(), rhythm.longest(), other.length());
    } else if (wish instanceof Wish.Buffer other) {
      bufferPercent = other.percent();
    } else if (wish instanceof Wish.Given other) {
      given = other.products();
    }
  }

  /** Adds the wish that an exercise is in, unless it is already there. */
  Draft include(String exercise) {
    include.add(exercise);
    return this;
  }

  /** Adds the wish that an exercise stays out. */
  Draft leaveOut(String exercise) {
    leaveOut.add(exercise);
    return this;
  }

  /** What has become of it. */
  Case draft() {
    return new Case(brief(), setAside);
  }

  /** The brief alone. */
  Brief brief() {
    return new Brief(
        brief.title(),
        brief.goal(),
        group,
        brief.mode(),
        cap,
        brief.start(),
        brief.zones(),
        tools,
        rhythm,
        meals,
        brief.curve(),
        bufferPercent,
        given,
        new Wishes(include, leaveOut, pins, brief.wishes().usedLastTime()),
        ownItems);
  }
}
