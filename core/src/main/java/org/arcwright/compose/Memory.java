package org.arcwright.compose;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import com.github.benmanes.caffeine.cache.stats.CacheStats;
import java.util.function.BooleanSupplier;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.compose.CachingComposer.Use;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.reduce.Reduction;
import org.arcwright.compose.search.Limit;
import org.arcwright.compose.search.Listener;
import org.arcwright.compose.search.Solution;
import org.arcwright.compose.search.Solution.Status;

/**
 * Steps that remember: reductions by brief, proven solutions by what the instance holds, so that
 * briefs which differ in words alone share one. Both are for one catalog.
 */
final class Memory implements Steps {
  private final Cache<Brief, Reduction> reductions;
  private final Cache<Instance, Solution> solutions;

  /**
   * @param most weight of each of the two
   */
  Memory(long most) {
    this.reductions =
        weighed(most)
            .<Brief, Reduction>weigher((brief, reduction) -> weight(reduction.instance()))
            .build();
    this.solutions =
        weighed(most).<Instance, Solution>weigher((instance, solution) -> weight(instance)).build();
  }

  /** A cache of that weight that counts its use and does all its work on the caller's thread. */
  static Caffeine<Object, Object> weighed(long most) {
    return Caffeine.newBuilder().maximumWeight(most).recordStats().executor(Runnable::run);
  }

  /** What keeping an instance weighs. */
  static int weight(Instance instance) {
    return 1 + instance.candidates().size();
  }

  @Override
  public Reduction reduce(Brief brief, Catalog catalog, BooleanSupplier stop) {
    Reduction known = reductions.getIfPresent(brief);
    if (known != null) {
      return known;
    }
    Reduction reduction = PLAIN.reduce(brief, catalog, stop);
    if (reduction.complete()) {
      reductions.put(brief, reduction);
    }
    return reduction;
  }

  @Override
  public Solution solve(Instance instance, Limit limit, Listener listener) {
    Solution known = solutions.getIfPresent(instance);
    if (known != null) {
      if (known.status() == Status.OPTIMAL) {
        listener.bound(known.bound());
        listener.incumbent(known.cost(), known.items());
      }
      return known;
    }
    Solution solution = PLAIN.solve(instance, limit, listener);
    if (solution.status() == Status.OPTIMAL || solution.status() == Status.INFEASIBLE) {
      solutions.put(instance, solution);
    }
    return solution;
  }

  Use ofReductions() {
    return use(reductions);
  }

  Use ofSolutions() {
    return use(solutions);
  }

  static Use use(Cache<?, ?> cache) {
    CacheStats stats = cache.stats();
    return new Use(
        stats.hitCount(), stats.missCount(), stats.evictionCount(), cache.estimatedSize());
  }
}
