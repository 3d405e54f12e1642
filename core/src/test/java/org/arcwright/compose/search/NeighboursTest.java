package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.arcwright.compose.instance.Instance.Apart;
import org.junit.jupiter.api.Test;

/** Who may not follow whom, against the rules read one by one. */
class NeighboursTest {
  private static final int CANDIDATES = 7;

  private final Map<String, Integer> numbers = new HashMap<>();

  NeighboursTest() {
    IntStream.range(0, CANDIDATES).forEach(i -> numbers.put("c" + i, i));
  }

  @Test
  void bar_what_a_rule_bars() {
    for (long seed = 0; seed < 50; seed++) {
      List<Apart> rules = rules(seed);
      Neighbours neighbours = Neighbours.of(rules, numbers, CANDIDATES);
      for (int a = 0; a < CANDIDATES; a++) {
        for (int b = 0; b < CANDIDATES; b++) {
          int wake = neighbours.wake(a);
          int place = neighbours.place(b);
          assertThat(neighbours.mayFollow(wake, place))
              .describedAs("seed %d, %d then %d", seed, a, b)
              .isEqualTo(!barred(rules, a, b, false));
          assertThat(neighbours.mayFollow(neighbours.afterBreak(wake), place))
              .describedAs("seed %d, %d then, after a break, %d", seed, a, b)
              .isEqualTo(!barred(rules, a, b, true));
        }
      }
    }
  }

  /** So that a label may take the place of another; see {@link Dominance}. */
  @Test
  void one_is_within_another_if_it_bars_nobody_else_nor_does_after_a_break() {
    for (long seed = 0; seed < 50; seed++) {
      List<Apart> rules = rules(seed);
      Neighbours neighbours = Neighbours.of(rules, numbers, CANDIDATES);
      for (int a = 0; a < CANDIDATES; a++) {
        for (int b = 0; b < CANDIDATES; b++) {
          boolean within = true;
          for (int next = 0; next < CANDIDATES; next++) {
            within &= !barred(rules, a, next, false) || barred(rules, b, next, false);
            within &= !barred(rules, a, next, true) || barred(rules, b, next, true);
          }
          assertThat(neighbours.within(neighbours.wake(a), neighbours.wake(b)))
              .describedAs("seed %d, %d within %d", seed, a, b)
              .isEqualTo(within);
        }
      }
    }
  }

  @Test
  void before_the_first_exercise_nobody_is_barred() {
    Neighbours neighbours = Neighbours.of(rules(3), numbers, CANDIDATES);
    for (int b = 0; b < CANDIDATES; b++) {
      assertThat(neighbours.mayFollow(0, neighbours.place(b))).isTrue();
    }
    assertThat(neighbours.afterBreak(0)).isZero();
  }

  /** Peers are those alike in all rules: the fewer places and wakes, the more peers. */
  @Test
  void candidates_alike_in_all_rules_share_a_place_and_a_wake() {
    Apart rule = new Apart("rule", Set.of("c1", "c2"), Set.of("c2", "c3", "nobody"), true);
    Neighbours neighbours = Neighbours.of(List.of(rule), numbers, CANDIDATES);
    assertThat(wakes(neighbours)).containsExactly(0, 1, 1, 0, 0, 0, 0);
    assertThat(places(neighbours)).containsExactly(0, 0, 1, 1, 0, 0, 0);
  }

  private static int[] wakes(Neighbours neighbours) {
    return IntStream.range(0, CANDIDATES).map(neighbours::wake).toArray();
  }

  private static int[] places(Neighbours neighbours) {
    return IntStream.range(0, CANDIDATES).map(neighbours::place).toArray();
  }

  private static boolean barred(List<Apart> rules, int a, int b, boolean acrossBreak) {
    return rules.stream()
        .filter(rule -> rule.acrossBreaks() || !acrossBreak)
        .anyMatch(rule -> rule.first().contains("c" + a) && rule.then().contains("c" + b));
  }

  private static List<Apart> rules(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Apart> rules = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      rules.add(new Apart("rule", some(random), some(random), random.nextBoolean()));
    }
    return rules;
  }

  private static Set<String> some(SplittableRandom random) {
    Set<String> some = new HashSet<>();
    for (int i = 0; i < 3; i++) {
      some.add("c" + random.nextInt(CANDIDATES));
    }
    return some;
  }
}
