package org.arcwright.gaps;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.arcwright.brief.Defaults;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Layer;
import org.arcwright.catalog.Layers;
import org.arcwright.catalog.Phase;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Cancel;
import org.arcwright.compose.Composer;

/**
 * What would give a brief one more agenda, found by trying: exercises that nobody has written yet
 * are put on the shelf, and the composer is asked again. First one for each phase and kind, as
 * short as can be; of those that help, the one that may take longest is easiest to write. If none
 * helps by itself, one for every phase, and those that are not needed are taken away again.
 */
final class DraftSearch {
  private static final Duration STEP = Duration.ofMinutes(5);

  private final Layers shelf;
  private final Goal goal;
  private final Cell cell;
  private final int most;
  private final Budget budget;
  private final Cancel cancel;
  private final Duration stretch;
  private final int before;

  private DraftSearch(Layers shelf, Count count, int most, Budget budget, Cancel cancel) {
    this.shelf = shelf;
    this.cell = count.cell();
    this.goal = shelf.catalog().goal(cell.goal()).orElseThrow();
    this.most = most;
    this.budget = budget;
    this.cancel = cancel;
    this.stretch = Defaults.rhythm(cell.tools().mode()).longest();
    this.before = count.agendas();
  }

  /** The exercises that are missing; none if nothing would help. */
  static List<Draft> missing(Catalog catalog, Count count, int most, Budget budget, Cancel cancel) {
    return new DraftSearch(Layers.of("shelf", catalog), count, most, budget, cancel).missing();
  }

  /** Whether these exercises would give a brief one more agenda. */
  static boolean help(
      Catalog catalog, Count count, List<Draft> drafts, int most, Budget budget, Cancel cancel) {
    return new DraftSearch(Layers.of("shelf", catalog), count, most, budget, cancel).help(drafts);
  }

  private List<Draft> missing() {
    List<Draft> all = drafts();
    Optional<List<Draft>> one =
        all.stream()
            .map(List::of)
            .filter(this::help)
            .map(this::longest)
            .max(Comparator.comparing(drafts -> drafts.get(0).atMost()));
    if (one.isPresent()) {
      return withNeeds(one.get());
    }
    return help(all) ? withNeeds(longest(fewest(all))) : List.of();
  }

  /** One for each phase and kind, as short as can be. */
  private List<Draft> drafts() {
    List<Draft> drafts = new ArrayList<>();
    for (Phase phase : goal.arc()) {
      Set<String> yields = new TreeSet<>(phase.yields());
      yields.removeAll(goal.given());
      if (yields.isEmpty()) {
        yields.addAll(goal.yields());
      }
      if (!yields.isEmpty()) {
        for (Kind kind : phase.kinds()) {
          drafts.add(new Draft(phase.name(), kind, Set.of(), yields, STEP));
        }
      }
    }
    return drafts;
  }

  private List<Draft> fewest(List<Draft> all) {
    List<Draft> left = all;
    for (Draft draft : all) {
      List<Draft> without = new ArrayList<>(left);
      without.remove(draft);
      if (help(without)) {
        left = without;
      }
    }
    return left;
  }

  /** The longest that each of them may take and still help. */
  private List<Draft> longest(List<Draft> drafts) {
    long fits = 1;
    long tooLong = stretch.toMinutes() / STEP.toMinutes() + 1;
    while (tooLong - fits > 1) {
      long middle = (fits + tooLong) / 2;
      if (help(lasting(drafts, middle))) {
        fits = middle;
      } else {
        tooLong = middle;
      }
    }
    return lasting(drafts, fits);
  }

  private static List<Draft> lasting(List<Draft> drafts, long steps) {
    return drafts.stream().map(draft -> draft.lasting(STEP.multipliedBy(steps))).toList();
  }

  /** With needs for all that exists by then and that such exercises need, if they still help. */
  private List<Draft> withNeeds(List<Draft> drafts) {
    List<Draft> needing = drafts.stream().map(draft -> draft.needing(needs(draft))).toList();
    return help(needing) ? needing : drafts;
  }

  private Set<String> needs(Draft draft) {
    Set<String> existing = new TreeSet<>(goal.given());
    for (Phase phase : goal.arc()) {
      if (phase.name().equals(draft.phase())) {
        break;
      }
      existing.addAll(phase.yields());
    }
    existing.removeAll(draft.yields());
    Set<String> usual = new TreeSet<>();
    for (Exercise exercise : shelf.catalog().exercises().values()) {
      if (exercise.kind() == draft.kind()) {
        usual.addAll(exercise.needs());
      }
    }
    existing.retainAll(usual);
    return existing;
  }

  private boolean help(List<Draft> drafts) {
    List<Exercise> exercises =
        drafts.stream().map(draft -> draft.exercise(cell.people(), stretch)).toList();
    Layer layer =
        new Layer("drafts", List.of(), List.of(), exercises, List.of(), Set.of(), Set.of());
    return Composer.of(shelf.with(layer).catalog())
            .variety(cell.brief(), Math.min(most, before + 1), budget, cancel)
            .agendas()
            .size()
        > before;
  }
}
