package org.arcwright.compose.explain;

import java.util.Set;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;

/**
 * A brief to try, and what to try it with.
 *
 * @param brief it
 * @param setAside names of the catalog's rules that do not count
 */
record Case(Brief brief, Set<String> setAside) {
  /** Copies the set. */
  Case {
    setAside = Set.copyOf(setAside);
  }

  /** The catalog without the rules that are set aside. */
  Catalog in(Catalog catalog) {
    return setAside.isEmpty() ? catalog : catalog.withoutRules(setAside);
  }
}
