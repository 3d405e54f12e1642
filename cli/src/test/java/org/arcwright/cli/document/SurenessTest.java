package org.arcwright.cli.document;

import static org.assertj.core.api.Assertions.assertThat;

import org.arcwright.cli.words.Language;
import org.junit.jupiter.api.Test;

class SurenessTest {
  @Test
  void the_least_buffer_is_said_with_its_minutes() {
    assertThat(new Sureness(80, 0.82, 9, 20, true, true).sentence(Language.ENGLISH))
        .isEqualTo(
            "You asked for 80 % to end on time: it is 82 % with 20 min free at the close (a buffer"
                + " of 9 %), and no smaller buffer is enough.");
  }

  @Test
  void where_no_buffer_is_needed_it_says_why() {
    assertThat(new Sureness(80, 0.97, 0, 35, true, true).sentence(Language.ENGLISH))
        .endsWith(
            "it is 97 % without keeping any buffer, for the best agenda ends 35 min before the"
                + " time is up anyway.");
    assertThat(new Sureness(50, 0.6, 0, 0, true, true).sentence(Language.ENGLISH))
        .endsWith("without keeping any buffer, for its exercises seldom run over.");
  }

  @Test
  void where_no_buffer_reaches_it_the_likeliest_is_there_and_what_to_do() {
    assertThat(new Sureness(99, 0.71, 30, 10, false, true).sentence(Language.ENGLISH))
        .endsWith(
            "no agenda for this brief reaches that, whatever its buffer; the likeliest has 71 %"
                + " with 10 min free at the close. Give the day more time, or be content with"
                + " less.");
    assertThat(new Sureness(99, 0.71, 30, 10, false, false).sentence(Language.ENGLISH))
        .contains("no agenda was found for that before the time for the search ended");
  }
}
