package org.arcwright.format;

import java.time.Duration;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.arcwright.agenda.Agenda;
import org.arcwright.catalog.Format;
import org.arcwright.compose.Composition;
import org.arcwright.compose.LeftOut;
import org.arcwright.compose.Options;
import org.arcwright.compose.Parameter;
import org.arcwright.compose.Price;
import org.arcwright.compose.Profile;
import org.arcwright.compose.Proof;
import org.arcwright.compose.Review;
import org.arcwright.compose.Sweep;
import org.arcwright.compose.WhatIf;
import org.arcwright.compose.check.Finding;
import org.arcwright.compose.check.Verdict;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Bounds;
import org.arcwright.compose.instance.Instance.Meal;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.search.OptionList.End;
import org.arcwright.compose.search.OptionRule;
import org.arcwright.compose.search.Solution;
import org.arcwright.compose.search.Solution.Status;

/** Answers as wild as their constructors allow. */
final class Verdicts {
  private Verdicts() {}

  static Arbitrary<Composition> compositions() {
    Arbitrary<List<LeftOut>> leftOut = leftOut().list().ofMaxSize(3);
    Arbitrary<Composition> composed =
        Combinators.combine(Samples.agendas(), proofs(), prices(), leftOut, Samples.instances())
            .as(Composition.Composed::new);
    Arbitrary<Composition> nothing =
        Combinators.combine(
                Samples.texts(40).list().ofMinSize(1).ofMaxSize(3), leftOut, Samples.instances())
            .as(Composition.NothingFits::new);
    Arbitrary<Composition> stopped =
        Combinators.combine(
                Arbitraries.longs().optional(),
                Arbitraries.longs().greaterOrEqual(0),
                leftOut,
                Samples.instances())
            .as(Composition.Stopped::new);
    return Arbitraries.oneOf(List.of(composed, nothing, stopped));
  }

  static Arbitrary<Options> options() {
    Arbitrary<OptionRule> rules =
        Combinators.combine(
                Arbitraries.integers().between(1, OptionRule.MOST),
                Arbitraries.integers().between(0, 99),
                Arbitraries.integers().between(0, 1000))
            .as(OptionRule::new);
    Arbitrary<Options> found =
        leftOut()
            .list()
            .ofMaxSize(3)
            .flatMap(
                leftOut ->
                    Samples.instances()
                        .flatMap(
                            instance ->
                                Combinators.combine(
                                        rules,
                                        option(leftOut, instance).list().ofMinSize(1).ofMaxSize(3),
                                        Arbitraries.of(End.class),
                                        proofs().optional())
                                    .as(Options.Found::new)));
    Arbitrary<Options> none = Combinators.combine(rules, compositions()).as(Options.NotOne::new);
    return Arbitraries.oneOf(List.of(found, none));
  }

  static Arbitrary<WhatIf.Answer> whatIfs() {
    Arbitrary<Sweep> sweeps =
        Combinators.combine(Arbitraries.of(Parameter.class), Arbitraries.integers().between(1, 9))
            .as((parameter, step) -> new Sweep(parameter, 15, 35, step));
    Arbitrary<Integer> values = Arbitraries.integers();
    Arbitrary<WhatIf.Row> rows =
        Arbitraries.oneOf(
            List.of(
                Combinators.combine(values, Samples.agendas(), proofs()).as(WhatIf.Row.Best::new),
                Combinators.combine(values, Samples.texts(40).list().ofMaxSize(3))
                    .as(WhatIf.Row.None::new),
                Combinators.combine(values, Arbitraries.longs().optional(), Arbitraries.longs())
                    .as(WhatIf.Row.Open::new),
                Combinators.combine(values, Samples.texts(40)).as(WhatIf.Row.Refused::new)));
    return Combinators.combine(sweeps, values, rows.list().ofMaxSize(4)).as(WhatIf.Answer::new);
  }

  private static Arbitrary<Options.Option> option(List<LeftOut> leftOut, Instance instance) {
    return Combinators.combine(Samples.agendas(), proofs(), prices(), profiles())
        .as(
            (agenda, proof, prices, profile) ->
                new Options.Option(
                    new Composition.Composed(agenda, proof, prices, leftOut, instance), profile));
  }

  private static Arbitrary<Profile> profiles() {
    Arbitrary<Integer> counts = Arbitraries.integers().between(0, 9_000);
    return Combinators.combine(
            counts.list().ofSize(6),
            Arbitraries.maps(Arbitraries.of(Format.class), counts),
            Samples.ids().set().ofMaxSize(3))
        .as(
            (numbers, formats, tools) ->
                new Profile(
                    Duration.ofMinutes(numbers.get(0)),
                    numbers.get(1),
                    Duration.ofMinutes(numbers.get(2)),
                    numbers.get(3),
                    formats,
                    Duration.ofMinutes(numbers.get(4)),
                    Duration.ofMinutes(numbers.get(5)),
                    tools.size(),
                    new TreeSet<>(tools)));
  }

  static Arbitrary<LeftOut> leftOut() {
    return Combinators.combine(Samples.texts(20), Samples.texts(20).optional(), Samples.texts(40))
        .as(LeftOut::new);
  }

  static Arbitrary<Proof> proofs() {
    return Combinators.combine(
            Arbitraries.of(true, false),
            Arbitraries.longs(),
            Arbitraries.longs(),
            Arbitraries.longs(),
            Arbitraries.longs().between(0, 99_999_999_999L))
        .as(
            (best, cost, bound, labels, micros) ->
                new Proof(best, cost, bound, labels, Duration.ofNanos(1_000 * micros)));
  }

  static Arbitrary<List<Price>> prices() {
    return Combinators.combine(Samples.ids(), Samples.texts(40), Arbitraries.integers())
        .as(Price::new)
        .list()
        .ofMaxSize(3);
  }

  static Arbitrary<Review> reviews() {
    Arbitrary<Review.Remark> remarks =
        Combinators.combine(
                Arbitraries.integers().between(1, 8),
                Arbitraries.integers().between(0, 9_000),
                Samples.texts(40))
            .as((rule, at, text) -> new Review.Remark(rule, Duration.ofMinutes(at), text));
    return Combinators.combine(remarks.list().ofMaxSize(3), Samples.agendas().map(Agenda::figures))
        .as(Review::new);
  }

  static Arbitrary<Solution> solutions() {
    Arbitrary<Integer> minutes = Arbitraries.integers().between(0, 9_000);
    Arbitrary<Item> items =
        Arbitraries.oneOf(
            List.of(
                Combinators.combine(
                        Samples.texts(20), Arbitraries.integers().between(0, 14), minutes, minutes)
                    .as(Item.Activity::new),
                Combinators.combine(minutes, minutes).as(Item.Pause::new)));
    return Combinators.combine(
            Arbitraries.of(Status.class),
            Arbitraries.longs().list().ofSize(4),
            items.list().ofMaxSize(5))
        .as(Verdicts::solution);
  }

  /** What does not go with a status is 0. */
  private static Solution solution(Status status, List<Long> numbers, List<Item> items) {
    boolean found = status == Status.OPTIMAL || status == Status.FEASIBLE;
    return new Solution(
        status,
        found ? numbers.get(0) : 0,
        found ? numbers.get(1) : 0,
        status == Status.INFEASIBLE ? 0 : numbers.get(2),
        found ? items : List.of(),
        numbers.get(3));
  }

  static Arbitrary<Verdict> verdicts() {
    return Combinators.combine(
            Arbitraries.of(findings()).list().ofMaxSize(6),
            Samples.agendas().map(agenda -> agenda.figures().cost()),
            Arbitraries.longs())
        .as(Verdict::new);
  }

  /** One of each kind, and more where a value may take several forms. */
  static List<Finding> findings() {
    Bounds bounds = new Bounds(5, 25);
    return List.of(
        new Finding.NoExercise(),
        new Finding.Gap("Exercise \"a\"", 5, 0),
        new Finding.BreakAtEdge(0, true),
        new Finding.BreakAtEdge(9_000_000_000L, false),
        new Finding.UnknownExercise("a", 5),
        new Finding.Repeated("a", 50, 5),
        new Finding.LengthNotAllowed("a", 5, 12, List.of(10, 15)),
        new Finding.LengthNotAllowed("a", 5, 12, List.of()),
        new Finding.UnknownPhase("a", 5, -1, 4),
        new Finding.PhaseOutOfOrder("a", 5, "open", "close"),
        new Finding.KindNotAllowed("a", 5, "A", "open", Set.of("B", "C")),
        new Finding.PhaseCount("open", 50, 0, bounds),
        new Finding.PhaseMinutes("open", 50, 30, bounds),
        new Finding.NeedMissing("a", 5, "p"),
        new Finding.YieldMissing("open", 50, "p"),
        new Finding.BreakLength(5, 7, List.of(10, 45)),
        new Finding.SideBySide(35),
        new Finding.StretchTooLong(0, 95, 60),
        new Finding.MealElsewhere(5, new Meal(120, 150, 45)),
        new Finding.MealMissing(new Meal(120, 150, 45)),
        new Finding.OverCap(200, 20, 30, 180),
        new Finding.WishMissing("a"),
        new Finding.PinElsewhere("a", 5, 60),
        new Finding.NotNext("b", 35, "a", true, "never two alone in a row"),
        new Finding.TooMany("a", 35, 3, 2, "at most two alone"));
  }

  static Arbitrary<List<Problem>> problems() {
    Arbitrary<Integer> numbers = Arbitraries.integers().between(0, 9_999);
    return Combinators.combine(
            Combinators.combine(Samples.texts(20), numbers, numbers).as(Place::new),
            Samples.texts(20),
            Samples.texts(20),
            Samples.texts(40))
        .as(Problem::new)
        .list()
        .ofMaxSize(4);
  }
}
