package org.arcwright.compose.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
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
 * Compiles an instance into a {@link Model}: drops candidates whose needs can never exist by their
 * phase (a fixpoint), turns includes into products due at the last phase where they can stand, pins
 * into fixed starts, and candidates alike but for their price into {@link Peers}. Time is linear in
 * the candidates but for sorting peers by price.
 */
final class ModelBuilder {
  /** Most product bits that the bound follows in one phase. */
  static final int AWAITED = 3;

  static final String TOO_LARGE =
      "an agenda could cost too much to add up; divide all costs and weights by the same number";

  final Instance instance;
  final int grid;
  final int cells;
  final String[] ids;
  Stage[] stages = new Stage[0];
  long initial;
  final int[] nextPin;
  final int[] pinAt;
  int lastPin = -1;
  int shift;
  int[] energyLevels = new int[0];
  int[][] energySum = new int[0][];
  final Neighbours neighbours;
  final List<AtMost> atMost;

  private final Work work;
  private final int phases;
  private final Map<String, Long> bits = new HashMap<>();
  private final long[] needs;
  private final long[] yields;
  private final int[] kind;
  private final int[] format;
  private final int[] energy;
  private final BitSet[] kindsOf;
  private final long[] due;
  private final int[] pinOf;

  /** Candidates by id; empty if nothing names any. */
  private final Map<String, Integer> numbers;

  private ModelBuilder(Instance instance, Work work) {
    this.instance = instance;
    this.work = work;
    this.grid = instance.grid();
    this.cells = instance.cells();
    this.phases = instance.phases().size();
    int count = instance.candidates().size();
    this.ids = new String[count];
    this.needs = new long[count];
    this.yields = new long[count];
    this.kind = new int[count];
    this.format = new int[count];
    this.energy = new int[count];
    this.pinOf = new int[count];
    this.kindsOf = Stream.generate(BitSet::new).limit(phases).toArray(BitSet[]::new);
    this.due = new long[phases];
    this.nextPin = new int[cells + 1];
    this.pinAt = new int[cells + 1];
    for (int i = 0; i < count; i++) {
      ids[i] = instance.candidates().get(i).id();
    }
    this.numbers = numbers(instance);
    this.neighbours = Neighbours.of(instance.rules().apart(), numbers, count);
    this.atMost =
        instance.rules().atMost().stream()
            .map(rule -> AtMost.of(rule, numbers))
            .filter(rule -> rule.matters(cells))
            .toList();
  }

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

  /**
   * The model, or nothing if it is plain already that nothing fits.
   *
   * @throws Work.Stopped if the limit is reached
   */
  static Optional<Model> build(Instance instance, Work work) {
    return new ModelBuilder(instance, work).build();
  }

  private Optional<Model> build() {
    for (Instance.Phase phase : instance.phases()) {
      if (phase.count().min() > phase.count().max()
          || phase.minutes().min() > phase.minutes().max()) {
        return Optional.empty();
      }
    }
    readCandidates();
    if (!readPins() || !readProducts()) {
      return Optional.empty();
    }
    long[] possible = possibleProducts();
    if (!placeIncludes(possible)) {
      return Optional.empty();
    }
    possible = possibleProducts();
    for (int p = 0; p < phases; p++) {
      if ((due[p] & ~possible[p]) != 0) {
        return Optional.empty();
      }
    }
    sumEnergies();
    shift = 32 + bitsFor(mostItems());
    buildStages(possible);
    return Arrays.stream(stages).anyMatch(Stage::impossible)
        ? Optional.empty()
        : Optional.of(new Model(this));
  }

  private void readCandidates() {
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
      kind[i] = kinds.getOrDefault(candidate.kind(), -1);
      format[i] = monotony ? formats.computeIfAbsent(candidate.format(), key -> formats.size()) : 0;
      energy[i] = energies.computeIfAbsent(candidate.energy(), key -> energies.size());
    }
    energyLevels = energies.keySet().stream().mapToInt(Integer::intValue).toArray();
  }

  private boolean readPins() {
    Arrays.fill(pinAt, -1);
    Arrays.fill(pinOf, -1);
    for (Instance.Pin pin : instance.pins()) {
      Integer number = numbers.get(pin.id());
      int at = pin.at() / grid;
      if (number == null
          || at >= cells
          || (pinOf[number] >= 0 && pinOf[number] != at)
          || (pinAt[at] >= 0 && pinAt[at] != number)) {
        return false;
      }
      pinOf[number] = at;
      pinAt[at] = number;
      lastPin = Math.max(lastPin, at);
    }
    int next = Integer.MAX_VALUE;
    for (int t = cells; t >= 0; t--) {
      nextPin[t] = next;
      if (pinAt[t] >= 0) {
        if (t + shortest(pinAt[t]) > next) {
          return false;
        }
        next = t;
      }
    }
    return true;
  }

  private int shortest(int candidate) {
    return instance.candidates().get(candidate).lengths().get(0) / grid;
  }

  private boolean readProducts() {
    for (String product : instance.products()) {
      bits.put(product, 1L << bits.size());
    }
    initial = mask(instance.initial());
    for (int i = 0; i < ids.length; i++) {
      Candidate candidate = instance.candidates().get(i);
      needs[i] = mask(candidate.needs()) & ~initial;
      yields[i] = mask(candidate.yields()) & ~initial;
    }
    for (int p = 0; p < phases; p++) {
      due[p] = mask(instance.phases().get(p).yields()) & ~initial;
    }
    return true;
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

  /** For each phase, what may exist by its end. */
  private long[] possibleProducts() {
    long[] possible = new long[phases];
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
    return possible;
  }

  /** Turns each include into a product that its candidate alone yields. */
  private boolean placeIncludes(long[] possible) {
    Set<String> seen = new HashSet<>();
    for (String id : instance.include()) {
      Integer number = numbers.get(id);
      if (number == null) {
        return false;
      }
      if (pinOf[number] >= 0 || !seen.add(id)) {
        continue;
      }
      int last = -1;
      for (int p = 0; p < phases; p++) {
        if (allowed(number, p) && (needs[number] & ~possible[p]) == 0) {
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

  private void sumEnergies() {
    int weight = instance.weights().energy();
    energySum = new int[energyLevels.length][];
    for (int e = 0; e < energySum.length; e++) {
      int level = energyLevels[e];
      int[] sum = new int[cells + 1];
      for (int t = 0; t < cells; t++) {
        long off = (long) weight * grid * Math.abs((long) level - instance.curve().get(t));
        sum[t + 1] = whole("weights.energy", weight, sum[t] + off);
      }
      energySum[e] = sum;
    }
  }

  /** Refuses a price so large that sums of it could no longer be told apart. */
  private static int whole(String field, int value, long price) {
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

  private void buildStages(long[] possible) {
    long[] needed = new long[phases];
    long[] relevant = new long[phases + 1];
    for (int p = phases - 1; p >= 0; p--) {
      needed[p] = needed(p, possible);
      relevant[p] = relevant[p + 1] | due[p] | needed[p];
    }
    stages = new Stage[phases];
    for (int p = 0; p < phases; p++) {
      stages[p] = stage(p, possible, needed, relevant[p]);
    }
  }

  private boolean usable(int candidate, int phase, long[] possible) {
    return allowed(candidate, phase) && (needs[candidate] & ~possible[phase]) == 0;
  }

  private Stage stage(int p, long[] possible, long[] needed, long relevant) {
    Instance.Phase phase = instance.phases().get(p);
    int maxCells = Math.min(phase.minutes().max() / grid, cells);
    long[] awaited = awaited(p, possible, needed);
    Map<Peers.Key, Alike> alike = new HashMap<>();
    int shortest = cells;
    for (int i = 0; i < ids.length; i++) {
      if (usable(i, p, possible)) {
        work.add(1);
        shortest = Math.min(shortest, addLengths(alike, i, relevant, maxCells));
      }
    }
    int most = phase.count().max();
    boolean counted = most < maxCells / Math.max(1, shortest);
    int[] shareCost = new int[cells + 1];
    for (int m = 0; m <= cells; m++) {
      long cost = (long) instance.weights().share() * Math.abs((long) m * grid - phase.target());
      shareCost[m] = whole("weights.share", instance.weights().share(), cost);
    }
    return new Stage(
        p,
        phase.count().min(),
        most,
        counted,
        Math.min(phase.minutes().min() / grid, cells + 1),
        maxCells,
        shareCost,
        due[p],
        relevant,
        awaited,
        p == 0 ? new int[] {0} : carried(stages[p - 1].awaited, awaited, possible[p - 1]),
        moves(alike.values(), awaited));
  }

  private int addLengths(Map<Peers.Key, Alike> alike, int number, long relevant, int maxCells) {
    Candidate candidate = instance.candidates().get(number);
    Peers.Key key =
        new Peers.Key(
            format[number],
            energy[number],
            needs[number],
            yields[number] & relevant,
            neighbours.place(number),
            neighbours.wake(number),
            counted(number),
            pinOf[number] >= 0 ? number : -1);
    Alike same = alike.computeIfAbsent(key, Alike::new);
    int shortest = cells;
    for (int l = 0; l < candidate.lengths().size(); l++) {
      int length = candidate.lengths().get(l) / grid;
      if (length > maxCells) {
        break;
      }
      int price =
          whole(
              "candidates[" + number + "].cost",
              candidate.cost(),
              (long) candidate.cost() + candidate.lengthCosts().get(l));
      shortest = Math.min(shortest, length);
      same.add(length, price, number);
    }
    return shortest;
  }

  /** The rules that count a candidate, as bits. */
  private int counted(int candidate) {
    int bits = 0;
    for (int r = 0; r < atMost.size(); r++) {
      bits |= atMost.get(r).members().get(candidate) ? 1 << r : 0;
    }
    return bits;
  }

  /** Groups the peers into the moves that the bound tells apart, shortest first. */
  private static Peers[][] moves(Collection<Alike> alike, long[] awaited) {
    List<Peers> all = new ArrayList<>();
    alike.forEach(same -> same.addPeers(all, awaited));
    Peers[] sorted = all.toArray(Peers[]::new);
    Arrays.sort(sorted, ModelBuilder::order);
    List<Peers[]> moves = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= sorted.length; i++) {
      if (i == sorted.length || sorted[i].move != sorted[from].move) {
        moves.add(Arrays.copyOfRange(sorted, from, i));
        from = i;
      }
    }
    return moves.toArray(Peers[][]::new);
  }

  /** By moves, and the cheapest of each first. */
  private static int order(Peers a, Peers b) {
    int order = Long.compare(a.move, b.move);
    order = order != 0 ? order : Integer.compare(a.costs[0], b.costs[0]);
    return order != 0 ? order : Integer.compare(a.members[0], b.members[0]);
  }

  /**
   * The products that the bound follows in a phase: first those due at its end, then those that its
   * exercises need and that may come to exist here, then those that later phases ask for, the
   * soonest first. What an earlier phase must have left exists for certain.
   */
  private long[] awaited(int p, long[] possible, long[] needed) {
    List<Long> chosen = new ArrayList<>();
    long certain = 0;
    for (int q = 0; q < p; q++) {
      certain |= due[q];
    }
    for (int q = p; q < phases; q++) {
      follow(chosen, due[q] & possible[p] & ~certain);
      follow(chosen, needed[q] & possible[p] & ~certain);
    }
    return chosen.stream().mapToLong(Long::longValue).toArray();
  }

  private static void follow(List<Long> chosen, long products) {
    for (long rest = products; rest != 0 && chosen.size() < AWAITED; rest &= rest - 1) {
      long bit = Long.lowestOneBit(rest);
      if (!chosen.contains(bit)) {
        chosen.add(bit);
      }
    }
  }

  private long needed(int phase, long[] possible) {
    long needed = 0;
    for (int i = 0; i < ids.length; i++) {
      if (usable(i, phase, possible)) {
        needed |= needs[i];
      }
    }
    return needed;
  }

  /**
   * For each bound mask at the end of the phase before, the mask at this one's start: what was
   * followed there is carried over, and what was not, but may exist, is taken to exist.
   */
  private static int[] carried(long[] before, long[] awaited, long possibleBefore) {
    int[] carried = new int[1 << before.length];
    long followed = 0;
    for (long bit : before) {
      followed |= bit;
    }
    int free = Stage.gather(possibleBefore & ~followed, awaited);
    for (int mask = 0; mask < carried.length; mask++) {
      long exist = 0;
      for (int i = 0; i < before.length; i++) {
        exist |= (mask >> i & 1) != 0 ? before[i] : 0;
      }
      carried[mask] = free | Stage.gather(exist, awaited);
    }
    return carried;
  }
}
