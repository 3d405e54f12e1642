package org.arcwright.compose.reduce;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Phase;

/**
 * In which phases an exercise may stand. A phase takes the kinds that it names; where several
 * phases take the same kind, an exercise that leaves what some of them must leave does so there and
 * nowhere else, so that people do not introduce themselves after three hours, or settle on a
 * shortlist while they are still sorting. In an instance such an exercise is of a kind of its own,
 * written {@code convergent/sort+pick}.
 */
final class Placement {
  private final List<Phase> arc;
  private final List<Set<String>> kinds = new ArrayList<>();
  private final Map<String, String> written = new HashMap<>();

  Placement(List<Phase> arc) {
    this.arc = arc;
    for (Phase phase : arc) {
      Set<String> words = new LinkedHashSet<>();
      phase.kinds().stream().map(Kind::word).forEach(words::add);
      kinds.add(words);
    }
  }

  /** The instance's kind of an exercise. */
  String kind(Allowed allowed) {
    Kind kind = allowed.exercise().kind();
    int takes = 0;
    int serves = 0;
    for (int i = 0; i < arc.size(); i++) {
      if (arc.get(i).kinds().contains(kind)) {
        takes |= 1 << i;
        serves |= leaves(allowed, arc.get(i)) ? 1 << i : 0;
      }
    }
    return serves == 0 || serves == takes ? kind.word() : narrowed(kind, serves);
  }

  private static boolean leaves(Allowed allowed, Phase phase) {
    for (String product : allowed.yields()) {
      if (phase.yields().contains(product)) {
        return true;
      }
    }
    return false;
  }

  private String narrowed(Kind kind, int phases) {
    return written.computeIfAbsent(
        kind.word() + phases,
        key -> {
          StringBuilder word = new StringBuilder(kind.word());
          for (int i = 0; i < arc.size(); i++) {
            if ((phases >> i & 1) != 0) {
              word.append(word.indexOf("/") < 0 ? '/' : '+').append(arc.get(i).name());
            }
          }
          for (int i = 0; i < arc.size(); i++) {
            if ((phases >> i & 1) != 0) {
              kinds.get(i).add(word.toString());
            }
          }
          return word.toString();
        });
  }

  /** The instance's kinds that a phase takes, as far as exercises were asked about. */
  Set<String> kinds(int phase) {
    return kinds.get(phase);
  }
}
