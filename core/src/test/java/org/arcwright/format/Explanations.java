package org.arcwright.format;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Kind;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.explain.Clash;
import org.arcwright.compose.explain.Loosening;
import org.arcwright.compose.explain.WayOut;
import org.arcwright.compose.explain.WhyNot;
import org.arcwright.compose.explain.WhyThis;
import org.arcwright.compose.explain.WhyThis.Instead;
import org.arcwright.compose.explain.Wish;

/** Explanations as wild as their constructors allow. */
final class Explanations {
  private Explanations() {}

  /** Those that a wild brief asks for, and each kind that has a figure. */
  private static Arbitrary<Wish> wishes() {
    return Samples.briefs().map(Explanations::wishesOf).flatMap(Arbitraries::of);
  }

  private static List<Wish> wishesOf(Brief brief) {
    List<Wish> wishes = new ArrayList<>();
    wishes.add(new Wish.Cap(brief.cap()));
    wishes.add(new Wish.Stretch(brief.rhythm().longest()));
    wishes.add(new Wish.Pause(brief.rhythm().pause()));
    wishes.add(new Wish.Buffer(brief.bufferPercent()));
    wishes.add(new Wish.Openness(brief.group().openness()));
    wishes.add(new Wish.People(brief.group().count()));
    wishes.add(new Wish.Tools(brief.tools()));
    wishes.add(new Wish.Given(brief.given()));
    wishes.add(new Wish.Rule(brief.title()));
    brief.meals().forEach(meal -> wishes.add(new Wish.Meal(meal)));
    brief.ownItems().forEach(item -> wishes.add(new Wish.Own(item)));
    brief.wishes().pins().forEach(pin -> wishes.add(new Wish.Pinned(pin)));
    brief.wishes().include().forEach(id -> wishes.add(new Wish.Include(id)));
    brief.wishes().leaveOut().forEach(id -> wishes.add(new Wish.LeaveOut(id)));
    return wishes;
  }

  static Arbitrary<Clash> clashes() {
    Arbitrary<Clash.Asked> asked =
        Combinators.combine(wishes(), Samples.texts(40)).as(Clash.Asked::new);
    Arbitrary<Clash.Conflict> conflicts =
        Combinators.combine(asked.list().ofMaxSize(3), flags()).as(Clash.Conflict::new);
    Arbitrary<Loosening> loosenings =
        Combinators.combine(wishes(), wishes().optional(), Samples.texts(40)).as(Loosening::new);
    Arbitrary<WayOut> waysOut =
        Combinators.combine(
                loosenings.list().ofMinSize(1).ofMaxSize(2),
                flags(),
                Arbitraries.integers(),
                Samples.briefs(),
                Samples.agendas(),
                flags())
            .as(WayOut::new);
    return Combinators.combine(conflicts.list().ofMaxSize(2), waysOut.list().ofMaxSize(2), flags())
        .as(Clash::new);
  }

  static Arbitrary<WhyNot> whyNots() {
    Arbitrary<Composed> composed =
        Verdicts.compositions().filter(Composed.class::isInstance).map(Composed.class::cast);
    return Arbitraries.oneOf(
        List.of(
            activities().map(WhyNot.IsIn::new),
            Combinators.combine(Verdicts.leftOut(), clashes()).as(WhyNot.RuledOut::new),
            composed.map(WhyNot.Possible::new),
            clashes().map(WhyNot.Impossible::new),
            Arbitraries.just(new WhyNot.Unknown())));
  }

  static Arbitrary<WhyThis> whyThese() {
    return Combinators.combine(Samples.agendas(), reasons().list().ofMaxSize(3)).as(WhyThis::new);
  }

  private static Arbitrary<WhyThis.Reason> reasons() {
    Arbitrary<WhyThis.TakenOver> taken =
        Combinators.combine(Samples.ids(), Samples.ids().optional()).as(WhyThis.TakenOver::new);
    Arbitrary<WhyThis.HandedOn> handed =
        Combinators.combine(Samples.ids(), Samples.ids().list().ofMaxSize(2), flags())
            .as(WhyThis.HandedOn::new);
    Arbitrary<WhyThis.Place> places =
        Combinators.combine(levels(), flags(), flags(), wishes().optional()).as(WhyThis.Place::new);
    return Combinators.combine(
            activities(), taken.list().ofMaxSize(2), handed.list().ofMaxSize(2), places, insteads())
        .as(WhyThis.Reason::new);
  }

  private static Arbitrary<Instead> insteads() {
    return Arbitraries.oneOf(
        List.of(
            Arbitraries.of(new Instead.Asked(), new Instead.Nothing(), new Instead.Unknown()),
            Combinators.combine(Samples.ids(), Samples.agendas(), Verdicts.prices())
                .as(Instead.Swap::new),
            Combinators.combine(Samples.agendas(), Verdicts.proofs(), Verdicts.prices())
                .as(Instead.Anew::new)));
  }

  private static Arbitrary<Activity> activities() {
    return Combinators.combine(
            Samples.ids(),
            Samples.texts(40),
            Arbitraries.of(Kind.class).optional(),
            Arbitraries.integers().between(0, 9_000),
            Arbitraries.integers().between(1, 9_000),
            Arbitraries.of(Format.class),
            levels())
        .as(
            (id, title, kind, start, length, format, energy) ->
                new Activity(
                    id,
                    title,
                    kind,
                    "phase-1",
                    Duration.ofMinutes(start),
                    Duration.ofSeconds(length),
                    format,
                    energy));
  }

  private static Arbitrary<Integer> levels() {
    return Arbitraries.integers().between(10, 50);
  }

  private static Arbitrary<Boolean> flags() {
    return Arbitraries.of(true, false);
  }
}
