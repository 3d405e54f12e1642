package org.arcwright.cli.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.arcwright.cli.handout.Quantity.Unit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a line of an exercise's materials says about how many are needed. */
class QuantityTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "Three to five dots for each person ~ 5 ~ PERSON",
        "One sheet a person with three columns ~ 1 ~ PERSON",
        "An empty table for each group, with options as columns ~ 1 ~ GROUP",
        "A large sheet for every table ~ 1 ~ GROUP",
        "12 slips per pair ~ 12 ~ PAIR",
        "A few notes for each pair ~ 0 ~ PAIR",
        "A sheet and a pen for each person ~ 0 ~ PERSON",
        "Two notes for each group at each station ~ 0 ~ GROUP",
        "Paper coins or a tally sheet for each team ~ 0 ~ GROUP",
      })
  void a_line_says_how_many_for_each_what(String line, int each, Unit unit) {
    assertThat(Quantity.in(line)).contains(new Quantity(each, unit));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"Thick pens", "Items numbered, doubles merged", "One large sheet for each item"})
  void what_is_for_all_says_nothing(String line) {
    assertThat(Quantity.in(line)).isEqualTo(Optional.empty());
  }
}
