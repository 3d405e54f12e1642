package org.arcwright.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Set;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Minutes;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Per;
import org.arcwright.catalog.SizeRange;
import org.arcwright.catalog.Source;
import org.arcwright.catalog.Speaker;
import org.arcwright.catalog.Step;
import org.arcwright.catalog.Suitability;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExerciseFormatTest {
  private static final String FILE = SmallCatalog.TWO_OBJECTS;

  @Test
  void every_key_leads_to_its_place_in_the_model() {
    Exercise exercise = CatalogFormat.readExercise("two-objects.yaml", FILE);

    assertThat(exercise.id()).isEqualTo("two-objects");
    assertThat(exercise.kind()).isEqualTo(Kind.ICEBREAKER);
    assertThat(exercise.people()).isEqualTo(new SizeRange(4, 12));
    assertThat(exercise.breakout()).isEmpty();
    assertThat(exercise.moves()).isFalse();
    assertThat(exercise.needs()).isEmpty();
    assertThat(exercise.yields()).containsExactly("arrival");
    assertThat(exercise.steps())
        .containsExactly(
            new Step(
                "Everybody shows two things and says why.",
                Speaker.EACH,
                Format.PLENARY,
                new Minutes(seconds(30), seconds(60), seconds(75)),
                Per.PERSON,
                1));
    assertThat(exercise.in(Mode.IN_PERSON))
        .isEqualTo(new Suitability(2, "From the bag.", Set.of()));
    assertThat(exercise.care().access()).containsExactly("Say what is seen.");
    assertThat(exercise.notes().watch()).containsExactly("Who talks long.");
    assertThat(exercise.notes().carryOver()).isEqualTo("Names and faces.");
    assertThat(exercise.source()).isEqualTo(new Source.CommonPractice());
  }

  @Test
  void what_is_written_looks_as_if_a_person_had() {
    assertThat(CatalogFormat.write(CatalogFormat.readExercise("two-objects.yaml", FILE)))
        .isEqualTo(FILE);
  }

  @Test
  void long_texts_are_folded_and_odd_ones_quoted() {
    String opening = "A word: and more, and so on, ".repeat(6).strip();
    String file =
        FILE.replace("opening: Take two things from your desk.", "opening: '" + opening + "'")
            .replace("carry-over: Names and faces.", "carry-over: '#1: \"names\"'");
    Exercise exercise = CatalogFormat.readExercise("two-objects.yaml", file);
    String written = CatalogFormat.write(exercise);

    assertThat(written).contains("opening: >-\n  A word: and more,").contains("'#1: \"names\"'");
    assertThat(written.lines()).allSatisfy(line -> assertThat(line.length()).isLessThan(110));
    assertThat(CatalogFormat.readExercise("again.yaml", written)).isEqualTo(exercise);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      value = {
        "kind: icebreaker ~ kind: warm-up ~ 3:7: kind, warm-up: icebreaker, divergent, convergent, decision or reflection is right",
        "energy: 3 ~ energy: lively ~ 6:9: energy, lively: a whole number is right",
        "energy: 3 ~ energy: 6 ~ 6:9: energy, 6: a whole number from 1 to 5 is right",
        "{min: 4, max: 12} ~ {min: 12, max: 4} ~ 5:24: max, 4: it is under min 12; swap the two",
        "{min: 4, max: 12} ~ {min: 4} ~ 5:9: missing key, max: add it, such as max: 12",
        "{min: 4, max: 12} ~ 4-12 ~ 5:9: people, 4-12: keys and values are right, such as min: 4",
        "yields: [arrival] ~ yields: [] ~ 8:9: yields, empty: name at least one work product that it leaves behind",
        "openness: 1 ~ openness: 2 ~ 7:11: openness, 2: what moves bodies or asks for disclosure needs cautions and an opt-out",
        "openness: 1 ~ openness: 1\\nmoves: maybe ~ 8:8: moves, maybe: true or false is right",
        "who: each ~ who: everybody ~ 12:10: who, everybody: facilitator, each, group, all or nobody is right",
        "format: plenary ~ format: small-groups ~ 13:13: breakout, missing: a step works in small groups; say how large they are",
        "format: plenary ~ format: solo ~ 15:10: per, person: working alone, all work at once: write \"per: session\"",
        "[0.5, 1, 1.25] ~ [1, 2] ~ 14:14: minutes, 2 values: 3 are right, such as [1, 2, 3]",
        "[0.5, 1, 1.25] ~ 5 ~ 14:14: minutes, 5: a list is right, such as [a, b]",
        "[0.5, 1, 1.25] ~ [3, 2, 1] ~ 14:14: minutes, [3, 2, 1]: write them ascending: min, typical, max",
        "[0.5, 1, 1.25] ~ [0.333, 1, 2] ~ 14:15: minutes, 0.333: whole, half and quarter minutes are right",
        "[0.5, 1, 1.25] ~ [.inf, 1, 2] ~ 14:15: minutes, .inf: a number is right, such as 3 or 2.5",
        "per: person ~ per: round ~ 11:5: missing key, rounds: add it, such as rounds: 3",
        "per: person ~ rounds: 3 ~ 15:13: rounds, 3: rounds go with \"per: round\" only",
        "hybrid: ~ hybird: ~ 19:3: unknown key, hybird: perhaps hybrid",
        "fit: 2 ~ fit: 5 ~ 18:20: fit, 5: a whole number from 0 to 3 is right",
        "mark: common-practice ~ mark: published ~ 23:9: missing key, cite: add it, such as cite: Author (year). Title.",
        "mark: common-practice ~ mark: common-practice, cite: x ~ 23:39: cite, x: common practice has none; strike it",
        "mark: common-practice ~ mark: hearsay ~ 23:16: mark, hearsay: published, common-practice or memory is right",
        "watch: [Who talks long.] ~ watch: Who talks long. ~ 20:8: watch, Who talks long.: a list is right, such as [a, b]",
      })
  void a_fault_is_told_at_its_place(String text, String faulty, String complaint) {
    String file = FILE.replace(text, faulty.replace("\\n", "\n"));

    assertThat(Complaints.of(() -> CatalogFormat.readExercise("e.yaml", file)))
        .contains("e.yaml:" + complaint);
  }

  private static Duration seconds(int seconds) {
    return Duration.ofSeconds(seconds);
  }
}
