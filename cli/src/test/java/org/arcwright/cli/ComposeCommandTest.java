package org.arcwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.arcwright.compose.Composition;
import org.arcwright.compose.explain.WhyThis;
import org.arcwright.format.AgendaFormat;
import org.arcwright.format.CompositionFormat;
import org.arcwright.format.InstanceFormat;
import org.arcwright.format.WhyThisFormat;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ComposeCommandTest {
  @TempDir Path folder;
  private Path brief;

  @BeforeEach
  void writeBrief() throws IOException {
    brief = Briefs.write(folder, Briefs.SHORT);
  }

  @Test
  void draws_the_agenda_says_why_and_proves_it() {
    Run run = Run.of("compose", brief);

    assertThat(run.code()).isEqualTo(Exit.DONE);
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .startsWith("Ideas for the open day\n")
        .contains("Tuesday 2 March 2027, 09:00–10:15", "(Europe/Vienna)")
        .contains("energy 4 ┤", "calm 1 ┤1", "  09:00–09:")
        .contains("Why it is built so", "What was given up for it", "Have at hand")
        .contains("Proven best:");
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void writes_an_agenda_that_can_be_read_back() {
    Run run = Run.of("compose", brief, "--format", "json");

    assertThat(run.code()).isEqualTo(Exit.DONE);
    assertThat(AgendaFormat.read("out.json", run.out()).title())
        .isEqualTo("Ideas for the open day");
    assertThat(run.out()).contains("\"proof\"");
  }

  @Test
  void writes_markdown_that_can_be_sent_on() {
    Run run = Run.of("compose", brief, "--format", "markdown");

    assertThat(run.code()).isEqualTo(Exit.DONE);
    assertThat(run.out())
        .startsWith("# Ideas for the open day\n")
        .contains("| 1 | 09:00–09:")
        .doesNotContain("points", "search steps", "given up");
  }

  @Test
  void writes_to_a_file_in_the_form_its_name_asks_for() throws IOException {
    Path out = folder.resolve("agenda.md");

    Run run = Run.of("compose", brief, "--out", out);

    assertThat(run).isEqualTo(new Run(Exit.DONE, "", "Written to " + out + ".\n"));
    assertThat(out).content().startsWith("# Ideas for the open day\n");
    assertThat(files()).containsExactly("agenda.md", "brief.yaml");
  }

  @Test
  void writes_over_an_older_file_as_a_whole() throws IOException {
    Path out = Files.writeString(folder.resolve("agenda.txt"), "old ".repeat(10_000));

    assertThat(Run.of("compose", brief, "--out", out).code()).isEqualTo(Exit.DONE);

    assertThat(out).content().startsWith("Ideas for").doesNotContain("old old");
  }

  @Test
  void writes_the_instance_that_solve_solves() {
    Path instance = folder.resolve("instance.json");

    assertThat(Run.of("compose", brief, "--instance", instance).code()).isEqualTo(Exit.DONE);

    assertThat(InstanceFormat.read(instance).cap()).isEqualTo(75);
    Run solved = Run.of("solve", instance);
    assertThat(solved.code()).isEqualTo(Exit.DONE);
    assertThat(solved.out()).contains("\n  \"status\": \"optimal\",");
  }

  @Test
  void lists_what_was_left_out_if_asked() {
    Run run = Run.of("compose", brief, "--left-out");

    assertThat(run.out())
        .contains("\n- world-cafe-ideas (Ideas at café tables)")
        .contains(": not for 5 people:");
    assertThat(Run.of("compose", brief).out()).doesNotContain("world-cafe-ideas");
  }

  @Test
  void says_why_nothing_fits() throws IOException {
    brief = Briefs.write(folder, Briefs.SHORT.replace("cap: 75m", "cap: 15m"));
    Path out = folder.resolve("agenda.json");

    Run run = Run.of("compose", brief, "--out", out);

    assertThat(run.code()).isEqualTo(Exit.NEGATIVE);
    assertThat(run.out())
        .startsWith("No agenda fits this brief.\n- ")
        .contains("\n- 15 min in all, breaks and buffer included\n")
        .contains("\n 1. ", " more: ", "In the brief: cap: ", "Then: 09:00 ");
    assertThat(run.err()).isEqualTo("Nothing written to " + out + ".\n");
    assertThat(out).doesNotExist();
  }

  @Test
  void says_why_nothing_fits_in_json_to_who_asks_for_json() throws IOException {
    brief = Briefs.write(folder, Briefs.SHORT.replace("cap: 75m", "cap: 15m"));

    Run run = Run.of("compose", brief, "--format", "json");

    assertThat(run.code()).isEqualTo(Exit.NEGATIVE);
    assertThat(CompositionFormat.read("out.json", run.out()))
        .isInstanceOf(Composition.NothingFits.class);
    assertThat(run.out()).contains("\"clash\"", "\"arcwright-clash\"");
  }

  @Test
  void says_of_each_exercise_why_it_is_in_its_place() {
    Run text = Run.of("compose", brief, "--why");
    Run markdown = Run.of("compose", brief, "--why", "--format", "markdown");
    Run json = Run.of("compose", brief, "--why", "--format", "json");

    assertThat(text.out())
        .contains("\nWhy each exercise is in its place\n1. ", "Next best in its place: ");
    assertThat(text.out().lines()).allMatch(line -> line.length() <= 80);
    assertThat(markdown.out()).contains("\n## Why each exercise is in its place\n\n**1. ");
    WhyThis why = WhyThisFormat.read("out.json", json.out());
    assertThat(why.reasons()).hasSameSizeAs(why.agenda().activities());
    assertThat(Run.of("compose", brief, "--why", "--options", 2).err())
        .contains("--options and --why do not go together");
  }

  @Test
  void adds_a_folder_to_the_catalog() throws IOException {
    Path added = Files.createDirectories(folder.resolve("mine/exercises"));
    Files.writeString(
        added.resolve("our-own-start.yaml"),
        """
        id: our-own-start
        title: The way we always start
        kind: icebreaker
        purpose: Everybody says how the week has been.
        people: {min: 3, max: 12}
        energy: 3
        openness: 0
        yields: [arrival, introductions]
        opening: Good morning. Tell us in one sentence how your week has been.
        steps:
          - {text: One sentence each., who: each, format: plenary, minutes: [1, 1, 2], per: person}
        modes:
          remote: {fit: 3, tools: [call], how: In the order of the tiles.}
          in-person: {fit: 3, tools: [], how: Round the table.}
          hybrid: {fit: 3, tools: [call], how: Those at screens first.}
        watch: [Who has not spoken yet?]
        access: [Captions are on.]
        carry-over: Everybody has been heard.
        source: {mark: common-practice}
        """);
    Path wished = Briefs.write(folder, Briefs.SHORT + "wishes: {include: [our-own-start]}\n");

    Path empty = Files.createDirectories(folder.resolve("empty"));

    Run run = Run.of("compose", wished, "--catalog", folder.resolve("mine"), empty);

    assertThat(run.code()).isEqualTo(Exit.DONE);
    assertThat(run.out())
        .contains("The way we always start")
        .contains("Your wishes: \"The way we always start\" is in.");
  }

  private List<String> files() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
