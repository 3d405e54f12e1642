package org.arcwright.compose.search;

import org.jspecify.annotations.Nullable;

/** The few ways on from a place that seem best, the best first; for {@link Scout}. */
final class Ways {
  /** An exercise that is wished, and in time. */
  static final int WISHED = 0;

  /** One that yields what is due at the end of its phase. */
  static final int DUE = 1;

  /** One that makes the agenda better. */
  private static final int BETTER = 2;

  /** One that does not. A phase is left sooner than that, and an agenda ended. */
  private static final int WORSE = 6;

  /** To be added for one in the next phase. */
  private static final int OPENS = 3;

  /** More than any change is worth. */
  private static final double RANK = 1e12;

  private static final int MOST = 3;

  private final double[] scores = new double[MOST];
  private final @Nullable Place[] places = new Place[MOST];
  private int size;

  /** The rank of one that changes the price so much. */
  static int rank(long change) {
    return change < 0 ? BETTER : WORSE;
  }

  /**
   * What comes first by rank, then by the change of price for each cell.
   *
   * @param opens whether it is in the next phase
   * @param cells that it takes
   */
  static double score(int rank, boolean opens, long change, int cells) {
    int order = opens ? OPENS + Math.min(rank, BETTER) : rank;
    return order * RANK + (double) change / cells;
  }

  boolean wants(double score) {
    return size < MOST || score < scores[MOST - 1];
  }

  void add(double score, Place place) {
    int i = Math.min(size, MOST - 1);
    while (i > 0 && scores[i - 1] > score) {
      scores[i] = scores[i - 1];
      places[i] = places[i - 1];
      i--;
    }
    scores[i] = score;
    places[i] = place;
    size = Math.min(size + 1, MOST);
  }

  int size() {
    return size;
  }

  Place place(int way) {
    Place place = places[way];
    if (place == null) {
      throw new IndexOutOfBoundsException(way);
    }
    return place;
  }

  /** Whether a way is better than to end. */
  boolean improves(int way) {
    return scores[way] < (WORSE - 1) * RANK + RANK / 2;
  }
}
