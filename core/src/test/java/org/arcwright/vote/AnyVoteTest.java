package org.arcwright.vote;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.arcwright.vote.Outcome.NoResult;
import org.arcwright.vote.Outcome.Tie;
import org.arcwright.vote.Outcome.Winner;

/** What holds for every set of ranked ballots. */
class AnyVoteTest {
  /** Options and the ranked ballots of some people. */
  record Vote(List<String> options, List<RankedBallot> ballots) {
    List<Tally> tallies() {
      return List.of(
          new Borda(options, ballots),
          Pairwise.of(options, ballots),
          new Approval(options, ballots.stream().map(b -> Set.copyOf(b.tiers().get(0))).toList()),
          new RankedPoints(options, 2, ballots.stream().map(b -> b.named().subList(0, 2)).toList()),
          new Majority(
              options,
              MajorityRule.ofVotesCast(20),
              ballots.stream().map(b -> b.named().stream().findFirst()).toList()));
    }
  }

  @Property(tries = 300, seed = "1781")
  void the_order_of_the_ballots_does_not_matter(@ForAll("votes") Vote vote, @ForAll long chance) {
    List<RankedBallot> shuffled = new ArrayList<>(vote.ballots());
    Collections.shuffle(shuffled, new Random(chance));
    List<Tally> others = new Vote(vote.options(), shuffled).tallies();

    for (int i = 0; i < others.size(); i++) {
      assertThat(others.get(i).ranking()).isEqualTo(vote.tallies().get(i).ranking());
      assertThat(others.get(i).outcome()).isEqualTo(vote.tallies().get(i).outcome());
    }
  }

  @Property(tries = 300, seed = "1781")
  void names_do_not_matter_nor_does_the_order_of_the_options(
      @ForAll("votes") Vote vote, @ForAll long chance) {
    List<String> shuffled = new ArrayList<>(vote.options());
    Collections.shuffle(shuffled, new Random(chance));
    Map<String, String> renamed = new HashMap<>();
    vote.options().forEach(o -> renamed.put(o, "new " + shuffled.get(vote.options().indexOf(o))));
    List<RankedBallot> ballots =
        vote.ballots().stream()
            .map(b -> new RankedBallot(b.tiers().stream().map(t -> each(t, renamed::get)).toList()))
            .toList();
    List<Tally> others = new Vote(each(vote.options(), o -> "new " + o), ballots).tallies();

    for (int i = 0; i < others.size(); i++) {
      Tally before = vote.tallies().get(i);
      assertThat(inQuestion(others.get(i).outcome()))
          .containsExactlyInAnyOrderElementsOf(each(inQuestion(before.outcome()), renamed::get));
      assertThat(sums(others.get(i)))
          .isEqualTo(
              sums(before).entrySet().stream()
                  .collect(Collectors.toMap(e -> renamed.get(e.getKey()), Map.Entry::getValue)));
    }
  }

  @Property(tries = 300, seed = "1781")
  void all_places_together_are_voters_times_pairs(@ForAll("votes") Vote vote) {
    int n = vote.options().size();

    assertThat(total(new Borda(vote.options(), vote.ballots())))
        .isEqualTo(Fraction.of((long) vote.ballots().size() * n * (n - 1) / 2));
    assertThat(total(Pairwise.of(vote.options(), vote.ballots())))
        .isEqualTo(Fraction.of((long) n * (n - 1) / 2));
  }

  /** A place is worth the options below it: Borda's sums are the rows of the table of pairs. */
  @Property(tries = 300, seed = "1781")
  void places_and_pairs_agree(@ForAll("votes") Vote vote) {
    Pairwise pairs = Pairwise.of(vote.options(), vote.ballots());
    Map<String, Fraction> borda = sums(new Borda(vote.options(), vote.ballots()));
    int voters = vote.ballots().size();

    for (int i = 0; i < vote.options().size(); i++) {
      int halves = 0;
      for (int j = 0; j < vote.options().size(); j++) {
        halves += i == j ? 0 : voters + pairs.margin(i, j);
      }
      assertThat(borda.get(vote.options().get(i))).isEqualTo(Fraction.halves(halves));
    }
  }

  /** Every set of options is tried against the definition. */
  @Property(tries = 300, seed = "1785")
  void the_smith_set_is_the_smallest_that_beats_all_others(@ForAll("votes") Vote vote) {
    Pairwise pairs = Pairwise.of(vote.options(), vote.ballots());
    int n = vote.options().size();
    List<String> smallest = vote.options();
    for (int set = 1; set < 1 << n; set++) {
      int in = set;
      List<Integer> inside = IntStream.range(0, n).filter(i -> (in >> i & 1) == 1).boxed().toList();
      boolean beatsAll =
          inside.stream()
              .allMatch(
                  i ->
                      IntStream.range(0, n)
                          .filter(j -> !inside.contains(j))
                          .allMatch(j -> pairs.margin(i, j) > 0));
      if (beatsAll && inside.size() < smallest.size()) {
        smallest = each(inside, vote.options()::get);
      }
    }

    assertThat(pairs.smithSet()).isEqualTo(smallest);
    assertThat(smallest).containsAll(pairs.ranking().first());
  }

  @Property(tries = 300, seed = "1785")
  void who_beats_everybody_wins_by_pairs_and_is_above_the_average_by_places(
      @ForAll("votes") Vote vote) {
    Pairwise pairs = Pairwise.of(vote.options(), vote.ballots());
    int n = vote.options().size();
    List<String> beatsAll =
        IntStream.range(0, n)
            .filter(i -> IntStream.range(0, n).allMatch(j -> i == j || pairs.margin(i, j) > 0))
            .mapToObj(vote.options()::get)
            .toList();

    assertThat(pairs.outcome() instanceof Winner).isEqualTo(!beatsAll.isEmpty());
    for (String winner : beatsAll) {
      assertThat(pairs.outcome()).isEqualTo(new Winner(winner));
      assertThat(pairs.decision().outcome()).isEqualTo(new Winner(winner));
      assertThat(pairs.smithSet()).containsExactly(winner);
      assertThat(sums(new Borda(vote.options(), vote.ballots())).get(winner))
          .isGreaterThan(Fraction.halves((long) vote.ballots().size() * (n - 1)));
    }
  }

  @Property(tries = 300, seed = "1785")
  void a_circle_is_told_step_by_step(@ForAll("votes") Vote vote) {
    Pairwise pairs = Pairwise.of(vote.options(), vote.ballots());
    List<String> cycle = pairs.cycle().orElse(List.of());

    assertThat(pairs.smithSet()).containsAll(cycle);
    assertThat(new HashSet<>(cycle)).hasSameSizeAs(cycle);
    for (int i = 0; i < cycle.size(); i++) {
      int one = vote.options().indexOf(cycle.get(i));
      int next = vote.options().indexOf(cycle.get((i + 1) % cycle.size()));
      assertThat(pairs.margin(one, next)).isPositive();
    }
    assertThat(pairs.outcome() instanceof NoResult none && none.cause() == Outcome.Cause.CYCLE)
        .isEqualTo(!cycle.isEmpty());
  }

  /** With an odd number of voters and no ties on ballots no pair is level. */
  @Property(tries = 200, seed = "1785")
  void without_level_pairs_there_is_a_winner_or_a_circle_of_three(@ForAll("strict") Vote vote) {
    Pairwise pairs = Pairwise.of(vote.options(), vote.ballots());

    if (pairs.outcome() instanceof NoResult none) {
      assertThat(none.cause()).isEqualTo(Outcome.Cause.CYCLE);
      assertThat(pairs.cycle().orElseThrow()).hasSize(3);
    } else {
      assertThat(pairs.outcome()).isInstanceOf(Winner.class);
    }
  }

  @Property(tries = 200, seed = "1781")
  void what_all_put_higher_has_more_points(@ForAll("votes") Vote vote) {
    Map<String, Fraction> borda = sums(new Borda(vote.options(), vote.ballots()));
    Pairwise pairs = Pairwise.of(vote.options(), vote.ballots());
    for (int i = 0; i < vote.options().size(); i++) {
      for (int j = 0; j < vote.options().size(); j++) {
        if (pairs.margin(i, j) == vote.ballots().size()) {
          assertThat(borda.get(vote.options().get(i)))
              .isGreaterThan(borda.get(vote.options().get(j)));
        }
      }
    }
  }

  private static Fraction total(Tally tally) {
    return tally.scores().stream().map(Score::sum).reduce(Fraction.ZERO, Fraction::plus);
  }

  private static Map<String, Fraction> sums(Tally tally) {
    return tally.scores().stream().collect(Collectors.toMap(Score::option, Score::sum));
  }

  private static List<String> inQuestion(Outcome outcome) {
    if (outcome instanceof Winner winner) {
      return List.of(winner.option());
    }
    return outcome instanceof Tie tie ? tie.options() : ((NoResult) outcome).options();
  }

  private static <A, B> List<B> each(Collection<A> all, Function<A, B> change) {
    return all.stream().map(change).toList();
  }

  @Provide
  Arbitrary<Vote> votes() {
    return Arbitraries.integers()
        .between(2, 5)
        .flatMap(n -> vote(n, tiers(n), Arbitraries.integers().between(1, 7)));
  }

  @Provide
  Arbitrary<Vote> strict() {
    return Arbitraries.integers()
        .between(3, 6)
        .flatMap(
            n ->
                vote(
                    n,
                    Arbitraries.shuffle(options(n))
                        .map(order -> new RankedBallot(each(order, List::of))),
                    Arbitraries.of(1, 3, 5, 7)));
  }

  private static Arbitrary<Vote> vote(
      int n, Arbitrary<RankedBallot> ballot, Arbitrary<Integer> voters) {
    return voters.flatMap(v -> ballot.list().ofSize(v)).map(all -> new Vote(options(n), all));
  }

  /** A shuffled order in which neighbours may be level. */
  private static Arbitrary<RankedBallot> tiers(int n) {
    return Combinators.combine(
            Arbitraries.shuffle(options(n)), Arbitraries.integers().between(0, 3).list().ofSize(n))
        .as(
            (order, joins) -> {
              List<List<String>> tiers = new ArrayList<>();
              for (int i = 0; i < n; i++) {
                if (i == 0 || joins.get(i) > 0) {
                  tiers.add(new ArrayList<>());
                }
                tiers.get(tiers.size() - 1).add(order.get(i));
              }
              return new RankedBallot(tiers);
            });
  }

  private static List<String> options(int n) {
    return IntStream.range(0, n).mapToObj(i -> String.valueOf((char) ('A' + i))).toList();
  }
}
