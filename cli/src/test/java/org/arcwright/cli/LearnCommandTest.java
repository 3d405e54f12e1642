package org.arcwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.arcwright.format.CatalogFormat;
import org.arcwright.format.LessonsFormat;
import org.arcwright.learn.Lesson;
import org.arcwright.learn.Lessons;
import org.arcwright.library.BuiltIn;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LearnCommandTest {
  @TempDir Path folder;

  private Path log(String name, int minutes) throws IOException {
    return Files.writeString(
        folder.resolve(name + ".jsonl"),
        """
        {"format":"arcwright-log","version":1,"title":"A day","mode":"remote","people":8}
        {"at":"2027-03-02T09:00:00+01:00","started":"dot-voting","planned":15}
        {"at":"2027-03-02T09:%02d:00+01:00","ended":"dot-voting"}
        {"at":"2027-03-02T09:50:00+01:00","started":"own-talk","planned":5}
        {"at":"2027-03-02T09:55:00+01:00","ended":"own-talk"}
        """
            .formatted(minutes));
  }

  @Test
  void writes_a_layer_that_any_command_takes() throws IOException {
    log("a", 24);
    log("b", 22);
    log("c", 25);
    log("d", 23);
    Path pace = folder.resolve("pace");

    Run run = Run.of("learn", folder, "--out", pace);

    assertThat(run.code()).as(run.err()).isEqualTo(Exit.DONE);
    assertThat(run.err()).isEqualTo("Written to " + pace + ".\n");
    assertThat(run.out())
        .contains("Four logs with four runs of exercises", "Dot voting", "% less.");
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
    Duration before = BuiltIn.catalog().exercise("dot-voting").orElseThrow().minutes(8).typical();
    Duration after =
        CatalogFormat.readDirectory(pace, BuiltIn.catalog())
            .exercise("dot-voting")
            .orElseThrow()
            .minutes(8)
            .typical();
    assertThat(after).isGreaterThan(before);
    assertThat(Run.of("catalog", "show", "dot-voting", "--catalog", pace).code())
        .isEqualTo(Exit.DONE);
  }

  @Test
  void writes_nothing_where_it_predicts_no_better() throws IOException {
    Path pace = folder.resolve("pace");

    Run run = Run.of("learn", log("a", 40), log("b", 16), "--out", pace);

    assertThat(run.code()).isEqualTo(Exit.NEGATIVE);
    assertThat(run.out().replaceAll("\\s+", " "))
        .contains("it takes 3 logs")
        .contains("That is no better");
    assertThat(run.err()).contains("Nothing written to " + pace);
    assertThat(pace).doesNotExist();
  }

  @Test
  void json_says_the_same_and_a_program_reads_it() throws IOException {
    log("a", 24);
    log("b", 22);
    log("c", 25);
    log("d", 23);

    Run run = Run.of("learn", folder, "--format", "json");
    Lessons lessons = LessonsFormat.read("lessons.json", run.out());

    assertThat(run.code()).as(run.err()).isEqualTo(Exit.DONE);
    assertThat(lessons.logs()).isEqualTo(4);
    assertThat(lessons.better()).isTrue();
    assertThat(lessons.lessons()).extracting(Lesson::exercise).containsExactly("dot-voting");
    assertThat(lessons.lessons().get(0).now()).isGreaterThan(lessons.lessons().get(0).before());
  }

  @Test
  void simulated_logs_are_named_where_the_score_stands() throws IOException {
    for (String name : List.of("a", "b", "c", "d")) {
      Path log = log(name, 24);
      Files.writeString(log, Files.readString(log).replaceFirst("}", ",\"simulated\":true}"));
    }

    assertThat(Run.of("learn", folder).out().replaceAll("\\s+", " "))
        .startsWith("Four simulated logs with")
        .contains("% less. These logs are simulated, with times drawn by a program");
    log("e", 23);
    assertThat(Run.of("learn", folder).out().replaceAll("\\s+", " "))
        .startsWith("Five logs with")
        .contains("Four of these logs are simulated");
  }

  @Test
  void leaves_rehearsals_out_and_says_so() throws IOException {
    for (String name : List.of("a", "b", "c", "d")) {
      log(name, 24);
    }
    Path tried = log("tried", 5);
    Files.writeString(tried, Files.readString(tried).replaceFirst("}", ",\"rehearsal\":true}"));

    Run run = Run.of("learn", folder);

    assertThat(run.err()).isEqualTo(tried + ": a rehearsal, left out.\n");
    assertThat(run.out()).startsWith("Four logs with");
    assertThat(Run.of("learn", tried).code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(Run.of("learn", tried).err()).contains("nothing to learn from", "a rehearsal");
  }

  @Test
  void refuses_a_folder_without_logs() {
    Run run = Run.of("learn", folder);

    assertThat(run.code()).isEqualTo(Exit.WRONG_INPUT);
    assertThat(run.err()).contains(folder + ": it holds no log; their names end in .jsonl");
  }
}
