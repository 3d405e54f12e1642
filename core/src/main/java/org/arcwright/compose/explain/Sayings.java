package org.arcwright.compose.explain;

import java.time.Duration;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.arcwright.brief.Brief;
import org.arcwright.brief.Moment;
import org.arcwright.brief.OwnItem;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Phase;
import org.arcwright.catalog.Product;
import org.arcwright.catalog.Tool;

/** Wishes, and what is given up about them, in a facilitator's words. */
final class Sayings {
  private final Brief brief;
  private final Catalog catalog;

  Sayings(Brief brief, Catalog catalog) {
    this.brief = brief;
    this.catalog = catalog;
  }

  /** A wish as it stands in the brief. */
  String asked(Wish wish) {
    if (wish instanceof Wish.Cap cap) {
      return time(cap.most()) + " in all, breaks and buffer included";
    }
    if (wish instanceof Wish.Include in) {
      return exercise(in.exercise()) + " is in";
    }
    if (wish instanceof Wish.Pinned pinned) {
      return exercise(pinned.pin().exercise()) + " starts " + at(pinned.pin().at());
    }
    if (wish instanceof Wish.LeaveOut out) {
      return exercise(out.exercise()) + " stays out";
    }
    if (wish instanceof Wish.Own own) {
      return own(own.item());
    }
    if (wish instanceof Wish.Meal meal) {
      return "a meal of " + time(meal.meal().length()) + " that starts " + window(meal.meal());
    }
    if (wish instanceof Wish.Tools tools) {
      return brief.tools().isEmpty()
          ? "no other tools than the usual ones: " + tools(tools.atHand())
          : "no other tools than these: " + tools(tools.atHand());
    }
    if (wish instanceof Wish.Openness openness) {
      return openness.most() == 0
          ? "nothing personal (openness 0)"
          : "nothing more personal than openness " + openness.most();
    }
    if (wish instanceof Wish.Stretch stretch) {
      return "no more than " + time(stretch.longest()) + " of work without a break";
    }
    if (wish instanceof Wish.Pause pause) {
      return pause.length().isZero() ? "no breaks" : "breaks of " + time(pause.length());
    }
    if (wish instanceof Wish.Buffer buffer) {
      return buffer.percent() + " % of the work kept free at the close";
    }
    if (wish instanceof Wish.Rule rule) {
      return "the rule " + quoted(rule.name());
    }
    if (wish instanceof Wish.People people) {
      return people(people.count()) + (people.count() == 1 ? " alone" : ", all together");
    }
    return given((Wish.Given) wish);
  }

  private String own(OwnItem item) {
    return quoted(item.title())
        + " ("
        + time(item.length())
        + ") is in"
        + item.phase().map(phase -> ", in " + phase(phase)).orElse("")
        + item.at().map(at -> ", " + at(at)).orElse("");
  }

  private String given(Wish.Given given) {
    Set<String> all = new LinkedHashSet<>(given.products());
    catalog.goal(brief.goal()).map(Goal::given).ifPresent(all::addAll);
    return all.isEmpty()
        ? "nothing is there beforehand"
        : "nothing is there beforehand but " + list(all.stream().map(this::product).toList());
  }

  /** What is given up. */
  String givenUp(Wish wish, Optional<Wish> instead) {
    return instead.map(other -> instead(wish, other)).orElseGet(() -> without(wish));
  }

  private String without(Wish wish) {
    if (wish instanceof Wish.LeaveOut out) {
      return "allow " + exercise(out.exercise());
    }
    if (wish instanceof Wish.Include in) {
      return "do without " + exercise(in.exercise());
    }
    if (wish instanceof Wish.Pinned pinned) {
      return "do without " + exercise(pinned.pin().exercise());
    }
    if (wish instanceof Wish.Own own) {
      return "do without " + quoted(own.item().title());
    }
    if (wish instanceof Wish.Rule rule) {
      return "set aside the rule " + quoted(rule.name());
    }
    return "do without the meal"
        + (brief.meals().size() > 1 ? " that starts " + window(((Wish.Meal) wish).meal()) : "");
  }

  private String instead(Wish wish, Wish other) {
    if (wish instanceof Wish.Cap before && other instanceof Wish.Cap after) {
      return time(after.most().minus(before.most())) + " more: " + time(after.most()) + " in all";
    }
    if (wish instanceof Wish.Stretch before && other instanceof Wish.Stretch after) {
      return "let people work up to "
          + time(after.longest())
          + " without a break instead of "
          + time(before.longest());
    }
    if (wish instanceof Wish.Pause before && other instanceof Wish.Pause after) {
      return before.length().isZero()
          ? "allow breaks, of " + time(after.length())
          : "breaks of " + time(after.length()) + " instead of " + time(before.length());
    }
    if (wish instanceof Wish.Buffer before && other instanceof Wish.Buffer after) {
      return "keep "
          + (after.percent() == 0 ? "nothing" : after.percent() + " %")
          + " free at the close instead of "
          + before.percent()
          + " %";
    }
    if (wish instanceof Wish.Pinned before && other instanceof Wish.Pinned after) {
      return "start "
          + exercise(before.pin().exercise())
          + " "
          + at(after.pin().at())
          + " instead of "
          + time(before.pin().at());
    }
    if (wish instanceof Wish.Own before && other instanceof Wish.Own after) {
      return own(before.item(), after.item());
    }
    if (wish instanceof Wish.Meal before && other instanceof Wish.Meal after) {
      return before.meal().length().equals(after.meal().length())
          ? "let the meal start " + window(after.meal()) + " instead of " + window(before.meal())
          : "a meal of "
              + time(after.meal().length())
              + " instead of "
              + time(before.meal().length());
    }
    if (wish instanceof Wish.Tools before && other instanceof Wish.Tools after) {
      return "have at hand as well: " + tools(more(before.atHand(), after.atHand()));
    }
    if (wish instanceof Wish.Given before && other instanceof Wish.Given after) {
      return "bring along "
          + list(more(before.products(), after.products()).stream().map(this::product).toList());
    }
    if (wish instanceof Wish.Openness before && other instanceof Wish.Openness after) {
      return "let it get more personal: openness " + after.most() + " instead of " + before.most();
    }
    if (wish instanceof Wish.People before && other instanceof Wish.People after) {
      return people(after.count()) + " instead of " + before.count();
    }
    throw new IllegalArgumentException(wish + " is not of the kind of " + other);
  }

  private String own(OwnItem before, OwnItem after) {
    return before.at().equals(after.at())
        ? "let " + quoted(after.title()) + " stand in any phase"
        : "start "
            + quoted(after.title())
            + after.at().map(at -> " " + at(at)).orElse("")
            + before.at().map(at -> " instead of " + time(at)).orElse("");
  }

  private String window(org.arcwright.brief.Meal meal) {
    String from = time(new Moment.After(meal.earliest()));
    return meal.earliest().equals(meal.latest())
        ? at(new Moment.After(meal.earliest()))
        : "between " + from + " and " + time(new Moment.After(meal.latest()));
  }

  private String exercise(String id) {
    return quoted(catalog.exercise(id).map(Exercise::title).orElse(id));
  }

  private String phase(String name) {
    return quoted(
        catalog.goal(brief.goal()).map(Goal::arc).orElse(List.of()).stream()
            .filter(phase -> phase.name().equals(name))
            .map(Phase::title)
            .findFirst()
            .orElse(name));
  }

  private String tools(Collection<String> ids) {
    return list(
        ids.stream()
            .map(id -> Optional.ofNullable(catalog.tools().get(id)).map(Tool::title).orElse(id))
            .toList());
  }

  private String product(String id) {
    return "the " + Optional.ofNullable(catalog.products().get(id)).map(Product::title).orElse(id);
  }

  private static Set<String> more(Set<String> before, Set<String> after) {
    Set<String> more = new LinkedHashSet<>(after);
    more.removeAll(before);
    return more;
  }

  private static String people(int count) {
    return count + (count == 1 ? " person" : " people");
  }

  private String at(Moment moment) {
    return brief.start().isPresent() ? "at " + time(moment) : time(moment) + " after the start";
  }

  /** The time of day if the start is known, else the time from the start. */
  private String time(Moment moment) {
    Duration offset = brief.offset(moment);
    return brief.start().map(start -> clock(start, offset)).orElseGet(() -> time(offset));
  }

  private static String clock(ZonedDateTime start, Duration offset) {
    LocalTime time = start.plus(offset).toLocalTime();
    return (time.getHour() < 10 ? "0" : "")
        + time.getHour()
        + (time.getMinute() < 10 ? ":0" : ":")
        + time.getMinute();
  }

  /** {@code 35 min}, {@code 2 h} or {@code 2 h 40 min}. */
  static String time(Duration duration) {
    long hours = duration.toHours();
    int minutes = duration.toMinutesPart();
    if (hours == 0) {
      return minutes + " min";
    }
    return hours + " h" + (minutes == 0 ? "" : " " + minutes + " min");
  }

  private static String list(List<String> words) {
    List<String> first = new ArrayList<>(words);
    String last = first.isEmpty() ? "nothing" : first.remove(first.size() - 1);
    return first.isEmpty() ? last : String.join(", ", first) + " and " + last;
  }

  private static String quoted(String text) {
    return "\"" + text + "\"";
  }
}
