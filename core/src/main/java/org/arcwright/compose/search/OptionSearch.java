package org.arcwright.compose.search;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.search.OptionList.End;
import org.arcwright.compose.search.Solution.Status;

/**
 * Finds options one after the other, each proven cheapest among those that share little enough with
 * every one before it. What is shared is one more resource of the label setting; a bound that does
 * not know of it is far too low, so it is made again with a toll on what was used before, as often
 * as the search does not end by itself in about the time that takes.
 */
public final class OptionSearch {
  /** A search may first take one step for so many of a backward pass; then the tolls move. */
  private static final int PATIENCE = 4;

  /** Steps that a search may take before the tolls move, however quick a pass is. */
  private static final int LEAST = 2_000;

  private final Model model;
  private final Work work;
  private final OptionRule rule;
  private final Outline outline;
  private final Reach reach;
  private final long passSteps;
  private final long ceiling;
  private final Map<String, Integer> numbers = new HashMap<>();
  private final List<Solution> solutions = new ArrayList<>();
  private final List<BitSet> earlier = new ArrayList<>();
  private final List<Integer> most = new ArrayList<>();
  private Tolls tolls;
  private Sharing sharing;
  private List<Guide> guides;

  private OptionSearch(Model model, Outline outline, OptionRule rule, Solution best, Work work) {
    this.model = model;
    this.outline = outline;
    this.rule = rule;
    this.work = work;
    this.ceiling = rule.ceiling(best.cost());
    this.reach = outline.reach(model.pack(ceiling + 1));
    long before = work.done();
    this.guides = List.of(outline.guide(reach));
    this.passSteps = work.done() - before;
    this.sharing = Sharing.none(model);
    for (int i = 0; i < model.ids.length; i++) {
      numbers.put(model.ids[i], i);
    }
    this.tolls = Tolls.none(highestToll());
    keep(best);
  }

  /**
   * Finds the best and as many options beside it as the rule asks for and the instance has. Each
   * takes time like a search of its own, but the model and the first bound are made once.
   *
   * @param limit asked in every part of the work
   * @throws org.arcwright.catalog.InvalidValueException if costs are so large that sums of them can
   *     no longer be told apart, or if the options have so many exercises that what they share can
   *     no longer be counted
   */
  public static OptionList solve(Instance instance, OptionRule rule, Limit limit) {
    Work work = new Work(limit);
    try {
      Optional<Model> model = ModelBuilder.build(instance, work);
      if (model.isEmpty()) {
        return alone(Search.infeasible(work));
      }
      Outline outline = Outline.of(model.get(), work);
      Solution best = Search.solve(model.get(), outline, instance, work, Listener.NONE);
      return best.status() == Status.OPTIMAL
          ? new OptionSearch(model.get(), outline, rule, best, work).run()
          : alone(best);
    } catch (Work.Stopped stopped) {
      return alone(new Solution(Status.STOPPED, 0, 0, 0, List.of(), work.done()));
    }
  }

  private static OptionList alone(Solution solution) {
    End end = solution.status() == Status.INFEASIBLE ? End.NONE_LEFT : End.STOPPED;
    return new OptionList(List.of(solution), end, Optional.empty(), solution.labels());
  }

  /** A toll over the ceiling would do no more; all tolls on an agenda have to add up. */
  private int highestToll() {
    long room = (Model.INFINITE >> model.shift) - ceiling;
    return (int) Math.max(0, Math.min(ceiling + 1, room / (2L * OptionRule.MOST * model.cells)));
  }

  private OptionList run() {
    while (solutions.size() < rule.count()) {
      LabelSetting setting = setting();
      setting.below(model.pack(ceiling + 1));
      Solution next = setting.solution(proven(() -> prove(setting)));
      if (next.status() == Status.INFEASIBLE) {
        return beyond();
      }
      if (!next.items().isEmpty()) {
        keep(next);
      }
      if (next.status() != Status.OPTIMAL) {
        return end(End.STOPPED, Optional.empty());
      }
    }
    return end(End.ENOUGH, Optional.empty());
  }

  private OptionList end(End end, Optional<Solution> next) {
    return new OptionList(solutions, end, next, work.done());
  }

  /** Looks above the ceiling, for no longer than everything took so far. */
  private OptionList beyond() {
    guides = List.of(outline.guide());
    LabelSetting setting = setting();
    work.allow(work.done());
    boolean proven =
        proven(
            () -> {
              setting.dive(Dive.WIDE);
              setting.follow(List.of(outline.guide(outline.reach(setting.price()))));
              setting.dive(Dive.WIDE);
              return setting.prove();
            });
    Solution next = setting.solution(proven);
    return next.status() == Status.INFEASIBLE
        ? end(End.NONE_LEFT, Optional.empty())
        : end(End.TOO_DEAR, Optional.of(next).filter(solution -> !solution.items().isEmpty()));
  }

  private static boolean proven(BooleanSupplier search) {
    try {
      return search.getAsBoolean();
    } catch (Work.Stopped | Work.Paused ended) {
      return false;
    }
  }

  private void keep(Solution solution) {
    BitSet used = new BitSet();
    for (Item item : solution.items()) {
      if (item instanceof Item.Activity activity) {
        used.set(numbers.getOrDefault(activity.id(), 0));
      }
    }
    solutions.add(solution);
    earlier.add(used);
    most.add(rule.mostShared(used.cardinality()));
    tolls = tolls.with(solution.cost() / (4L * used.cardinality()));
  }

  private LabelSetting setting() {
    if (!Sharing.fits(model, most)) {
      throw Instance.refuse(
          "options", rule.count(), "with so many exercises in each, at most " + solutions.size());
    }
    sharing = Sharing.of(model, earlier, most);
    return new LabelSetting(model, guides, sharing, work, Listener.NONE);
  }

  /** Searches, and moves the tolls whenever that takes long. */
  private boolean prove(LabelSetting setting) {
    setting.dive(Dive.WIDE);
    long patience = Math.max(LEAST, passSteps / PATIENCE);
    while (true) {
      try {
        work.allow(patience);
        return setting.prove();
      } catch (Work.Paused paused) {
        patience = moveTolls(setting) ? 2 * patience : Long.MAX_VALUE;
      } finally {
        work.allow(Long.MAX_VALUE);
      }
    }
  }

  /** Makes the bound again; false if other tolls would be no better. */
  private boolean moveTolls(LabelSetting setting) {
    Guide guide = Guide.tolled(model, reach, sharing, tolls.toArray(), work);
    if (guides.size() == 1 || guide.root(sharing) > guides.get(1).root(sharing)) {
      guides = List.of(guides.get(0), guide);
    }
    setting.follow(guides);
    setting.dive(Dive.WIDE);
    return tolls.move(Descent.shared(model, sharing, guide, work), most);
  }
}
