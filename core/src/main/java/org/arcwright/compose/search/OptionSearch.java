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
 * not know of it is far too low, so tolls on what was used before raise it first. Wherever the
 * search does not end in about the time that takes, they are raised further.
 */
public final class OptionSearch {
  /** Steps of a backward pass that take as long as one of the label setting, about. */
  private static final int PASS_STEPS = 2;

  /** Steps that a search may take before the tolls move, however quick a pass is. */
  private static final long LEAST = 4_000;

  /** Steps that are soon taken. */
  private static final long SOON = 20_000;

  /** The first ceiling of a search lies so far over the bound: a part of the way to the price. */
  private static final int PART = 8;

  private final Model model;
  private final Work work;
  private final OptionRule rule;
  private final Outline outline;
  private final Tracked tracked;
  private final long ceiling;
  private final Map<String, Integer> numbers = new HashMap<>();
  private final List<Solution> solutions = new ArrayList<>();
  private final List<BitSet> earlier = new ArrayList<>();
  private final List<Integer> most = new ArrayList<>();
  private Sharing sharing;
  private double[] tolls = {};

  private OptionSearch(Model model, Outline outline, OptionRule rule, Solution best, Work work) {
    this.model = model;
    this.outline = outline;
    this.rule = rule;
    this.work = work;
    this.ceiling = rule.ceiling(best.cost());
    this.tracked = new Tracked(model);
    this.sharing = Sharing.none(model);
    for (int i = 0; i < model.ids.length; i++) {
      numbers.put(model.ids[i], i);
    }
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
      Solution best =
          Search.solve(model.get(), outline, instance, Optional.empty(), work, Listener.NONE);
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
    return (int)
        Math.max(0, Math.min(ceiling + 1, room / (2L * (OptionRule.MOST + 1) * model.cells)));
  }

  private OptionList run() {
    Reach reach = outline.reach(model.pack(ceiling + 1));
    while (solutions.size() < rule.count()) {
      LabelSetting setting = setting();
      setting.below(model.pack(ceiling + 1));
      Solution next = setting.solution(proven(() -> prove(setting, reach, Long.MAX_VALUE)));
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

  /** Looks above the ceiling, for no longer than everything took so far, unless it is soon done. */
  private OptionList beyond() {
    LabelSetting setting = setting();
    long end = work.done() + Math.max(work.done(), SOON);
    boolean proven =
        proven(
            () -> {
              setting.dive(Dive.WIDE);
              return prove(setting, outline.reach(setting.price()), end);
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
  }

  private LabelSetting setting() {
    if (!Sharing.fits(model, most)) {
      throw Instance.refuse(
          "options", rule.count(), "with so many exercises in each, at most " + solutions.size());
    }
    sharing = Sharing.of(model, earlier, most);
    return new LabelSetting(model, outline.guide(), sharing, tracked, work, Listener.NONE);
  }

  /** Searches until so many steps are done, and moves the tolls whenever that takes long. */
  private boolean prove(LabelSetting setting, Reach reach, long end) {
    if (reach.values > Reach.MOST / Ascent.BOUNDS) {
      work.allow(end - work.done());
      return setting.prove();
    }
    Ascent ascent =
        new Ascent(outline.prices(), reach, sharing, most, tracked, tolls, highestToll(), work);
    try {
      follow(setting, ascent);
      return prove(setting, ascent, Math.max(LEAST, reach.values / PASS_STEPS), end);
    } finally {
      tolls = ascent.tolls();
    }
  }

  private boolean prove(LabelSetting setting, Ascent ascent, long first, long end) {
    for (long patience = first; ; patience *= 2) {
      try {
        boolean last = ascent.over() || patience >= end - work.done();
        work.allow(last ? end - work.done() : patience);
        return patience == first ? setting.prove() : proveRising(setting, ascent);
      } catch (Work.Paused paused) {
        if (work.done() >= end) {
          return false;
        }
        climb(setting, ascent, work, Math.min(end, work.done() + PASS_STEPS * patience));
      } finally {
        work.allow(Long.MAX_VALUE);
      }
    }
  }

  /**
   * Looks under one ceiling after another: so many labels have estimates between the bound and the
   * price of the best agenda known that most would be made in vain.
   */
  private static boolean proveRising(LabelSetting setting, Ascent ascent) {
    for (long above = (setting.price() - ascent.root()) / PART + 1; ; above *= 2) {
      long under = ascent.root() + above;
      if (setting.prove(under)) {
        return true;
      }
      if (under >= setting.price()) {
        return false;
      }
    }
  }

  private static void climb(LabelSetting setting, Ascent ascent, Work work, long end) {
    while (!ascent.over() && work.done() < end && ascent.root() < setting.price()) {
      if (ascent.step(setting.price())) {
        follow(setting, ascent);
      }
    }
  }

  private static void follow(LabelSetting setting, Ascent ascent) {
    setting.follow(ascent.guide());
    setting.dive(Dive.WIDE);
  }
}
