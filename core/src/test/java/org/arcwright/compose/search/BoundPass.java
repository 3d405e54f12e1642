package org.arcwright.compose.search;

import org.arcwright.compose.instance.Instance;

/** The backward pass of a search by itself, for those who time it. */
public final class BoundPass {
  private final Model model;

  private BoundPass(Model model) {
    this.model = model;
  }

  /** Makes ready all that comes before the pass. */
  public static BoundPass of(Instance instance) {
    return new BoundPass(
        ModelBuilder.build(instance)
            .orElseThrow(() -> new IllegalArgumentException("nothing can fit")));
  }

  /** The pass, with the forward pass that says where it has to go; gives the root's bound. */
  public long run() {
    return Bound.of(model, new Prices(model), new Work(Limit.NONE)).root();
  }
}
