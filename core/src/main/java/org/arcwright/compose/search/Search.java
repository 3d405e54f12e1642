package org.arcwright.compose.search;

import java.util.List;
import java.util.Optional;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.search.Solution.Status;

/**
 * Solves instances exactly: a first agenda at once, a coarse relaxation, a better agenda from a
 * short dive, a finer bound where an agenda cheaper than that may lead, and label setting to the
 * proof.
 *
 * <p>An elementary shortest path with resource constraints (Feillet, Dejax, Gendreau and Gueguen
 * 2004) is NP-hard; the worst case is exponential in the exercises that a cheapest path would
 * repeat. The coarse pass is linear in phases × counts × phase minutes × times × stretches ×
 * lengths, all in cells; it does not grow with the number of candidates.
 */
public final class Search {
  /** Steps after which a proof is not to be had at once. */
  private static final long SOON = 2_000;

  private Search() {}

  /**
   * Solves an instance. The same instance gives the same items on any machine and thread, unless
   * the limit ends the search.
   *
   * @param limit asked in every part of the work
   * @throws org.arcwright.catalog.InvalidValueException if costs are so large that sums of them can
   *     no longer be told apart
   */
  public static Solution solve(Instance instance, Limit limit) {
    return solve(instance, limit, Listener.NONE);
  }

  /**
   * As {@link #solve(Instance, Limit)}, and tells a listener of each better solution and bound.
   *
   * @param limit asked in every part of the work
   * @throws org.arcwright.catalog.InvalidValueException if costs are so large that sums of them can
   *     no longer be told apart
   */
  public static Solution solve(Instance instance, Limit limit, Listener listener) {
    Work work = new Work(limit);
    try {
      return solve(instance, work, listener);
    } catch (Work.Stopped stopped) {
      return new Solution(Status.STOPPED, 0, 0, 0, List.of(), work.done());
    }
  }

  private static Solution solve(Instance instance, Work work, Listener listener) {
    return Facts.of(instance, work)
        .map(facts -> solve(facts, work, listener))
        .orElseGet(() -> infeasible(work));
  }

  private static Solution solve(Facts facts, Work work, Listener listener) {
    Optional<Scout.Found> first = Scout.run(facts, work);
    first.ifPresent(found -> listener.incumbent(found.cost(), found.items()));
    try {
      return ModelBuilder.build(facts, work)
          .map(
              model -> solve(model, Outline.of(model, work), facts.instance, first, work, listener))
          .orElseGet(() -> infeasible(work));
    } catch (Work.Stopped stopped) {
      return first.map(found -> found.solution(facts, work.done())).orElseThrow(() -> stopped);
    }
  }

  /**
   * Solves an instance from its model and outline.
   *
   * @param first an agenda that is known and told already
   */
  static Solution solve(
      Model model,
      Outline outline,
      Instance instance,
      Optional<Scout.Found> first,
      Work work,
      Listener listener) {
    if (outline.root() >= Model.INFINITE) {
      return infeasible(instance, work);
    }
    LabelSetting setting =
        new LabelSetting(
            model, outline.guide(), Sharing.none(model), new Tracked(model), work, listener);
    first.ifPresent(setting::start);
    boolean proven;
    try {
      setting.dive(Dive.NARROW);
      work.ask();
      setting.follow(outline.guide(outline.reach(setting.price())));
      proven = prove(setting, work);
    } catch (Work.Stopped stopped) {
      proven = false;
    }
    Solution solution = setting.solution(proven);
    return solution.status() == Status.INFEASIBLE ? infeasible(instance, work) : solution;
  }

  /** Mostly the bound leads to the proof at once; if not, a good agenda is worth its time. */
  private static boolean prove(LabelSetting setting, Work work) {
    try {
      work.allow(SOON);
      return setting.prove();
    } catch (Work.Paused paused) {
      setting.dive(Dive.WIDE);
      return setting.prove();
    } finally {
      work.allow(Long.MAX_VALUE);
    }
  }

  static Solution infeasible(Work work) {
    return new Solution(Status.INFEASIBLE, 0, 0, 0, List.of(), work.done());
  }

  /** Nothing fits, unless it only seems so because prices were too large to add up. */
  private static Solution infeasible(Instance instance, Work work) {
    Instance free = instance.freeOfCharge();
    if (!free.equals(instance) && PriceRange.mayOverflow(instance)) {
      Solution solution = solve(free, work, Listener.NONE);
      if (solution.status() == Status.STOPPED) {
        return solution;
      }
      if (solution.status() != Status.INFEASIBLE) {
        throw Instance.refuse("weights", instance.weights(), Facts.TOO_LARGE);
      }
    }
    return infeasible(work);
  }
}
