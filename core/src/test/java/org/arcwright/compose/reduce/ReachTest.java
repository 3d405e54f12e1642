package org.arcwright.compose.reduce;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Kind;
import org.junit.jupiter.api.Test;

/** Which exercises can never have what they need. */
class ReachTest {

  @Test
  void a_chain_that_begins_with_what_is_given_is_in_reach_in_any_order_of_the_catalog() {
    Allowed sort = exercise("sort", Set.of("ideas"), "themes");
    Allowed pick = exercise("pick", Set.of("themes"), "decision");
    Allowed plan = exercise("plan", Set.of("decision"), "actions");

    assertThat(Reach.missing(Set.of("ideas"), List.of(sort, pick, plan))).isEmpty();
    assertThat(Reach.missing(Set.of("ideas"), List.of(plan, pick, sort))).isEmpty();
  }

  @Test
  void a_chain_that_begins_with_nothing_is_out_of_reach_link_by_link() {
    Allowed sort = exercise("sort", Set.of("ideas"), "themes");
    Allowed pick = exercise("pick", Set.of("themes"), "decision");
    Allowed chat = exercise("chat", Set.of(), "arrival");

    assertThat(Reach.missing(Set.of("question"), List.of(pick, chat, sort)))
        .isEqualTo(Map.of("sort", "ideas", "pick", "themes"));
  }

  @Test
  void nobody_can_begin_with_what_they_will_only_leave_themselves() {
    assertThat(Reach.missing(Set.of(), List.of(exercise("polish", Set.of("report"), "report"))))
        .isEqualTo(Map.of("polish", "report"));
  }

  @Test
  void of_two_needs_the_one_that_cannot_exist_is_named() {
    Allowed weigh = exercise("weigh", Set.of("options", "criteria"), "ranking");

    assertThat(Reach.missing(Set.of("options"), List.of(weigh)))
        .isEqualTo(Map.of("weigh", "criteria"));
    assertThat(Reach.missing(Set.of("criteria"), List.of(weigh)))
        .isEqualTo(Map.of("weigh", "options"));
  }

  /** Oracle: every order in which the exercises could be done, tried out. */
  @Property(tries = 200, seed = "4711")
  void in_reach_is_what_can_be_done_in_some_order(@ForAll("shelves") List<Allowed> shelf) {
    Set<String> doable = new TreeSet<>();
    tryAll(shelf, Set.of("p0"), doable);

    Set<String> ids = new TreeSet<>();
    shelf.forEach(allowed -> ids.add(allowed.exercise().id()));
    ids.removeAll(doable);
    assertThat(Reach.missing(Set.of("p0"), shelf).keySet()).isEqualTo(ids);
  }

  private static void tryAll(List<Allowed> left, Set<String> products, Set<String> doable) {
    for (Allowed next : left) {
      if (products.containsAll(next.needs())) {
        doable.add(next.exercise().id());
        Set<String> more = new HashSet<>(products);
        more.addAll(next.yields());
        List<Allowed> rest = new ArrayList<>(left);
        rest.remove(next);
        tryAll(rest, more, doable);
      }
    }
  }

  @Provide
  Arbitrary<List<Allowed>> shelves() {
    Arbitrary<String> products = Arbitraries.of("p0", "p1", "p2", "p3", "p4");
    return Combinators.combine(products.set().ofMaxSize(2), products)
        .as((needs, yields) -> exercise("e", needs, yields))
        .list()
        .ofMinSize(1)
        .ofMaxSize(5)
        .map(ReachTest::numbered);
  }

  private static List<Allowed> numbered(List<Allowed> alike) {
    List<Allowed> numbered = new ArrayList<>();
    for (Allowed one : alike) {
      numbered.add(exercise("e" + numbered.size(), one.exercise().needs(), one.yields().get(0)));
    }
    return numbered;
  }

  private static Allowed exercise(String id, Set<String> needs, String yields) {
    Exercise exercise =
        SampleExercise.of(id, Kind.CONVERGENT, 5, 5, 5, yields)
            .needs(needs.toArray(String[]::new))
            .build();
    return Sample.allowed(exercise);
  }
}
