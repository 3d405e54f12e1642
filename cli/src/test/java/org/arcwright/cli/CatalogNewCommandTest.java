package org.arcwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.SizeRange;
import org.arcwright.catalog.Source;
import org.arcwright.format.CatalogFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A trainer answers questions, and a file is there. */
class CatalogNewCommandTest {
  /** One answer a line; an empty one takes what stands in brackets. */
  private static final String ANSWERS =
      """
      One-minute paper

      reflection
      Learn from everybody, in two lines, what was useful.
      3-100




      takeaways, feedback
      Before we part, two questions on one small slip. What was useful, and what is unclear?
      Say the opening and show both questions.




      Everybody writes two lines.
      nobody
      solo
      2 3 4

      In small groups, each reads one of them.
      each
      small-groups
      0.5 0.5 0.75
      person


      3
      call, breakouts, chat
      Small rooms for the reading.
      3
      paper
      A slip for each person.
      0
      Not yet thought through.

      A line may be dictated.

      Praise alone.


      A pile of slips.
      memory
      From memory: Angelo and Cross (1993). Classroom Assessment Techniques.
      """;

  @TempDir Path folder;

  @Test
  void the_answers_become_a_file_that_passes_the_check() throws IOException {
    Run run = answer(ANSWERS);

    Path file = folder.resolve("exercises/one-minute-paper.yaml");
    assertThat(run.code()).as(run.out() + run.err()).isEqualTo(Exit.DONE);
    assertThat(run.out()).endsWith("Written to " + file + ".\n");
    assertThat(Run.of("catalog", "check", folder).out()).isEqualTo("1 entry, no problems.\n");
    Exercise exercise = CatalogFormat.readExercise(file);
    assertThat(exercise.title()).isEqualTo("One-minute paper");
    assertThat(exercise.breakout()).contains(new SizeRange(3, 5));
    assertThat(exercise.energy()).isEqualTo(2);
    assertThat(exercise.needs()).isEmpty();
    assertThat(exercise.steps()).hasSize(3);
    assertThat(exercise.in(Mode.REMOTE).tools()).containsExactly("call", "breakouts", "chat");
    assertThat(exercise.source()).isInstanceOf(Source.Memory.class);
  }

  @Test
  void each_field_is_explained_in_the_file() throws IOException {
    answer(ANSWERS);

    String text = Files.readString(folder.resolve("exercises/one-minute-paper.yaml"));
    assertThat(text)
        .contains(
            "# How lively people are in it: 1 calm, 2 quiet work",
            "\nenergy: 2\n",
            "# - who: facilitator: the facilitator alone.",
            "# moves: true",
            "# retired: true");
    assertThat(text.lines().filter(line -> line.matches("[a-z-]+:.*")).count())
        .isEqualTo(text.lines().filter(line -> line.isEmpty()).count() - 1);
    assertThat(text.lines()).allMatch(line -> line.length() <= 110);
  }

  @Test
  void a_wrong_answer_is_asked_for_again_with_what_would_be_right() throws IOException {
    String wrong =
        ANSWERS
            .replace("One-minute paper\n\n", "Dot voting\nOne-minute paper\nOne Minute\n\n")
            .replace("reflection\n", "reflexion\nreflection\n")
            .replace("3-100\n", "100-3\nmany\n3-100\n7\nlots\n")
            .replace("takeaways, feedback\n", "takeaway\nnone\ntakeaways, feedback\n")
            .replace(
                "show both questions.\n\n\n\n\n",
                "show both questions.\n\n\n0.05 0.05 0.05\n1 2\n3 2 1\n1 2 3\n\n")
            .replace("solo\n2 3 4\n\n", "solo\n2 3 4\nperson\n\n")
            .replace("person\n\n\n3\n", "person\n\n4-5\n\n4\n3\n")
            .replace(
                "call, breakouts, chat\n", "none\ncall\ncall, breakout\ncall, breakouts, chat\n")
            .replace("memory\nFrom", "hearsay\nmemory\nFrom");

    Run run = answer(wrong);

    assertThat(run.code()).as(run.out() + run.err()).isEqualTo(Exit.DONE);
    assertThat(run.out())
        .contains(
            "Dot voting: dot-voting has it already; choose another",
            "One Minute: an id has at most 80 lower-case letters",
            "reflexion: perhaps reflection",
            "3: it is under min 100; swap the two",
            "many: write the fewest and the most, such as 4-30",
            "7: a whole number from 1 to 5 is right",
            "lots: a whole number is right",
            "takeaway: there is no such work product; perhaps takeaways",
            "Name at least one thing that it leaves behind",
            "to say your opening takes",
            "1 2: three numbers are right, such as 2 3 5",
            "[3, 2, 1]: write them ascending",
            "person: working alone, all work at once",
            "4-5: 3, 6, 7 and 11 people cannot be split so",
            "People far apart need at least a call",
            "call: pairs and small groups far apart need rooms; add breakouts, or chat",
            "breakout: there is no such tool where people meet remote; perhaps breakouts",
            "hearsay: published, common-practice or memory is right");
  }

  @Test
  void words_that_move_bodies_ask_for_cautions() throws IOException {
    String moving =
        ANSWERS
            .replace("Everybody writes two lines.", "Everybody stands up and writes two lines.")
            .replace("memory\nFrom", "memory\nFrom")
            .replace("person\n\n\n3\n", "person\n\n\n\n3\n")
            .replace(
                "Not yet thought through.\n\n",
                "Not yet thought through.\nNot everybody can stand.\n\nWrite in your seat.\n");

    Run run = answer(moving);

    assertThat(run.code()).as(run.out() + run.err()).isEqualTo(Exit.DONE);
    assertThat(run.out()).contains("Does it move bodies after all? [yes]");
    Exercise exercise =
        CatalogFormat.readExercise(folder.resolve("exercises/one-minute-paper.yaml"));
    assertThat(exercise.moves()).isTrue();
    assertThat(exercise.care().cautions()).containsExactly("Not everybody can stand.");
    assertThat(exercise.care().optOut()).contains("Write in your seat.");
  }

  @Test
  void a_question_mark_explains() {
    assertThat(answer("?\n").out()).contains("What participants read in the agenda");
  }

  @Test
  void answers_that_end_too_early_write_nothing() {
    Run run = answer("One-minute paper\n\nreflection\n");

    assertThat(run.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(run.err()).contains("The answers ended at \"Purpose\"; nothing is written");
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void nothing_is_ever_written_over() throws IOException {
    Path file = Slips.write(folder, "one-minute-paper", "mine\n");

    Run run = answer(ANSWERS.replace("One-minute paper\n\n", "One-minute paper\n\nminute-paper\n"));

    assertThat(run.code()).as(run.out() + run.err()).isEqualTo(Exit.DONE);
    assertThat(run.out())
        .contains("one-minute-paper: there is such a file already; choose another id");
    assertThat(file).hasContent("mine");
    assertThat(folder.resolve("exercises/minute-paper.yaml")).exists();
  }

  @Test
  void a_file_instead_of_a_folder() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "");

    Run run = Run.of("catalog", "new", "--out", file);

    assertThat(run)
        .isEqualTo(new Run(Exit.WRONG_INPUT, "", file + ": it is a file; name a folder\n"));
  }

  private Run answer(String answers) {
    return Run.answering(answers, "catalog", "new", "--out", folder);
  }
}
