package org.arcwright.compose.reduce;

import static org.arcwright.compose.reduce.Sample.brief;
import static org.arcwright.compose.reduce.Sample.minutes;
import static org.arcwright.compose.reduce.Sample.reduce;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.brief.EnergyCurve;
import org.arcwright.brief.Meal;
import org.arcwright.brief.OwnItem;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Mode;
import org.arcwright.compose.check.Checker;
import org.arcwright.compose.instance.Item;
import org.junit.jupiter.api.Test;

class AgendaBuilderTest {
  private static final List<Item> ITEMS =
      List.of(
          new Item.Activity("race", 0, 0, 10),
          new Item.Activity("carousel", 1, 10, 30),
          new Item.Pause(40, 10),
          new Item.Activity("dots", 2, 50, 15),
          new Item.Activity("ballot", 3, 65, 10),
          new Item.Activity("one-word", 4, 75, 5));

  private final Reduction reduction = reduce(brief(95));

  @Test
  void what_the_brief_says_stands_in_the_agenda() {
    ZonedDateTime start = ZonedDateTime.of(2027, 3, 9, 9, 0, 0, 0, ZoneId.of("Europe/Lisbon"));
    Agenda agenda = AgendaBuilder.build(reduce(brief(97).start(start)), ITEMS);

    assertThat(agenda.title()).isEqualTo("Where to meet");
    assertThat(agenda.goal()).isEqualTo(Sample.GOAL);
    assertThat(agenda.mode()).isEqualTo(Mode.REMOTE);
    assertThat(agenda.people()).isEqualTo(8);
    assertThat(agenda.cap()).isEqualTo(minutes(97));
    assertThat(agenda.start()).contains(start);
  }

  @Test
  void phases_have_their_titles() {
    assertThat(AgendaBuilder.build(reduction, ITEMS).phases())
        .startsWith(
            new Agenda.PhaseTitle("open", "To open"),
            new Agenda.PhaseTitle("explore", "To explore"))
        .hasSize(5);
  }

  @Test
  void exercises_have_their_titles_kinds_formats_and_energies() {
    assertThat(AgendaBuilder.build(reduction, ITEMS).items().get(1))
        .isEqualTo(
            new AgendaItem.Activity(
                "carousel",
                "The carousel",
                Optional.of(Kind.DIVERGENT),
                "explore",
                minutes(10),
                minutes(30),
                Format.SMALL_GROUPS,
                40));
  }

  @Test
  void own_items_have_no_kind() {
    OwnItem talk =
        new OwnItem(
            "talk",
            "A guest speaks",
            minutes(20),
            Optional.of("explore"),
            Optional.empty(),
            2,
            Format.PLENARY);

    Agenda agenda =
        AgendaBuilder.build(
            reduce(brief(95).ownItem(talk)), List.of(new Item.Activity("talk", 1, 0, 20)));

    assertThat(agenda.activities())
        .containsExactly(
            new AgendaItem.Activity(
                "talk",
                "A guest speaks",
                Optional.empty(),
                "explore",
                Duration.ZERO,
                minutes(20),
                Format.PLENARY,
                20));
    assertThat(agenda.figures().minutesByKind()).isEmpty();
  }

  @Test
  void the_buffer_is_a_share_of_the_exercise_minutes() {
    // 15 % of 70 minutes are 10.5, rounded up to the grid
    assertThat(AgendaBuilder.build(reduction, ITEMS).buffer()).isEqualTo(minutes(15));
  }

  @Test
  void the_curve_is_the_one_that_was_weighed() {
    assertThat(AgendaBuilder.build(reduction, ITEMS).curve())
        .isEqualTo(reduction.instance().curve());
  }

  @Test
  void a_break_of_a_meal_s_length_in_its_window_is_the_meal() {
    Meal lunch = new Meal(minutes(60), minutes(120), minutes(45));
    List<Item> items =
        List.of(
            new Item.Activity("race", 0, 0, 10),
            new Item.Pause(10, 10),
            new Item.Activity("carousel", 1, 20, 40),
            new Item.Pause(60, 45),
            new Item.Activity("dots", 2, 105, 15));

    assertThat(AgendaBuilder.build(reduce(brief(240).meal(lunch)), items).items())
        .contains(
            new AgendaItem.Pause(minutes(10), minutes(10), false),
            new AgendaItem.Pause(minutes(60), minutes(45), true));
  }

  @Test
  void a_meal_may_begin_at_the_ends_of_its_window_and_not_a_cell_later() {
    Meal lunch = new Meal(minutes(60), minutes(120), minutes(45));
    Reduction day = reduce(brief(240).meal(lunch));

    for (int start = 55; start <= 125; start += 5) {
      assertThat(AgendaBuilder.build(day, List.of(new Item.Pause(start, 45))).items())
          .containsExactly(
              new AgendaItem.Pause(minutes(start), minutes(45), 60 <= start && start <= 120));
    }
  }

  @Test
  void each_own_item_is_read_as_itself() {
    Agenda agenda =
        AgendaBuilder.build(
            reduce(brief(95).ownItem(own("greeting")).ownItem(own("talk"))),
            List.of(new Item.Activity("talk", 1, 0, 20), new Item.Activity("greeting", 1, 20, 20)));

    assertThat(agenda.activities())
        .extracting(AgendaItem.Activity::title)
        .containsExactly("The talk", "The greeting");
  }

  private static OwnItem own(String id) {
    return new OwnItem(
        id, "The " + id, minutes(20), Optional.empty(), Optional.empty(), 2, Format.PLENARY);
  }

  @Test
  void only_the_first_of_two_breaks_alike_is_the_meal() {
    Meal snack = new Meal(minutes(30), minutes(120), minutes(10));
    List<Item> items =
        List.of(
            new Item.Activity("race", 0, 0, 10),
            new Item.Pause(10, 10),
            new Item.Activity("carousel", 1, 20, 30),
            new Item.Pause(50, 10),
            new Item.Activity("dots", 2, 60, 15),
            new Item.Pause(75, 10),
            new Item.Activity("ballot", 3, 85, 10));

    assertThat(AgendaBuilder.build(reduce(brief(240).meal(snack)), items).items())
        .filteredOn(AgendaItem.Pause.class::isInstance)
        .extracting(item -> ((AgendaItem.Pause) item).meal())
        .containsExactly(false, true, false);
  }

  @Test
  void figures_count_minutes_by_kind_and_the_longest_stretch() {
    Agenda agenda = AgendaBuilder.build(reduction, ITEMS);

    assertThat(agenda.figures().minutesByKind())
        .isEqualTo(
            Map.of(
                Kind.ICEBREAKER, minutes(10),
                Kind.DIVERGENT, minutes(30),
                Kind.CONVERGENT, minutes(15),
                Kind.DECISION, minutes(10),
                Kind.REFLECTION, minutes(5)));
    assertThat(agenda.figures().longestStretch()).isEqualTo(minutes(40));
  }

  @Test
  void the_cost_is_the_checker_s() {
    assertThat(AgendaBuilder.build(reduction, ITEMS).figures().cost())
        .isEqualTo(Checker.check(reduction.instance(), ITEMS).cost());
  }

  @Test
  void energy_fits_wholly_on_the_curve_and_not_at_all_four_levels_off() {
    assertThat(fit(10, "ballot")).isEqualTo(100);
    assertThat(fit(50, "ballot")).isEqualTo(0);
    assertThat(fit(30, "ballot")).isEqualTo(50);
    assertThat(fit(40, "race")).isEqualTo(100);
  }

  /** The exercise's energy is 1 (ballot) or 4 (race), the curve level. */
  private static int fit(int level, String exercise) {
    EnergyCurve curve = new EnergyCurve(List.of(new EnergyCurve.Point(0, level)));
    Reduction level1 = reduce(brief(95).curve(curve));
    return AgendaBuilder.build(level1, List.of(new Item.Activity(exercise, 0, 0, 10)))
        .figures()
        .energyFit();
  }

  @Test
  void an_item_that_nobody_knows_is_refused() {
    assertThatThrownBy(
            () -> AgendaBuilder.build(reduction, List.of(new Item.Activity("dotz", 0, 0, 5))))
        .isInstanceOf(InvalidValueException.class)
        .hasMessage("exercise is dotz: neither the catalog nor the brief has it");
    assertThatThrownBy(
            () -> AgendaBuilder.build(reduction, List.of(new Item.Activity("dots", 9, 0, 15))))
        .isInstanceOf(InvalidValueException.class)
        .hasMessage("phase is 9: the arc's phases are numbered 0 to 4");
    assertThatThrownBy(
            () -> AgendaBuilder.build(reduction, List.of(new Item.Activity("dots", 5, 0, 15))))
        .hasMessage("phase is 5: the arc's phases are numbered 0 to 4");
  }

  @Test
  void an_agenda_is_read_back_as_the_same_items() {
    assertThat(AgendaReader.items(reduction, AgendaBuilder.build(reduction, ITEMS)))
        .isEqualTo(ITEMS);
  }

  @Test
  void exercises_and_phases_that_nobody_knows_are_read_for_the_checker_to_find() {
    Agenda agenda = AgendaBuilder.build(reduction, ITEMS);
    AgendaItem.Activity odd =
        new AgendaItem.Activity(
            "nobody-knows",
            "Odd",
            Optional.empty(),
            "nowhere",
            minutes(0),
            minutes(5).plusSeconds(30),
            Format.SOLO,
            30);
    Agenda byHand =
        new Agenda(
            agenda.title(),
            agenda.goal(),
            agenda.mode(),
            agenda.people(),
            agenda.cap(),
            agenda.start(),
            agenda.phases(),
            List.of(odd),
            agenda.buffer(),
            agenda.curve(),
            agenda.figures());

    assertThat(AgendaReader.items(reduction, byHand))
        .containsExactly(new Item.Activity("nobody-knows", -1, 0, 5));
  }
}
