package org.arcwright.compose.reduce;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.arcwright.brief.Brief;
import org.arcwright.brief.BriefBuilder;
import org.arcwright.brief.EnergyCurve;
import org.arcwright.brief.Group.Acquaintance;
import org.arcwright.brief.Meal;
import org.arcwright.brief.Rhythm;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Mode;
import org.arcwright.compose.check.Checker;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.search.Limit;
import org.arcwright.compose.search.Search;

/** What holds for every brief. */
class AnyBriefTest {

  @Property(tries = 300, seed = "4711")
  void every_exercise_is_either_a_candidate_or_left_out_with_a_reason(
      @ForAll("briefs") Brief brief) {
    Reduction reduction = Reducer.reduce(brief, Sample.catalog(), () -> false);

    List<String> ids = new ArrayList<>(reduction.leftOut().keySet());
    reduction.instance().candidates().forEach(candidate -> ids.add(candidate.id()));
    assertThat(ids)
        .containsExactlyInAnyOrderElementsOf(
            Sample.exercises().stream().map(Exercise::id).toList());
    assertThat(reduction.leftOut().values())
        .allMatch(refusal -> refusal.field().isPresent() && !refusal.reason().isBlank());
  }

  @Property(tries = 300, seed = "4711")
  void phases_leave_room_for_what_the_exercises_can_fill(@ForAll("briefs") Brief brief) {
    Instance instance = Reducer.reduce(brief, Sample.catalog(), () -> false).instance();

    for (Instance.Phase phase : instance.phases()) {
      List<Candidate> allowed =
          instance.candidates().stream().filter(c -> phase.kinds().contains(c.kind())).toList();
      assertThat(phase.minutes().min()).isLessThanOrEqualTo(phase.minutes().max());
      if (!allowed.isEmpty()) {
        assertThat(phase.minutes().max())
            .isGreaterThanOrEqualTo(
                allowed.stream().mapToInt(c -> c.lengths().get(0)).min().orElseThrow());
      }
    }
  }

  @Property(tries = 100, seed = "4711")
  void an_agenda_that_is_found_keeps_every_rule_and_reads_back_as_it_was(
      @ForAll("briefs") Brief brief) {
    Reduction reduction = Reducer.reduce(brief, Sample.catalog(), () -> false);
    List<Item> items = Search.solve(reduction.instance(), Limit.labels(200_000)).items();

    if (!items.isEmpty()) {
      assertThat(Checker.check(reduction.instance(), items).findings()).isEmpty();
      assertThat(AgendaReader.items(reduction, AgendaBuilder.build(reduction, items)))
          .isEqualTo(items);
    }
  }

  @Provide
  Arbitrary<Brief> briefs() {
    Arbitrary<BriefBuilder> basics =
        Combinators.combine(
                Arbitraries.of(Mode.class),
                Arbitraries.integers().between(1, 60),
                Arbitraries.integers().between(15, 400))
            .as(Sample::brief);
    return Combinators.combine(
            basics,
            Arbitraries.of(Acquaintance.class),
            Arbitraries.of(EnergyCurve.Shape.class),
            Arbitraries.integers().between(0, 40),
            rhythms(),
            Arbitraries.integers().between(0, 1))
        .as(
            (brief, acquaintance, shape, buffer, rhythm, meals) -> {
              brief
                  .acquaintance(acquaintance)
                  .curve(shape.curve())
                  .bufferPercent(buffer)
                  .rhythm(rhythm);
              if (meals > 0) {
                brief.meal(
                    new Meal(
                        Duration.ofMinutes(10), Duration.ofMinutes(90), Duration.ofMinutes(30)));
              }
              return brief;
            })
        .map(BriefBuilder::build);
  }

  private static Arbitrary<Rhythm> rhythms() {
    return Combinators.combine(
            Arbitraries.integers().between(0, 30),
            Arbitraries.integers().between(30, 120),
            Arbitraries.of(0, 5, 10, 15))
        .as(
            (shortest, longest, pause) ->
                new Rhythm(
                    Duration.ofMinutes(shortest),
                    Duration.ofMinutes(longest),
                    Duration.ofMinutes(pause)));
  }
}
