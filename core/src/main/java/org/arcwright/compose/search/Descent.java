package org.arcwright.compose.search;

import java.util.ArrayList;
import java.util.List;

/**
 * Follows a guide from the start to an end, by the cheapest step each time: a cheapest agenda as
 * the guide sees it, in which exercises may come twice and any number may be shared.
 */
final class Descent {
  private final Model model;
  private final Guide guide;
  private final Labels labels = new Labels();
  private int next;
  private long least;

  private Descent(Model model, Guide guide) {
    this.model = model;
    this.guide = guide;
  }

  /** The exercises of a guide's cheapest agenda. */
  static List<Integer> of(Model model, Sharing sharing, Guide guide, Tracked tracked, Work work) {
    Descent descent = new Descent(model, guide);
    Sharing open = sharing.unlimited();
    Completion completion = new Completion(guide.keeping(), open);
    Expander expander = new Expander(model, completion, open, descent.labels, work, tracked, false);
    return descent.follow(expander);
  }

  private List<Integer> follow(Expander expander) {
    List<Integer> path = new ArrayList<>();
    int at = expander.start();
    do {
      next = -1;
      labels.visited[at] = 0; // it may come again
      expander.expand(at, this::offer);
      at = next;
      if (at >= 0 && labels.actions[at] >= 0) {
        path.add(labels.actions[at]);
      }
    } while (at >= 0 && labels.actions[at] != Labels.END);
    return path;
  }

  private boolean offer(int label) {
    int candidate = labels.actions[label];
    long toll = candidate >= 0 ? model.pack(guide.toll(candidate)) : 0;
    long estimate = labels.estimates[label] + toll;
    if (next < 0 || estimate < least) {
      next = label;
      least = estimate;
      return true;
    }
    return false;
  }
}
