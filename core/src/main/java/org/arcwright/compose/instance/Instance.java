package org.arcwright.compose.instance;

import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.InvalidValueException;

/**
 * One composition problem: an elementary shortest path with resource constraints (Feillet, Dejax,
 * Gendreau and Gueguen 2004). All times are minutes and multiples of {@code grid}.
 *
 * @param grid minutes in a cell, 1 or more
 * @param cap minutes from the first start to the last end, breaks and closing buffer included; at
 *     most 511 cells
 * @param curve target energy for each cell of the cap, in tenths
 * @param stretch minutes in a row without a break
 * @param breakMinutes length of an ordinary break; 0 means none
 * @param meals long breaks, in order; each happens once
 * @param bufferPercent closing buffer as a share of exercise minutes
 * @param products names of what exercises need and yield
 * @param initial products that exist before the start
 * @param phases in order, 1 to 15
 * @param candidates the exercises allowed, at most 100,000
 * @param include ids that must appear
 * @param pins ids that must start at a minute
 * @param rules which candidates may not follow each other, or come together
 * @param weights prices of what is wished, not demanded
 */
public record Instance(
    int grid,
    int cap,
    List<Integer> curve,
    Stretch stretch,
    int breakMinutes,
    List<Meal> meals,
    int bufferPercent,
    List<String> products,
    List<String> initial,
    List<Phase> phases,
    List<Candidate> candidates,
    List<String> include,
    List<Pin> pins,
    Rules rules,
    Weights weights) {

  /** Most cells in a cap. */
  public static final int MOST_CELLS = 511;

  /** Most cells in a stretch, and most products and wishes together. */
  public static final int MOST_BITS = 62;

  /** Most phases. */
  public static final int MOST_PHASES = 15;

  /** Most candidates. */
  public static final int MOST_CANDIDATES = 100_000;

  /** Most rules of the kind "at most so many of these". */
  public static final int MOST_COUNTED = Catalog.MOST_COUNTING;

  /**
   * Minutes of exercises in a row without a break.
   *
   * @param min a shorter one next to a break costs
   * @param max none is longer
   */
  public record Stretch(int min, int max) {}

  /**
   * A long break.
   *
   * @param from earliest start
   * @param to latest start
   * @param minutes length
   */
  public record Meal(int from, int to, int minutes) {}

  /**
   * A range of whole numbers, both ends included; turned round, nothing lies in it.
   *
   * @param min least
   * @param max most
   */
  public record Bounds(int min, int max) {}

  /**
   * A part of the arc.
   *
   * @param name in words
   * @param kinds kinds allowed
   * @param count how many exercises
   * @param minutes how many minutes in all
   * @param target minutes wished; any whole number
   * @param yields products that exist at its end
   */
  public record Phase(
      String name,
      Set<String> kinds,
      Bounds count,
      Bounds minutes,
      int target,
      List<String> yields) {
    /** Copies the lists. */
    public Phase {
      kinds = Set.copyOf(kinds);
      yields = List.copyOf(yields);
    }
  }

  /**
   * An exercise that may be used once.
   *
   * @param id unique
   * @param kind which phases allow it
   * @param lengths minutes, ascending
   * @param lengthCosts one for each length
   * @param energy in tenths
   * @param format two of the same in a row are monotonous
   * @param needs products that must exist before it
   * @param yields products that exist after it
   * @param cost its own
   */
  public record Candidate(
      String id,
      String kind,
      List<Integer> lengths,
      List<Integer> lengthCosts,
      int energy,
      String format,
      List<String> needs,
      List<String> yields,
      int cost) {
    /** Copies the lists. */
    public Candidate {
      lengths = List.copyOf(lengths);
      lengthCosts = List.copyOf(lengthCosts);
      needs = List.copyOf(needs);
      yields = List.copyOf(yields);
    }

    /** The same with another cost of its own. */
    public Candidate withCost(int other) {
      return new Candidate(id, kind, lengths, lengthCosts, energy, format, needs, yields, other);
    }

    private Candidate freeOfCharge() {
      List<Integer> nothing = Collections.nCopies(lengths.size(), 0);
      return new Candidate(id, kind, lengths, nothing, 0, "", needs, yields, 0);
    }
  }

  /**
   * A candidate that must start at a minute.
   *
   * @param id the candidate's
   * @param at the minute
   */
  public record Pin(String id, int at) {}

  /**
   * Rules beyond those of the problem itself. Ids that name no candidate ask for nothing.
   *
   * @param apart who may not follow whom
   * @param atMost of whom there may be only so many
   */
  public record Rules(List<Apart> apart, List<AtMost> atMost) {
    /** No rule. */
    public static final Rules NONE = new Rules(List.of(), List.of());

    /** Copies the lists. */
    public Rules {
      apart = List.copyOf(apart);
      atMost = List.copyOf(atMost);
    }
  }

  /**
   * None of some candidates is followed by any of others.
   *
   * @param name in words; several may share it
   * @param first ids
   * @param then ids of those that may not be the next exercise after one of {@code first}
   * @param acrossBreaks whether that holds with a break between, too
   */
  public record Apart(String name, Set<String> first, Set<String> then, boolean acrossBreaks) {
    /** Copies the sets. */
    public Apart {
      first = Set.copyOf(first);
      then = Set.copyOf(then);
    }
  }

  /**
   * Only so many of some candidates appear.
   *
   * @param name in words
   * @param of ids
   * @param most how many, 0 or more
   */
  public record AtMost(String name, Set<String> of, int most) {
    /** Copies the set. */
    public AtMost {
      of = Set.copyOf(of);
    }
  }

  /**
   * Prices, zero or more.
   *
   * @param energy for each tenth off the curve, for each minute
   * @param share for each minute a phase is off its target
   * @param monotony for two in a row of the same format
   * @param monotonyAcrossBreak the same with a break between
   * @param rhythm for each minute a stretch next to an ordinary break is under the least
   * @param pause for each ordinary break
   * @param idle for each minute left over
   */
  public record Weights(
      int energy,
      int share,
      int monotony,
      int monotonyAcrossBreak,
      int rhythm,
      int pause,
      int idle) {
    /** Nothing is asked for. */
    public static final Weights NONE = new Weights(0, 0, 0, 0, 0, 0, 0);
  }

  /** Copies the lists and refuses what breaks the form; see {@link InstanceRules}. */
  public Instance {
    curve = List.copyOf(curve);
    meals = List.copyOf(meals);
    products = List.copyOf(products);
    initial = List.copyOf(initial);
    phases = List.copyOf(phases);
    candidates = List.copyOf(candidates);
    include = List.copyOf(include);
    pins = List.copyOf(pins);
    InstanceRules.check(
        grid,
        cap,
        curve,
        stretch,
        breakMinutes,
        meals,
        bufferPercent,
        products,
        initial,
        phases,
        candidates,
        include,
        pins,
        rules,
        weights);
  }

  /** The same day with these phases. */
  public Instance withPhases(List<Phase> others) {
    return with(others, candidates, weights);
  }

  /** The same day with these candidates. */
  public Instance withCandidates(List<Candidate> others) {
    return with(phases, others, weights);
  }

  /**
   * The same day with every price 0: what fits it fits the priced one, and the other way round.
   * Energy and format, which then cost nothing either, are alike for all candidates.
   */
  public Instance freeOfCharge() {
    return with(phases, candidates.stream().map(Candidate::freeOfCharge).toList(), Weights.NONE);
  }

  private Instance with(
      List<Phase> otherPhases, List<Candidate> otherCandidates, Weights otherWeights) {
    return new Instance(
        grid,
        cap,
        curve,
        stretch,
        breakMinutes,
        meals,
        bufferPercent,
        products,
        initial,
        otherPhases,
        otherCandidates,
        include,
        pins,
        rules,
        otherWeights);
  }

  /** Cells in the cap. */
  public int cells() {
    return cap / grid;
  }

  /** Closing buffer in minutes for so many exercise minutes, rounded up to the grid. */
  public int buffer(int exerciseMinutes) {
    long percent = (long) exerciseMinutes * bufferPercent;
    long cell = 100L * grid;
    return (int) (grid * ((percent + cell - 1) / cell));
  }

  /** The candidates' ids. */
  public Set<String> candidateIds() {
    Set<String> ids = new HashSet<>();
    candidates.forEach(candidate -> ids.add(candidate.id()));
    return ids;
  }

  /** The refusal of a value, to be thrown; {@code field} is a path such as {@code cap}. */
  public static InvalidValueException refuse(String field, Object value, String remedy) {
    return new InvalidValueException(field, value, remedy);
  }
}
