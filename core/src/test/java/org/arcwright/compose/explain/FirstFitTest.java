package org.arcwright.compose.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.arcwright.compose.explain.Feasibility.Status;
import org.arcwright.compose.explain.FirstFit.Found;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The first step that is enough. Oracle: all steps, one after the other. */
class FirstFitTest {

  @Property(tries = 1000, seed = "4711")
  void it_is_the_first_of_all_that_are_enough_and_certain_if_all_before_are_known(
      @ForAll("answers") List<Status> answers, @ForAll @IntRange(max = 4) int skipped) {
    int from = Math.min(skipped, answers.size());
    int first = from;
    while (first < answers.size() && answers.get(first) != Status.FITS) {
      first++;
    }
    boolean certain = !answers.subList(from, first).contains(Status.UNKNOWN);

    assertThat(FirstFit.of(from, answers.size(), once(answers)))
        .isEqualTo(new Found(first < answers.size() ? first : -1, certain));
  }

  @Property(tries = 1000, seed = "4711")
  void whether_any_is_enough(
      @ForAll("answers") List<Status> answers, @ForAll @IntRange(max = 4) int skipped) {
    int from = Math.min(skipped, answers.size());
    List<Status> asked = answers.subList(from, answers.size());
    Status any = asked.contains(Status.UNKNOWN) ? Status.UNKNOWN : Status.FITS_NOT;

    assertThat(FirstFit.any(from, answers.size(), once(answers)))
        .isEqualTo(asked.contains(Status.FITS) ? Status.FITS : any);
  }

  /** Where more is never less, all steps from one on are enough, or not known to be too little. */
  @Property(tries = 1000, seed = "4711")
  void where_more_is_never_less_it_takes_few_questions(
      @ForAll @IntRange(max = 1000) int tooFew, @ForAll("open") List<Status> enough) {
    List<Status> answers = new ArrayList<>();
    for (int i = 0; i < tooFew; i++) {
      answers.add(Status.FITS_NOT);
    }
    answers.addAll(enough);
    int[] asked = new int[1];
    IntFunction<Status> once = once(answers);

    int found =
        FirstFit.whereMoreIsNeverLess(
            answers.size(),
            i -> {
              asked[0]++;
              return once.apply(i);
            });

    assertThat(found).isEqualTo(tooFew);
    // the last, then twice as far each time, then halves: about 2 log2 of how far it is
    assertThat(asked[0]).isLessThanOrEqualTo(3 + 2 * log2(tooFew + 1));
  }

  /** Steps from the thirtieth on are enough, but only so many questions are answered. */
  @ParameterizedTest
  @CsvSource({"5, -1", "6, 31", "9, 31", "10, 30", "100, 30"})
  void when_a_budget_ends_the_least_that_is_known_to_be_enough_is_better_than_nothing(
      int answered, int step) {
    int[] asked = new int[1];

    Found found =
        FirstFit.of(
            0,
            100,
            i -> {
              boolean late = ++asked[0] > answered;
              return late ? Status.UNKNOWN : i < 30 ? Status.FITS_NOT : Status.FITS;
            });

    assertThat(found).isEqualTo(new Found(step, answered == 100));
  }

  @Test
  void whether_any_is_enough_is_asked_ever_further_away() {
    int[] asked = new int[1];

    Status any =
        FirstFit.any(
            0,
            1000,
            i -> {
              asked[0]++;
              return i < 500 ? Status.FITS_NOT : Status.FITS;
            });

    assertThat(any).isEqualTo(Status.FITS);
    assertThat(asked[0]).as("1, 2, 4 ... 512").isEqualTo(10);
  }

  @Test
  void where_even_the_last_is_too_little_one_question_is_enough() {
    List<Integer> asked = new ArrayList<>();

    int found =
        FirstFit.whereMoreIsNeverLess(
            500,
            i -> {
              asked.add(i);
              return Status.FITS_NOT;
            });

    assertThat(found).isEqualTo(500);
    assertThat(asked).containsExactly(499);
  }

  private static int log2(int number) {
    return 32 - Integer.numberOfLeadingZeros(number);
  }

  /** Each question is dear, so none is asked twice. */
  private static IntFunction<Status> once(List<Status> answers) {
    List<Integer> asked = new ArrayList<>();
    return i -> {
      assertThat(asked).doesNotContain(i);
      asked.add(i);
      return answers.get(i);
    };
  }

  @Provide
  Arbitrary<List<Status>> answers() {
    return Arbitraries.of(Status.FITS_NOT, Status.FITS_NOT, Status.FITS, Status.UNKNOWN)
        .list()
        .ofMaxSize(20);
  }

  @Provide
  Arbitrary<List<Status>> open() {
    return Arbitraries.of(Status.FITS, Status.UNKNOWN).list().ofMaxSize(20);
  }
}
