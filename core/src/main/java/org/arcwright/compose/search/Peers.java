package org.arcwright.compose.search;

/**
 * Candidates that one phase can use in the same way: same length, format, energy, needs and yields,
 * alike in all rules. They differ in price alone, so a path takes the cheapest that it may still
 * take.
 */
final class Peers {
  final int length;
  final int format;
  final int energy;
  final long needs;
  final long yields;

  /** Tells apart what the bound does: length, format, awaited products gained and needed. */
  final long move;

  /** See {@link Neighbours}. */
  final int place;

  final int wake;

  /** Whether it is one candidate that must start at its pin, and nowhere else. */
  final boolean pinned;

  /** Candidate numbers, cheapest first. */
  final int[] members;

  /** Own cost and length cost of each member, ascending. */
  final int[] costs;

  Peers(Key key, int length, long move, int[] members, int[] costs) {
    this.length = length;
    this.move = move;
    this.format = key.format;
    this.energy = key.energy;
    this.needs = key.needs;
    this.yields = key.yields;
    this.place = key.place;
    this.wake = key.wake;
    this.pinned = key.pinned >= 0;
    this.members = members;
    this.costs = costs;
  }

  /**
   * What peers have in common beside their length.
   *
   * @param place as a follower; see {@link Neighbours}
   * @param wake what it bars after it
   * @param counted the rules that count it, as bits
   * @param pinned the candidate's number if it is pinned, else -1: a pinned one has no peers
   */
  record Key(
      int format,
      int energy,
      long needs,
      long yields,
      int place,
      int wake,
      int counted,
      int pinned) {}
}
