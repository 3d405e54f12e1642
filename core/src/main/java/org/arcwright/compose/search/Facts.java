package org.arcwright.compose.search;

import java.util.BitSet;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Candidate;

/**
 * What an instance says, in cells, numbers and bits: what each candidate needs and yields, by when
 * it can stand (a fixpoint over what may exist), where pins are, and what energy costs. Includes
 * have become products that their candidates alone yield, due at the last phase where they can
 * stand. Time is linear in the candidates.
 */
final class Facts {
  static final String TOO_LARGE =
      "an agenda could cost too much to add up; divide all costs and weights by the same number";

  final Instance instance;
  final int grid;
  final int cells;
  final int phases;
  final int longestStretch;
  final int breakCells;
  final int[] mealFrom;
  final int[] mealTo;
  final int[] mealCells;
  final String[] ids;

  /** Products of each candidate, as bits; those that exist from the start are left out. */
  final long[] needs;

  final long[] yields;

  /** Bits of the products that stand for wishes. */
  final long wishes;

  /** The candidate's format, or 0 for all if none costs anything. */
  final int[] format;

  /** The candidate's place in {@link #energyLevels}. */
  final int[] energy;

  /** Products that must exist at each phase's end, wishes included. */
  final long[] due;

  final Pins pins;
  final Neighbours neighbours;
  final List<AtMost> atMost;

  /** Candidates that must appear, pinned ones too. */
  final int[] wished;

  /** For each phase, what may exist by its end. */
  final long[] possible;

  /** Energies that candidates have, in tenths. */
  final int[] energyLevels;

  /** For each level the cost of its energy from the start to each cell. */
  final int[][] energySum;

  /** For each phase the price of spending so many cells on it. */
  final int[][] shareCost;

  /** Bits of a packed price that hold the tie. */
  final int shift;

  private final Work work;
  private final Map<String, Integer> numbers;
  private final Map<String, Long> bits = new HashMap<>();
  private final int[] kind;
  private final BitSet[] kindsOf;

  private Facts(Instance instance, Map<String, Integer> numbers, Pins pins, Work work) {
    this.instance = instance;
    this.numbers = numbers;
    this.pins = pins;
    this.work = work;
    this.grid = instance.grid();
    this.cells = instance.cells();
    this.phases = instance.phases().size();
    this.longestStretch = instance.stretch().max() / grid;
    this.breakCells = instance.breakMinutes() / grid;
    List<Instance.Meal> meals = instance.meals();
    this.mealFrom = meals.stream().mapToInt(meal -> meal.from() / grid).toArray();
    this.mealTo = meals.stream().mapToInt(meal -> meal.to() / grid).toArray();
    this.mealCells = meals.stream().mapToInt(meal -> meal.minutes() / grid).toArray();
    this.wishes = -1L << instance.products().size();
    int count = instance.candidates().size();
    this.ids = new String[count];
    this.needs = new long[count];
    this.yields = new long[count];
    this.kind = new int[count];
    this.format = new int[count];
    this.energy = new int[count];
    this.kindsOf = Stream.generate(BitSet::new).limit(phases).toArray(BitSet[]::new);
    this.due = new long[phases];
    this.possible = new long[phases];
    this.wished = wished();
    this.neighbours = Neighbours.of(instance.rules().apart(), numbers, count);
    this.atMost =
        instance.rules().atMost().stream()
            .map(rule -> AtMost.of(rule, numbers))
            .filter(rule -> rule.matters(cells))
            .toList();
    this.energyLevels = readCandidates();
    this.energySum = sumEnergies();
    this.shareCost = shareCosts();
    this.shift = Integer.SIZE + bitsFor(mostItems());
    readProducts();
  }

  /**
   * The facts, or nothing if it is plain already that nothing fits.
   *
   * @throws Work.Stopped if the limit is reached
   */
  static Optional<Facts> of(Instance instance, Work work) {
    for (Instance.Phase phase : instance.phases()) {
      if (phase.count().min() > phase.count().max()
          || phase.minutes().min() > phase.minutes().max()) {
        return Optional.empty();
      }
    }
    Map<String, Integer> numbers = numbers(instance);
    return Pins.of(instance, numbers)
        .map(pins -> new Facts(instance, numbers, pins, work))
        .filter(Facts::settle);
  }

  /** Candidates by id; empty if nothing names any. */
  private static Map<String, Integer> numbers(Instance instance) {
    Map<String, Integer> numbers = new HashMap<>();
    if (!instance.pins().isEmpty()
        || !instance.include().isEmpty()
        || !instance.rules().equals(Instance.Rules.NONE)) {
      for (Candidate candidate : instance.candidates()) {
        numbers.put(candidate.id(), numbers.size());
      }
    }
    return numbers;
  }

  /** Places the includes; false if a phase cannot have what is due at its end. */
  private boolean settle() {
    findPossible();
    if (!instance.include().isEmpty()) {
      if (!placeIncludes()) {
        return false;
      }
      findPossible();
    }
    for (int p = 0; p < phases; p++) {
      if ((due[p] & ~possible[p]) != 0) {
        return false;
      }
    }
    return true;
  }

  /** Whether a phase can use a candidate. */
  boolean usable(int candidate, int phase) {
    return allowed(candidate, phase) && (needs[candidate] & ~possible[phase]) == 0;
  }

  /** No agenda costs less: the fewest exercises of each phase, all at the price of its cheapest. */
  long least() {
    long sum = 0;
    for (int p = 0; p < phases; p++) {
      long cheapest = Long.MAX_VALUE;
      for (int i = 0; i < ids.length; i++) {
        if (usable(i, p)) {
          Candidate candidate = instance.candidates().get(i);
          cheapest =
              Math.min(
                  cheapest, (long) candidate.cost() + Collections.min(candidate.lengthCosts()));
        }
      }
      int fewest = instance.phases().get(p).count().min();
      sum += cheapest == Long.MAX_VALUE ? 0 : fewest * cheapest;
    }
    return sum;
  }

  /** Whether something may last from one cell to another without running over a pinned start. */
  boolean free(int start, int end) {
    return end <= cells && end <= pins.next[start];
  }

  /** Whether the next meal, after so many, may start at a cell. */
  boolean mealMayStart(int mealsHad, int start) {
    return mealsHad < mealFrom.length
        && mealFrom[mealsHad] <= start
        && start <= mealTo[mealsHad]
        && free(start, start + mealCells[mealsHad]);
  }

  /** Cost of a stretch of so many cells that ends at an ordinary break, or at the end. */
  long rhythm(int stretch) {
    int min = instance.stretch().min();
    return (long) instance.weights().rhythm() * Math.max(0, min - stretch * grid);
  }

  /** Cost of so many cells left over. */
  long idle(int left) {
    return (long) instance.weights().idle() * grid * left;
  }

  /** Closing buffer in cells for so many exercise cells. */
  int buffer(int exerciseCells) {
    return (int) (((long) exerciseCells * instance.bufferPercent() + 99) / 100);
  }

  /** The rules that count a candidate, as bits. */
  int counted(int candidate) {
    int counting = 0;
    for (int r = 0; r < atMost.size(); r++) {
      counting |= atMost.get(r).members().get(candidate) ? 1 << r : 0;
    }
    return counting;
  }

  private int[] wished() {
    return Stream.concat(
            instance.include().stream(), instance.pins().stream().map(Instance.Pin::id))
        .distinct()
        .filter(numbers::containsKey)
        .mapToInt(numbers::get)
        .toArray();
  }

  /** Reads what candidates are; returns the energies that they have. */
  private int[] readCandidates() {
    Map<String, Integer> kinds = new HashMap<>();
    for (int p = 0; p < phases; p++) {
      for (String name : instance.phases().get(p).kinds()) {
        kindsOf[p].set(kinds.computeIfAbsent(name, key -> kinds.size()));
      }
    }
    Map<String, Integer> formats = new HashMap<>();
    boolean monotony =
        instance.weights().monotony() > 0 || instance.weights().monotonyAcrossBreak() > 0;
    Map<Integer, Integer> energies = new LinkedHashMap<>();
    for (int i = 0; i < ids.length; i++) {
      Candidate candidate = instance.candidates().get(i);
      ids[i] = candidate.id();
      kind[i] = kinds.getOrDefault(candidate.kind(), -1);
      format[i] = monotony ? formats.computeIfAbsent(candidate.format(), key -> formats.size()) : 0;
      energy[i] = energies.computeIfAbsent(candidate.energy(), key -> energies.size());
    }
    return energies.keySet().stream().mapToInt(Integer::intValue).toArray();
  }

  private void readProducts() {
    for (String product : instance.products()) {
      bits.put(product, 1L << bits.size());
    }
    long initial = mask(instance.initial());
    for (int i = 0; i < ids.length; i++) {
      Candidate candidate = instance.candidates().get(i);
      needs[i] = mask(candidate.needs()) & ~initial;
      yields[i] = mask(candidate.yields()) & ~initial;
    }
    for (int p = 0; p < phases; p++) {
      due[p] = mask(instance.phases().get(p).yields()) & ~initial;
    }
  }

  private long mask(List<String> names) {
    long mask = 0;
    for (String name : names) {
      mask |= bits.getOrDefault(name, 0L);
    }
    return mask;
  }

  private boolean allowed(int candidate, int phase) {
    return kind[candidate] >= 0 && kindsOf[phase].get(kind[candidate]);
  }

  private void findPossible() {
    long exist = 0;
    for (int p = 0; p < phases; p++) {
      long before;
      do {
        before = exist;
        work.add(ids.length / 16);
        for (int i = 0; i < ids.length; i++) {
          if ((yields[i] & ~exist) != 0 && allowed(i, p) && (needs[i] & ~exist) == 0) {
            exist |= yields[i];
          }
        }
      } while (exist != before);
      possible[p] = exist;
    }
  }

  /** Turns each include into a product that its candidate alone yields. */
  private boolean placeIncludes() {
    Set<String> seen = new HashSet<>();
    for (String id : instance.include()) {
      Integer number = numbers.get(id);
      if (number == null) {
        return false;
      }
      if (pins.of[number] >= 0 || !seen.add(id)) {
        continue;
      }
      int last = -1;
      for (int p = 0; p < phases; p++) {
        if (usable(number, p)) {
          last = p;
        }
      }
      if (last < 0) {
        return false;
      }
      long bit = 1L << (bits.size() + seen.size() - 1);
      yields[number] |= bit;
      due[last] |= bit;
    }
    return true;
  }

  private int[][] sumEnergies() {
    int weight = instance.weights().energy();
    int[][] sums = new int[energyLevels.length][];
    for (int e = 0; e < sums.length; e++) {
      int level = energyLevels[e];
      int[] sum = new int[cells + 1];
      for (int t = 0; t < cells; t++) {
        long off = (long) weight * grid * Math.abs((long) level - instance.curve().get(t));
        sum[t + 1] = whole("weights.energy", weight, sum[t] + off);
      }
      sums[e] = sum;
    }
    return sums;
  }

  private int[][] shareCosts() {
    int weight = instance.weights().share();
    int[][] costs = new int[phases][cells + 1];
    for (int p = 0; p < phases; p++) {
      long target = instance.phases().get(p).target();
      for (int spent = 0; spent <= cells; spent++) {
        long off = Math.abs((long) spent * grid - target);
        costs[p][spent] = whole("weights.share", weight, weight * off);
      }
    }
    return costs;
  }

  /** Refuses a price so large that sums of it could no longer be told apart. */
  static int whole(String field, int value, long price) {
    if (price > Integer.MAX_VALUE / 4) {
      throw Instance.refuse(field, value, TOO_LARGE);
    }
    return (int) price;
  }

  private int mostItems() {
    long exercises = 0;
    for (Instance.Phase phase : instance.phases()) {
      exercises += phase.count().max();
    }
    int shortest = cells;
    for (Candidate candidate : instance.candidates()) {
      shortest = Math.min(shortest, Math.max(1, candidate.lengths().get(0) / grid));
    }
    return 2 * (int) Math.min(exercises, cells / Math.max(1, shortest));
  }

  private static int bitsFor(int count) {
    return 32 - Integer.numberOfLeadingZeros(Math.max(1, count));
  }
}
