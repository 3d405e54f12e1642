package org.arcwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Set;
import org.arcwright.brief.Brief;
import org.arcwright.brief.Meal;
import org.arcwright.catalog.Mode;
import org.arcwright.format.BriefFormat;
import org.arcwright.library.BuiltIn;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A facilitator answers questions, and a brief is there. */
class BriefNewCommandTest {
  /** One answer a line; an empty one takes what stands in brackets. */
  private static final String ANSWERS =
      """
      Where next, "tool" library?
      2
      12
      colleagues

      in-person
      6h
      2027-03-02 09:00
      Europe/Vienna
      12:00..12:30
      45
      paper, notes, wall, dots
      dot-voting

      weather-report
      yes
      How another town did it
      20
      10:00
      no
      """;

  @TempDir Path folder;

  @Test
  void the_answers_become_a_brief_that_composes() {
    Path file = folder.resolve("brief.yaml");

    Run run = Run.answering(ANSWERS, "brief", "new", "--out", file);

    assertThat(run.code()).as(run.out() + run.err()).isEqualTo(Exit.DONE);
    assertThat(run.out())
        .endsWith("Written to " + file + ". Next: arcwright compose " + file + "\n");
    Brief brief = BriefFormat.read(file, BuiltIn.catalog());
    assertThat(brief.title()).isEqualTo("Where next, \"tool\" library?");
    assertThat(brief.goal()).isEqualTo("choose-a-direction");
    assertThat(brief.group().count()).isEqualTo(12);
    assertThat(brief.group().openness()).isEqualTo(2);
    assertThat(brief.mode()).isEqualTo(Mode.IN_PERSON);
    assertThat(brief.start().orElseThrow()).hasToString("2027-03-02T09:00+01:00[Europe/Vienna]");
    assertThat(brief.meals())
        .containsExactly(
            new Meal(Duration.ofHours(3), Duration.ofMinutes(210), Duration.ofMinutes(45)));
    assertThat(brief.tools()).containsExactly("paper", "notes", "wall", "dots");
    assertThat(brief.wishes().include()).isEqualTo(Set.of("dot-voting"));
    assertThat(brief.wishes().usedLastTime()).isEqualTo(Set.of("weather-report"));
    assertThat(brief.ownItems()).hasSize(1);
    assertThat(Run.of("compose", file, "--budget", "2s").code()).isEqualTo(Exit.DONE);
  }

  @Test
  void enter_takes_what_is_usual() throws IOException {
    Path file = folder.resolve("brief.yaml");

    Run run = Run.answering("Winter\n2\n" + "\n".repeat(11), "brief", "new", "--out", file);

    assertThat(run.code()).as(run.out() + run.err()).isEqualTo(Exit.DONE);
    assertThat(run.out())
        .contains("How many people? [8]: ", "Time at hand, breaks and all included [3h]");
    assertThat(BriefFormat.read(file))
        .isEqualTo(
            Brief.builder("Winter", "choose-a-direction", Mode.REMOTE, 8, Duration.ofHours(3))
                .build());
    assertThat(Files.readString(file))
        .contains(
            "# Kept free at the close, in per cent", "\nbuffer: 15%\n", "# start: 2026-12-03");
  }

  @Test
  void all_that_may_stand_in_the_file_is_right_without_the_sign() throws IOException {
    Path file = folder.resolve("brief.yaml");
    Run.answering("Winter\n2\n" + "\n".repeat(11), "brief", "new", "--out", file);
    String text = Files.readString(file);

    int samples = text.indexOf("# What may stand here");
    String all =
        text.substring(0, samples)
            + text.substring(samples).replaceAll("(?m)^# (?=[a-z-]+: [\\[{\\dE])", "");

    assertThat(all.lines().filter(line -> line.matches("[a-z-]+:.*")).count()).isEqualTo(16);
    Files.writeString(file, all);
    assertThat(Run.of("brief", "check", file))
        .isEqualTo(new Run(Exit.DONE, "1 brief, no problems.\n", ""));
  }

  @Test
  void a_wrong_answer_is_asked_for_again_with_what_would_be_right() {
    String wrong =
        ANSWERS
            .replace("2\n12\n", "0\nwin\n2\nnobody\n0\n12\n")
            .replace("colleagues\n", "friends\ncolleagues\n4\n")
            .replace("6h\n", "6\n6 hours\n6h\n")
            .replace(
                "2027-03-02 09:00\nEurope/Vienna\n",
                "2 March\n2027-03-02 09:00\nVienna\nEurope/Vienna\n")
            .replace("12:00..12:30\n45\n", "16:00\n12:00..12:30\nlong\n45\n")
            .replace("paper, notes", "papers\npaper, notes")
            .replace("dot-voting\n", "dot-votes\ndot-voting\n")
            .replace("10:00\nno\n", "99h\n10:00\nno\n");

    Run run = Run.answering(wrong, "brief", "new", "--out", folder.resolve("brief.yaml"));

    assertThat(run.code()).as(run.out() + run.err()).isEqualTo(Exit.DONE);
    assertThat(run.out())
        .contains(
            "0: there are 1 to 14",
            "win: the catalog has none of that name",
            "nobody: a whole number is right",
            "0: a whole number from 1 to 1000 is right",
            "friends: strangers, mixed or colleagues is right",
            "4: a whole number from 0 to 3 is right",
            "6: write it as 3h, 90m or 2h30m",
            "2 March: write date and time as 2026-12-03 09:30",
            "Vienna: perhaps Europe/Vienna",
            "16:00: it must start before the workshop ends at 360 min",
            "long: write a number of minutes",
            "papers: perhaps paper",
            "dot-votes: perhaps dot-voting",
            "99h: it must start before the workshop ends at 360 min");
  }

  @Test
  void a_question_mark_explains() {
    assertThat(Run.answering("?\n", "brief", "new").out())
        .contains("What the workshop is called, at most 120 characters.");
  }

  @Test
  void answers_that_end_too_early_write_nothing() {
    Path file = folder.resolve("brief.yaml");

    Run run = Run.answering("Winter\n2\n", "brief", "new", "--out", file);

    assertThat(run.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(run.err()).contains("The answers ended at \"How many people?\"; nothing is written");
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void a_file_is_written_over_only_if_that_is_wanted() throws IOException {
    Path file = Files.writeString(folder.resolve("brief.yaml"), "mine\n");
    Path other = folder.resolve("other.yaml");
    String answers = "Winter\n2\n" + "\n".repeat(11);

    Run kept =
        Run.answering(
            "no\n" + answers + file + "\nno\n" + other + "\n", "brief", "new", "--out", file);

    assertThat(kept.code()).as(kept.out() + kept.err()).isEqualTo(Exit.DONE);
    assertThat(kept.out())
        .contains(
            file + " is there already. Shall it be written over? [no]", "File [winter.yaml]: ");
    assertThat(file).hasContent("mine");
    assertThat(other).exists();

    Run.answering("yes\n" + answers, "brief", "new", "--out", file);
    assertThat(file).content().contains("title: Winter");
  }

  @Test
  void a_place_that_cannot_be_written_is_said_before_the_first_question() {
    Path file = folder.resolve("none/brief.yaml");

    Run run = Run.answering(ANSWERS, "brief", "new", "--out", file);

    assertThat(run.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(run.err()).startsWith(file + ": there is no folder");
    assertThat(run.out()).contains("Answer each question").doesNotContain("Title");
  }
}
