package org.arcwright.cli.document;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EnergyStripTest {
  @Test
  void drawsBarsCurveGapsAndTheOpenClose() {
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
  void keepsToTheWidth(int width) {
    assertThat(EnergyStrip.draw(Samples.agenda(), Marks.UNICODE, width))
        .allMatch(line -> line.length() <= width)
        .anyMatch(line -> line.contains("╌╌"));
  }

  @Test
  void needsNoLetterBeyondAsciiWhereTheTerminalHasNone() {
    assertThat(String.join("", EnergyStrip.draw(Samples.agenda(), Marks.ASCII, 80)))
        .matches("\\p{ASCII}+");
  }
}
