package org.arcwright.compose.search;

import java.util.List;

/**
 * Follows a guide from the start to an end, by the cheapest step each time: a cheapest agenda as
 * the guide sees it, in which exercises may come twice and any number may be shared.
 */
final class Descent {
  private final Sharing sharing;
  private final Guide guide;
  private final Labels labels = new Labels();
  private int at;
  private int next;
  private long least;

  private Descent(Sharing sharing, Guide guide) {
    this.sharing = sharing;
    this.guide = guide;
  }

  /** How many exercises of each earlier agenda a guide's cheapest agenda uses. */
  static int[] shared(Model model, Sharing sharing, Guide guide, Work work) {
    Descent descent = new Descent(sharing, guide);
    Sharing open = sharing.unlimited();
    Completion completion = new Completion(List.of(guide), open);
    Tracked none = new Tracked(model);
    Expander expander =
        new Expander(model, guide.prices, completion, open, descent.labels, work, none, false);
    return descent.follow(expander);
  }

  private int[] follow(Expander expander) {
    int[] shared = new int[sharing.agendas()];
    at = expander.start();
    do {
      next = -1;
      expander.expand(at, this::offer);
      at = next;
      for (int i = 0; at >= 0 && labels.actions[at] >= 0 && i < shared.length; i++) {
        shared[i] += sharing.holds(i, labels.actions[at]) ? 1 : 0;
      }
    } while (at >= 0 && labels.actions[at] != Labels.END);
    return shared;
  }

  private boolean offer(int label) {
    int candidate = labels.actions[label];
    long toll = candidate >= 0 ? guide.toll(sharing, candidate) : 0;
    long estimate = labels.estimates[label] + toll;
    if (next < 0 || estimate < least) {
      next = label;
      least = estimate;
      return true;
    }
    return false;
  }
}
