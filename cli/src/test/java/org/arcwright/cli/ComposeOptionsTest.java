package org.arcwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.arcwright.compose.Options.Found;
import org.arcwright.compose.search.OptionRule;
import org.arcwright.format.OptionsFormat;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ComposeOptionsTest {
  @TempDir Path folder;
  private Path brief;

  @BeforeEach
  void writeBrief() throws IOException {
    brief = Briefs.write(folder, Briefs.SHORT);
  }

  @Test
  void options_stand_side_by_side_each_with_what_sets_it_apart() {
    Run run = Run.of("compose", brief, "--options", 3);

    assertThat(run.code()).isEqualTo(Exit.DONE);
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .startsWith("Ideas for the open day\n")
        .contains("option", "breaks", "energy fit", "time talking", "working alone")
        .contains("asks openness", "tools needed", "shared with 1")
        .contains("Option 1\n", "Option 2\n", "Option 3\n")
        .contains("Proven one by one", "--out options.md");
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void options_in_json_are_read_back() {
    Run run = Run.of("compose", brief, "--options", 2, "--share", "40%", "--format", "json");

    Found found = (Found) OptionsFormat.read("out.json", run.out());
    assertThat(found.rule()).isEqualTo(new OptionRule(2, 40, 25));
    assertThat(found.options()).hasSize(2);
  }

  @Test
  void options_in_markdown_are_complete_each() throws IOException {
    Path out = folder.resolve("options.md");
    Run run = Run.of("compose", brief, "--options", 2, "--out", out);

    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("Written to ");
    assertThat(Files.readString(out))
        .startsWith("# Two options to choose from\n")
        .contains("| | Option 1 | Option 2 |", "- **Option 2.** ")
        .contains("# Ideas for the open day", "| 1 | 09:00–09:");
  }

  @Test
  void when_there_are_no_more_the_reason_is_told() {
    Run run = Run.of("compose", brief, "--options", 9, "--share", "0", "--within", "5%");

    assertThat(run.code()).isEqualTo(Exit.DONE);
    assertThat(run.out().replaceAll("\\s+", " "))
        .contains("There are no more within that.")
        .doesNotContain("Option 9");
  }

  @ParameterizedTest
  @CsvSource({"--options, many", "--share, 100%", "--within, -5%", "--share, half"})
  void what_is_out_of_range_is_refused(String option, String value) {
    Run run = Run.of("compose", brief, "--options", 2, option, value);

    assertThat(run.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains(option.substring(2));
  }

  @ParameterizedTest
  @ValueSource(ints = {-1, 0, 1, 10})
  void one_is_no_choice_and_ten_are_too_many(int count) {
    Run run = Run.of("compose", brief, "--options", count);

    assertThat(run.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(run.err())
        .isEqualTo("--options is " + count + ": a whole number from 2 to 9 is right\n");
  }

  @Test
  void what_says_how_options_differ_wants_to_know_how_many() {
    Run share = Run.of("compose", brief, "--share", "40%");
    Run within = Run.of("compose", brief, "--within", "10%");

    assertThat(share.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(share.err())
        .isEqualTo("--share says how options may differ; say with --options how many you want\n");
    assertThat(within.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(within.err()).startsWith("--within says");
  }

  @Test
  void a_number_that_is_none_is_told_in_words() {
    Run run = Run.of("compose", brief, "--options", "some");

    assertThat(run.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(run.err()).contains("\"some\" is no whole number; write digits, such as 3");
  }
}
