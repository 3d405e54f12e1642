package org.arcwright.compose.check;

import static org.arcwright.compose.check.Example.BREAK;
import static org.arcwright.compose.check.Example.CHOICE;
import static org.arcwright.compose.check.Example.ITEMS;
import static org.arcwright.compose.check.Example.NOTES;
import static org.arcwright.compose.check.Example.OBJECTS;
import static org.arcwright.compose.check.Example.WALK;
import static org.arcwright.compose.check.Example.draft;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.arcwright.compose.check.Finding.BreakAtEdge;
import org.arcwright.compose.check.Finding.BreakLength;
import org.arcwright.compose.check.Finding.Gap;
import org.arcwright.compose.check.Finding.KindNotAllowed;
import org.arcwright.compose.check.Finding.LengthNotAllowed;
import org.arcwright.compose.check.Finding.MealElsewhere;
import org.arcwright.compose.check.Finding.MealMissing;
import org.arcwright.compose.check.Finding.NeedMissing;
import org.arcwright.compose.check.Finding.NoExercise;
import org.arcwright.compose.check.Finding.NotNext;
import org.arcwright.compose.check.Finding.OverCap;
import org.arcwright.compose.check.Finding.PhaseCount;
import org.arcwright.compose.check.Finding.PhaseMinutes;
import org.arcwright.compose.check.Finding.PhaseOutOfOrder;
import org.arcwright.compose.check.Finding.PinElsewhere;
import org.arcwright.compose.check.Finding.Repeated;
import org.arcwright.compose.check.Finding.SideBySide;
import org.arcwright.compose.check.Finding.StretchTooLong;
import org.arcwright.compose.check.Finding.TooMany;
import org.arcwright.compose.check.Finding.UnknownExercise;
import org.arcwright.compose.check.Finding.UnknownPhase;
import org.arcwright.compose.check.Finding.WishMissing;
import org.arcwright.compose.check.Finding.YieldMissing;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Apart;
import org.arcwright.compose.instance.Instance.AtMost;
import org.arcwright.compose.instance.Instance.Bounds;
import org.arcwright.compose.instance.Instance.Meal;
import org.arcwright.compose.instance.Instance.Phase;
import org.arcwright.compose.instance.Instance.Pin;
import org.arcwright.compose.instance.Instance.Rules;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.instance.Item.Activity;
import org.arcwright.compose.instance.Item.Pause;
import org.arcwright.compose.oracle.Draft;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** The rules of the composition problem, one by one. */
class CheckerTest {
  private static List<Finding> findings(Draft draft, Item... items) {
    return findings(draft.build(), List.of(items));
  }

  private static List<Finding> findings(Instance instance, List<Item> items) {
    Verdict verdict = Checker.check(instance, items);
    assertThat(verdict.feasible()).isEqualTo(verdict.findings().isEmpty());
    return verdict.findings();
  }

  private static Draft bounds(int phase, Bounds count, Bounds minutes) {
    return draft()
        .phase(phase, p -> new Phase(p.name(), p.kinds(), count, minutes, p.target(), p.yields()));
  }

  @Test
  void a_list_that_keeps_to_every_rule_has_no_findings() {
    assertThat(findings(draft().build(), ITEMS)).isEmpty();
  }

  @Nested
  class Rule1Order {
    @Test
    void refuses_an_empty_list() {
      assertThat(findings(draft())).contains(new NoExercise());
    }

    @Test
    void refuses_a_start_after_the_beginning() {
      assertThat(
              findings(
                  draft(),
                  new Activity("two-objects", 0, 5, 10),
                  new Activity("notes-in-twos", 1, 15, 15),
                  new Activity("dot-choice", 2, 30, 15)))
          .containsExactly(new Gap("Exercise two-objects", 5, 0));
    }

    @Test
    void refuses_a_gap() {
      Item late = new Activity("dot-choice", 2, 55, 15);
      assertThat(findings(draft(), OBJECTS, WALK, BREAK, NOTES, late))
          .containsExactly(new Gap("Exercise dot-choice", 55, 50));
    }

    @Test
    void refuses_an_overlap() {
      Item early = new Pause(20, 15);
      assertThat(findings(draft().breakMinutes(15), OBJECTS, WALK, early, NOTES, CHOICE))
          .containsExactly(new Gap("The break", 20, 25));
    }

    @Test
    void refuses_a_break_at_either_end() {
      assertThat(
              findings(
                  draft().cap(100),
                  new Pause(0, 10),
                  new Activity("two-objects", 0, 10, 10),
                  new Activity("notes-in-twos", 1, 20, 15),
                  new Activity("dot-choice", 2, 35, 15),
                  new Pause(50, 10)))
          .containsExactly(new BreakAtEdge(0, true), new BreakAtEdge(50, false));
    }
  }

  @Nested
  class Rule2Exercises {
    @Test
    void refuses_an_exercise_that_is_no_candidate() {
      Item other = new Activity("cold-shower", 1, 10, 15);
      assertThat(findings(draft(), OBJECTS, other, BREAK, NOTES, CHOICE))
          .containsExactly(new UnknownExercise("cold-shower", 10));
    }

    @Test
    void refuses_an_exercise_twice() {
      Item again = new Activity("notes-in-twos", 1, 10, 15);
      assertThat(findings(draft(), OBJECTS, again, BREAK, NOTES, CHOICE))
          .containsExactly(new Repeated("notes-in-twos", 35, 10));
    }

    @Test
    void refuses_a_length_between_two_that_are_allowed() {
      Item odd = new Activity("dot-choice", 2, 50, 18);
      assertThat(findings(draft().cap(90), OBJECTS, WALK, BREAK, NOTES, odd))
          .containsExactly(new LengthNotAllowed("dot-choice", 50, 18, List.of(15, 20, 25)));
    }
  }

  @Nested
  class Rule3Phases {
    @Test
    void refuses_an_earlier_phase_after_a_later_one() {
      Draft loose = bounds(2, new Bounds(1, 2), new Bounds(0, 60));
      Draft draft = loose.phase(2, p -> withKinds(p, "DECISION", "DIVERGENT"));
      Item walkInDecide = new Activity("walk-in-twos", 2, 10, 15);
      assertThat(findings(draft, OBJECTS, walkInDecide, BREAK, NOTES, CHOICE))
          .containsExactly(new PhaseOutOfOrder("notes-in-twos", 35, "explore", "decide"));
    }

    @Test
    void refuses_a_phase_that_is_skipped() {
      Draft draft = draft().phase(2, p -> withKinds(p, "DECISION", "DIVERGENT"));
      assertThat(
              findings(
                  draft,
                  OBJECTS,
                  new Activity("notes-in-twos", 2, 10, 15),
                  new Activity("dot-choice", 2, 25, 15)))
          .containsExactly(
              new PhaseCount("explore", 10, 0, new Bounds(1, 2)),
              new PhaseMinutes("explore", 10, 0, new Bounds(15, 40)),
              new YieldMissing("explore", 10, "idea-pool"));
    }

    @Test
    void refuses_a_phase_that_does_not_exist() {
      Item beyond = new Activity("dot-choice", 3, 50, 15);
      assertThat(findings(draft(), OBJECTS, WALK, BREAK, NOTES, beyond))
          .contains(new UnknownPhase("dot-choice", 50, 3, 2));
    }

    @Test
    void refuses_a_kind_that_the_phase_does_not_take() {
      Draft draft = draft().phase(1, p -> withKinds(p, "CONVERGENT"));
      Item notes = new Activity("notes-in-twos", 1, 10, 15);
      Item choice = new Activity("dot-choice", 2, 25, 15);
      assertThat(findings(draft, OBJECTS, notes, choice))
          .containsExactly(
              new KindNotAllowed(
                  "notes-in-twos", 10, "DIVERGENT", "explore", Set.of("CONVERGENT")));
    }

    @Test
    void refuses_too_many_and_too_few_exercises() {
      Bounds minutes = new Bounds(15, 40);
      assertThat(findings(bounds(1, new Bounds(1, 1), minutes).build(), ITEMS))
          .containsExactly(new PhaseCount("explore", 50, 2, new Bounds(1, 1)));
      assertThat(findings(bounds(1, new Bounds(3, 4), minutes).build(), ITEMS))
          .containsExactly(new PhaseCount("explore", 50, 2, new Bounds(3, 4)));
      assertThat(findings(bounds(1, new Bounds(2, 2), minutes).build(), ITEMS)).isEmpty();
    }

    @Test
    void refuses_too_many_and_too_few_minutes() {
      Bounds count = new Bounds(1, 2);
      assertThat(findings(bounds(1, count, new Bounds(0, 25)).build(), ITEMS))
          .containsExactly(new PhaseMinutes("explore", 50, 30, new Bounds(0, 25)));
      assertThat(findings(bounds(1, count, new Bounds(35, 60)).build(), ITEMS))
          .containsExactly(new PhaseMinutes("explore", 50, 30, new Bounds(35, 60)));
      assertThat(findings(bounds(1, count, new Bounds(30, 30)).build(), ITEMS)).isEmpty();
    }

    private static Phase withKinds(Phase phase, String... kinds) {
      return new Phase(
          phase.name(),
          Set.of(kinds),
          phase.count(),
          phase.minutes(),
          phase.target(),
          phase.yields());
    }
  }

  @Nested
  class Rule4Products {
    @Test
    void refuses_an_exercise_before_what_it_needs() {
      assertThat(
              findings(
                  draft().phase(2, p -> withYields(p)).phase(1, p -> withYields(p)),
                  OBJECTS,
                  WALK,
                  BREAK,
                  new Activity("dot-choice", 2, 35, 15)))
          .containsExactly(new NeedMissing("dot-choice", 35, "idea-pool"));
    }

    @Test
    void accepts_what_existed_before_the_start() {
      assertThat(
              findings(
                  draft().initial(List.of("idea-pool")),
                  OBJECTS,
                  WALK,
                  BREAK,
                  new Activity("dot-choice", 2, 35, 15)))
          .isEmpty();
    }

    @Test
    void refuses_a_phase_that_ends_without_its_yield() {
      Draft draft = draft().phase(0, p -> withYields(p, "introductions", "decision"));
      assertThat(findings(draft.build(), ITEMS))
          .containsExactly(new YieldMissing("open", 10, "decision"));
    }

    @Test
    void accepts_a_yield_of_an_earlier_phase() {
      Draft draft = draft().phase(2, p -> withYields(p, "introductions", "idea-pool"));
      assertThat(findings(draft.build(), ITEMS)).isEmpty();
    }

    private static Phase withYields(Phase phase, String... yields) {
      return new Phase(
          phase.name(),
          phase.kinds(),
          phase.count(),
          phase.minutes(),
          phase.target(),
          List.of(yields));
    }
  }

  @Nested
  class Rule5Breaks {
    private static final Meal MEAL = new Meal(25, 30, 20);

    @Test
    void refuses_a_break_of_another_length() {
      assertThat(findings(draft().breakMinutes(15).build(), ITEMS))
          .containsExactly(new BreakLength(25, 10, List.of(15)));
    }

    @Test
    void refuses_any_break_where_none_are_taken() {
      assertThat(findings(draft().breakMinutes(0).build(), ITEMS))
          .containsExactly(new BreakLength(25, 10, List.of()));
    }

    @Test
    void refuses_two_breaks_side_by_side() {
      assertThat(
              findings(
                  draft().cap(100),
                  OBJECTS,
                  WALK,
                  BREAK,
                  new Pause(35, 10),
                  new Activity("notes-in-twos", 1, 45, 15),
                  new Activity("dot-choice", 2, 60, 15)))
          .containsExactly(new SideBySide(35));
    }

    @Test
    void refuses_a_stretch_over_the_most_before_and_after_a_break() {
      assertThat(findings(draft().stretch(0, 20).candidates(shortOnes()).build(), ITEMS))
          .containsExactly(new StretchTooLong(0, 25, 20), new StretchTooLong(35, 30, 20));
      assertThat(findings(draft().stretch(0, 30).build(), ITEMS)).isEmpty();
    }

    private static List<Instance.Candidate> shortOnes() {
      return draft().build().candidates().stream()
          .map(
              c ->
                  new Instance.Candidate(
                      c.id(),
                      c.kind(),
                      c.lengths().subList(0, 1),
                      c.lengthCosts().subList(0, 1),
                      c.energy(),
                      c.format(),
                      c.needs(),
                      c.yields(),
                      c.cost()))
          .toList();
    }

    @Test
    void counts_a_meal_as_a_break_of_the_stretch() {
      Draft draft = draft().cap(90).stretch(0, 30).breakMinutes(0).meals(MEAL);
      assertThat(findings(draft.build(), withMeal())).isEmpty();
    }

    @Test
    void asks_for_each_meal() {
      assertThat(findings(draft().meals(MEAL).build(), ITEMS.subList(0, 2)))
          .contains(new MealMissing(MEAL));
    }

    @Test
    void refuses_a_meal_outside_its_window() {
      Meal later = new Meal(30, 45, 20);
      assertThat(findings(draft().cap(90).meals(later).build(), withMeal()))
          .containsExactly(new MealElsewhere(25, later));
    }

    @Test
    void reads_a_break_in_the_window_as_a_meal_that_is_too_long_or_too_short() {
      Meal longer = new Meal(25, 30, 45);
      assertThat(findings(draft().cap(90).meals(longer).build(), withMeal()))
          .containsExactly(new BreakLength(25, 20, List.of(10, 45)));
    }

    @Test
    void refuses_a_second_helping() {
      List<Item> items =
          List.of(
              OBJECTS,
              new Pause(10, 20),
              new Activity("notes-in-twos", 1, 30, 15),
              new Pause(45, 20),
              new Activity("dot-choice", 2, 65, 15));
      Meal wide = new Meal(10, 60, 20);
      assertThat(findings(draft().cap(100).meals(wide).build(), items))
          .containsExactly(new BreakLength(45, 20, List.of(10)));
    }

    @Test
    void refuses_meals_in_the_wrong_order() {
      Meal first = new Meal(40, 50, 20);
      Meal second = new Meal(5, 15, 15);
      List<Item> items =
          List.of(
              OBJECTS,
              new Pause(10, 15),
              new Activity("notes-in-twos", 1, 25, 15),
              new Pause(40, 20),
              new Activity("dot-choice", 2, 60, 15));
      assertThat(findings(draft().cap(100).meals(second, first).build(), items)).isEmpty();
      assertThat(findings(draft().cap(100).meals(first, second).build(), items)).isNotEmpty();
    }

    private static List<Item> withMeal() {
      return List.of(
          OBJECTS,
          WALK,
          new Pause(25, 20),
          new Activity("notes-in-twos", 1, 45, 15),
          new Activity("dot-choice", 2, 60, 15));
    }
  }

  @Nested
  class Rule6Cap {
    @Test
    void accepts_a_list_that_fills_the_cap() {
      assertThat(findings(draft().cap(75).build(), ITEMS)).isEmpty();
    }

    @Test
    void refuses_a_list_that_leaves_too_little_for_the_buffer() {
      assertThat(findings(draft().cap(70).build(), ITEMS))
          .containsExactly(new OverCap(55, 10, 10, 70));
    }
  }

  @Nested
  class Rule7Wishes {
    @Test
    void asks_for_what_must_appear() {
      Draft draft = draft().include("two-objects", "walk-in-twos");
      assertThat(findings(draft.build(), ITEMS)).isEmpty();
      Item notes = new Activity("notes-in-twos", 1, 10, 15);
      assertThat(findings(draft, OBJECTS, notes, new Activity("dot-choice", 2, 25, 15)))
          .containsExactly(new WishMissing("walk-in-twos"));
    }

    @Test
    void asks_for_a_wish_that_names_no_candidate() {
      assertThat(findings(draft().include("guest-talk").build(), ITEMS))
          .containsExactly(new WishMissing("guest-talk"));
      assertThat(findings(draft().pins(new Pin("guest-talk", 20)).build(), ITEMS))
          .containsExactly(new WishMissing("guest-talk"));
    }

    @Test
    void asks_for_the_pinned_minute() {
      assertThat(findings(draft().pins(new Pin("dot-choice", 50)).build(), ITEMS)).isEmpty();
      assertThat(findings(draft().pins(new Pin("dot-choice", 45)).build(), ITEMS))
          .containsExactly(new PinElsewhere("dot-choice", 50, 45));
    }

    @Test
    void cannot_please_two_pins_of_one_exercise() {
      Draft draft = draft().pins(new Pin("dot-choice", 50), new Pin("dot-choice", 55));
      assertThat(findings(draft.build(), ITEMS))
          .containsExactly(new PinElsewhere("dot-choice", 50, 55));
    }
  }

  @Nested
  class Rule8Own {
    private static final String NAME = "never two in pairs in a row";
    private static final Set<String> PAIRS = Set.of("two-objects", "walk-in-twos", "notes-in-twos");

    @Test
    void keeps_neighbours_apart() {
      assertThat(findings(apart(PAIRS, PAIRS, false), ITEMS))
          .containsExactly(new NotNext("walk-in-twos", 10, "two-objects", false, NAME));
    }

    @Test
    void keeps_them_apart_across_a_break_only_if_asked() {
      assertThat(findings(apart(PAIRS, PAIRS, true), ITEMS))
          .containsExactly(
              new NotNext("walk-in-twos", 10, "two-objects", false, NAME),
              new NotNext("notes-in-twos", 35, "walk-in-twos", true, NAME));
    }

    @Test
    void looks_at_the_order() {
      Set<String> objects = Set.of("two-objects");
      Set<String> walk = Set.of("walk-in-twos");
      assertThat(findings(apart(walk, objects, true), ITEMS)).isEmpty();
      assertThat(findings(apart(objects, walk, true), ITEMS)).hasSize(1);
    }

    @Test
    void counts_what_there_may_be_only_so_many_of() {
      assertThat(findings(atMost(3), ITEMS)).isEmpty();
      assertThat(findings(atMost(1), ITEMS))
          .containsExactly(new TooMany("walk-in-twos", 10, 3, 1, NAME));
      assertThat(findings(atMost(0), ITEMS))
          .containsExactly(new TooMany("two-objects", 0, 3, 0, NAME));
    }

    private static Instance apart(Set<String> first, Set<String> then, boolean acrossBreaks) {
      Apart rule = new Apart(NAME, first, then, acrossBreaks);
      return draft().rules(new Rules(List.of(rule), List.of())).build();
    }

    private static Instance atMost(int most) {
      return draft().rules(new Rules(List.of(), List.of(new AtMost(NAME, PAIRS, most)))).build();
    }
  }
}
