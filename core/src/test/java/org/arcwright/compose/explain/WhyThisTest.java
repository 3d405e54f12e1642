package org.arcwright.compose.explain;

import static org.arcwright.compose.reduce.Sample.brief;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.InstanceOfAssertFactories.type;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.agenda.AgendaItem.Pause;
import org.arcwright.brief.Brief;
import org.arcwright.brief.EnergyCurve;
import org.arcwright.brief.Moment;
import org.arcwright.brief.OwnItem;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Kind;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.Review;
import org.arcwright.compose.explain.WhyThis.HandedOn;
import org.arcwright.compose.explain.WhyThis.Instead;
import org.arcwright.compose.explain.WhyThis.Reason;
import org.arcwright.compose.explain.WhyThis.TakenOver;
import org.arcwright.compose.reduce.Sample;
import org.arcwright.compose.reduce.SampleExercise;
import org.junit.jupiter.api.Test;

/** What speaks for each exercise in its place. */
class WhyThisTest {
  private static final Budget AMPLE = Budget.of(Duration.ofMinutes(5));

  @Test
  void what_an_exercise_takes_over_and_hands_on() {
    WhyThis why = whyThis(brief(60).build(), Sample.catalog());

    List<Reason> reasons = why.reasons();
    assertThat(reasons).extracting(Reason::activity).isEqualTo(why.agenda().activities());
    String narrow = in("narrow", why).activity().exercise();
    assertThat(in("explore", why).handsOn())
        .containsExactly(new HandedOn("idea-pool", List.of(narrow), true));
    assertThat(in("narrow", why).takesOver())
        .containsExactly(
            new TakenOver("idea-pool", Optional.of(in("explore", why).activity().exercise())));
    assertThat(in("close", why).handsOn())
        .containsExactly(new HandedOn("takeaways", List.of(), true));
    assertThat(in("open", why).takesOver()).isEmpty();
  }

  @Test
  void only_what_somebody_waits_for_is_handed_on_and_from_the_last_who_left_it() {
    List<Exercise> exercises =
        List.of(
            SampleExercise.of("hello", Kind.ICEBREAKER, 5, 5, 10, "arrival").build(),
            SampleExercise.of("ideas", Kind.DIVERGENT, 20, 25, 40, "idea-pool", "introductions")
                .needs("arrival")
                .build(),
            SampleExercise.of("sort", Kind.CONVERGENT, 15, 15, 20, "shortlist", "feedback")
                .needs("idea-pool")
                .build(),
            SampleExercise.of("choose", Kind.DECISION, 10, 15, 20, "decision")
                .needs("idea-pool", "shortlist", "feedback", "question")
                .build(),
            SampleExercise.of(
                    "bye", Kind.REFLECTION, 5, 10, 15, "takeaways", "feedback", "idea-pool")
                .build());

    WhyThis why = whyThis(brief(90).build(), Sample.only(exercises));

    assertThat(reason("ideas", why).handsOn())
        .containsExactly(new HandedOn("idea-pool", List.of("sort", "choose"), true));
    assertThat(reason("ideas", why).takesOver())
        .containsExactly(new TakenOver("arrival", Optional.of("hello")));
    assertThat(reason("sort", why).handsOn())
        .containsExactlyInAnyOrder(
            new HandedOn("shortlist", List.of("choose"), true),
            new HandedOn("feedback", List.of("choose"), false));
    assertThat(reason("choose", why).takesOver())
        .containsExactlyInAnyOrder(
            new TakenOver("idea-pool", Optional.of("ideas")),
            new TakenOver("shortlist", Optional.of("sort")),
            new TakenOver("feedback", Optional.of("sort")),
            new TakenOver("question", Optional.empty()));
    assertThat(reason("bye", why).handsOn())
        .containsExactly(new HandedOn("takeaways", List.of(), true));
  }

  @Test
  void what_is_left_once_more_in_the_same_phase_is_handed_on_by_the_last() {
    Wishes both = new Wishes(Set.of("silent-list", "carousel"), Set.of(), List.of(), Set.of());

    WhyThis why = whyThis(brief(120).wishes(both).build(), Sample.catalog());

    List<Reason> explore =
        why.reasons().stream().filter(r -> r.activity().phase().equals("explore")).toList();
    assertThat(explore).hasSize(2);
    assertThat(explore.get(0).handsOn()).isEmpty();
    assertThat(explore.get(1).handsOn())
        .containsExactly(
            new HandedOn("idea-pool", List.of(in("narrow", why).activity().exercise()), true));
    assertThat(in("narrow", why).takesOver())
        .containsExactly(
            new TakenOver("idea-pool", Optional.of(explore.get(1).activity().exercise())));
  }

  /** From calm to lively over 120 minutes: the curve at the middle of an exercise. */
  @Test
  void what_the_curve_wishes_is_its_average_over_the_exercise() {
    EnergyCurve rising =
        new EnergyCurve(List.of(new EnergyCurve.Point(0, 10), new EnergyCurve.Point(100, 50)));

    WhyThis why = whyThis(brief(120).curve(rising).build(), Sample.catalog());

    for (Reason reason : why.reasons()) {
      Activity activity = reason.activity();
      double middle = (activity.start().toMinutes() + activity.end().toMinutes()) / 2.0;
      assertThat((double) reason.place().wished()).isCloseTo(10 + middle / 3, within(1.0));
    }
  }

  @Test
  void the_sponsor_s_own_items_are_asked_for() {
    OwnItem talk =
        new OwnItem(
            "talk",
            "A guest speaks",
            Duration.ofMinutes(20),
            Optional.empty(),
            Optional.empty(),
            2,
            Format.PLENARY);

    WhyThis why = whyThis(brief(120).ownItem(talk).build(), Sample.catalog());

    assertThat(reason("talk", why).place().asked()).contains(new Wish.Own(talk));
    assertThat(reason("talk", why).instead()).isEqualTo(new Instead.Asked());
    assertThat(in("open", why).place().asked()).isEmpty();
  }

  @Test
  void the_curve_and_the_breaks_around_an_exercise() {
    WhyThis why = whyThis(brief(180).build(), Sample.catalog());

    assertThat(why.agenda().items()).anyMatch(Pause.class::isInstance);
    for (Reason reason : why.reasons()) {
      int at = why.agenda().items().indexOf(reason.activity());
      assertThat(reason.place().afterBreak())
          .isEqualTo(at > 0 && why.agenda().items().get(at - 1) instanceof Pause);
      assertThat(reason.place().beforeBreak())
          .isEqualTo(
              at + 1 < why.agenda().items().size()
                  && why.agenda().items().get(at + 1) instanceof Pause);
      assertThat(reason.place().wished()).isBetween(24, 36);
    }
  }

  /** Every exercise of the catalog, in every length of whole cells, is tried by hand. */
  @Test
  void the_next_best_in_its_place_is_the_cheapest_that_the_checker_lets_stand_there() {
    int swaps = 0;
    for (int cap : List.of(50, 60, 75, 90, 120, 150, 180)) {
      Brief brief = brief(cap).build();
      WhyThis why = whyThis(brief, Sample.catalog());
      for (Reason reason : why.reasons()) {
        Optional<Long> least = leastByHand(brief, why.agenda(), reason.activity());
        if (reason.instead() instanceof Instead.Swap swap) {
          swaps++;
          assertThat(swap.agenda().figures().cost().total()).isEqualTo(least.orElseThrow());
          assertThat(Composer.of(Sample.catalog()).check(swap.agenda(), brief).fits()).isTrue();
          assertThat(swap.agenda().activities())
              .noneMatch(a -> a.exercise().equals(reason.activity().exercise()))
              .anyMatch(a -> a.exercise().equals(swap.exercise()));
        } else {
          assertThat(least).isEmpty();
        }
      }
    }
    assertThat(swaps).isGreaterThan(10);
  }

  private static Optional<Long> leastByHand(Brief brief, Agenda agenda, Activity out) {
    Set<String> used = Set.copyOf(agenda.activities().stream().map(Activity::exercise).toList());
    Optional<Long> least = Optional.empty();
    for (Exercise exercise : Sample.exercises()) {
      for (int length = 5; length <= 60 && !used.contains(exercise.id()); length += 5) {
        Agenda other = with(agenda, out, exercise, Duration.ofMinutes(length));
        Review review = Composer.of(Sample.catalog()).check(other, brief);
        long cost = review.figures().cost().total();
        if (review.fits() && least.filter(known -> known <= cost).isEmpty()) {
          least = Optional.of(cost);
        }
      }
    }
    return least;
  }

  private static Agenda with(Agenda agenda, Activity out, Exercise in, Duration length) {
    List<AgendaItem> items = new ArrayList<>();
    Duration end = Duration.ZERO;
    for (AgendaItem item : agenda.items()) {
      if (item instanceof Pause pause) {
        items.add(new Pause(end, pause.length(), pause.meal()));
      } else {
        Activity a = (Activity) item;
        boolean swapped = a.equals(out);
        items.add(
            new Activity(
                swapped ? in.id() : a.exercise(),
                a.title(),
                a.kind(),
                a.phase(),
                end,
                swapped ? length : a.length(),
                a.format(),
                a.energy()));
      }
      end = items.get(items.size() - 1).end();
    }
    return new Agenda(
        agenda.title(),
        agenda.goal(),
        agenda.mode(),
        agenda.people(),
        agenda.cap(),
        agenda.start(),
        agenda.phases(),
        items,
        agenda.buffer(),
        agenda.curve(),
        agenda.figures());
  }

  @Test
  void what_the_brief_asks_for_has_no_next_best() {
    Wishes wishes =
        new Wishes(
            Set.of("dots"),
            Set.of(),
            List.of(new Wishes.Pin("carousel", new Moment.After(Duration.ofMinutes(20)))),
            Set.of());
    WhyThis why = whyThis(brief(120).wishes(wishes).build(), Sample.catalog());

    assertThat(reason("dots", why).place().asked()).contains(new Wish.Include("dots"));
    assertThat(reason("carousel", why).place().asked())
        .contains(new Wish.Pinned(wishes.pins().get(0)));
    assertThat(reason("dots", why).instead()).isEqualTo(new Instead.Asked());
    assertThat(reason("carousel", why).instead()).isEqualTo(new Instead.Asked());
  }

  @Test
  void where_no_other_fits_the_agenda_is_built_anew_without_it_or_cannot_be() {
    List<Exercise> exercises =
        List.of(
            SampleExercise.of("hello", Kind.ICEBREAKER, 5, 5, 10, "arrival").build(),
            SampleExercise.of("ideas", Kind.DIVERGENT, 20, 25, 40, "idea-pool").build(),
            SampleExercise.of("sort", Kind.CONVERGENT, 15, 15, 20, "shortlist").build(),
            SampleExercise.of("review", Kind.CONVERGENT, 15, 15, 20, "shortlist", "feedback")
                .build(),
            SampleExercise.of("quick", Kind.DECISION, 10, 15, 20, "decision").build(),
            SampleExercise.of("informed", Kind.DECISION, 10, 15, 20, "decision")
                .needs("feedback")
                .build(),
            SampleExercise.of("bye", Kind.REFLECTION, 5, 10, 15, "takeaways").build());
    Wishes known = new Wishes(Set.of(), Set.of(), List.of(), Set.of("review"));

    WhyThis why = whyThis(brief(90).wishes(known).build(), Sample.only(exercises));

    assertThat(in("close", why).instead()).isEqualTo(new Instead.Nothing());
    assertThat(in("decide", why).activity().exercise()).isEqualTo("quick");
    assertThat(in("decide", why).instead())
        .asInstanceOf(type(Instead.Anew.class))
        .satisfies(
            anew -> {
              assertThat(anew.proof().best()).isTrue();
              assertThat(anew.agenda().activities())
                  .extracting(Activity::exercise)
                  .contains("review", "informed")
                  .doesNotContain("quick", "sort");
              assertThat(anew.prices()).anyMatch(price -> price.why().equals("used last time"));
            });
  }

  @Test
  void who_has_no_budget_is_told_what_takes_none() {
    Brief brief = brief(60).build();
    Composed composed = (Composed) Composer.of(Sample.catalog()).compose(brief, AMPLE);

    WhyThis why =
        Explainer.of(Sample.catalog()).whyThis(brief, composed, new Budget(1, AMPLE.time()));
    WhyThis cancelled = Explainer.of(Sample.catalog()).whyThis(brief, composed, AMPLE, () -> true);

    assertThat(why.reasons()).anyMatch(r -> r.instead() instanceof Instead.Unknown);
    assertThat(cancelled.reasons())
        .allSatisfy(r -> assertThat(r.instead()).isInstanceOf(Instead.Unknown.class))
        .anySatisfy(r -> assertThat(r.takesOver()).isNotEmpty());
  }

  private static WhyThis whyThis(Brief brief, Catalog catalog) {
    Composed composed = (Composed) Composer.of(catalog).compose(brief, AMPLE);
    return Explainer.of(catalog).whyThis(brief, composed, AMPLE);
  }

  private static Reason in(String phase, WhyThis why) {
    return why.reasons().stream()
        .filter(reason -> reason.activity().phase().equals(phase))
        .findFirst()
        .orElseThrow();
  }

  private static Reason reason(String exercise, WhyThis why) {
    return why.reasons().stream()
        .filter(reason -> reason.activity().exercise().equals(exercise))
        .findFirst()
        .orElseThrow();
  }
}
