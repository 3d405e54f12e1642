package org.arcwright.live;

import java.util.Optional;
import org.arcwright.compose.instance.Instance;

/** The cheapest of several instances, and whether that is proven. */
final class Choice {
  private final Workbench bench;
  private Optional<Workbench.Found> best = Optional.empty();
  private long more;
  private boolean proven = true;

  Choice(Workbench bench) {
    this.bench = bench;
  }

  /**
   * Tries one more; of two that cost the same the earlier stays.
   *
   * @param extra points beside the instance's own
   */
  void add(Optional<Instance> instance, long extra) {
    Optional<Workbench.Found> found = bench.solve(instance);
    if (found.isEmpty()) {
      return;
    }
    proven &= found.get().conclusive();
    boolean cheaper =
        best.isEmpty()
            || found.get().solution().cost() + extra < best.get().solution().cost() + more;
    if (found.get().fits() && cheaper) {
      best = found;
      more = extra;
    }
  }

  /** Whether one of them fits. */
  boolean fits() {
    return best.isPresent();
  }

  /** The cheapest as a way. */
  Optional<Way> way(Way.Kind kind) {
    return best.map(found -> bench.way(kind, found, more, proven));
  }
}
