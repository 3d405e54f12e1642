package org.arcwright.compose.search;

import java.util.Arrays;
import java.util.List;

/**
 * The toll on each earlier agenda's exercises, moved so that a guide's cheapest agenda comes to
 * share about as many as it may: ascent of the Lagrangian dual by signs, each toll with a step of
 * its own that grows while its sign stays and halves when it turns (Riedmiller and Braun 1993).
 */
final class Tolls {
  private final int[] tolls;
  private final int[] steps;
  private final int[] signs;
  private final int highest;

  private Tolls(int[] tolls, int[] steps, int[] signs, int highest) {
    this.tolls = tolls;
    this.steps = steps;
    this.signs = signs;
    this.highest = highest;
  }

  /**
   * Without any agenda yet.
   *
   * @param highest no toll is over it
   */
  static Tolls none(int highest) {
    return new Tolls(new int[0], new int[0], new int[0], highest);
  }

  /** With one more agenda, at a toll that is likely for it. */
  Tolls with(long likely) {
    int count = tolls.length + 1;
    int[] more = Arrays.copyOf(tolls, count);
    more[count - 1] = (int) Math.min(likely, highest);
    int[] fresh = new int[count];
    for (int i = 0; i < count; i++) {
      fresh[i] = Math.max(1, more[i] / 2);
    }
    return new Tolls(more, fresh, new int[count], highest);
  }

  int[] toArray() {
    return tolls.clone();
  }

  /** Moves the tolls; false if they are right as they are. */
  boolean move(int[] shared, List<Integer> most) {
    boolean moved = false;
    for (int i = 0; i < tolls.length; i++) {
      int sign = Integer.signum(shared[i] - most.get(i));
      if (sign * signs[i] < 0) {
        steps[i] /= 2;
      } else if (sign * signs[i] > 0) {
        steps[i] *= 2;
      }
      signs[i] = sign;
      int toll = Math.max(0, Math.min(highest, tolls[i] + sign * steps[i]));
      moved |= toll != tolls[i];
      tolls[i] = toll;
    }
    return moved;
  }
}
