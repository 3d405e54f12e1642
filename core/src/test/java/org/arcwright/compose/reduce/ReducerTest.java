package org.arcwright.compose.reduce;

import static org.arcwright.compose.reduce.Sample.brief;
import static org.arcwright.compose.reduce.Sample.candidate;
import static org.arcwright.compose.reduce.Sample.catalog;
import static org.arcwright.compose.reduce.Sample.reduce;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TimeZone;
import java.util.concurrent.atomic.AtomicInteger;
import org.arcwright.brief.BriefBuilder;
import org.arcwright.brief.EnergyCurve;
import org.arcwright.brief.Moment;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.catalog.Kind;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Candidate;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class ReducerTest {

  @Test
  void an_exercise_becomes_a_candidate() {
    Exercise sketches =
        SampleExercise.of("sketches", Kind.DIVERGENT, 11, 16, 27, "idea-pool", "feedback")
            .energy(2)
            .format(Format.SOLO)
            .needs("question")
            .build();

    assertThat(candidate(reduce(brief(90), sketches), "sketches"))
        .isEqualTo(
            new Candidate(
                "sketches",
                "divergent",
                List.of(15, 20, 25),
                List.of(0, 50, 100),
                20,
                "solo",
                List.of("question"),
                List.of("idea-pool"),
                50));
  }

  @Test
  void candidates_stand_in_the_order_of_their_ids_whatever_the_catalog_s_order() {
    List<Exercise> shuffled = new ArrayList<>(Sample.exercises());
    Collections.reverse(shuffled);

    Instance instance =
        Reducer.reduce(brief(90).build(), Sample.only(shuffled), () -> false).instance();

    assertThat(instance.candidates()).extracting(Candidate::id).isSorted();
    assertThat(instance).isEqualTo(reduce(brief(90)).instance());
  }

  @Test
  void neither_locale_nor_zone_of_the_machine_matters() {
    BriefBuilder brief =
        brief(90).start(ZonedDateTime.of(2027, 3, 28, 1, 30, 0, 0, ZoneId.of("Europe/Berlin")));
    Instance here = reduce(brief).instance();
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Apia"));

      assertThat(reduce(brief).instance()).isEqualTo(here);
      assertThat(
              reduce(
                      brief(30),
                      SampleExercise.of("long", Kind.DIVERGENT, 50, 50, 50, "idea-pool").build())
                  .leftOut())
          .containsEntry(
              "long",
              Refusal.by("cap", "too long: takes at least 50 minutes; the workshop has 30 in all"));
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @Test
  void only_products_that_somebody_needs_or_a_phase_must_leave_are_named() {
    Instance instance = reduce(brief(90).given(List.of("feedback"))).instance();

    assertThat(instance.products())
        .containsExactly("arrival", "decision", "idea-pool", "shortlist", "takeaways");
    assertThat(instance.initial()).isEmpty();
    assertThat(candidate(reduce(brief(90)), "names").yields()).containsExactly("arrival");
  }

  @Test
  void what_the_goal_and_the_brief_take_for_granted_exists_at_the_start() {
    Exercise needy =
        SampleExercise.of("needy", Kind.DIVERGENT, 5, 5, 5, "idea-pool")
            .needs("question", "feedback")
            .build();

    assertThat(reduce(brief(90).given(List.of("feedback")), needy).instance().initial())
        .containsExactly("feedback", "question");
  }

  @Test
  void the_curve_is_read_in_the_middle_of_each_cell() {
    EnergyCurve rising =
        new EnergyCurve(List.of(new EnergyCurve.Point(0, 10), new EnergyCurve.Point(100, 50)));

    assertThat(reduce(brief(20).curve(rising)).instance().curve()).containsExactly(15, 25, 35, 45);
  }

  @Test
  void the_buffer_is_the_brief_s() {
    assertThat(reduce(brief(90).bufferPercent(7)).instance().bufferPercent()).isEqualTo(7);
  }

  @Test
  void work_stops_when_asked_and_says_so() {
    AtomicInteger asked = new AtomicInteger();

    Reduction stopped =
        Reducer.reduce(brief(90).build(), catalog(), () -> asked.incrementAndGet() >= 1);

    assertThat(stopped.complete()).isFalse();
    assertThat(stopped.instance().candidates()).isEmpty();
    assertThat(reduce(brief(90)).complete()).isTrue();
  }

  /** A catalog of any size can be left at once, and half a catalog is not composed from. */
  @Test
  void whenever_work_stops_nothing_is_half_read() {
    Catalog large = Sample.only(Crowd.exercises(600));
    AtomicInteger asked = new AtomicInteger();
    Reducer.reduce(brief(90).build(), large, () -> asked.incrementAndGet() < 0);
    assertThat(asked).as("once for 256 exercises, which are gone through twice").hasValue(3 + 3);

    for (int last = 1; last <= 6; last++) {
      AtomicInteger left = new AtomicInteger(last);
      Reduction stopped =
          Reducer.reduce(brief(90).build(), large, () -> left.decrementAndGet() == 0);

      assertThat(stopped.complete()).as("stopped at question %d", last).isFalse();
      assertThat(stopped.instance().candidates()).isEmpty();
    }
  }

  @Nested
  class A_wish {
    @Test
    void is_carried_over() {
      Wishes wishes =
          new Wishes(
              Set.of("dots", "carousel"),
              Set.of(),
              List.of(new Wishes.Pin("ballot", new Moment.After(Sample.minutes(60)))),
              Set.of());

      Instance instance = reduce(brief(90).wishes(wishes)).instance();

      assertThat(instance.include()).containsExactly("carousel", "dots");
      assertThat(instance.pins()).containsExactly(new Instance.Pin("ballot", 60));
    }

    @Test
    void that_the_brief_itself_rules_out_stays_and_the_reason_is_kept() {
      Exercise deep =
          SampleExercise.of("deep", Kind.ICEBREAKER, 5, 5, 5, "arrival").openness(3).build();
      Wishes wishes = new Wishes(Set.of("deep"), Set.of(), List.of(), Set.of());

      Reduction reduction = reduce(brief(90).wishes(wishes), deep);

      assertThat(reduction.instance().include()).containsExactly("deep");
      assertThat(reduction.instance().candidateIds()).doesNotContain("deep");
      assertThat(reduction.leftOut()).containsKey("deep");
    }
  }

  @Nested
  class A_word_that_names_nothing_is_refused {
    @Test
    void as_the_goal() {
      BriefBuilder brief =
          org.arcwright.brief.Brief.builder(
              "Typo", "choose-a-venu", org.arcwright.catalog.Mode.REMOTE, 8, Sample.minutes(90));

      refused(brief, "goal is choose-a-venu: there is no such goal; perhaps choose-a-venue");
    }

    @Test
    void as_a_tool() {
      refused(
          brief(90).tools(List.of("beamer")),
          "tools is beamer: there is no such tool in the catalog; known are breakouts, call,"
              + " music, wall");
    }

    @Test
    void as_a_product() {
      refused(
          brief(90).given(List.of("questions")),
          "given is questions: there is no such work product in the catalog; perhaps question");
    }

    @Test
    void as_a_wish() {
      refused(
          brief(90).wishes(new Wishes(Set.of("dotz"), Set.of(), List.of(), Set.of())),
          "include is dotz: there is no such exercise in the catalog; perhaps dots");
      refused(
          brief(90).wishes(new Wishes(Set.of(), Set.of("dotz"), List.of(), Set.of())),
          "leave-out is dotz: there is no such exercise in the catalog; perhaps dots");
      refused(
          brief(90).wishes(new Wishes(Set.of(), Set.of(), List.of(), Set.of("dotz"))),
          "used-last-time is dotz: there is no such exercise in the catalog; perhaps dots");
      Wishes.Pin pin = new Wishes.Pin("dotz", new Moment.After(Sample.minutes(30)));
      refused(
          brief(90).wishes(new Wishes(Set.of(), Set.of(), List.of(pin), Set.of())),
          "pin is dotz: there is no such exercise in the catalog; perhaps dots");
    }

    private void refused(BriefBuilder brief, String message) {
      assertThatThrownBy(() -> reduce(brief))
          .isInstanceOf(InvalidValueException.class)
          .hasMessage(message);
    }
  }
}
