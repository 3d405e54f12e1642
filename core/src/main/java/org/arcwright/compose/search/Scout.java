package org.arcwright.compose.search;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.search.Solution.Status;
import org.jspecify.annotations.Nullable;

/**
 * Finds a first agenda before anything is worked out but the {@link Facts}: from each place it goes
 * on by what seems best for its minutes, each phase towards its target, and follows that advice but
 * for one time, then for two, and so on (limited discrepancy search, Harvey and Ginsberg 1995).
 * Mostly that is a small part of the time to the proof. Where it finds nothing soon, or where a
 * break could be read as a meal, the first agenda is left to {@link Dive}.
 */
final class Scout {
  /**
   * An agenda that fits.
   *
   * @param items in order
   * @param cost of the items
   * @param tie of the items
   */
  record Found(List<Item> items, long cost, long tie) {
    /** As a solution that may not be the best. */
    Solution solution(Facts facts, long steps) {
      return new Solution(Status.FEASIBLE, cost, tie, facts.least(), items, steps);
    }
  }

  /** Most candidates that are looked at for each phase. */
  private static final int MOST = 64;

  /** Places that are looked at, for each cell of the day. */
  private static final int PATIENCE = 2;

  private final Facts facts;
  private final Instance instance;
  private final Instance.Weights weights;
  private final Ahead ahead;
  private final Work work;

  /** The candidates that are looked at for each phase. */
  private final int[][] usable;

  /** Their lengths. */
  private final int[][] cells;

  /** What wished exercises need. */
  private final long asked;

  private int turns;

  private Scout(Facts facts, Work work) {
    this.facts = facts;
    this.instance = facts.instance;
    this.weights = instance.weights();
    this.work = work;
    this.usable = new int[facts.phases][];
    this.cells = new int[facts.ids.length][];
    long needed = 0;
    for (int p = 0; p < facts.phases; p++) {
      usable[p] = usable(p);
      for (int candidate : usable[p]) {
        needed |= wished(candidate) ? facts.needs[candidate] : 0;
        cells[candidate] = lengths(candidate);
      }
    }
    this.asked = needed;
    this.ahead = new Ahead(facts, usable);
    this.turns = PATIENCE * facts.cells;
  }

  /**
   * Looks for an agenda for a while.
   *
   * @throws Work.Stopped if the limit is reached
   */
  static Optional<Found> run(Facts facts, Work work) {
    Instance instance = facts.instance;
    if (instance.meals().stream().anyMatch(meal -> meal.minutes() == instance.breakMinutes())) {
      return Optional.empty();
    }
    return new Scout(facts, work).run();
  }

  private Optional<Found> run() {
    Place end = null;
    for (int astray = 0; ahead.mayBegin() && end == null && turns > 0; astray++) {
      end = explore(Place.START, astray);
    }
    return Optional.ofNullable(end).flatMap(this::found);
  }

  /**
   * A phase's candidates; of many, the wished, then those that yield what is due, cheapest first.
   */
  private int[] usable(int phase) {
    int[] candidates = new int[facts.ids.length];
    int size = 0;
    for (int i = 0; i < candidates.length; i++) {
      if (facts.usable(i, phase)) {
        candidates[size++] = i;
      }
    }
    work.add(size / 16);
    if (size <= MOST) {
      return Arrays.copyOf(candidates, size);
    }
    long[] order = new long[size];
    for (int k = 0; k < size; k++) {
      int i = candidates[k];
      long rank = wished(i) ? 0 : (facts.yields[i] & facts.due[phase]) != 0 ? 1 : 2;
      order[k] = (rank << 29 | instance.candidates().get(i).cost()) << 32 | i;
    }
    Arrays.sort(order);
    return Arrays.stream(order, 0, MOST).mapToInt(key -> (int) key).toArray();
  }

  private int[] lengths(int candidate) {
    List<Integer> minutes = instance.candidates().get(candidate).lengths();
    int[] lengths = new int[minutes.size()];
    for (int l = 0; l < lengths.length; l++) {
      lengths[l] = minutes.get(l) / facts.grid;
    }
    return lengths;
  }

  private boolean wished(int candidate) {
    return (facts.yields[candidate] & facts.wishes) != 0 || facts.pins.of[candidate] >= 0;
  }

  /** The last place of an agenda that goes on from one, straying so often from what seems best. */
  private @Nullable Place explore(Place at, int astray) {
    if (turns-- <= 0) {
      return null;
    }
    Ways ways = ways(at);
    boolean mayEnd = mayEnd(at);
    for (int w = 0; w <= astray && w < ways.size(); w++) {
      if (mayEnd && !ways.improves(w)) {
        return at;
      }
      Place end = explore(ways.place(w), astray - w);
      if (end != null) {
        return end;
      }
    }
    return mayEnd ? at : null;
  }

  private boolean mayEnd(Place at) {
    return at.phase() == facts.phases - 1
        && complete(at)
        && at.meals() == facts.mealFrom.length
        && at.time() > facts.pins.last;
  }

  private boolean complete(Place at) {
    Instance.Phase phase = instance.phases().get(at.phase());
    return at.count() >= Math.max(1, phase.count().min())
        && at.spent() * facts.grid >= phase.minutes().min()
        && (facts.due[at.phase()] & ~at.products()) == 0;
  }

  /** The best ways on; a break is thought of when a stretch is long enough, or if need be. */
  private Ways ways(Place at) {
    Ways ways = new Ways();
    from(at, 0, 0, 0, ways);
    int t = at.time();
    if (at.stretch() == 0 || facts.pins.at[t] >= 0) {
      return ways;
    }
    if (facts.mealMayStart(at.meals(), t)) {
      from(at, facts.mealCells[at.meals()], 1, 0, ways);
    }
    int pause = facts.breakCells;
    long rhythm = facts.rhythm(at.stretch());
    if (pause > 0 && facts.free(t, t + pause) && (rhythm == 0 || ways.size() == 0)) {
      from(at, pause, 0, weights.pause() + rhythm, ways);
    }
    return ways;
  }

  /** Takes what may follow, in the same phase or in the next, after a rest of so many cells. */
  private void from(Place at, int rest, int meals, long extra, Ways ways) {
    take(Step.of(facts, at, at.phase(), rest, at.meals() + meals, extra), ways);
    if (at.phase() + 1 < facts.phases && complete(at)) {
      take(Step.of(facts, at, at.phase() + 1, rest, at.meals() + meals, extra), ways);
    }
  }

  private void take(Step step, Ways ways) {
    Instance.Phase phase = instance.phases().get(step.phase());
    if (step.count() > phase.count().max()) {
      return;
    }
    int t = step.time();
    int most = phase.minutes().max() / facts.grid - step.spent();
    int free = Math.min(facts.cells, facts.pins.next[t]) - t;
    int room = Math.min(Math.min(most, free), facts.longestStretch - step.stretch());
    int pinned = facts.pins.at[t];
    work.add(1);
    for (int candidate : usable[step.phase()]) {
      if ((pinned >= 0 ? candidate == pinned : facts.pins.of[candidate] < 0)
          && (facts.needs[candidate] & ~step.at().products()) == 0) {
        take(step, candidate, room, ways);
      }
    }
  }

  /** Whether the rules on neighbours and numbers let a candidate come next. */
  private boolean allowed(Step step, int candidate) {
    int last = step.at().candidate();
    if (last >= 0) {
      int wake = facts.neighbours.wake(last);
      int left = step.rest() > 0 ? facts.neighbours.afterBreak(wake) : wake;
      if (!facts.neighbours.mayFollow(left, facts.neighbours.place(candidate))) {
        return false;
      }
    }
    for (AtMost rule : facts.atMost) {
      if (rule.members().get(candidate) && step.at().of(rule.members()) >= rule.most()) {
        return false;
      }
    }
    return true;
  }

  /** Takes each length of a candidate for which there is room. */
  private void take(Step step, int candidate, int room, Ways ways) {
    Candidate exercise = instance.candidates().get(candidate);
    long yields = facts.yields[candidate];
    long missing = (facts.due[step.phase()] | asked) & ~step.at().products() & yields;
    boolean wished = (missing & facts.wishes) != 0 || facts.pins.of[candidate] >= 0;
    long products = step.at().products() | yields;
    long fixed = step.paid() + exercise.cost() + monotony(step, candidate);
    int[] energy = facts.energySum[facts.energy[candidate]];
    int[] lengths = cells[candidate];
    for (int l = 0; l < lengths.length; l++) {
      int length = lengths[l];
      if (length > room) {
        return;
      }
      int t = step.time() + length;
      long price = fixed + exercise.lengthCosts().get(l) + (energy[t] - (long) energy[step.time()]);
      long idle = facts.idle(step.rest() + length);
      long change = price + step.share(facts, length) - idle;
      int rank = wished ? Ways.WISHED : missing != 0 ? Ways.DUE : Ways.rank(change);
      double score = Ways.score(rank, step.opens(), change, step.rest() + length);
      if (ways.wants(score)
          && !step.at().has(candidate)
          && allowed(step, candidate)
          && ahead.fits(step, length, products)) {
        ways.add(score, step.place(candidate, length, products, price));
      }
    }
  }

  private long monotony(Step step, int candidate) {
    int last = step.at().candidate();
    if (last < 0 || facts.format[last] != facts.format[candidate]) {
      return 0;
    }
    return step.rest() > 0 ? weights.monotonyAcrossBreak() : weights.monotony();
  }

  private Optional<Found> found(Place end) {
    int left = facts.cells - end.time() - facts.buffer(end.exercised());
    long cost =
        end.cost()
            + facts.shareCost[end.phase()][end.spent()]
            + (end.stretch() < end.time() ? facts.rhythm(end.stretch()) : 0)
            + facts.idle(left);
    return cost >= Model.INFINITE >> facts.shift
        ? Optional.empty()
        : Optional.of(new Found(end.items(facts), cost, end.tie(facts)));
  }
}
