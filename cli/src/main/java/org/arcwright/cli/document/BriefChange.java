package org.arcwright.cli.document;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.arcwright.brief.Brief;
import org.arcwright.brief.Meal;
import org.arcwright.brief.Moment;
import org.arcwright.brief.OwnItem;
import org.arcwright.brief.Wishes;
import org.arcwright.compose.explain.Loosening;
import org.arcwright.compose.explain.WayOut;
import org.arcwright.compose.explain.Wish;
import org.arcwright.format.BriefFormat;

/** Says what to write in a brief instead, or what to strike. */
final class BriefChange {
  private final Brief after;
  private final List<String> written;

  private BriefChange(Brief after) {
    this.after = after;
    this.written = BriefFormat.write(after).lines().toList();
  }

  /** One change for each loosening. */
  static List<String> of(WayOut way) {
    BriefChange change = new BriefChange(way.brief());
    List<String> changes = new ArrayList<>();
    for (Loosening loosening : way.loosenings()) {
      String text = change.of(loosening.wish(), loosening.instead());
      if (!changes.contains(text)) {
        changes.add(text);
      }
    }
    return changes;
  }

  private String of(Wish wish, Optional<Wish> instead) {
    if (wish instanceof Wish.Include in) {
      return "strike " + in.exercise() + " from include";
    }
    if (wish instanceof Wish.LeaveOut out) {
      return "strike " + out.exercise() + " from leave-out";
    }
    if (wish instanceof Wish.Pinned pinned) {
      return instead
          .map(other -> pin(((Wish.Pinned) other).pin()))
          .orElse("strike " + pinned.pin().exercise() + " from pin");
    }
    if (wish instanceof Wish.Own own) {
      return instead
          .map(other -> own(own.item(), ((Wish.Own) other).item()))
          .orElse("strike " + own.item().id() + " from own-items");
    }
    if (wish instanceof Wish.Meal) {
      return instead.map(other -> meal(((Wish.Meal) other).meal())).orElse("strike the meal");
    }
    if (wish instanceof Wish.Rule rule) {
      return "set aside the rule \"" + rule.name() + "\"";
    }
    return line(key(wish));
  }

  private static String key(Wish wish) {
    if (wish instanceof Wish.Cap) {
      return "cap";
    }
    if (wish instanceof Wish.Stretch || wish instanceof Wish.Pause) {
      return "rhythm";
    }
    if (wish instanceof Wish.Buffer) {
      return "buffer";
    }
    if (wish instanceof Wish.Tools) {
      return "tools";
    }
    return wish instanceof Wish.Given ? "given" : "people";
  }

  /** The line of a key that stands alone, as a brief writes it. */
  private String line(String key) {
    return written.stream().filter(line -> line.startsWith(key + ":")).findFirst().orElse(key);
  }

  private static String pin(Wishes.Pin pin) {
    return "at: " + text(pin.at()) + " for " + pin.exercise() + " under pin";
  }

  private static String own(OwnItem before, OwnItem after) {
    return after
        .at()
        .filter(at -> !before.at().equals(after.at()))
        .map(at -> "at: " + text(at) + " for " + after.id() + " under own-items")
        .orElse("strike the phase of " + after.id());
  }

  private static String text(Moment at) {
    return at instanceof Moment.Clock clock
        ? clock.time().toString()
        : ((Moment.After) at).duration().toMinutes() + "m";
  }

  private String meal(Meal meal) {
    return "meal: {at: "
        + text(meal.earliest())
        + ".."
        + text(meal.latest())
        + ", minutes: "
        + meal.length().toMinutes()
        + "}";
  }

  private String text(Duration offset) {
    return after.start().isPresent()
        ? new Clock(after.start()).at(offset)
        : offset.toMinutes() + "m";
  }
}
