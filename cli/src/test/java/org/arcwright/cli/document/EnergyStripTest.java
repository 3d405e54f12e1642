package org.arcwright.cli.document;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EnergyStripTest {
  @Test
  void draws_bars_curve_gaps_and_the_open_close() {
    assertThat(String.join("\n", EnergyStrip.draw(Samples.agenda(), Marks.ASCII, 50)))
        .isEqualTo(
            """
            energy 4 |     //////o/o/o o o
                     |     //////////
                   3 |:o:o:o/o/o/////      o o o o o
                     |::::://////////
                   2 |::::://////////     ########## o o o o o
                     |::::://////////     ##########
              calm 1 |1::::2/////////     3#########4====
                     +---------------     ---------------.....
                      0:00           0:30           1:00
                      o energy wished for   : icebreaker
                      / divergent   # decision   = reflection
                      . kept free\
            """);
  }

  @ParameterizedTest
  @ValueSource(ints = {60, 78, 80, 100, 160})
  void keeps_to_the_width(int width) {
    assertThat(EnergyStrip.draw(Samples.agenda(), Marks.UNICODE, width))
        .allMatch(line -> line.length() <= width)
        .anyMatch(line -> line.contains("╌╌"));
  }

  @Test
  void needs_no_letter_beyond_ascii_where_the_terminal_has_none() {
    assertThat(String.join("", EnergyStrip.draw(Samples.agenda(), Marks.ASCII, 80)))
        .matches("\\p{ASCII}+");
  }
}
