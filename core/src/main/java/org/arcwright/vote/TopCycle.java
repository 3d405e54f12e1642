package org.arcwright.vote;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** The Smith set of a table of pairs, and what holds it together. Options are their indices. */
final class TopCycle {
  private final Pairwise pairs;
  private final int size;
  private final List<Integer> smith;

  TopCycle(Pairwise pairs) {
    this.pairs = pairs;
    this.size = pairs.options().size();
    this.smith = closure(mostWins());
  }

  List<Integer> smithSet() {
    return smith;
  }

  boolean allLevel() {
    return smith.stream().allMatch(i -> smith.stream().allMatch(j -> pairs.margin(i, j) == 0));
  }

  /** The first of the shortest, in the order of the options. */
  Optional<List<Integer>> shortestCycle() {
    List<Integer> best = List.of();
    for (int start : smith) {
      List<Integer> cycle = cycleFrom(start);
      if (!cycle.isEmpty() && (best.isEmpty() || cycle.size() < best.size())) {
        best = cycle;
      }
    }
    return best.isEmpty() ? Optional.empty() : Optional.of(best);
  }

  private boolean beats(int i, int j) {
    return pairs.margin(i, j) > 0;
  }

  /** Every member of the Smith set has more wins than any other option. */
  private int mostWins() {
    List<Fraction> wins = pairs.scores().stream().map(Score::sum).toList();
    return IntStream.range(0, size)
        .boxed()
        .max(Comparator.<Integer, Fraction>comparing(wins::get))
        .orElseThrow();
  }

  /** Whoever a member does not beat belongs to the set as well. */
  private List<Integer> closure(int member) {
    boolean[] in = new boolean[size];
    Deque<Integer> open = new ArrayDeque<>(List.of(member));
    in[member] = true;
    while (!open.isEmpty()) {
      int next = open.remove();
      for (int other = 0; other < size; other++) {
        if (!in[other] && !beats(next, other)) {
          in[other] = true;
          open.add(other);
        }
      }
    }
    return IntStream.range(0, size).filter(i -> in[i]).boxed().toList();
  }

  /** The shortest way back, breadth first; empty if there is none. */
  private List<Integer> cycleFrom(int start) {
    int[] before = new int[size];
    Arrays.fill(before, -1);
    Deque<Integer> open = new ArrayDeque<>(List.of(start));
    while (!open.isEmpty()) {
      int next = open.remove();
      if (beats(next, start)) {
        return path(before, start, next);
      }
      for (int other : smith) {
        if (other != start && before[other] < 0 && beats(next, other)) {
          before[other] = next;
          open.add(other);
        }
      }
    }
    return List.of();
  }

  private static List<Integer> path(int[] before, int start, int end) {
    Deque<Integer> path = new ArrayDeque<>();
    for (int at = end; at != start; at = before[at]) {
      path.addFirst(at);
    }
    path.addFirst(start);
    return List.copyOf(path);
  }
}
