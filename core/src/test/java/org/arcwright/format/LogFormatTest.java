package org.arcwright.format;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.arcwright.format.LogSample.FIRST_LINE;
import static org.arcwright.format.LogSample.PROGRESS;
import static org.arcwright.format.LogSample.TEXT;
import static org.arcwright.format.LogSample.at;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.arcwright.live.LogEntry;
import org.arcwright.live.LogEntry.Note;
import org.arcwright.live.Progress;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LogFormatTest {
  private static final LogEntry MORE = new Note(at("12:00:00"), "After the power cut");

  @TempDir Path folder;

  @Test
  void a_day_is_written_line_by_line() {
    assertThat(LogFormat.write(PROGRESS)).isEqualTo(TEXT);
  }

  @Test
  void what_is_written_is_read_as_the_same_day() {
    LogFormat.Reading reading = LogFormat.read("log.jsonl", TEXT);

    assertThat(reading.progress()).isEqualTo(PROGRESS);
    assertThat(reading.torn()).isEmpty();
  }

  @Test
  void each_line_keeps_to_the_schema() {
    assertThat(TEXT.lines()).allMatch(line -> SchemaFile.complaints(Schema.LOG, line).isEmpty());
  }

  @Test
  void line_ends_of_any_kind_and_empty_lines_do_no_harm() {
    String other = TEXT.replace("\n", "\r\n\r\n");

    assertThat(LogFormat.read("log.jsonl", other).progress()).isEqualTo(PROGRESS);
  }

  /** Whatever was on the disk when the power went: each whole line counts, and work goes on. */
  @Test
  void a_log_survives_being_cut_after_any_byte() throws IOException {
    Path file = folder.resolve("log.jsonl");
    byte[] all = TEXT.getBytes(UTF_8);
    for (int length = 0; length < all.length; length++) {
      byte[] cut = Arrays.copyOf(all, length);
      Files.write(file, cut);
      List<LogEntry> whole = PROGRESS.entries().subList(0, wholeEntries(cut));
      boolean breaksOff = length > 0 && cut[length - 1] != '\n' && cut[length - 1] != '}';

      try (LogFile log = LogFile.open(file, LogSample.WORKSHOP)) {
        assertThat(log.progress().entries()).as("cut after %d bytes", length).isEqualTo(whole);
        assertThat(log.torn()).hasSize(breaksOff && !whole.isEmpty() ? 1 : log.torn().size());
        log.append(MORE);
      }

      LogFormat.Reading reading = LogFormat.read(file);
      assertThat(reading.progress().entries())
          .as("cut after %d bytes, then one more", length)
          .isEqualTo(Stream.concat(whole.stream(), Stream.of(MORE)).toList());
      assertThat(reading.torn()).hasSize(breaksOff ? 1 : 0);
    }
  }

  /** Entries whose object is closed: a cut may fall between that and the line's end. */
  private static int wholeEntries(byte[] cut) {
    long lines = new String(cut, UTF_8).lines().filter(line -> line.endsWith("}")).count();
    return (int) Math.max(0, lines - 1);
  }

  @Test
  void a_line_that_breaks_off_is_named() {
    String cut = TEXT.substring(0, TEXT.indexOf("ended") + 3);

    assertThat(LogFormat.read("log.jsonl", cut).torn().stream().map(Problem::text))
        .containsExactly(
            "log.jsonl:4:39: line that breaks off: this entry was never finished and is passed"
                + " over; enter it again if it matters");
  }

  @Test
  void a_block_of_zeros_at_the_end_is_passed_over_too() throws IOException {
    Path file = folder.resolve("log.jsonl");
    Files.writeString(file, TEXT + "\0".repeat(40));

    assertThat(LogFormat.read(file).progress()).isEqualTo(PROGRESS);
    try (LogFile log = LogFile.open(file, LogSample.WORKSHOP)) {
      log.append(MORE);
    }
    assertThat(LogFormat.read(file).progress()).isEqualTo(PROGRESS.with(MORE));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      value = {
        "arcwright-log ~ my-log ~ 1:11: format, my-log: this is no log; arcwright-log is right",
        "\"version\":1 ~ \"version\":2 ~ 1:37: version, 2: 1 is read by this program",
        "\"people\":12 ~ \"people\":0 ~ 1:90: people, 0: a whole number from 1 to 1000 is right",
        "09:34:10+01:00 ~ 09:34:10 ~ 2:7: at, 2026-12-03T09:34:10: write date, time and offset, such as 2026-12-03T09:34:10+01:00",
        "\"planned\":10 ~ \"planed\":10 ~ 2:62: unknown key, planed: perhaps planned",
        "\"planned\":10 ~ \"planned\":0 ~ 2:72: planned, 0: over 0 minutes are right",
        "\"note\" ~ \"remark\" ~ 3:1: entry, keys and values: beside \"at\" goes one of started, ended, note, decision, agreed, energy, undo",
        "\"ended\":\"weather-report\"} ~ \"ended\":\"dot-voting\"} ~ 4:1: ended, dot-voting: what runs is weather-report",
        "\"started\":\"surprise\" ~ \"ended\":\"surprise\" ~ 8:1: ended, surprise: nothing runs; start it first",
        "09:46:31 ~ 09:46:29 ~ 5:1: at, 2026-12-03T09:46:29+01:00: no earlier than the entry before, 2026-12-03T09:46:30+01:00",
        "\"undo\":true ~ \"undo\":false ~ 6:42: undo, false: true is right; strike the line if nothing is undone",
        "\"energy\":4 ~ \"energy\":7 ~ 7:44: energy, 7: a whole number from 1 to 5 is right",
        "\"energy\":4} ~ \"energy\":4}} ~ 7:46: text after the end: one file holds one document; strike the rest",
      })
  void anything_else_that_is_wrong_is_told_with_its_line(
      String text, String faulty, String complaint) {
    assertThat(Complaints.of(() -> LogFormat.read("l.jsonl", TEXT.replace(text, faulty))))
        .contains("l.jsonl:" + complaint);
  }

  @Test
  void what_still_runs_must_end_before_something_else_starts() {
    String twice =
        TEXT.replace("{\"at\":\"2026-12-03T09:46:30+01:00\",\"ended\":\"weather-report\"}\n", "");

    assertThat(Complaints.of(() -> LogFormat.read("l.jsonl", twice)))
        .containsExactly("l.jsonl:4:1: started, break: weather-report still runs; end it first");
  }

  @Test
  void a_file_that_says_nothing_is_told() {
    assertThat(Complaints.of(() -> LogFormat.read("l.jsonl", "\n")))
        .containsExactly(
            "l.jsonl:1:1: empty log: its first line says which day it is of, such as"
                + " {\"format\":\"arcwright-log\", ...}");
    assertThat(Complaints.of(() -> LogFormat.read(folder.resolve("none.jsonl"))))
        .containsExactly(
            folder.resolve("none.jsonl") + ": no such file: check its name and folder");
  }

  @Test
  void another_file_is_told_to_be_none_and_not_line_by_line() {
    assertThat(Complaints.of(() -> LogFormat.read("a.json", "{\n\"format\": \"x\",\n{}\n}\n")))
        .containsExactly(
            "a.json:1:1: no log: a log is JSON lines, and its first says which day it is of, such"
                + " as {\"format\":\"arcwright-log\", ...}");
  }

  @Test
  void a_simulated_day_says_so() {
    String text = FIRST_LINE.replace("}\n", ",\"simulated\":true}\n");
    Progress simulated = LogFormat.read("log.jsonl", text).progress();

    assertThat(simulated.workshop().simulated()).isTrue();
    assertThat(LogFormat.write(simulated)).isEqualTo(text);
    assertThat(SchemaFile.complaints(Schema.LOG, text.strip())).isEmpty();
  }

  @Test
  void a_log_is_held_by_one_program_at_a_time() throws IOException {
    Path file = folder.resolve("log.jsonl");
    try (LogFile first = LogFile.open(file, LogSample.WORKSHOP)) {
      assertThat(catchThrowable(() -> LogFile.open(file, LogSample.WORKSHOP)))
          .isInstanceOf(IOException.class)
          .hasMessageContaining("another program is writing this log");
      assertThat(first.progress().entries()).isEmpty();
    }
    assertThat(Files.readString(file)).isEqualTo(FIRST_LINE);
  }

  @Test
  void what_cannot_follow_is_not_written() throws IOException {
    Path file = Files.writeString(folder.resolve("log.jsonl"), TEXT);
    try (LogFile log = LogFile.open(file, LogSample.WORKSHOP)) {
      assertThat(catchThrowable(() -> log.append(new LogEntry.Ended(at("12:00:00"), "dot-voting"))))
          .hasMessageContaining("what runs is surprise");
    }
    assertThat(Files.readString(file)).isEqualTo(TEXT);
  }
}
