package org.arcwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.arcwright.compose.Parameter;
import org.arcwright.compose.Sweep;
import org.arcwright.compose.WhatIf;
import org.arcwright.compose.WhatIf.Row;
import org.arcwright.format.WhatIfFormat;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ComposeVaryTest {
  @TempDir Path folder;
  private Path brief;

  @BeforeEach
  void writeBrief() throws IOException {
    brief = Briefs.write(folder, Briefs.SHORT);
  }

  @Test
  void a_row_for_each_value_and_where_other_exercises_serve_better() {
    Run run = Run.of("compose", brief, "--vary", "cap=15..75/20");

    assertThat(run.code()).isEqualTo(Exit.DONE);
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .startsWith("Ideas for the open day\nWhat if there were more or less time: 15 min to ")
        .containsPattern("(?m)^time +points +work +breaks +energy fit +exercises$")
        .containsPattern("(?m)^15 min +nothing fits: ")
        .containsPattern("(?m)^1 h 15 min \\* +[0-9,]+ ")
        .contains("* is what the brief says.", "Where other exercises serve better\n")
        .contains("Least is given up at ");
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void in_json_it_is_read_back() {
    Run run = Run.of("compose", brief, "--vary", "energy=-0.5..0.5/0.5", "--format", "json");

    WhatIf.Answer answer = WhatIfFormat.read("out.json", run.out());
    assertThat(answer.sweep()).isEqualTo(new Sweep(Parameter.ENERGY, -5, 5, 5));
    assertThat(answer.own()).isZero();
    assertThat(answer.rows()).hasSize(3).allMatch(Row.Best.class::isInstance);
  }

  @Test
  void where_no_value_has_an_agenda_the_exit_code_says_so() {
    Run run = Run.of("compose", brief, "--vary", "cap=15m..20m/5m");

    assertThat(run.code()).isEqualTo(Exit.NEGATIVE);
    assertThat(run.out()).contains("nothing fits", "The brief itself says 1 h 15 min.");
  }

  @ParameterizedTest
  @CsvSource({
    "cap=2h..2h30m/30m, CAP, 120, 150, 30",
    "cap=120..150, CAP, 120, 150, 15",
    "people=4..6, PEOPLE, 4, 6, 1",
    "buffer=0%..30%/10%, BUFFER, 0, 30, 10",
    "buffer=0..30, BUFFER, 0, 30, 5",
    "energy=-1..0.5/0.3, ENERGY, -10, 5, 3"
  })
  void ranges_are_read_as_briefs_write_them(
      String text, Parameter figure, int from, int to, int step) {
    assertThat(new SweepConverter().convert(text)).isEqualTo(new Sweep(figure, from, to, step));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "capp=1..2 | character 1: \"capp\": perhaps cap is meant",
        "time=1..2 | character 1: \"time\": cap, people, buffer or energy can be varied",
        "cap | character 4: add from where to where, such as cap=2h..4h/15m",
        "cap=60 | character 5: \"60\": write a range",
        "cap=60..9x/5 | character 9: \"9x\": write minutes, such as 120 or 2h30m",
        "cap=..60 | character 5: write minutes",
        "cap=60..10 | character 9: \"10\": from 15 minutes to 40 hours is right",
        "cap=60..30 | character 9: \"30\": the smaller one comes first",
        "people=1..9/0 | character 13: \"0\": a step is over 0",
        "people=1..9/ | character 13: write a whole number",
        "people=1..9999 | character 11: \"9999\": from 1 to 1,000 people is right",
        "buffer=0..100/1 | character 8: \"0..100/1\": these are 101 values",
        "energy=-1..1/0,5 | character 14: \"0,5\": write levels more or less",
        "energy=-5..1 | character 8: \"-5\": from -4 to 4 levels is right"
      })
  void what_is_wrong_is_told_with_its_place(String text, String complaint) {
    Run run = Run.of("compose", brief, "--vary", text);

    assertThat(run.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("'--vary'", "\"" + text + "\", " + complaint);
  }

  @ParameterizedTest
  @CsvSource({
    "--options, 2, --options",
    "--confidence, 90%, --confidence",
    "--format, markdown, text or json",
    "--out, x.html, text or json",
    "--instance, i.json, --instance"
  })
  void what_does_not_go_with_it_is_refused(String option, String value, String complaint) {
    Run run = Run.of("compose", brief, "--vary", "cap=60..75", option, value);

    assertThat(run.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("--vary", complaint);
  }
}
