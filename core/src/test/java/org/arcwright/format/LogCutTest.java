package org.arcwright.format;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.arcwright.agenda.Agenda;
import org.arcwright.catalog.Mode;
import org.arcwright.live.Day;
import org.arcwright.live.LogEntry;
import org.arcwright.live.Progress;
import org.arcwright.live.Progress.Workshop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A day of random moves, among them another plan that was agreed upon, whose log is cut after any
 * byte, as a killed program leaves it: the day stands as its whole lines say, and goes on.
 */
class LogCutTest {
  private static final ZonedDateTime NINE =
      ZonedDateTime.parse("2026-12-03T09:00+01:00[Europe/Vienna]");
  private static final Workshop WORKSHOP =
      new Workshop("Winter planning", Mode.REMOTE, 12, Optional.of(NINE));
  private static final Agenda PLANNED =
      AgendaFormat.read(
              "agenda.json",
              """
              {"format": "arcwright-agenda", "version": 1, "title": "Winter planning",
               "goal": "choose", "mode": "remote", "people": 12, "items": [
                {"exercise": "hello", "title": "Hello \u263a", "phase": "open", "length": 10},
                {"exercise": "ideas", "title": "Ideen f\u00fcr {alle}", "phase": "widen", "length": 20},
                {"break": "ordinary", "length": 10},
                {"exercise": "choice", "title": "A choice", "phase": "choose", "length": 15}]}
              """)
          .startingAt(NINE);

  @TempDir Path folder;

  @Test
  void a_day_stands_as_the_whole_lines_before_the_cut_say() throws IOException {
    Path file = folder.resolve("day.log");
    byte[] all = Files.readAllBytes(write(file));
    List<LogEntry> entries = LogFormat.read(file).progress().entries();
    assertThat(entries).hasSizeGreaterThan(20).hasAtLeastOneElementOfType(LogEntry.Agreed.class);
    int whole = -1;
    for (int length = 1; length <= all.length; length++) {
      boolean closes = length == all.length || all[length] == '\n';
      whole += closes && all[length - 1] != '\n' ? 1 : 0;
      if (whole < 0) {
        continue; // the first line says which day it is of
      }
      Progress read =
          LogFormat.read("day.log", new String(Arrays.copyOf(all, length), UTF_8)).progress();
      Progress due = new Progress(WORKSHOP, entries.subList(0, whole));
      assertThat(read).as("cut after %d bytes", length).isEqualTo(due);
      if (closes) {
        assertThat(stands(read)).isEqualTo(stands(due));
      }
    }
  }

  private static String stands(Progress progress) {
    Day day = new Day(PLANNED, progress);
    OffsetDateTime now = at(60);
    return day.runningItem() + " " + day.ahead(now) + " " + day.end(now) + " " + day.plan();
  }

  private static Path write(Path file) throws IOException {
    SplittableRandom random = new SplittableRandom(1959);
    try (LogFile log = LogFile.open(file, WORKSHOP)) {
      for (int minute = 0; minute < 30; minute++) {
        Day day = new Day(PLANNED, log.progress());
        OffsetDateTime now = at(minute);
        List<LogEntry> move =
            switch (minute == 12 ? -1 : random.nextInt(5)) {
              case 0 -> day.onward(now);
              case 1 -> day.stop(now);
              case 2 -> day.undo(now);
              case 3 -> List.of(new LogEntry.Note(now, "\"{\" und \u00fc und \ud83d\ude42"));
              case 4 -> List.of(new LogEntry.EnergyCheck(now, 1 + random.nextInt(5)));
              default -> List.of(new LogEntry.Agreed(now, PLANNED));
            };
        for (LogEntry entry : move) {
          log.append(entry);
        }
      }
    }
    return file;
  }

  private static OffsetDateTime at(int minute) {
    return NINE.toOffsetDateTime().plus(Duration.ofMinutes(minute));
  }
}
