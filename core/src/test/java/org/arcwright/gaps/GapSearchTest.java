package org.arcwright.gaps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.Stream;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Phase;
import org.arcwright.catalog.Product;
import org.arcwright.catalog.SizeRange;
import org.arcwright.catalog.Tool;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Cancel;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.reduce.SampleExercise;
import org.junit.jupiter.api.Test;

class GapSearchTest {
  private static final ToolSet REMOTE = ToolSet.usual(Mode.REMOTE);

  private static final SampleExercise HELLO =
      SampleExercise.of("hello", Kind.ICEBREAKER, 5, 5, 10, "arrival");
  private static final SampleExercise SPARKS =
      SampleExercise.of("sparks", Kind.DIVERGENT, 15, 20, 25, "ideas");
  private static final SampleExercise SIEVE =
      SampleExercise.of("sieve", Kind.CONVERGENT, 10, 15, 20, "pick").needs("ideas");
  private static final SampleExercise WORDS =
      SampleExercise.of("words", Kind.REFLECTION, 5, 5, 10, "takeaways");

  @Test
  void a_full_shelf_has_no_gap() {
    Gaps gaps = run(1, HELLO, SPARKS, SIEVE, WORDS);

    assertThat(gaps.counts())
        .containsExactly(new Count(new Cell("choose", REMOTE, 8, minutes(60)), 1, true));
    assertThat(gaps.gaps()).isEmpty();
    assertThat(gaps.having(0)).isZero();
    assertThat(gaps.thin()).isZero();
  }

  @Test
  void one_that_is_missing_is_described() {
    Gap gap =
        run(
                1,
                HELLO,
                SPARKS,
                WORDS,
                SampleExercise.of("sieve", Kind.CONVERGENT, 5, 5, 5, "x").needs("ideas"))
            .gaps()
            .get(0);

    assertThat(gap.agendas()).isZero();
    assertThat(gap.drafts()).hasSize(1);
    Draft draft = gap.drafts().get(0);
    assertThat(draft.phase()).isEqualTo("narrow");
    assertThat(draft.kind()).isEqualTo(Kind.CONVERGENT);
    assertThat(draft.yields()).containsExactly("pick");
    assertThat(draft.needs())
        .as("what such exercises need and what exists then")
        .containsExactly("ideas");
  }

  /** The composer says so itself: one of that length helps, one of five minutes more does not. */
  @Test
  void it_may_take_as_long_as_the_draft_says_and_no_longer() {
    Draft draft = run(1, HELLO, SPARKS, WORDS).gaps().get(0).drafts().get(0);

    int atMost = (int) draft.atMost().toMinutes();
    assertThat(composes(atMost)).isTrue();
    assertThat(composes(atMost + 5)).isFalse();
  }

  private static boolean composes(int shortest) {
    Catalog shelf =
        shelf(
            HELLO,
            SPARKS,
            WORDS,
            SampleExercise.of("new", Kind.CONVERGENT, shortest, shortest, 60, "pick"));
    return Composer.of(shelf)
            .compose(new Cell("choose", REMOTE, 8, minutes(60)).brief(), Budget.USUAL)
        instanceof Composed;
  }

  @Test
  void all_that_are_missing_are_named_and_no_other() {
    List<Draft> drafts = run(1, HELLO, SPARKS).gaps().get(0).drafts();

    assertThat(drafts).extracting(Draft::phase).containsExactly("narrow", "close");
    assertThat(composesWith(drafts)).isTrue();
    assertThat(composesWith(drafts.subList(0, 1))).isFalse();
    assertThat(composesWith(drafts.subList(1, 2))).isFalse();
  }

  private static boolean composesWith(List<Draft> drafts) {
    List<Exercise> exercises = new ArrayList<>(List.of(HELLO.build(), SPARKS.build()));
    drafts.forEach(draft -> exercises.add(draft.exercise(8, minutes(60))));
    return Composer.of(shelf(exercises))
            .compose(new Cell("choose", REMOTE, 8, minutes(60)).brief(), Budget.USUAL)
        instanceof Composed;
  }

  @Test
  void where_time_is_too_short_for_the_arc_no_exercise_helps() {
    Grid grid = grid().withLengths(List.of(minutes(15)));

    Gap gap = run(1, grid, HELLO, SPARKS, SIEVE, WORDS).gaps().get(0);

    assertThat(gap.drafts()).isEmpty();
  }

  @Test
  void a_single_agenda_is_a_gap_for_who_wants_two() {
    Gaps gaps = run(2, HELLO, SPARKS, SIEVE, WORDS);

    assertThat(gaps.having(1)).isEqualTo(1);
    assertThat(gaps.gaps()).hasSize(1);
    assertThat(gaps.gaps().get(0).agendas()).isEqualTo(1);
    assertThat(gaps.gaps().get(0).drafts()).as("half of four must be others").hasSize(2);
  }

  @Test
  void the_thinnest_come_first_and_lengths_with_the_same_remedy_stand_together() {
    SampleExercise small =
        SampleExercise.of("small", Kind.REFLECTION, 5, 5, 10, "takeaways").people(1, 8);
    Grid grid = grid().withPeople(List.of(8, 12)).withLengths(List.of(minutes(60), minutes(90)));

    Gaps gaps = run(2, grid, HELLO, SPARKS, SIEVE, small);

    assertThat(gaps.counts()).extracting(Count::agendas).containsExactly(1, 1, 0, 0);
    Gap first = gaps.gaps().get(0);
    assertThat(first.people()).isEqualTo(12);
    assertThat(first.lengths()).containsExactly(minutes(60), minutes(90));
    assertThat(gaps.gaps()).extracting(Gap::agendas).isSorted();
    assertThat(gaps.thin()).isEqualTo(4);
  }

  @Test
  void demands_add_up_what_the_gaps_ask_for() {
    Grid grid = grid().withPeople(List.of(8, 12)).withLengths(List.of(minutes(60), minutes(90)));

    List<Demand> demands = run(1, grid, HELLO, SPARKS, SIEVE).demands();

    assertThat(demands).hasSize(1);
    Demand demand = demands.get(0);
    assertThat(demand.kind()).isEqualTo(Kind.REFLECTION);
    assertThat(demand.yields()).containsExactly("takeaways");
    assertThat(demand.briefs()).isEqualTo(4);
    assertThat(demand.people()).isEqualTo(new SizeRange(8, 12));
  }

  @Test
  void only_as_many_gaps_are_looked_into_as_are_asked_for() {
    Grid grid = grid().withPeople(List.of(8, 12));

    Gaps gaps = GapSearch.run(shelf(HELLO), grid, 1, 1, GapSearch.Watch.NOBODY, Cancel.NEVER);

    assertThat(gaps.thin()).isEqualTo(2);
    assertThat(gaps.gaps()).hasSize(1);
  }

  @Test
  void who_watches_hears_of_every_brief_and_every_gap() {
    Map<GapSearch.Stage, ConcurrentLinkedQueue<Integer>> heard =
        new EnumMap<>(GapSearch.Stage.class);
    Arrays.stream(GapSearch.Stage.values())
        .forEach(stage -> heard.put(stage, new ConcurrentLinkedQueue<>()));
    Grid grid = grid().withPeople(List.of(6, 8, 12));

    GapSearch.run(
        shelf(HELLO), grid, 1, 9, (stage, done, of) -> heard.get(stage).add(done), Cancel.NEVER);

    assertThat(heard.values())
        .allSatisfy(done -> assertThat(done).containsExactlyInAnyOrder(1, 2, 3));
  }

  @Test
  void who_cancels_leaves_open_what_was_not_counted() {
    Gaps gaps =
        GapSearch.run(
            shelf(HELLO, SPARKS, SIEVE, WORDS), grid(), 1, 9, GapSearch.Watch.NOBODY, () -> true);

    assertThat(gaps.open()).isEqualTo(1);
    assertThat(gaps.having(0)).isZero();
    assertThat(gaps.gaps()).isEmpty();
  }

  @Test
  void the_usual_grid_has_every_goal_and_every_mode_with_the_usual_tools_and_the_barest() {
    Grid grid = Grid.usual(shelf(HELLO));

    assertThat(grid.goals()).containsExactly("choose");
    assertThat(grid.tools()).extracting(ToolSet::mode).contains(Mode.values());
    assertThat(grid.tools()).extracting(ToolSet::name).containsOnly("usual", "barest");
    assertThat(grid.tools()).contains(new ToolSet(Mode.REMOTE, "barest", Set.of("call")));
    assertThat(grid.tools()).as("no paper in this catalog").hasSize(4);
    assertThat(grid.people()).startsWith(4).endsWith(30);
    assertThat(grid.lengths()).startsWith(minutes(60)).endsWith(minutes(240));
  }

  @Test
  void a_grid_that_is_empty_or_endless_is_refused() {
    assertThatThrownBy(() -> grid().withPeople(List.of()))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("people");
    List<Integer> many = Stream.iterate(1, n -> n + 1).limit(1000).toList();
    List<Duration> lengths = many.stream().map(n -> minutes(60L + n)).toList();
    assertThatThrownBy(() -> grid().withPeople(many).withLengths(lengths))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("1000000 briefs");
  }

  private static Gaps run(int most, SampleExercise... exercises) {
    return run(most, grid(), exercises);
  }

  private static Gaps run(int most, Grid grid, SampleExercise... exercises) {
    return GapSearch.run(shelf(exercises), grid, most, 99, GapSearch.Watch.NOBODY, Cancel.NEVER);
  }

  private static Grid grid() {
    return new Grid(List.of("choose"), List.of(REMOTE), List.of(8), List.of(minutes(60)));
  }

  private static Catalog shelf(SampleExercise... exercises) {
    return shelf(Arrays.stream(exercises).map(SampleExercise::build).toList());
  }

  private static Catalog shelf(List<Exercise> exercises) {
    Phase.Share share = new Phase.Share(5, 25, 70);
    Goal goal =
        new Goal(
            "choose",
            "Choose",
            "When a choice is due.",
            Set.of("pick"),
            Set.of(),
            List.of(
                new Phase("open", "Open", Set.of(Kind.ICEBREAKER), 1, 1, share, Set.of("arrival")),
                new Phase("widen", "Widen", Set.of(Kind.DIVERGENT), 1, 1, share, Set.of("ideas")),
                new Phase("narrow", "Narrow", Set.of(Kind.CONVERGENT), 1, 1, share, Set.of("pick")),
                new Phase(
                    "close", "Close", Set.of(Kind.REFLECTION), 1, 1, share, Set.of("takeaways"))));
    return Catalog.of(
        Stream.of("arrival", "ideas", "pick", "takeaways", "x")
            .map(id -> new Product(id, id, "It exists."))
            .toList(),
        List.of(new Tool("call", "call", "Talk.", Set.of(Mode.REMOTE))),
        exercises,
        List.of(goal));
  }

  private static Duration minutes(long minutes) {
    return Duration.ofMinutes(minutes);
  }
}
