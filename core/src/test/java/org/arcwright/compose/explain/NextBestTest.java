package org.arcwright.compose.explain;

import static org.arcwright.compose.reduce.Sample.brief;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Cancel;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.reduce.Sample;
import org.arcwright.compose.search.Limit;
import org.arcwright.compose.search.Search;
import org.junit.jupiter.api.Test;

/** What else could stand in one place; that it is the cheapest, WhyThisTest says. */
class NextBestTest {
  private final Instance instance = Sample.reduce(brief(90)).instance();
  private final List<Item> items = Search.solve(instance, Limit.NONE).items();

  @Test
  void each_length_of_each_exercise_that_could_stand_there_counts_as_a_label() {
    int place = place("decide");
    Set<String> used =
        items.stream()
            .filter(Item.Activity.class::isInstance)
            .map(item -> ((Item.Activity) item).id())
            .collect(Collectors.toSet());
    int attempts =
        instance.candidates().stream()
            .filter(c -> c.kind().equals("decision") && !used.contains(c.id()))
            .mapToInt(c -> c.lengths().size())
            .sum();
    Effort effort = effort(100);

    assertThat(new NextBest(instance, items, effort).of(place).complete()).isTrue();
    assertThat(attempts).isPositive();
    assertThat(effort.part(1).labels()).isEqualTo(100 - attempts);
  }

  @Test
  void what_comes_before_stays_and_what_comes_later_moves() {
    int swaps = 0;
    for (int place = 0; place < items.size(); place++) {
      if (items.get(place) instanceof Item.Activity) {
        List<Item> others = new NextBest(instance, items, effort(1000)).of(place).items();
        if (!others.isEmpty()) {
          swaps++;
          int later = others.get(place).length() - items.get(place).length();
          assertThat(others).hasSameSizeAs(items);
          assertThat(others.subList(0, place)).isEqualTo(items.subList(0, place));
          for (int i = place + 1; i < items.size(); i++) {
            assertThat(others.get(i)).isEqualTo(moved(items.get(i), later));
          }
        }
      }
    }
    assertThat(swaps).isPositive();
  }

  private static Item moved(Item item, int later) {
    return item instanceof Item.Activity a
        ? new Item.Activity(a.id(), a.phase(), a.start() + later, a.length())
        : new Item.Pause(item.start() + later, item.length());
  }

  @Test
  void who_has_nothing_left_does_not_know_and_says_so() {
    Effort effort = effort(1);
    effort.add(1);

    assertThat(new NextBest(instance, items, effort).of(place("decide")))
        .isEqualTo(new NextBest.Found(Optional.empty(), List.of(), false));
  }

  private int place(String phase) {
    for (int i = 0; i < items.size(); i++) {
      if (items.get(i) instanceof Item.Activity activity
          && instance.phases().get(activity.phase()).name().equals(phase)) {
        return i;
      }
    }
    throw new AssertionError(phase);
  }

  private static Effort effort(long labels) {
    return Effort.of(
        new Budget(labels, Duration.ofMinutes(5)), Cancel.NEVER, InstantSource.system());
  }
}
