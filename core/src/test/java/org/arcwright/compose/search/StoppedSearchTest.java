package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Weights;
import org.arcwright.compose.oracle.Instances;
import org.arcwright.compose.search.Solution.Status;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is answered when a limit ends the search, wherever it does. */
class StoppedSearchTest {
  /** The most steps between two looks at the limit, and those of one part of the work. */
  private static final int LATE = 4500;

  @Test
  void the_best_so_far_fits_and_the_bound_holds() {
    SoftAssertions softly = new SoftAssertions();
    Instance instance = Instances.of(60, 180, 0);
    Solution best = Search.solve(instance, Models.AMPLE);
    List<Status> seen = new ArrayList<>();
    for (long most = 0; most < best.labels(); most += 1 + most / 3) {
      Solution some = Search.solve(instance, Limit.labels(most));
      seen.add(some.status());
      softly.assertThat(some.status()).isNotIn(Status.OPTIMAL, Status.INFEASIBLE);
      softly.assertThat(some.labels()).isBetween(most, most + LATE);
      softly.assertThat(some.bound()).isLessThanOrEqualTo(best.cost());
      Passes.theChecker(softly, most, instance, some);
      if (some.status() == Status.STOPPED) {
        softly.assertThat(some.items()).isEmpty();
        softly.assertThat(some.cost() + some.tie()).isZero();
      } else {
        softly.assertThat(some.cost()).isGreaterThanOrEqualTo(best.cost());
      }
    }
    softly.assertAll();
    assertThat(seen).containsSequence(Status.STOPPED, Status.STOPPED);
    assertThat(Search.solve(instance, Limit.labels(best.labels() + 1))).isEqualTo(best);
  }

  /** A first agenda is soon there, and the bound has risen a good part of the way to it. */
  @Test
  void an_agenda_and_a_bound_are_there_long_before_the_proof() {
    Instance instance = Instances.of(150, 480, 2);
    Solution best = Search.solve(instance, Models.AMPLE);
    Solution some = Search.solve(instance, Limit.labels(best.labels() / 2));
    assertThat(some.status()).isEqualTo(Status.FEASIBLE);
    assertThat(some.bound()).isBetween(best.cost() * 3 / 4, best.cost());
    assertThat(some.cost()).isBetween(best.cost(), best.cost() * 4 / 3);
  }

  /** Where the proof is far, a second dive is worth its time: it finds what the first did not. */
  @ParameterizedTest
  @ValueSource(longs = {2, 4, 7})
  void a_better_agenda_is_there_before_the_proof(long seed) {
    Instance instance = Instances.of(150, 480, seed);
    Model model = Models.of(instance);
    Outline outline = Outline.of(model, Models.work());
    LabelSetting first =
        new LabelSetting(
            model,
            outline.guide(),
            Sharing.none(model),
            new Tracked(model),
            Models.work(),
            Listener.NONE);
    first.dive(Dive.NARROW);

    Solution best = Search.solve(instance, Models.AMPLE);
    Solution some = Search.solve(instance, Limit.labels(best.labels() * 4 / 5));

    assertThat(some.status()).isEqualTo(Status.FEASIBLE);
    assertThat(some.cost()).isLessThan(model.cost(first.price()));
  }

  /** That prices are too large to tell apart would take a second search to know. */
  @Test
  void nothing_is_called_infeasible_unless_that_is_certain() {
    Instance instance =
        Models.hour(Models.phase("any", 1))
            .candidates(List.of(Models.candidate("only", "any", 100_000_000)))
            .weights(Weights.NONE)
            .build();
    for (long most = 0; most < 5; most++) {
      assertThat(Search.solve(instance, Limit.labels(most)).status()).isEqualTo(Status.STOPPED);
    }
  }
}
