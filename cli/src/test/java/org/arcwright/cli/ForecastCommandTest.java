package org.arcwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.arcwright.forecast.Forecast;
import org.arcwright.format.ForecastFormat;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ForecastCommandTest {
  @TempDir Path folder;
  private Path brief;
  private Path agenda;

  @BeforeEach
  void compose() throws IOException {
    brief = Briefs.write(folder, Briefs.SHORT);
    agenda = folder.resolve("agenda.json");
    assertThat(Run.of("compose", brief, "--out", agenda).code()).isEqualTo(Exit.DONE);
  }

  @Test
  void says_when_it_ends_and_where_the_risk_lies() {
    Run run = Run.of("forecast", agenda);

    assertThat(run.code()).isEqualTo(Exit.DONE);
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .contains("The chance to be done by", "50 %", "80 %", "95 %", "Where the risk lies")
        .contains("What this rests on");
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void json_is_read_again_and_says_the_same() {
    Run json = Run.of("forecast", agenda, "--format", "json");
    Forecast forecast = ForecastFormat.read("forecast.json", json.out());

    assertThat(Run.of("forecast", agenda).out())
        .contains("is " + Math.round(100 * forecast.onTime()) + " %");
  }

  @Test
  void a_file_is_written_in_the_form_that_its_name_says() throws IOException {
    Path picture = folder.resolve("fan.svg");

    Run run = Run.of("forecast", agenda, "--brief", brief, "--out", picture);

    assertThat(run).isEqualTo(new Run(Exit.DONE, "", "Written to " + picture + ".\n"));
    assertThat(Files.readString(picture)).startsWith("<svg ").endsWith("</svg>\n");
  }

  @Test
  void a_confidence_that_is_not_reached_is_an_answer_with_a_code_of_its_own() {
    Run sure = Run.of("forecast", agenda, "--confidence", "99%");
    Run content = Run.of("forecast", agenda, "--confidence", "1%");

    assertThat(sure.code()).isEqualTo(Exit.NEGATIVE);
    assertThat(sure.out()).contains("99 %", "are lacking.");
    assertThat(content.code()).isEqualTo(Exit.DONE);
    assertThat(content.out()).contains("so that is enough.");
  }

  @Test
  void composes_with_as_little_buffer_as_the_confidence_allows() {
    Path sure = folder.resolve("sure.json");

    Run run = Run.of("compose", brief, "--confidence", "70%", "--out", sure);

    assertThat(run.code()).as(run.err()).isEqualTo(Exit.DONE);
    assertThat(run.err()).contains("You asked for 70 %", "no smaller buffer is enough.");
    assertThat(Run.of("forecast", sure, "--confidence", "70%").code()).isEqualTo(Exit.DONE);
    assertThat(Run.of("compose", brief, "--confidence", "70%").out().replaceAll("\\s+", " "))
        .contains("You asked for 70 % to end on time: it is");
  }

  @Test
  void says_so_when_no_agenda_is_sure_enough() throws IOException {
    Briefs.write(folder, Briefs.SHORT.replace("cap: 75m", "cap: 45m"));

    Run run = Run.of("compose", brief, "--confidence", "99%");

    assertThat(run.code()).isEqualTo(Exit.NEGATIVE);
    assertThat(run.out().replaceAll("\\s+", " "))
        .contains("You asked for 99 % to end on time: no agenda for this brief reaches that");
  }

  @Test
  void refuses_a_confidence_that_is_none() {
    Run run = Run.of("forecast", agenda, "--confidence", "0.9");

    assertThat(run.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(run.err()).contains("\"0.9\" is none; write whole per cent from 1% to 99%");
  }

  @Test
  void does_not_write_over_what_it_reads() {
    Run run = Run.of("forecast", agenda, "--out", agenda);

    assertThat(run.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(run.err()).contains("that is read here; name another file");
  }
}
