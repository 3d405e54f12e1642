package org.arcwright.shelf;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Minutes;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Phase;
import org.arcwright.catalog.Step;

/** A choice from a shelf: all exercises that meet every one of its criteria. Immutable. */
public final class Selection {
  /** All exercises. */
  public static final Selection ALL = new Selection(List.of());

  private final List<Criterion> criteria;

  private Selection(List<Criterion> criteria) {
    this.criteria = List.copyOf(criteria);
  }

  /**
   * Something that an exercise meets or does not meet.
   *
   * @param name in a few words, for messages
   * @param met whether an exercise meets it
   */
  public record Criterion(String name, Predicate<Exercise> met) {}

  /** The same with another criterion. */
  public Selection with(Criterion criterion) {
    List<Criterion> all = new ArrayList<>(criteria);
    all.add(criterion);
    return new Selection(all);
  }

  /** The exercises that meet all criteria, by id. */
  public List<Exercise> from(Catalog catalog) {
    return catalog.exercises().values().stream()
        .filter(exercise -> criteria.stream().allMatch(criterion -> criterion.met().test(exercise)))
        .toList();
  }

  /**
   * How many there would be without a criterion, by its name; those that change nothing are left
   * out.
   */
  public Map<String, Integer> without(Catalog catalog) {
    int now = from(catalog).size();
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (int i = 0; i < criteria.size(); i++) {
      List<Criterion> others = new ArrayList<>(criteria);
      Criterion left = others.remove(i);
      int count = new Selection(others).from(catalog).size();
      if (count > now) {
        counts.put(left.name(), count);
      }
    }
    return counts;
  }

  /** Of one of the kinds. */
  public static Criterion kind(String name, Set<Kind> kinds) {
    return new Criterion(name, exercise -> kinds.contains(exercise.kind()));
  }

  /**
   * Of use for the goal: a phase of its arc takes such a kind, and it leaves what that phase must
   * leave, or what an exercise that does so needs.
   */
  public static Criterion goal(String name, Goal goal, Catalog catalog) {
    Set<String> helpful = new TreeSet<>();
    for (Exercise exercise : catalog.exercises().values()) {
      if (isAsked(exercise, goal)) {
        helpful.addAll(exercise.needs());
      }
    }
    helpful.removeAll(goal.given());
    return new Criterion(
        name,
        exercise ->
            isAsked(exercise, goal)
                || (goal.arc().stream().anyMatch(phase -> phase.kinds().contains(exercise.kind()))
                    && exercise.yields().stream().anyMatch(helpful::contains)));
  }

  private static boolean isAsked(Exercise exercise, Goal goal) {
    for (Phase phase : goal.arc()) {
      if (phase.kinds().contains(exercise.kind())
          && phase.yields().stream().anyMatch(exercise.yields()::contains)) {
        return true;
      }
    }
    return false;
  }

  /** Serves that many people, small groups included. */
  public static Criterion people(String name, int people) {
    return new Criterion(name, exercise -> exercise.serves(people));
  }

  /** Can last some length between two ends, both included, with that many people. */
  public static Criterion minutes(String name, Duration least, Duration most, int people) {
    return new Criterion(
        name,
        exercise -> exercise.serves(people) && overlaps(exercise.minutes(people), least, most));
  }

  /** Can last some length between two ends, both included, with some number of people. */
  public static Criterion minutes(String name, Duration least, Duration most) {
    return new Criterion(
        name,
        exercise ->
            IntStream.rangeClosed(exercise.people().min(), exercise.people().max())
                .filter(exercise::serves)
                .anyMatch(people -> overlaps(exercise.minutes(people), least, most)));
  }

  private static boolean overlaps(Minutes range, Duration least, Duration most) {
    return range.min().compareTo(most) <= 0 && range.max().compareTo(least) >= 0;
  }

  /** Possible where people are. */
  public static Criterion mode(String name, Mode mode) {
    return new Criterion(name, exercise -> exercise.in(mode).fit() > 0);
  }

  /** Makes use of the tool in one of the modes, if it is possible there. */
  public static Criterion tool(String name, String tool, Set<Mode> modes) {
    return new Criterion(
        name, exercise -> in(exercise, modes, mode -> exercise.in(mode).tools().contains(tool)));
  }

  /** Can do without all of the tools at once, in one of the modes. */
  public static Criterion withoutTools(String name, Set<String> tools, Set<Mode> modes) {
    return new Criterion(
        name,
        exercise ->
            in(exercise, modes, mode -> Collections.disjoint(exercise.in(mode).tools(), tools)));
  }

  private static boolean in(Exercise exercise, Set<Mode> modes, Predicate<Mode> met) {
    return modes.stream().anyMatch(mode -> exercise.in(mode).fit() > 0 && met.test(mode));
  }

  /** As lively as that: 1 calm to 5 lively, both ends included. */
  public static Criterion energy(String name, int least, int most) {
    return new Criterion(name, exercise -> least <= exercise.energy() && exercise.energy() <= most);
  }

  /** As personal as that: 0 not at all to 3 deeply, both ends included. */
  public static Criterion openness(String name, int least, int most) {
    return new Criterion(
        name, exercise -> least <= exercise.openness() && exercise.openness() <= most);
  }

  /** Leaves the work product. */
  public static Criterion yields(String name, String product) {
    return new Criterion(name, exercise -> exercise.yields().contains(product));
  }

  /** Has every word of the text somewhere on its page, whatever its case. */
  public static Criterion text(String name, String text) {
    List<String> words =
        Arrays.stream(text.toLowerCase(Locale.ROOT).split("\\s+", -1))
            .filter(word -> !word.isEmpty())
            .toList();
    return new Criterion(
        name,
        exercise -> {
          String page = page(exercise);
          return words.stream().allMatch(page::contains);
        });
  }

  private static String page(Exercise exercise) {
    return String.join(
            "\n",
            exercise.id(),
            exercise.title(),
            exercise.purpose(),
            exercise.opening(),
            exercise.steps().stream().map(Step::text).collect(Collectors.joining("\n")),
            exercise.modes().values().stream()
                .map(suitability -> suitability.adaptation())
                .collect(Collectors.joining("\n")),
            String.join("\n", exercise.notes().materials()),
            String.join("\n", exercise.notes().watch()),
            String.join("\n", exercise.notes().tips()),
            exercise.notes().carryOver())
        .toLowerCase(Locale.ROOT);
  }
}
