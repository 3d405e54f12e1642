package org.arcwright.compose;

import java.util.function.BooleanSupplier;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.reduce.Reducer;
import org.arcwright.compose.reduce.Reduction;
import org.arcwright.compose.search.Limit;
import org.arcwright.compose.search.Search;
import org.arcwright.compose.search.Solution;

/** The two steps of composing that are worth remembering. */
interface Steps {
  /** Takes both each time. */
  Steps PLAIN =
      new Steps() {
        @Override
        public Reduction reduce(Brief brief, Catalog catalog, BooleanSupplier stop) {
          return Reducer.reduce(brief, catalog, stop);
        }

        @Override
        public Solution solve(
            Instance instance, Limit limit, org.arcwright.compose.search.Listener listener) {
          return Search.solve(instance, limit, listener);
        }
      };

  /** As {@link Reducer#reduce}. */
  Reduction reduce(Brief brief, Catalog catalog, BooleanSupplier stop);

  /** As {@link Search#solve(Instance, Limit, org.arcwright.compose.search.Listener)}. */
  Solution solve(Instance instance, Limit limit, org.arcwright.compose.search.Listener listener);
}
