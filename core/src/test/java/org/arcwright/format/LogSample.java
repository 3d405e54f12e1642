package org.arcwright.format;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import org.arcwright.catalog.Mode;
import org.arcwright.live.LogEntry.Decision;
import org.arcwright.live.LogEntry.Ended;
import org.arcwright.live.LogEntry.EnergyCheck;
import org.arcwright.live.LogEntry.Note;
import org.arcwright.live.LogEntry.Started;
import org.arcwright.live.LogEntry.Undo;
import org.arcwright.live.Progress;
import org.arcwright.live.Progress.Workshop;

/** A morning as it is logged, in values and in text. */
final class LogSample {
  static final String FIRST_LINE =
      """
      {"format":"arcwright-log","version":1,"title":"Winter planning","mode":"remote","people":12,"start":"2026-12-03 09:30","zone":"Europe/Vienna"}
      """;

  static final String TEXT =
      FIRST_LINE
          + """
            {"at":"2026-12-03T09:34:10+01:00","started":"weather-report","planned":10}
            {"at":"2026-12-03T09:40:00+01:00","note":"Zwei kommen später: \\"Züge\\"\\nUnd 🙂"}
            {"at":"2026-12-03T09:46:30+01:00","ended":"weather-report"}
            {"at":"2026-12-03T09:46:31+01:00","started":"break","planned":10}
            {"at":"2026-12-03T09:46:40+01:00","undo":true}
            {"at":"2026-12-03T09:50:00+01:00","energy":4}
            {"at":"2026-12-03T09:51:00+01:00","started":"surprise"}
            {"at":"2026-12-03T11:00:00+01:00","decision":"We start with the second option"}
            """;

  static final Workshop WORKSHOP =
      new Workshop(
          "Winter planning",
          Mode.REMOTE,
          12,
          Optional.of(ZonedDateTime.parse("2026-12-03T09:30+01:00[Europe/Vienna]")));

  static final Progress PROGRESS =
      new Progress(
          WORKSHOP,
          List.of(
              new Started(at("09:34:10"), "weather-report", Optional.of(Duration.ofMinutes(10))),
              new Note(at("09:40:00"), "Zwei kommen später: \"Züge\"\nUnd 🙂"),
              new Ended(at("09:46:30"), "weather-report"),
              new Started(at("09:46:31"), "break", Optional.of(Duration.ofMinutes(10))),
              new Undo(at("09:46:40")),
              new EnergyCheck(at("09:50:00"), 4),
              new Started(at("09:51:00"), "surprise", Optional.empty()),
              new Decision(at("11:00:00"), "We start with the second option")));

  private LogSample() {}

  static OffsetDateTime at(String time) {
    return OffsetDateTime.parse("2026-12-03T" + time + "+01:00");
  }
}
