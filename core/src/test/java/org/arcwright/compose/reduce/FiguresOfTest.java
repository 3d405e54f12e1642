package org.arcwright.compose.reduce;

import static org.arcwright.compose.reduce.Sample.brief;
import static org.arcwright.compose.reduce.Sample.reduce;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.Figures;
import org.arcwright.brief.BriefBuilder;
import org.arcwright.brief.EnergyCurve;
import org.arcwright.brief.Rhythm;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Kind;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.search.Limit;
import org.arcwright.compose.search.Search;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is counted about any list of items, also one that breaks rules. */
class FiguresOfTest {

  /**
   * Source: The Carpentries, instructor training (CC BY 4.0), day 1 in minutes. Its runs between
   * breaks add up to 90, 110, 100 and 80; the second is the longest.
   */
  @Test
  void the_longest_stretch_of_a_published_agenda() {
    int[] minutes = {30, 60, -15, 45, 45, 20, -60, 60, 40, -15, 60, 20};
    int[] starts = new int[minutes.length];
    for (int i = 1; i < minutes.length; i++) {
      starts[i] = starts[i - 1] + Math.abs(minutes[i - 1]);
    }
    List<Item> day =
        IntStream.range(0, minutes.length)
            .<Item>mapToObj(
                i ->
                    minutes[i] < 0
                        ? new Item.Pause(starts[i], -minutes[i])
                        : new Item.Activity("part-" + i, 0, starts[i], minutes[i]))
            .toList();

    assertThat(day.get(day.size() - 1).end()).isEqualTo(470);
    assertThat(of(brief(480), day).longestStretch()).isEqualTo(Duration.ofMinutes(110));
  }

  @Test
  void minutes_of_two_exercises_of_a_kind_add_up() {
    List<Item> items =
        List.of(
            new Item.Activity("silent-list", 1, 0, 15),
            new Item.Pause(15, 10),
            new Item.Activity("carousel", 1, 25, 30),
            new Item.Activity("nobody-knows", 1, 55, 5));

    assertThat(of(brief(90), items).minutesByKind())
        .containsOnlyKeys(Kind.DIVERGENT)
        .containsEntry(Kind.DIVERGENT, Duration.ofMinutes(45));
  }

  @Test
  void exercises_that_the_brief_leaves_out_have_no_part_in_energy() {
    BriefBuilder calm =
        brief(90)
            .curve(level(10))
            .wishes(new Wishes(Set.of(), Set.of("race"), List.of(), Set.of()));
    List<Item> items =
        List.of(new Item.Activity("race", 0, 0, 10), new Item.Activity("ballot", 0, 10, 10));

    assertThat(of(calm, items).energyFit()).isEqualTo(100);
    assertThat(of(calm, items.subList(0, 1)).energyFit()).isEqualTo(100);
  }

  @Test
  void each_minute_counts_alike_for_the_fit() {
    // ten minutes wholly on the curve, thirty three levels off
    List<Item> items =
        List.of(new Item.Activity("ballot", 0, 0, 10), new Item.Activity("carousel", 0, 10, 30));

    assertThat(of(brief(90).curve(level(10)), items).energyFit()).isEqualTo(44); // 43.75
  }

  @Test
  void what_runs_over_the_cap_is_compared_as_far_as_the_curve_goes() {
    List<Item> items = List.of(new Item.Activity("ballot", 0, 10, 15));

    assertThat(of(brief(20).curve(level(30)), items).energyFit()).isEqualTo(50);
    assertThat(of(brief(20).curve(level(30)), List.of(new Item.Activity("ballot", 0, 25, 15))))
        .returns(100, Figures::energyFit);
  }

  /** The figures that an agenda shows by itself. */
  @ParameterizedTest
  @ValueSource(ints = {60, 90, 120, 180, 240})
  void agree_with_what_can_be_counted_on_the_page(int cap) {
    Exercise music =
        SampleExercise.of("music-break", Kind.ICEBREAKER, 5, 5, 5, "arrival").energy(5).build();
    Reduction reduction =
        reduce(
            brief(cap)
                .rhythm(new Rhythm(Sample.minutes(20), Sample.minutes(45), Sample.minutes(10))),
            music);
    List<Item> items = Search.solve(reduction.instance(), Limit.NONE).items();
    assertThat(items).isNotEmpty();
    Agenda agenda = AgendaBuilder.build(reduction, items);

    Figures page = Figures.of(agenda.items(), agenda.curve(), agenda.cap());

    assertThat(agenda.figures().minutesByKind()).isEqualTo(page.minutesByKind());
    assertThat(agenda.figures().longestStretch()).isEqualTo(page.longestStretch());
    assertThat(agenda.figures().energyFit()).isEqualTo(page.energyFit());
  }

  private static EnergyCurve level(int tenths) {
    return new EnergyCurve(List.of(new EnergyCurve.Point(0, tenths)));
  }

  private static Figures of(BriefBuilder brief, List<Item> items) {
    return FiguresOf.items(reduce(brief), items);
  }
}
