package org.arcwright.gaps;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Minutes;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Per;
import org.arcwright.catalog.SizeRange;
import org.arcwright.catalog.Source;
import org.arcwright.catalog.Speaker;
import org.arcwright.catalog.Step;
import org.arcwright.catalog.Suitability;

/**
 * An exercise that nobody has written yet, as far as a composer cares.
 *
 * @param phase name of the goal's phase that it is for
 * @param kind what it does to the group's thinking
 * @param needs work products that it may count on
 * @param yields work products that it must leave
 * @param atMost how long it may take if it is kept short
 */
public record Draft(
    String phase, Kind kind, Set<String> needs, Set<String> yields, Duration atMost) {
  private static final String NONE = "None yet.";

  /** Takes copies. */
  public Draft {
    needs = Checks.ids("needs", needs);
    yields = Checks.ids("yields", yields);
  }

  Draft lasting(Duration length) {
    return new Draft(phase, kind, needs, yields, length);
  }

  Draft needing(Set<String> products) {
    return new Draft(phase, kind, products, yields, atMost);
  }

  /** The same as an exercise for so many people, at least so long and up to a whole stretch. */
  Exercise exercise(int people, Duration stretch) {
    Map<Mode, Suitability> modes = new TreeMap<>();
    for (Mode mode : Mode.values()) {
      modes.put(mode, new Suitability(3, NONE, Set.of()));
    }
    Duration longest = atMost.compareTo(stretch) > 0 ? atMost : stretch;
    return new Exercise(
        "draft-for-" + phase + "-" + kind.word(),
        "Draft",
        kind,
        NONE,
        new SizeRange(people, people),
        Optional.empty(),
        3,
        0,
        false,
        needs,
        yields,
        NONE,
        List.of(
            new Step(
                NONE,
                Speaker.ALL,
                Format.PLENARY,
                new Minutes(atMost, atMost, longest),
                Per.SESSION,
                1)),
        modes,
        new Exercise.Care(List.of(), Optional.empty(), List.of()),
        new Exercise.Notes(List.of(), List.of(), List.of(), NONE),
        new Source.CommonPractice());
  }
}
