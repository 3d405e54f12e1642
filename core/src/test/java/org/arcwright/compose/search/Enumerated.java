package org.arcwright.compose.search;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.oracle.Enumeration;
import org.arcwright.compose.oracle.Enumeration.Best;

/**
 * What enumeration says, remembered: mutation testing asks for the same answers a thousand times,
 * and they take far longer than the search.
 */
final class Enumerated {
  private static final Map<Instance, Map<Set<String>, Best>> KNOWN = new ConcurrentHashMap<>();

  private Enumerated() {}

  /** See {@link Enumeration#solve}. */
  static Optional<Best> best(Instance instance) {
    return Enumeration.best(ofEachSet(instance).values());
  }

  /** See {@link Enumeration#ofEachSet}. */
  static Map<Set<String>, Best> ofEachSet(Instance instance) {
    return KNOWN.computeIfAbsent(instance, Enumeration::ofEachSet);
  }
}
