package org.arcwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.arcwright.agenda.Agenda;
import org.arcwright.format.AgendaFormat;
import org.arcwright.format.ReplanFormat;
import org.arcwright.live.Replan;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReplanCommandTest {
  /** What can be seen at once in a terminal of usual size. */
  private static final int SCREEN = 24;

  @TempDir Path folder;
  private Path agenda;

  @BeforeEach
  void compose() throws IOException {
    Path brief = Briefs.write(folder, Briefs.SHORT.replace("cap: 75m", "cap: 2h"));
    agenda = folder.resolve("agenda.json");
    assertThat(Run.of("compose", brief, "--out", agenda).code()).isEqualTo(Exit.DONE);
  }

  @Test
  void says_how_things_stand_and_how_to_go_on_on_one_screen() {
    Run run = Run.of("replan", agenda, "--now", "10:00", "--upto", "2");

    assertThat(run.code()).as(run.err()).isEqualTo(Exit.DONE);
    assertThat(run.out())
        .startsWith("It is 10:00, and you are ")
        .contains(
            " behind. Change nothing, and you end at ", "\n1  ", "the chance to be on time is ")
        .contains("now: ", " the end");
    assertThat(run.out().lines()).hasSizeLessThanOrEqualTo(SCREEN);
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void a_way_that_is_taken_is_an_agenda_to_go_on_from() {
    Path today = folder.resolve("today.json");

    Run run =
        Run.of("replan", agenda, "--now", "10:00", "--upto", "2", "--take", "1", "--out", today);
    Run after = Run.of("replan", today, "--now", "10:00", "--upto", "2");

    assertThat(run.code()).isEqualTo(Exit.DONE);
    assertThat(run.out()).startsWith("Agreed: ").endsWith(" the end\n");
    assertThat(run.err()).isEqualTo("Written to " + today + ".\n");
    assertThat(after.out()).startsWith("It is 10:00, and you are on time.");
    assertThat(Run.of("forecast", today).code()).isEqualTo(Exit.DONE);
  }

  @Test
  void json_has_the_same_ways_and_their_agendas() {
    Run json = Run.of("replan", agenda, "--now", "10:00", "--upto", "2", "--format", "json");
    Replan replan = ReplanFormat.read("replan.json", json.out());
    Agenda planned = AgendaFormat.read(agenda);

    assertThat(replan.ways())
        .isNotEmpty()
        .allSatisfy(way -> assertThat(way.agenda().title()).isEqualTo(planned.title()));
    assertThat(Run.of("replan", agenda, "--now", "10:00", "--upto", "2").out().lines())
        .filteredOn(line -> line.matches("\\d  .*"))
        .hasSameSizeAs(replan.ways());
  }

  @Test
  void an_earlier_end_that_leaves_no_time_for_the_goal_is_an_answer_with_a_code_of_its_own() {
    Run run = Run.of("replan", agenda, "--now", "09:20", "--upto", "1", "--end", "09:40");

    assertThat(run.code()).isEqualTo(Exit.NEGATIVE);
    assertThat(run.out()).contains("cannot be reached by 09:40 any more", "For a follow-up");
  }

  @Test
  void a_log_tells_what_has_run() throws IOException {
    String first = AgendaFormat.read(agenda).activities().get(0).exercise();
    Path log = folder.resolve("day.log");
    Files.writeString(
        log,
        """
        {"format":"arcwright-log","version":1,"title":"Ideas for the open day","mode":"remote","people":5,"start":"2027-03-02 09:00","zone":"Europe/Vienna"}
        {"at":"2027-03-02T09:10:00+01:00","started":"FIRST","planned":10}
        """
            .replace("FIRST", first));

    Run run = Run.of("replan", agenda, "--now", "09:30", "--done", log);

    assertThat(run.code()).as(run.err()).isEqualTo(Exit.DONE);
    assertThat(run.out()).contains(" behind.");
    assertThat(Run.of("replan", agenda, "--done", log, "--upto", "1").err())
        .contains("give one of them");
    assertThat(Run.of("replan", agenda, "--now", "09:05", "--done", log).err())
        .contains("day.log: its last entry is of 09:10, and it cannot be earlier now");
    Files.writeString(log, Files.readString(log).replace("Ideas for", "Doubts about"));
    assertThat(Run.of("replan", agenda, "--now", "09:30", "--done", log).err())
        .contains("this log is of \"Doubts about the open day\", the agenda of \"Ideas for");
  }

  @Test
  void three_ways_are_there_and_only_the_first_has_all_its_times() {
    Run run = Run.of("replan", agenda, "--now", "09:25", "--upto", "1");

    assertThat(run.out().lines().filter(line -> line.endsWith(" ..."))).isNotEmpty();
    assertThat(run.out().lines().filter(line -> line.endsWith(" the end"))).hasSize(1);
    assertThat(run.out()).contains("How what is new runs: catalog show ID, with ");
  }

  @Test
  void a_break_that_is_overdue_is_named() {
    Run run = Run.of("replan", agenda, "--now", "10:25", "--upto", "1", "--since", "09:00");

    assertThat(run.out()).contains("Nobody has had a break for 1 h 25 min.");
    assertThat(Run.of("replan", agenda, "--now", "10:25", "--upto", "1", "--since", "10:20").out())
        .doesNotContain("Nobody has had a break");
  }

  @Test
  void names_what_is_tied_to_a_time_and_how_to_let_it_move() throws IOException {
    Path brief =
        Briefs.write(
            folder,
            Briefs.SHORT.replace("cap: 75m", "cap: 2h")
                + "own-items: [{id: guest, title: A guest, minutes: 10, at: 1h30m}]\n");
    assertThat(Run.of("compose", brief, "--out", agenda).code()).isEqualTo(Exit.DONE);
    Object[] late = {"replan", agenda, "--now", "09:58", "--upto", "1"};

    assertThat(Run.of(late).out())
        .contains("\"A guest\" keeps its time; to let it move, add --may-move guest");
    Run moving = Run.of("replan", agenda, "--now", "09:58", "--upto", "1", "--may-move", "guest");
    assertThat(moving.out()).contains("moved: \"A guest\" at ").doesNotContain("add --may-move");
    assertThat(moving.out().lines().filter(line -> line.matches("\\d  .*")))
        .doesNotHaveDuplicates();
  }

  @Test
  void who_says_nothing_of_the_day_is_told_what_is_taken() {
    assertThat(Run.of("replan", agenda, "--now", "09:30").err())
        .contains("taken to have gone as planned so far; say what runs now with --upto");
    assertThat(Run.of("replan", agenda, "--now", "09:30", "--upto", "2").err()).isEmpty();
  }

  @Test
  void refuses_what_cannot_be() {
    assertThat(Run.of("replan", agenda, "--now", "half past nine").err())
        .contains("\"half past nine\" is no time; write a time of day such as 10:40");
    assertThat(Run.of("replan", agenda, "--now", "08:50").err())
        .contains("08:50: before the agenda's start at 09:00");
    assertThat(Run.of("replan", agenda, "--now", "10:00", "--upto", "99").err())
        .contains("the agenda has no such item; give a number from 1 to ");
    assertThat(Run.of("replan", agenda, "--now", "11:20", "--upto", "1").err())
        .contains("it is 11:20 and the day was to be over at 11:00", "with a later --end");
    assertThat(Run.of("replan", agenda, "--now", "10:00", "--upto", "1", "--since", "10:10").err())
        .contains("--since 10:10: that is later than now, 10:00");
    assertThat(Run.of("replan", agenda, "--now", "25:00").err())
        .contains("25:00: no time of day; write one such as 09:00");
    assertThat(Run.of("replan", folder.resolve("brief.yaml"), "--now", "10:00").err())
        .contains("brief.yaml: an agenda is wanted, in JSON, and this looks like a brief");
    assertThat(Run.of("replan", agenda, "--now", "10:00", "--take", "1").err())
        .contains("say where with --out");
    Path today = folder.resolve("today.json");
    assertThat(Run.of("replan", agenda, "--now", "10:00", "--take", "9", "--out", today).err())
        .contains("--take 9: there ");
    assertThat(Run.of("replan", agenda, "--now", "10:00", "--take", "1", "--out", agenda).err())
        .contains("that is read here; name another file");
  }
}
