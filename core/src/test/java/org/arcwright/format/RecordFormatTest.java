package org.arcwright.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.arcwright.record.After;
import org.arcwright.record.Happening;
import org.arcwright.record.Remark;
import org.arcwright.record.Vote;
import org.arcwright.record.WorkshopRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RecordFormatTest {
  private static WorkshopRecord read(String text) {
    return RecordFormat.read("r.yaml", text);
  }

  @Test
  void what_is_written_is_read_as_the_same_record() {
    WorkshopRecord record = read(RecordSample.TEXT);
    String text = RecordFormat.write(record);

    assertThat(read(text)).isEqualTo(record);
    assertThat(SchemaFile.complaints(Schema.RECORD, text)).isEmpty();
  }

  @Test
  void a_day_that_was_logged_is_written_too() {
    WorkshopRecord logged = WorkshopRecord.of(LogSample.PROGRESS);
    String text = RecordFormat.write(logged);

    assertThat(read(text)).isEqualTo(logged);
    assertThat(SchemaFile.complaints(Schema.RECORD, text)).isEmpty();
  }

  @Test
  void three_lines_are_enough() {
    WorkshopRecord record = read("title: T\nmode: remote\npeople: 3\n");

    assertThat(record.happened()).isEmpty();
    assertThat(record.after()).isEqualTo(After.USUAL);
  }

  @Test
  void times_are_of_the_day_or_after_the_start() {
    WorkshopRecord record = read(RecordSample.TEXT);

    assertThat(record.happened())
        .extracting(Happening::from)
        .containsExactly(Duration.ofMinutes(3), Duration.ofMinutes(20), Duration.ofMinutes(35));
    assertThat(record.remarks())
        .containsExactly(new Remark(Duration.ofMinutes(35), "The board was slow."));
  }

  @Test
  void a_time_within_the_hour_before_is_early_and_an_earlier_one_is_tomorrow() {
    String text = RecordSample.TEXT.replace("from: 09:33", "from: 08:30");
    assertThat(read(text).happened().get(0).from()).isEqualTo(Duration.ofHours(-1));

    String tomorrow = RecordSample.TEXT.replace("at: 10:05", "at: 08:29");
    assertThat(read(tomorrow).remarks().get(0).at()).isEqualTo(Duration.ofMinutes(22 * 60 + 59));
  }

  @Test
  void the_votes_of_the_sample_state_what_follows_from_them() {
    assertThat(read(RecordSample.TEXT).allVotes())
        .hasSize(11)
        .extracting(Vote::doubt)
        .containsOnly(Optional.empty());
  }

  /** What is wrong, where, and what would be right. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      textBlock =
          """
          people: 9 ~ people: none ~ r.yaml:3:9: people, none: a whole number is right
          to: 09:44 ~ to: 09:30 ~ r.yaml:9:45: to, 09:30: it ends after it begins
          from: 09:50 ~ from: 09:40 ~ r.yaml:10:25: happened[1].from, 09:40: what stands before it ends later; mend one of the two
          Repair kits: 2, Seeds: 1 ~ Repair kits: 4 ~ r.yaml:23:19: ballot 1, Repair kits, 4: a whole number from 0 to 2 is right
          result: Repair kits ~ result: Kits ~ r.yaml:24:17: result, Kits: it is none of the options Repair kits, Seeds, Tents
          voters: 2, totals ~ voters: 3, totals ~ r.yaml:27:81: totals, 6 in all: 3 voters give 9 in all; count again
          people: 3, reservations ~ people: 0, reservations ~ r.yaml:25:76: people, 0: 1 spoke up already; count again
          when: 2026-12-10 ~ when: in a week ~ r.yaml:39:54: when, in a week: write the day as 2026-12-10
          """)
  void a_fault_is_told_with_its_place(String right, String wrong, String complaint) {
    assertThat(Complaints.of(() -> read(RecordSample.TEXT.replaceFirst(right, wrong))))
        .containsExactly(complaint);
  }

  @Test
  void times_of_day_need_a_start() {
    String text = "title: T\nmode: remote\npeople: 3\nnotes: [{at: 10:05, text: Slow.}]\n";

    assertThat(Complaints.of(() -> read(text)))
        .isEqualTo(
            List.of(
                "r.yaml:4:14: at, 10:05: a time of day needs a start; add start and zone to the"
                    + " record"));
  }
}
