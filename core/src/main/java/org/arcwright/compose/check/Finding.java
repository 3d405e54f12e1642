package org.arcwright.compose.check;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.arcwright.compose.instance.Instance.Bounds;
import org.arcwright.compose.instance.Instance.Meal;

/** A rule of the composition problem that a list of items breaks. Times are minutes. */
public sealed interface Finding {
  /** The rule's number in the problem statement, 1 to 8. */
  int rule();

  /** The minute it is about. */
  long at();

  /** What is wrong, where and with which value, and what would be right, as one sentence. */
  String text();

  /** There is no exercise at all. */
  record NoExercise() implements Finding {
    @Override
    public int rule() {
      return 1;
    }

    @Override
    public long at() {
      return 0;
    }

    @Override
    public String text() {
      return "The list holds no exercise; it needs one in each phase at least.";
    }
  }

  /** An item that leaves a gap before it, overlaps the one before, or does not open at 0. */
  record Gap(String what, long at, long expected) implements Finding {
    @Override
    public int rule() {
      return 1;
    }

    @Override
    public String text() {
      return "%s starts at %s; it has to start at %s, %s."
          .formatted(
              what, at, expected, expected == 0 ? "the beginning" : "where the item before ends");
    }
  }

  /** A break that opens or closes the list. */
  record BreakAtEdge(long at, boolean opens) implements Finding {
    @Override
    public int rule() {
      return 1;
    }

    @Override
    public String text() {
      return "The break at %s %s the list; an exercise has to stand %s it."
          .formatted(at, opens ? "opens" : "closes", opens ? "before" : "after");
    }
  }

  /** An id that is none of the candidates'. */
  record UnknownExercise(String id, long at) implements Finding {
    @Override
    public int rule() {
      return 2;
    }

    @Override
    public String text() {
      return "Exercise %s at %s is not among the candidates; use one that is.".formatted(id, at);
    }
  }

  /** An exercise that stands earlier already. */
  record Repeated(String id, long at, long earlier) implements Finding {
    @Override
    public int rule() {
      return 2;
    }

    @Override
    public String text() {
      return "Exercise %s at %s stands at %s already; use another one here."
          .formatted(id, at, earlier);
    }
  }

  /** A length that the exercise does not come in. */
  record LengthNotAllowed(String id, long at, int length, List<Integer> allowed)
      implements Finding {
    /** Copies the list. */
    public LengthNotAllowed {
      allowed = List.copyOf(allowed);
    }

    @Override
    public int rule() {
      return 2;
    }

    @Override
    public String text() {
      return "Exercise %s at %s lasts %s; it may last %s."
          .formatted(id, at, length, Words.or(allowed));
    }
  }

  /** A phase number that no phase has. */
  record UnknownPhase(String id, long at, int phase, int last) implements Finding {
    @Override
    public int rule() {
      return 3;
    }

    @Override
    public String text() {
      return "Exercise %s at %s is in phase %s; the phases are numbered from 0 to %s."
          .formatted(id, at, phase, last);
    }
  }

  /** An exercise of a phase that is over. */
  record PhaseOutOfOrder(String id, long at, String phase, String begun) implements Finding {
    @Override
    public int rule() {
      return 3;
    }

    @Override
    public String text() {
      return "Exercise %s at %s is in phase %s, after an exercise of phase %s; move it before that phase."
          .formatted(id, at, phase, begun);
    }
  }

  /** An exercise of a kind that its phase does not take. */
  record KindNotAllowed(String id, long at, String kind, String phase, Set<String> kinds)
      implements Finding {
    /** Copies the set. */
    public KindNotAllowed {
      kinds = Set.copyOf(kinds);
    }

    @Override
    public int rule() {
      return 3;
    }

    @Override
    public String text() {
      return "Exercise %s at %s is of kind %s; phase %s takes %s."
          .formatted(id, at, kind, phase, Words.or(new TreeSet<>(kinds)));
    }
  }

  /** Too few or too many exercises in a phase; none means that the phase is skipped. */
  record PhaseCount(String phase, long at, int count, Bounds bounds) implements Finding {
    @Override
    public int rule() {
      return 3;
    }

    @Override
    public String text() {
      return "Phase %s, up to %s, counts %s exercises; right is %s."
          .formatted(phase, at, count, Words.within(bounds));
    }
  }

  /** Too few or too many minutes in a phase. */
  record PhaseMinutes(String phase, long at, long minutes, Bounds bounds) implements Finding {
    @Override
    public int rule() {
      return 3;
    }

    @Override
    public String text() {
      return "Phase %s, up to %s, holds %s minutes of exercises; right is %s."
          .formatted(phase, at, minutes, Words.within(bounds));
    }
  }

  /** A product that an exercise needs and nothing before it yields. */
  record NeedMissing(String id, long at, String product) implements Finding {
    @Override
    public int rule() {
      return 4;
    }

    @Override
    public String text() {
      return "Exercise %s at %s needs %s, which nothing before it yields; put an exercise that yields it before."
          .formatted(id, at, product);
    }
  }

  /** A product that does not exist when its phase ends. */
  record YieldMissing(String phase, long at, String product) implements Finding {
    @Override
    public int rule() {
      return 4;
    }

    @Override
    public String text() {
      return "Phase %s ends at %s without %s; put an exercise that yields it in or before the phase."
          .formatted(phase, at, product);
    }
  }

  /** A break as long as no break or meal may be here. */
  record BreakLength(long at, int length, List<Integer> allowed) implements Finding {
    /** Copies the list. */
    public BreakLength {
      allowed = List.copyOf(allowed);
    }

    @Override
    public int rule() {
      return 5;
    }

    @Override
    public String text() {
      return allowed.isEmpty()
          ? "The break at %s lasts %s; no break is left to be taken here.".formatted(at, length)
          : "The break at %s lasts %s; it may last %s.".formatted(at, length, Words.or(allowed));
    }
  }

  /** A break that stands right after another. */
  record SideBySide(long at) implements Finding {
    @Override
    public int rule() {
      return 5;
    }

    @Override
    public String text() {
      return "The break at %s follows a break; put an exercise between them.".formatted(at);
    }
  }

  /** A stretch over the most. */
  record StretchTooLong(long at, long minutes, int most) implements Finding {
    @Override
    public int rule() {
      return 5;
    }

    @Override
    public String text() {
      return "The stretch from %s holds %s minutes of exercises; at most %s may pass without a break."
          .formatted(at, minutes, most);
    }
  }

  /** A meal outside its window. */
  record MealElsewhere(long at, Meal meal) implements Finding {
    @Override
    public int rule() {
      return 5;
    }

    @Override
    public String text() {
      return "The meal of %s minutes starts at %s; it may start from %s to %s."
          .formatted(meal.minutes(), at, meal.from(), meal.to());
    }
  }

  /** A meal that does not happen. */
  record MealMissing(Meal meal) implements Finding {
    @Override
    public int rule() {
      return 5;
    }

    @Override
    public long at() {
      return meal.from();
    }

    @Override
    public String text() {
      return "The meal of %s minutes is missing; start it from %s to %s."
          .formatted(meal.minutes(), meal.from(), meal.to());
    }
  }

  /** More time than there is. */
  record OverCap(long exercises, long breaks, long buffer, int cap) implements Finding {
    @Override
    public int rule() {
      return 6;
    }

    @Override
    public long at() {
      return cap;
    }

    @Override
    public String text() {
      return "Exercises of %s, breaks of %s and a buffer of %s minutes make %s; the cap is %s."
          .formatted(exercises, breaks, buffer, exercises + breaks + buffer, cap);
    }
  }

  /** An exercise that must appear and does not. */
  record WishMissing(String id) implements Finding {
    @Override
    public int rule() {
      return 7;
    }

    @Override
    public long at() {
      return 0;
    }

    @Override
    public String text() {
      return "Exercise %s has to appear and does not; put it in.".formatted(id);
    }
  }

  /** A pinned exercise that starts at another minute. */
  record PinElsewhere(String id, long at, int pinned) implements Finding {
    @Override
    public int rule() {
      return 7;
    }

    @Override
    public String text() {
      return "Exercise %s starts at %s; it has to start at %s.".formatted(id, at, pinned);
    }
  }

  /** An exercise that follows one after which a rule of the instance does not want it. */
  record NotNext(String id, long at, String before, boolean breakBetween, String name)
      implements Finding {
    @Override
    public int rule() {
      return 8;
    }

    @Override
    public String text() {
      return "Exercise %s at %s follows %s%s, against the rule \"%s\"; put another exercise%s between."
          .formatted(
              id,
              at,
              before,
              breakBetween ? " after a break" : "",
              name,
              breakBetween ? "" : " or a break");
    }
  }

  /** More exercises of a sort than a rule of the instance allows. */
  record TooMany(String id, long at, int count, int most, String name) implements Finding {
    @Override
    public int rule() {
      return 8;
    }

    @Override
    public String text() {
      return "Exercise %s at %s is one too many under the rule \"%s\", which counts %s and allows %s; take another one."
          .formatted(id, at, name, count, most);
    }
  }
}
