package org.arcwright.compose.search;

import org.arcwright.compose.instance.Instance;

/** The passes that bound a search by themselves, for those who time them. */
public final class BoundPass {
  private final Model model;
  private final long ceiling;

  private BoundPass(Model model) {
    Work work = new Work(Limit.NONE);
    LabelSetting setting =
        new LabelSetting(
            model,
            Outline.of(model, work).guide(),
            Sharing.none(model),
            new Tracked(model),
            work,
            Listener.NONE);
    setting.dive(Dive.NARROW);
    this.model = model;
    this.ceiling = setting.price();
  }

  /** Makes ready all else: the model and a first agenda. */
  public static BoundPass of(Instance instance) {
    return new BoundPass(
        ModelBuilder.build(instance, new Work(Limit.NONE))
            .orElseThrow(() -> new IllegalArgumentException("nothing can fit")));
  }

  /** The outline's passes and the finer one between its walls; gives the root's bound. */
  public long run() {
    Outline outline = Outline.of(model, new Work(Limit.NONE));
    return outline.guide(outline.reach(ceiling)).bound.root();
  }
}
