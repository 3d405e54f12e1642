package org.arcwright.compose;

import static org.arcwright.compose.reduce.Sample.brief;
import static org.arcwright.compose.reduce.Sample.catalog;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.arcwright.agenda.Agenda;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.Composition.NothingFits;
import org.arcwright.compose.LeastBuffer.Found;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LeastBufferTest {
  private static final Composer COMPOSER = Composer.of(catalog());
  private static final Brief BRIEF = brief(120).build();

  /** The more is kept free, the likelier: forty minutes would be certain. */
  private static double byBuffer(Agenda agenda) {
    return Math.min(0.99, agenda.buffer().toMinutes() / 40.0);
  }

  /** Not rising: only an odd number of exercises ends on time. */
  private static double byCount(Agenda agenda) {
    return agenda.activities().size() % 2 == 1 ? 0.8 : 0.2;
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.1, 0.25, 0.4, 0.5, 0.7})
  void it_is_the_first_buffer_that_is_enough_of_all(double wanted) {
    List<ToDoubleFunction<Agenda>> both =
        List.of(LeastBufferTest::byBuffer, LeastBufferTest::byCount);
    for (ToDoubleFunction<Agenda> onTime : both) {
      Found found = LeastBuffer.find(COMPOSER, BRIEF, wanted, onTime, Budget.USUAL);

      int expected = firstOfAll(wanted, onTime);
      assertThat(found.reached()).isEqualTo(expected <= 100);
      assertThat(found.complete()).isTrue();
      if (found.reached()) {
        assertThat(found.brief().bufferPercent()).isEqualTo(expected);
        assertThat(found.onTime()).isGreaterThanOrEqualTo(wanted);
        assertThat(onTime.applyAsDouble(((Composed) found.composition()).agenda()))
            .isEqualTo(found.onTime());
      }
    }
  }

  /** Against composing with each buffer from nothing on. */
  private static int firstOfAll(double wanted, ToDoubleFunction<Agenda> onTime) {
    for (int buffer = 0; buffer <= 100; buffer++) {
      if (COMPOSER.compose(BRIEF.toBuilder().bufferPercent(buffer).build(), Budget.USUAL)
              instanceof Composed composed
          && onTime.applyAsDouble(composed.agenda()) >= wanted) {
        return buffer;
      }
    }
    return 101;
  }

  @Test
  void where_no_buffer_is_enough_the_likeliest_agenda_is_the_answer() {
    Found found = LeastBuffer.find(COMPOSER, BRIEF, 0.995, LeastBufferTest::byBuffer, Budget.USUAL);

    assertThat(found.reached()).isFalse();
    assertThat(found.composition()).isInstanceOf(Composed.class);
    assertThat(found.onTime()).isLessThan(0.995).isPositive();
  }

  @Test
  void where_nothing_fits_that_is_the_answer() {
    Found found =
        LeastBuffer.find(COMPOSER, brief(15).build(), 0.9, LeastBufferTest::byBuffer, Budget.USUAL);

    assertThat(found.reached()).isFalse();
    assertThat(found.composition()).isInstanceOf(NothingFits.class);
  }

  @Test
  void a_budget_that_ends_early_leaves_the_best_so_far_and_says_so() {
    Found found =
        LeastBuffer.find(
            COMPOSER, BRIEF, 0.9, LeastBufferTest::byBuffer, Budget.of(Duration.ofNanos(1)));

    assertThat(found.complete()).isFalse();
  }

  @Test
  void certainty_cannot_be_had() {
    assertThatThrownBy(
            () -> LeastBuffer.find(COMPOSER, BRIEF, 1, LeastBufferTest::byBuffer, Budget.USUAL))
        .isInstanceOf(InvalidValueException.class)
        .hasMessage("confidence is 1.0: over 0 and under 1 is right");
  }
}
