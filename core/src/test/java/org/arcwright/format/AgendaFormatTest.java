package org.arcwright.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.Agenda.PhaseTitle;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.agenda.AgendaItem.Pause;
import org.arcwright.agenda.Figures;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Mode;
import org.arcwright.compose.Proof;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AgendaFormatTest {
  private static final Agenda AGENDA =
      new Agenda(
          "Winter planning",
          "choose-a-direction",
          Mode.REMOTE,
          12,
          minutes(90),
          Optional.of(ZonedDateTime.parse("2026-12-03T09:30:00+01:00[Europe/Vienna]")),
          List.of(new PhaseTitle("open", "Arrive"), new PhaseTitle("widen", "See")),
          List.of(
              new Activity(
                  "weather-report",
                  "Weather report",
                  Optional.of(Kind.ICEBREAKER),
                  "open",
                  minutes(0),
                  Duration.ofSeconds(450),
                  Format.PLENARY,
                  25),
              new Pause(minutes(10), minutes(10), false),
              new Activity(
                  "guest-talk",
                  "A guest's view",
                  Optional.empty(),
                  "widen",
                  minutes(20),
                  minutes(20),
                  Format.PAIRS,
                  20),
              new Pause(minutes(40), minutes(30), true)),
          minutes(5),
          List.of(30, 32, 28),
          new Figures(
              Map.of(Kind.ICEBREAKER, minutes(8)),
              93,
              minutes(20),
              new Figures.Cost(1, 2, 3, 4, 5, 6, 7, 9_999_999_999L)));

  private static final Proof PROOF = new Proof(true, 695, 690, 42, Duration.ofMillis(7));
  private static final Catalog CATALOG = SmallCatalog.read();
  private static final Brief BRIEF =
      Brief.builder(
              "T", CATALOG.goals().keySet().iterator().next(), Mode.REMOTE, 8, Duration.ofHours(3))
          .build();

  /** What somebody writes who cares for nothing but the order. */
  private static final String BY_HAND =
      """
      {
        "format": "arcwright-agenda", "version": 1,
        "title": "By hand", "goal": "generate-ideas", "mode": "in-person", "people": 8,
        "items": [
          {"exercise": "weather-report", "title": "Weather report", "kind": "icebreaker", "phase": "open", "length": 10},
          {"break": "ordinary", "length": "1h30m"},
          {"exercise": "chat-burst", "title": "Chat burst", "kind": "divergent", "phase": "gather", "length": 12.5, "energy": 4.5}
        ]
      }
      """;

  @Test
  void what_is_written_is_read_as_the_same_agenda() {
    assertThat(AgendaFormat.read("agenda.json", AgendaFormat.write(AGENDA))).isEqualTo(AGENDA);
  }

  @Test
  void the_proof_is_written_and_passed_over_when_read() {
    String text = AgendaFormat.write(AGENDA, BRIEF, PROOF);

    assertThat(text)
        .contains(
            "\"proof\": {\"best\": true, \"cost\": 695, \"bound\": 690, \"labels\": 42,"
                + " \"milliseconds\": 7}");
    assertThat(AgendaFormat.read("agenda.json", text)).isEqualTo(AGENDA);
  }

  @Test
  void the_brief_comes_back_with_the_agenda() {
    String text = AgendaFormat.write(AGENDA, BRIEF, PROOF);

    AgendaFile file = AgendaFormat.read("agenda.json", text, CATALOG);

    assertThat(file).isEqualTo(new AgendaFile(AGENDA, Optional.of(BRIEF)));
    assertThat(SchemaFile.complaints(Schema.AGENDA, text)).isEmpty();
  }

  @Test
  void an_agenda_by_hand_carries_no_brief() {
    assertThat(AgendaFormat.read("agenda.json", BY_HAND, CATALOG).brief()).isEmpty();
  }

  @Test
  void a_fault_in_the_brief_is_told_with_its_place() {
    String text = AgendaFormat.write(AGENDA, BRIEF, PROOF).replace("\"3h\"", "\"long\"");

    assertThat(Complaints.of(() -> AgendaFormat.read("a.json", text, CATALOG)))
        .containsExactly("a.json:21:183: cap, long: write it as 3h, 90m or 2h30m");
  }

  @Test
  void what_is_left_out_follows_from_the_rest() {
    Agenda agenda = AgendaFormat.read("agenda.json", BY_HAND);

    assertThat(agenda.items())
        .containsExactly(
            new Activity(
                "weather-report",
                "Weather report",
                Optional.of(Kind.ICEBREAKER),
                "open",
                minutes(0),
                minutes(10),
                Format.PLENARY,
                20),
            new Pause(minutes(10), minutes(90), false),
            new Activity(
                "chat-burst",
                "Chat burst",
                Optional.of(Kind.DIVERGENT),
                "gather",
                minutes(100),
                Duration.ofSeconds(750),
                Format.PLENARY,
                45));
    assertThat(agenda.phases())
        .containsExactly(new PhaseTitle("open", "open"), new PhaseTitle("gather", "gather"));
    assertThat(agenda.buffer()).isEqualTo(Duration.ZERO);
    assertThat(agenda.cap()).isEqualTo(agenda.end());
    assertThat(agenda.start()).isEmpty();
    assertThat(agenda.curve()).isEmpty();
    assertThat(agenda.figures())
        .isEqualTo(
            new Figures(
                Map.of(Kind.ICEBREAKER, minutes(10), Kind.DIVERGENT, Duration.ofSeconds(750)),
                100,
                Duration.ofSeconds(750),
                Figures.Cost.NONE));
  }

  @Test
  void how_near_it_keeps_to_the_curve_is_counted() {
    String text = BY_HAND.replace("\"items\"", "\"curve\": [3, 5], \"items\"");

    // 10 minutes one level off, 12 of its 12.5 minutes half a level off, of four levels:
    // (10 * 10 + 12 * 5) / (22 * 40) = 18.2 %
    assertThat(AgendaFormat.read("agenda.json", text).figures().energyFit()).isEqualTo(82);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      value = {
        "arcwright-agenda ~ my-agenda ~ 2:13: format, my-agenda: this is no agenda; arcwright-agenda is right",
        "\"version\": 1 ~ \"version\": 2 ~ 2:44: version, 2: 1 is read by this program",
        "\"ordinary\" ~ \"lunch\" ~ 6:15: break, lunch: ordinary or meal is right",
        "\"1h30m\" ~ \"soon\" ~ 6:37: length, soon: write a number of minutes, such as 5 or 0.5",
        "\"1h30m\" ~ 0 ~ 6:37: minutes, 0: over 0 is right",
        "12.5 ~ 12.5, \"start\": 3 ~ 7:120: items[2].start, 3: the item before ends at 100; start no earlier",
        "4.5 ~ 6 ~ 7:121: energy, 6: 1 (calm) to 5 (lively) with one decimal is right",
        "\"items\" ~ \"phases\": [{\"name\": \"open\", \"title\": \"x\"}], \"items\" ~ 7:85: unknown phase, gather: known here: open",
        "\"length\": 10 ~ \"lenght\": 10 ~ 5:102: unknown key, lenght: perhaps length",
      })
  void a_fault_is_told_at_its_place(String text, String faulty, String complaint) {
    assertThat(Complaints.of(() -> AgendaFormat.read("a.json", BY_HAND.replace(text, faulty))))
        .contains("a.json:" + complaint);
  }

  private static Duration minutes(int minutes) {
    return Duration.ofMinutes(minutes);
  }
}
