package org.arcwright.catalog;

import java.time.Duration;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * One exercise, complete enough to be run from its page. How long it takes for n people follows
 * from its steps; no second number stands beside them.
 *
 * @param id unique in a catalog
 * @param title at most 60 characters
 * @param kind what it does to the group's thinking
 * @param purpose in one line
 * @param people group sizes it serves
 * @param breakout size of a small group, if it uses small groups
 * @param energy how lively people are in it: 1 calm to 5 lively
 * @param openness how personal it gets: 0 not at all to 3 deeply
 * @param moves whether it asks people to move their bodies
 * @param needs work products that must exist before it
 * @param yields work products it leaves behind, at least one
 * @param opening what the facilitator says to start it
 * @param steps at least one, in order
 * @param modes its suitability for every mode
 * @param care cautions, the way to opt out and the like
 * @param notes what to prepare, watch for and hand on
 * @param source where it comes from
 */
public record Exercise(
    String id,
    String title,
    Kind kind,
    String purpose,
    SizeRange people,
    Optional<SizeRange> breakout,
    int energy,
    int openness,
    boolean moves,
    Set<String> needs,
    Set<String> yields,
    String opening,
    List<Step> steps,
    Map<Mode, Suitability> modes,
    Care care,
    Notes notes,
    Source source) {

  /**
   * What can hurt, and what to do about it.
   *
   * @param cautions what the facilitator heeds, wherever people are
   * @param optOut how a person may stay out of it
   * @param access how it is made accessible
   */
  public record Care(List<String> cautions, Optional<String> optOut, List<String> access) {
    /** Refuses blank lines. */
    public Care {
      cautions = Checks.lines("cautions", cautions, 400);
      if (optOut.isPresent()) {
        optOut = Optional.of(Checks.text("opt-out", optOut.get(), 400));
      }
      access = Checks.lines("access", access, 400);
    }
  }

  /**
   * The facilitator's side notes.
   *
   * @param materials what to prepare beyond the tools
   * @param watch what to watch for
   * @param tips what helps
   * @param carryOver what carries over to the next exercise
   */
  public record Notes(
      List<String> materials, List<String> watch, List<String> tips, String carryOver) {
    /** Refuses blank lines. */
    public Notes {
      materials = Checks.lines("materials", materials, 400);
      watch = Checks.lines("watch", watch, 400);
      tips = Checks.lines("tips", tips, 400);
      carryOver = Checks.text("carry-over", carryOver, 300);
    }
  }

  /** Refuses what cannot be run; see each component. */
  public Exercise {
    Checks.id("id", id);
    title = Checks.text("title", title, 60);
    purpose = Checks.text("purpose", purpose, 120);
    Checks.range("energy", energy, 1, 5);
    Checks.range("openness", openness, 0, 3);
    needs = Checks.ids("needs", needs);
    yields = Checks.ids("yields", yields);
    if (yields.isEmpty()) {
      throw new InvalidValueException(
          "yields", "empty", "name at least one work product that it leaves behind");
    }
    opening = Checks.text("opening", opening, 2000);
    steps = List.copyOf(steps);
    if (steps.isEmpty()) {
      throw new InvalidValueException("steps", "empty", "describe at least one step");
    }
    for (Step step : steps) {
      if (breakout.isEmpty() && usesGroups(step)) {
        throw new InvalidValueException(
            "breakout", "missing", "a step works in small groups; say how large they are");
      }
    }
    for (Mode mode : Mode.values()) {
      if (!modes.containsKey(mode)) {
        throw new InvalidValueException("modes", "without " + mode.word(), "describe all three");
      }
    }
    modes = Collections.unmodifiableMap(new EnumMap<>(modes));
    if (breakout.isPresent() && !splitsAny(people, breakout.get())) {
      throw new InvalidValueException(
          "breakout",
          breakout.get(),
          "none of " + people + " people split into such groups; widen one of the two");
    }
    refuseEndless(people.max(), steps, breakout);
    boolean warned = !care.cautions().isEmpty();
    for (Suitability suitability : modes.values()) {
      warned |= !suitability.cautions().isEmpty();
    }
    if ((moves || openness >= 2) && (!warned || care.optOut().isEmpty())) {
      throw new InvalidValueException(
          moves ? "moves" : "openness",
          moves ? "true" : openness,
          "what moves bodies or asks for disclosure needs cautions and an opt-out");
    }
  }

  private static boolean splitsAny(SizeRange people, SizeRange groups) {
    for (int count = people.min(); count <= people.max(); count++) {
      if (groups.splits(count)) {
        return true;
      }
    }
    return false;
  }

  /** What takes turns grows with the group; beyond a day nobody could say how long it takes. */
  private static void refuseEndless(int people, List<Step> steps, Optional<SizeRange> breakout) {
    long seconds = 0;
    for (Step step : steps) {
      seconds += step.minutes().max().toSeconds() * step.times(people, breakout);
    }
    if (seconds > Minutes.DAY.toSeconds()) {
      throw new InvalidValueException(
          "people.max",
          people,
          "with so many it takes more than a day; lower it, or let small groups take turns");
    }
  }

  private static boolean usesGroups(Step step) {
    return step.format() == Format.SMALL_GROUPS || step.per() == Per.GROUP;
  }

  /**
   * How long it takes for {@code people}: the sum of its steps.
   *
   * @throws InvalidValueException if it does not serve that many
   */
  public Minutes minutes(int people) {
    if (!serves(people)) {
      throw new InvalidValueException(
          "people", people, "\"" + title + "\" serves " + this.people + " people");
    }
    long min = 0;
    long typical = 0;
    long max = 0;
    for (Step step : steps) {
      int times = step.times(people, breakout);
      min += times * step.minutes().min().toNanos();
      typical += times * step.minutes().typical().toNanos();
      max += times * step.minutes().max().toNanos();
    }
    return new Minutes(Duration.ofNanos(min), Duration.ofNanos(typical), Duration.ofNanos(max));
  }

  /** The same exercise with other steps. */
  public Exercise withSteps(List<Step> others) {
    return new Exercise(
        id, title, kind, purpose, people, breakout, energy, openness, moves, needs, yields, opening,
        others, modes, care, notes, source);
  }

  /** Whether that many people can do it, small groups included. */
  public boolean serves(int people) {
    return this.people.contains(people) && breakout.map(size -> size.splits(people)).orElse(true);
  }

  /** The number of people nearest to {@code people} that it serves; the smaller on ties. */
  public int nearest(int people) {
    for (int apart = 0; ; apart++) {
      if (serves(people - apart)) {
        return people - apart;
      }
      if (serves(people + apart)) {
        return people + apart;
      }
    }
  }

  /**
   * The format in which {@code people} spend most of its typical time; the earlier step on ties.
   */
  public Format format(int people) {
    Map<Format, Long> nanos = new EnumMap<>(Format.class);
    for (Step step : steps) {
      long typical = step.minutes().typical().toNanos();
      nanos.merge(step.format(), step.times(people, breakout) * typical, Long::sum);
    }
    Format longest = steps.get(0).format();
    for (Step step : steps) {
      if (nanos.getOrDefault(step.format(), 0L) > nanos.getOrDefault(longest, 0L)) {
        longest = step.format();
      }
    }
    return longest;
  }

  /** Its suitability for the mode. */
  public Suitability in(Mode mode) {
    Suitability suitability = modes.get(mode);
    if (suitability == null) {
      throw new IllegalStateException("no suitability for " + mode);
    }
    return suitability;
  }

  /** What the facilitator heeds in the mode: the cautions that always hold, then the mode's own. */
  public List<String> cautions(Mode mode) {
    return Stream.concat(care.cautions().stream(), in(mode).cautions().stream()).toList();
  }

  /** How a person may stay out of it in the mode; nothing where there is nothing to heed. */
  public Optional<String> optOut(Mode mode) {
    boolean careless = care.cautions().isEmpty();
    boolean elsewhere = modes.values().stream().anyMatch(s -> !s.cautions().isEmpty());
    return careless && elsewhere && in(mode).cautions().isEmpty()
        ? Optional.empty()
        : care.optOut();
  }
}
