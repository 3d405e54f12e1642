package org.arcwright.compose.search;

/**
 * The relaxation that forgets formats and products too. It is quick to work out, leads to a first
 * agenda, and tells which states matter to a {@link Guide} that forgets neither.
 */
final class Outline {
  private final Model model;
  private final Prices prices;
  private final Reach reach;
  private final Bound bound;
  private final Work work;

  private Outline(Model model, Prices prices, Reach reach, Work work) {
    this.model = model;
    this.prices = prices;
    this.reach = reach;
    this.bound = Bound.withoutFormats(reach, prices, work);
    this.work = work;
  }

  static Outline of(Model model, Work work) {
    Prices prices = new Prices(model);
    Reach reach = Reach.of(new Nodes(model, true), model.outline, prices, work);
    if (reach.values > Reach.MOST) {
      reach = Reach.of(new Nodes(model, false), model.outline, prices, work);
    }
    return new Outline(model, prices, reach, work);
  }

  /** Least price of a whole agenda; {@link Model#INFINITE} or more if nothing fits. */
  long root() {
    return bound.root();
  }

  /** Prices without tolls. */
  Prices prices() {
    return prices;
  }

  /** The outline as a guide. */
  Guide guide() {
    return Guide.free(model, prices, bound);
  }

  /** The states through which an agenda under a ceiling may lead. */
  Reach reach(long ceiling) {
    return new Reach(reach.nodes, model.stages, Corridor.of(reach, prices, bound, ceiling, work));
  }

  /** A guide to agendas under a ceiling: the outline itself if anything finer were too large. */
  Guide guide(Reach reach) {
    return reach.values > Reach.MOST
        ? guide()
        : Guide.free(model, prices, Bound.of(reach, prices, work));
  }
}
