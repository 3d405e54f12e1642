package org.arcwright.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.arcwright.compose.Cancel;
import org.arcwright.gaps.Count;
import org.arcwright.gaps.GapSearch;
import org.arcwright.gaps.Gaps;
import org.arcwright.gaps.Grid;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Whatever the goal, the group, the place and the tools: there is an agenda. */
class NoGapsTest {
  private static final Grid USUAL = Grid.usual(BuiltIn.catalog());

  /** An hour is the hardest, and most so for few people and for many. */
  @Test
  void an_hour_is_enough_for_four_people_and_for_thirty() {
    assertThat(empty(USUAL.withPeople(List.of(4, 30)).withLengths(minutes(60)))).isEmpty();
  }

  @Test
  @Tag("slow")
  void no_field_of_the_usual_grid_is_empty() {
    assertThat(empty(USUAL)).isEmpty();
  }

  /** Numbers that do not split well into pairs, threes and fours are in it. */
  @Test
  @Tag("slow")
  void no_number_of_people_from_4_to_30_is_left_without_an_agenda() {
    List<Integer> all = IntStream.rangeClosed(4, 30).boxed().toList();

    assertThat(empty(USUAL.withPeople(all).withLengths(minutes(60, 75, 90, 150)))).isEmpty();
  }

  private static List<Count> empty(Grid grid) {
    Gaps gaps = GapSearch.run(BuiltIn.catalog(), grid, 1, 0, GapSearch.Watch.NOBODY, Cancel.NEVER);
    return gaps.counts().stream().filter(count -> count.agendas() == 0).toList();
  }

  private static List<Duration> minutes(Integer... minutes) {
    return Stream.of(minutes).map(Duration::ofMinutes).toList();
  }
}
