package org.arcwright.compose.reduce;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.arcwright.compose.instance.Instance.Candidate;
import org.junit.jupiter.api.Test;

/** How short and how long exercises can fill a phase. Oracle: every choice of exercises. */
class SupplyTest {
  private static final Set<String> BOTH = Set.of("divergent", "convergent");

  @Property(tries = 300, seed = "4711")
  void so_many_exercises_fill_no_more_than_the_longest_choice_of_them(
      @ForAll("shelves") List<Candidate> shelf, @ForAll @IntRange(min = 0, max = 6) int most) {
    int longest =
        choices(shelf, chosen -> chosen.size() <= most)
            .mapToInt(chosen -> chosen.stream().mapToInt(SupplyTest::longest).sum())
            .max()
            .orElseThrow();

    assertThat(supply(shelf).longest(BOTH, most)).isEqualTo(longest);
  }

  @Property(tries = 300, seed = "4711")
  void so_many_exercises_need_no_less_than_the_shortest_choice_of_them(
      @ForAll("shelves") List<Candidate> shelf, @ForAll @IntRange(min = 0, max = 6) int fewest) {
    assertThat(supply(shelf).needed(BOTH, fewest, List.of()))
        .isEqualTo(shortest(shelf, Math.min(fewest, shelf.size()), Set.of()));
  }

  /** Else the bounds of a phase could rule out that it does its duty at all. */
  @Property(tries = 1000, seed = "4711")
  void a_phase_can_leave_its_products_within_the_minutes_needed(
      @ForAll("shelves") List<Candidate> shelf,
      @ForAll @IntRange(min = 0, max = 4) int fewest,
      @ForAll("products") Set<String> due) {
    Set<String> possible = new HashSet<>();
    shelf.forEach(candidate -> possible.addAll(candidate.yields()));
    possible.retainAll(due);

    assertThat(supply(shelf).needed(BOTH, fewest, due))
        .isGreaterThanOrEqualTo(shortest(shelf, Math.min(fewest, shelf.size()), possible));
  }

  @Test
  void exercises_that_the_phase_does_not_take_count_for_nothing() {
    Supply supply =
        supply(
            List.of(candidate(0, "decision", 5, 10, "a"), candidate(1, "divergent", 20, 30, "a")));

    assertThat(supply.needed(BOTH, 1, List.of())).isEqualTo(20);
    assertThat(supply.needed(BOTH, 1, List.of("a"))).isEqualTo(20);
    assertThat(supply.longest(BOTH, 2)).isEqualTo(30);
    assertThat(supply.needed(Set.of("icebreaker"), 1, List.of("a"))).isZero();
    assertThat(supply.longest(Set.of("icebreaker"), 1)).isZero();
  }

  @Test
  void one_exercise_that_leaves_two_products_is_counted_once() {
    Supply supply =
        supply(
            List.of(candidate(0, "divergent", 15, 20, "a", "b"), candidate(1, "divergent", 5, 5)));

    assertThat(supply.needed(BOTH, 1, List.of("a", "b"))).isEqualTo(15);
    assertThat(supply.needed(BOTH, 2, List.of("a", "b"))).isEqualTo(20);
  }

  @Test
  void an_exercise_may_fill_a_whole_stretch() {
    Supply supply = new Supply(List.of(candidate(0, "divergent", 60, 60)), 5, 60);

    assertThat(supply.needed(BOTH, 1, List.of())).isEqualTo(60);
    assertThat(supply.longest(BOTH, 1)).isEqualTo(60);
  }

  private static int shortest(List<Candidate> shelf, int fewest, Set<String> due) {
    return choices(shelf, chosen -> chosen.size() >= fewest && yields(chosen).containsAll(due))
        .mapToInt(chosen -> chosen.stream().mapToInt(one -> one.lengths().get(0)).sum())
        .min()
        .orElseThrow();
  }

  private static Stream<List<Candidate>> choices(
      List<Candidate> shelf, Predicate<List<Candidate>> allowed) {
    return IntStream.range(0, 1 << shelf.size())
        .mapToObj(
            set ->
                IntStream.range(0, shelf.size())
                    .filter(i -> (set >> i & 1) != 0)
                    .mapToObj(shelf::get)
                    .toList())
        .filter(allowed);
  }

  private static Set<String> yields(Collection<Candidate> chosen) {
    Set<String> yields = new HashSet<>();
    chosen.forEach(candidate -> yields.addAll(candidate.yields()));
    return yields;
  }

  private static int longest(Candidate candidate) {
    return candidate.lengths().get(candidate.lengths().size() - 1);
  }

  @Provide
  Arbitrary<Set<String>> products() {
    return Arbitraries.of("a", "b", "c").set().ofMaxSize(3);
  }

  @Provide
  Arbitrary<List<Candidate>> shelves() {
    return Combinators.combine(
            Arbitraries.of("divergent", "convergent"),
            Arbitraries.integers().between(1, 6),
            Arbitraries.integers().between(0, 6),
            products())
        .as(
            (kind, least, more, yields) ->
                candidate(0, kind, 5 * least, 5 * (least + more), yields.toArray(String[]::new)))
        .list()
        .ofMaxSize(5)
        .map(
            alike -> {
              List<Candidate> numbered = new ArrayList<>();
              alike.forEach(
                  one ->
                      numbered.add(
                          candidate(
                              numbered.size(),
                              one.kind(),
                              one.lengths().get(0),
                              longest(one),
                              one.yields().toArray(String[]::new))));
              return numbered;
            });
  }

  private static Supply supply(List<Candidate> shelf) {
    return new Supply(shelf, 5, 60);
  }

  private static Candidate candidate(
      int number, String kind, int shortest, int longest, String... yields) {
    List<Integer> lengths =
        IntStream.rangeClosed(shortest / 5, longest / 5).mapToObj(cell -> 5 * cell).toList();
    return new Candidate(
        "e" + number,
        kind,
        lengths,
        lengths.stream().map(length -> 0).toList(),
        30,
        "plenary",
        List.of(),
        List.of(yields),
        0);
  }
}
