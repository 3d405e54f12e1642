package org.arcwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whatever is wrong, there is one clear message, exit code 2, and nothing is written. */
class WrongInputTest {
  @TempDir Path folder;

  @ParameterizedTest(name = "{2}: {3}")
  @CsvSource(
      delimiter = '|',
      value = {
        "goal: generate-ideas | goal: generate-idea | brief.yaml:2:7: | perhaps generate-ideas",
        "goal: generate-ideas | goal: win-the-lottery | brief.yaml:2:7: | win-the-lottery",
        "cap: 75m | cap: 3 hrs | brief.yaml:5:6: | 3 hrs",
        "cap: 75m | cap: 75 | brief.yaml:5:6: | 75m",
        "cap: 75m | cap: -1h | brief.yaml:5:6: | -1h",
        "cap: 75m | cap: 100h | brief.yaml:5:6: | 40 hours",
        "people: 5 | people: 0 | brief.yaml:3:9: | 0",
        "people: 5 | people: five | brief.yaml:3:9: | five",
        "mode: remote | mode: online | brief.yaml:4:7: | remote, in-person or hybrid",
        "zone: Europe/Vienna | zone: Vienna | brief.yaml:7:7: | perhaps Europe/Vienna",
        "title: Ideas for the open day | title: '' | brief.yaml:1:8: | title"
      })
  void in_a_brief(String right, String wrong, String place, String hint) throws IOException {
    refuses(Briefs.SHORT.replace(right, wrong), place, hint);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "rhythm: {stretch: 60m..30m} | brief.yaml:8:19: | ascending",
        "'wishes: {pin: [{exercise: one-word-close, at: 2h}]}' | brief.yaml:8:47: | 75",
        "'wishes: {pin: [{exercise: one-word-close, at: 11:00}]}' | brief.yaml:8:47: | 75",
        "wishes: {include: [one-word-closing]} | brief.yaml:8:20: | perhaps one-word-close",
        "'own-items: [{id: talk, title: Talk, minutes: 0}]' | brief.yaml:8: | minutes",
        "meal: {at: '13:00..12:00', minutes: 45} | brief.yaml:8:12: | earliest start comes first",
        "colour: blue | brief.yaml:8:1: | unknown key, colour",
        "buffer: [10% | brief.yaml: | ]"
      })
  void added_to_a_brief(String line, String place, String hint) throws IOException {
    refuses(Briefs.SHORT + line.replace("'13:00..12:00'", "13:00..12:00") + "\n", place, hint);
  }

  @Test
  void a_tab() throws IOException {
    refuses(Briefs.SHORT + "wishes:\n\tinclude: [one-word-close]\n", "brief.yaml:9:1:", "tab");
  }

  private void refuses(String text, String place, String hint) throws IOException {
    Path brief = Briefs.write(folder, text);
    Path out = folder.resolve("out.json");
    Path instance = folder.resolve("instance.json");

    Run run = Run.of("compose", brief, "--out", out, "--instance", instance);

    assertThat(run.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).startsWith(folder.resolve(place.strip()).toString()).contains(hint);
    assertThat(run.err().lines()).hasSize(1);
    assertThat(out).doesNotExist();
    assertThat(instance).doesNotExist();
  }

  @Test
  void a_huge_file() throws IOException {
    Path brief = folder.resolve("brief.yaml");
    try (RandomAccessFile file = new RandomAccessFile(brief.toFile(), "rw")) {
      file.setLength(50L << 20);
    }

    assertThat(Run.of("compose", brief))
        .isEqualTo(
            new Run(Exit.WRONG_INPUT, "", brief + ": file too large: at most 1 MB are read\n"));
  }

  @Test
  void a_binary_file() throws IOException {
    Path brief = folder.resolve("brief.yaml");
    Files.write(brief, new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10, 0, 0, 0, 13});

    Run run = Run.of("compose", brief);

    assertThat(run.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(run.err()).isEqualTo(brief + ": binary file: a text file in UTF-8 is right\n");
  }

  @Test
  void a_file_that_is_not_there() {
    Path brief = folder.resolve("none.yaml");
    for (Run run :
        Stream.of(
                Run.of("compose", brief),
                Run.of("solve", brief),
                Run.of("check", brief, "--brief", brief))
            .toList()) {
      assertThat(run)
          .isEqualTo(
              new Run(Exit.WRONG_INPUT, "", brief + ": no such file: check its name and folder\n"));
    }
  }

  @Test
  void a_folder_instead_of_a_file() {
    assertThat(Run.of("compose", folder))
        .isEqualTo(new Run(Exit.WRONG_INPUT, "", folder + ": directory: name a file\n"));
  }

  @Test
  void a_folder_that_is_not_there_to_write_into() throws IOException {
    Path brief = Briefs.write(folder, Briefs.SHORT);
    Path out = folder.resolve("none/agenda.md");

    Run run = Run.of("compose", brief, "--out", out);

    assertThat(run)
        .isEqualTo(
            new Run(
                Exit.WRONG_INPUT,
                "",
                out + ": there is no folder " + out.getParent() + "; make it first\n"));
  }

  @Test
  void the_brief_itself_to_write_over() throws IOException {
    Path brief = Briefs.write(folder, Briefs.SHORT);

    Run run = Run.of("compose", brief, "--out", brief);

    assertThat(run.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(run.err()).contains("that is the brief itself");
    assertThat(brief).content().isEqualTo(Briefs.SHORT);
  }

  @Test
  void one_file_for_two_things() throws IOException {
    Path brief = Briefs.write(folder, Briefs.SHORT);
    Path out = folder.resolve("x.json");

    Run run = Run.of("compose", brief, "--out", out, "--instance", out);

    assertThat(run.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(run.err()).contains("name the same file");
    assertThat(out).doesNotExist();
  }

  @Test
  void a_catalog_that_is_none() throws IOException {
    Path brief = Briefs.write(folder, Briefs.SHORT);

    Run run = Run.of("compose", brief, "--catalog", folder);

    assertThat(run.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(run.err()).startsWith(brief + ": file out of place:");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "compose | BRIEF",
        "compose x.yaml --budget 10 | \"10\" is no time",
        "compose x.yaml --budget 0s | \"0s\" is no time",
        "compose x.yaml --budget ten | \"ten\" is no time",
        "compose x.yaml --budget 25h | \"25h\" is no time",
        "compose x.yaml --format pdf | \"pdf\" is none; text, json, markdown or html are right",
        "compose x.yaml --fromat json | \"--fromat\" is unknown here; perhaps --format",
        "compose x.yaml y.yaml | \"y.yaml\" is unknown here",
        "compose x.yaml --format json --format text | --format",
        "compos x.yaml | \"compos\" is unknown here; perhaps compose",
        "--budget 10s | --budget",
        "solve | INSTANCE",
        "check | AGENDA",
        "prepare x.json --out y --zone Mars/X | \"Mars/X\" is no time zone; continent and city",
        "catalog exprot | \"exprot\" is unknown here; perhaps export",
        "catalog export --format yaml | \"yaml\" is none; csv or json are right",
        "catalog import x.csv | --out",
        "schema | FILE",
        "schema agendas | \"agendas\" has none; perhaps agenda",
        "schema timetable | has none; exercise, goal, brief, agenda, "
      })
  void on_the_command_line(String line, String hint) {
    Run run = Run.of((Object[]) line.split(" "));

    assertThat(run.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).startsWith("arcwright").contains(hint).contains("--help");
    assertThat(run.err().lines().count()).isLessThanOrEqualTo(3);
  }
}
