package org.arcwright.compose.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.arcwright.brief.Brief;
import org.arcwright.brief.BriefBuilder;
import org.arcwright.brief.Meal;
import org.arcwright.brief.Moment;
import org.arcwright.brief.OwnItem;
import org.arcwright.brief.Rhythm;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Mode;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.Composition.NothingFits;
import org.arcwright.compose.explain.Clash.Asked;
import org.arcwright.compose.explain.Clash.Conflict;
import org.arcwright.compose.reduce.Sample;
import org.arcwright.compose.reduce.SampleExercise;

/**
 * What holds whatever clashes. The composer is the judge: it solves whole briefs, dear or not, and
 * knows nothing of how the explanation was found.
 */
class AnyClashTest {
  private static final Catalog CATALOG =
      Sample.catalog(
          SampleExercise.of("secrets", Kind.ICEBREAKER, 5, 10, 15, "arrival").openness(3).build(),
          SampleExercise.of("song", Kind.REFLECTION, 5, 5, 10, "takeaways")
              .in(Mode.REMOTE, 3, "music")
              .build());
  private static final Composer COMPOSER = Composer.of(CATALOG);
  private static final Budget AMPLE = Budget.of(Duration.ofMinutes(5));

  private static Clash explain(Brief brief) {
    Assume.that(COMPOSER.compose(brief, AMPLE) instanceof NothingFits);
    NothingFits answer = (NothingFits) COMPOSER.compose(brief, AMPLE);
    return Explainer.of(CATALOG).whyNothingFits(brief, answer, AMPLE);
  }

  private static boolean fits(Brief brief) {
    return COMPOSER.compose(brief, AMPLE) instanceof Composed;
  }

  /** The briefs in which only these wishes are kept, and all others given up. */
  private static List<Brief> keeping(Brief brief, List<Wish> kept) {
    Steps steps = new Steps(brief, CATALOG, 5);
    Wishlist list = Wishlist.of(brief, CATALOG, steps);
    List<Wish> givenUp = new ArrayList<>(list.wishes());
    if (kept.stream().anyMatch(list.facts()::contains)) {
      givenUp.addAll(list.facts());
    }
    givenUp.removeAll(kept);
    List<Brief> briefs = List.of(brief);
    for (Wish wish : givenUp) {
      List<Optional<Wish>> instead = new ArrayList<>(steps.givenUp(wish));
      if (wish instanceof Wish.Cap) {
        instead.clear();
        instead.add(Optional.of(wish));
        steps.of(wish).get(0).forEach(cap -> instead.add(Optional.of(cap)));
      }
      briefs =
          briefs.stream()
              .flatMap(b -> instead.stream().map(other -> Draft.of(b).change(wish, other).brief()))
              .toList();
    }
    return briefs;
  }

  /** Some of many, first and last among them. */
  private static <T> List<T> some(List<T> all) {
    int step = Math.max(1, all.size() / 6);
    return IntStream.range(0, all.size())
        .filter(i -> i % step == 0 || i == all.size() - 1)
        .mapToObj(all::get)
        .toList();
  }

  @Property(tries = 120, seed = "1961")
  void wishes_that_clash_cannot_be_had_together_and_none_of_them_can_be_spared(
      @ForAll("briefs") Brief brief) {
    Clash clash = explain(brief);

    assertThat(clash.conflicts()).isNotEmpty();
    for (Conflict conflict : clash.conflicts()) {
      List<Wish> wishes = conflict.wishes().stream().map(Asked::wish).toList();
      assertThat(some(keeping(brief, wishes))).noneMatch(AnyClashTest::fits);
      assertThat(conflict.smallest()).isTrue();
      for (Wish wish : wishes) {
        List<Wish> others = wishes.stream().filter(other -> !other.equals(wish)).toList();
        assertThat(keeping(brief, others)).as("without %s", wish).anyMatch(AnyClashTest::fits);
      }
    }
  }

  @Property(tries = 120, seed = "1962")
  void a_way_out_leads_to_an_agenda_and_one_step_less_does_not(@ForAll("briefs") Brief brief) {
    Clash clash = explain(brief);

    assertThat(clash.complete()).isTrue();
    for (WayOut way : clash.waysOut()) {
      assertThat(COMPOSER.check(way.agenda(), way.brief()).remarks()).isEmpty();
      assertThat(way.best()).isTrue();
      assertThat(way.least()).isTrue();
      for (Loosening loosening : way.loosenings()) {
        for (Brief less : oneStepLess(brief, way, loosening)) {
          assertThat(fits(less)).as("%s of %s", loosening, way.loosenings()).isFalse();
        }
      }
    }
  }

  private static List<Brief> oneStepLess(Brief brief, WayOut way, Loosening loosening) {
    Map<Wish, Optional<Wish>> changes = new HashMap<>();
    way.loosenings().forEach(other -> changes.put(other.wish(), other.instead()));
    List<Brief> less = new ArrayList<>();
    for (List<Wish> steps : new Steps(brief, CATALOG, 5).of(loosening.wish())) {
      int at = loosening.instead().map(steps::indexOf).orElse(steps.size());
      if (at > 0) {
        changes.put(loosening.wish(), Optional.of(steps.get(at - 1)));
        less.add(with(brief, changes));
      }
    }
    changes.put(loosening.wish(), Optional.of(loosening.wish()));
    less.add(with(brief, changes));
    return less;
  }

  private static Brief with(Brief brief, Map<Wish, Optional<Wish>> changes) {
    Draft draft = Draft.of(brief);
    changes.forEach(draft::change);
    return draft.brief();
  }

  @Provide
  Arbitrary<Brief> briefs() {
    Arbitrary<BriefBuilder> basics =
        Combinators.combine(
                Arbitraries.integers().between(3, 20).map(n -> 10 * n),
                Arbitraries.of(0, 15, 30, 60),
                rhythms(),
                Arbitraries.of(Set.<String>of(), Set.of("call"), Set.of("call", "music")))
            .as(
                (cap, buffer, rhythm, tools) ->
                    Sample.brief(cap).bufferPercent(buffer).rhythm(rhythm).tools(tools));
    return Combinators.combine(basics, wishes(), meals().optional(0.3), items().optional(0.3))
        .as(
            (basic, wishes, meal, item) -> {
              basic.wishes(wishes);
              meal.ifPresent(basic::meal);
              item.ifPresent(basic::ownItem);
              return basic.build();
            })
        .ignoreException(RuntimeException.class);
  }

  private static Arbitrary<Wishes> wishes() {
    Arbitrary<String> ids = Arbitraries.of(CATALOG.exercises().keySet());
    return Combinators.combine(
            ids.set().ofMaxSize(4),
            ids.set().ofMaxSize(3),
            Combinators.combine(ids, Arbitraries.integers().between(0, 20))
                .as((id, at) -> new Wishes.Pin(id, new Moment.After(Duration.ofMinutes(5L * at))))
                .list()
                .ofMaxSize(2))
        .as((in, out, pins) -> new Wishes(in, out, pins, Set.of()));
  }

  private static Arbitrary<Rhythm> rhythms() {
    return Combinators.combine(Arbitraries.of(20, 30, 40, 60, 90), Arbitraries.of(0, 5, 10, 15))
        .as(
            (longest, pause) ->
                new Rhythm(Duration.ZERO, Duration.ofMinutes(longest), Duration.ofMinutes(pause)));
  }

  private static Arbitrary<Meal> meals() {
    return Combinators.combine(
            Arbitraries.integers().between(0, 10),
            Arbitraries.integers().between(0, 4),
            Arbitraries.of(30, 45))
        .as(
            (from, wide, length) ->
                new Meal(
                    Duration.ofMinutes(10L * from),
                    Duration.ofMinutes(10L * (from + wide)),
                    Duration.ofMinutes(length)));
  }

  private static Arbitrary<OwnItem> items() {
    return Combinators.combine(
            Arbitraries.of(20, 45, 70),
            Arbitraries.of("open", "decide", "close").optional(0.5),
            Arbitraries.integers().between(0, 12).optional(0.5))
        .as(
            (length, phase, at) ->
                new OwnItem(
                    "talk",
                    "A guest speaks",
                    Duration.ofMinutes(length),
                    phase,
                    at.map(n -> new Moment.After(Duration.ofMinutes(10L * n))),
                    2,
                    Format.PLENARY));
  }
}
