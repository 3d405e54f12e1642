package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Instance.Rules;
import org.junit.jupiter.api.Test;

/** Counts side by side in one long, against the same counts one by one. */
class SharingTest {
  private static final int FIRST = 6;
  private static final int ALL = 10;

  /** What is counted: agendas first, then rules. */
  private final List<Set<Integer>> members = new ArrayList<>();

  private final List<Integer> most = new ArrayList<>();
  private final Model model;
  private final Sharing sharing;

  /** Two phases, of which the first can use six candidates and the second the other four. */
  SharingTest() {
    SplittableRandom random = new SplittableRandom(5);
    List<Candidate> candidates = new ArrayList<>();
    for (int i = 0; i < ALL; i++) {
      candidates.add(Models.candidate("c" + i, i < FIRST ? "first" : "second", i));
    }
    List<BitSet> earlier = new ArrayList<>();
    for (int limit : new int[] {3, 0, 2}) {
      Set<Integer> some = some(random);
      earlier.add(some.stream().collect(BitSet::new, BitSet::set, BitSet::or));
      members.add(some);
      most.add(limit);
    }
    List<Instance.AtMost> rules = new ArrayList<>();
    for (int limit : new int[] {1, 2}) {
      Set<Integer> some = some(random);
      rules.add(
          new Instance.AtMost(
              "rule", some.stream().map(i -> "c" + i).collect(Collectors.toSet()), limit));
      members.add(some);
    }
    model =
        Models.of(
            Models.hour(Models.phase("first", 4), Models.phase("second", 4))
                .candidates(candidates)
                .rules(new Rules(List.of(), rules))
                .build());
    sharing = Sharing.of(model, earlier, List.copyOf(most));
    most.add(1);
    most.add(2);
  }

  private static Set<Integer> some(SplittableRandom random) {
    Set<Integer> some = new HashSet<>();
    while (some.size() < 5) {
      some.add(random.nextInt(ALL));
    }
    return some;
  }

  @Test
  void one_too_many_of_an_agenda_or_a_rule_is_noticed() {
    for (List<Integer> path : paths()) {
      assertThat(sharing.over(counts(path))).describedAs("%s", path).isEqualTo(over(path));
    }
  }

  @Test
  void what_is_left_of_an_agenda_is_what_may_come_less_what_came() {
    for (List<Integer> path : paths()) {
      for (int i = 0; i < sharing.agendas() && !over(path); i++) {
        assertThat(sharing.left(counts(path), i))
            .describedAs("agenda %d after %s", i, path)
            .isEqualTo(most.get(i) - used(path, i));
      }
    }
    assertThat(sharing.agendas()).isEqualTo(3);
  }

  /** So that labels which differ in nothing that may still come up are told apart no more. */
  @Test
  void nothing_is_left_that_the_rest_of_the_arc_cannot_bring() {
    for (List<Integer> path : paths()) {
      if (!over(path)) {
        for (int i = 0; i < sharing.agendas(); i++) {
          int left = most.get(i) - used(path, i);
          int ahead = (int) members.get(i).stream().filter(c -> c >= FIRST).count();
          assertThat(sharing.left(sharing.settled(counts(path), 1), i))
              .isEqualTo(Math.min(left, ahead));
          assertThat(sharing.left(sharing.settled(counts(path), 0), i))
              .isEqualTo(Math.min(left, members.get(i).size()));
        }
      }
    }
  }

  /** One path counts no more than another if it did so nowhere, in no agenda and by no rule. */
  @Test
  void paths_are_compared_in_every_count() {
    List<List<Integer>> paths = paths().stream().filter(path -> !over(path)).limit(60).toList();
    for (List<Integer> one : paths) {
      for (List<Integer> other : paths) {
        boolean within = true;
        for (int i = 0; i < members.size(); i++) {
          within &= used(one, i) <= used(other, i);
        }
        assertThat(sharing.within(counts(one), counts(other)))
            .describedAs("%s within %s", one, other)
            .isEqualTo(within);
      }
    }
  }

  @Test
  void only_what_an_agenda_holds_is_shared() {
    for (int candidate = 0; candidate < ALL; candidate++) {
      boolean any = false;
      for (int i = 0; i < sharing.agendas(); i++) {
        assertThat(sharing.holds(i, candidate)).isEqualTo(members.get(i).contains(candidate));
        any |= members.get(i).contains(candidate);
      }
      assertThat(sharing.counts(candidate)).isEqualTo(any);
    }
  }

  @Test
  void without_limits_any_number_may_come() {
    Sharing unlimited = sharing.unlimited();
    long counts = unlimited.start();
    for (int candidate = 0; candidate < ALL; candidate++) {
      counts = unlimited.after(counts, candidate);
      assertThat(unlimited.over(counts)).isFalse();
    }
    assertThat(Sharing.none(model).agendas()).isZero();
  }

  /** Three bits and a guard for a count up to seven; here are two rules beside the agendas. */
  @Test
  void fits_while_all_counts_have_room_side_by_side() {
    assertThat(Sharing.fits(model, Collections.nCopies(14, 7))).isTrue();
    assertThat(Sharing.fits(model, Collections.nCopies(15, 7))).isFalse();
    assertThat(Sharing.fits(model, Collections.nCopies(14, 8))).isFalse();
    assertThat(Sharing.fits(model, List.of())).isTrue();
  }

  private long counts(List<Integer> path) {
    long counts = sharing.start();
    for (int candidate : path) {
      counts = sharing.after(counts, candidate);
    }
    return counts;
  }

  private int used(List<Integer> path, int i) {
    return (int) path.stream().filter(members.get(i)::contains).count();
  }

  private boolean over(List<Integer> path) {
    boolean over = false;
    for (int i = 0; i < members.size(); i++) {
      over |= used(path, i) > most.get(i);
    }
    return over;
  }

  /** Paths of which the last exercise alone may be one too many, as in a search. */
  private List<List<Integer>> paths() {
    SplittableRandom random = new SplittableRandom(8);
    List<List<Integer>> paths = new ArrayList<>();
    for (int i = 0; i < 400; i++) {
      List<Integer> path = new ArrayList<>();
      while (path.size() < 4 && !over(path)) {
        int next = random.nextInt(ALL);
        if (!path.contains(next)) {
          path.add(next);
          paths.add(List.copyOf(path));
        }
      }
    }
    return paths;
  }
}
