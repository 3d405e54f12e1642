package org.arcwright.compose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.TimeZone;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.arcwright.brief.Brief;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Product;
import org.arcwright.catalog.Tool;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.Composition.NothingFits;
import org.arcwright.compose.explain.Explainer;
import org.arcwright.compose.reduce.Crowd;
import org.arcwright.compose.reduce.Sample;
import org.arcwright.compose.search.OptionRule;
import org.arcwright.format.ClashFormat;
import org.arcwright.format.CompositionFormat;
import org.arcwright.format.OptionsFormat;
import org.arcwright.format.ReviewFormat;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The same brief and catalog give the same answer, whatever else may differ. */
class SameAnswerTest {
  private static final List<Exercise> EXERCISES =
      Stream.concat(Sample.exercises().stream(), Crowd.exercises(60).stream()).toList();
  private static final Catalog CATALOG = Sample.only(EXERCISES);

  /** An agenda with much given up, nothing that fits for reasons with figures, a refusal. */
  private static final List<Brief> BRIEFS =
      List.of(
          Sample.brief(95).build(),
          Sample.brief(Mode.IN_PERSON, 31, 240).build(),
          Sample.brief(90)
              .wishes(new Wishes(Set.of("carousel", "race"), Set.of("dots"), List.of(), Set.of()))
              .build(),
          Sample.brief(25).build(),
          Brief.builder("Wrong", "choose-a-venu", Mode.REMOTE, 8, Duration.ofHours(2)).build());

  /** The labels decide, so that a busy machine does not. */
  private static final Budget AMPLE = Budget.of(Duration.ofMinutes(10));

  private final Locale locale = Locale.getDefault();
  private final TimeZone zone = TimeZone.getDefault();

  @AfterEach
  void restore() {
    Locale.setDefault(locale);
    TimeZone.setDefault(zone);
  }

  @Test
  void the_order_of_the_catalog_does_not_matter() {
    List<String> expected = answers(CATALOG);
    for (int seed = 0; seed < 12; seed++) {
      Random random = new Random(seed);
      List<Product> products = shuffled(Sample.products(), random);
      List<Tool> tools = shuffled(Sample.tools(), random);
      List<Exercise> exercises = shuffled(EXERCISES, random);

      Catalog catalog = Catalog.of(products, tools, exercises, List.of(Sample.goal()));

      assertThat(answers(catalog)).as("order %s", seed).isEqualTo(expected);
    }
  }

  /** Turkish has an i without a dot, Arabic and Thai have digits and years of their own. */
  static Stream<Locale> locales() {
    return Stream.of(
            "en-US", "de-AT", "tr-TR", "ar-EG-u-nu-arab", "th-TH-u-ca-buddhist-nu-thai", "")
        .map(Locale::forLanguageTag);
  }

  @ParameterizedTest
  @MethodSource("locales")
  void the_locale_does_not_matter(Locale other) {
    Locale.setDefault(Locale.ROOT);
    List<String> expected = answers(CATALOG);

    Locale.setDefault(other);

    assertThat(answers(CATALOG)).isEqualTo(expected);
  }

  @Test
  void the_machines_time_zone_does_not_matter() {
    List<String> expected = answers(CATALOG);
    for (String id : List.of("UTC", "Asia/Kathmandu", "America/St_Johns", "Pacific/Kiritimati")) {
      TimeZone.setDefault(TimeZone.getTimeZone(id));

      assertThat(answers(CATALOG)).as(id).isEqualTo(expected);
    }
  }

  @Test
  void the_thread_does_not_matter() {
    List<String> expected = answers(CATALOG);

    List<List<String>> together =
        IntStream.range(0, 16).parallel().mapToObj(i -> answers(CATALOG)).toList();

    assertThat(together).allMatch(expected::equals);
  }

  /** All that a composer says of the briefs, as JSON without the time that it took. */
  private static List<String> answers(Catalog catalog) {
    Composer composer = Composer.of(catalog);
    List<String> answers = new ArrayList<>();
    for (Brief brief : BRIEFS) {
      Throwable refused =
          catchThrowable(
              () -> {
                Composition answer = composer.compose(brief, AMPLE);
                answers.add(timeless(CompositionFormat.write(answer)));
                if (brief.equals(BRIEFS.get(0))) {
                  Options options = composer.options(brief, new OptionRule(3, 50, 25), AMPLE);
                  answers.add(timeless(OptionsFormat.write(options)));
                }
                if (answer instanceof NothingFits nothing) {
                  Explainer explainer = Explainer.of(catalog);
                  answers.add(ClashFormat.write(explainer.whyNothingFits(brief, nothing, AMPLE)));
                }
                if (answer instanceof Composed composed) {
                  Review review = composer.check(composed.agenda(), BRIEFS.get(2));
                  answers.add(ReviewFormat.write(review));
                }
              });
      if (refused != null) {
        answers.add(refused.getMessage());
      }
    }
    return answers;
  }

  private static String timeless(String json) {
    return json.replaceAll("\"milliseconds\": [0-9.]+", "\"milliseconds\": 0");
  }

  @Test
  void the_briefs_lead_to_each_kind_of_answer() {
    Composer composer = Composer.of(CATALOG);

    assertThat(composer.compose(BRIEFS.get(1), Budget.USUAL)).isInstanceOf(Composed.class);
    assertThat(composer.compose(BRIEFS.get(3), Budget.USUAL)).isInstanceOf(NothingFits.class);
    assertThat(answers(CATALOG)).anyMatch(text -> text.contains("\"fits\": false"));
    assertThat(answers(CATALOG)).last().asString().contains("perhaps choose-a-venue");
  }

  private static <T> List<T> shuffled(List<T> values, Random random) {
    List<T> copy = new ArrayList<>(values);
    Collections.shuffle(copy, random);
    return copy;
  }
}
