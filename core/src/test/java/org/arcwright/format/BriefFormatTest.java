package org.arcwright.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.arcwright.brief.Brief;
import org.arcwright.brief.Defaults;
import org.arcwright.brief.EnergyCurve;
import org.arcwright.brief.EnergyCurve.Point;
import org.arcwright.brief.Group;
import org.arcwright.brief.Group.Acquaintance;
import org.arcwright.brief.Meal;
import org.arcwright.brief.Moment;
import org.arcwright.brief.OwnItem;
import org.arcwright.brief.Rhythm;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Mode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BriefFormatTest {
  /** The least that a brief says. */
  private static final String LEAST =
      """
      title: Winter planning
      goal: choose-a-direction
      people: 12
      mode: remote
      cap: 3h
      """;

  private static final String WHOLE =
      """
      title: Winter planning
      goal: choose-a-direction
      people: {count: 12, acquainted: colleagues, openness: 1}
      mode: in-person
      cap: PT6H30M
      start: 2026-12-03 09:30
      zone: Europe/Vienna
      zones: [Asia/Kolkata, Europe/Lisbon]
      tools: [paper, wall]
      rhythm: {stretch: 40m..1h30m, break: 20m}
      meals:
        - {at: 12:00..12:45, minutes: 45}
        - {at: 5h30m, minutes: 20}
      curve: [[0, 3], [40, 3.6], [100, 2.4]]
      buffer: 12%
      given: [shared-picture]
      wishes:
        include: [dot-voting]
        leave-out: [premortem]
        used-last-time: [weather-report]
        pin: [{exercise: chat-burst, at: 10:30}, {exercise: dot-voting, at: 60m}]
      own-items:
        - {id: guest-talk, title: A guest's view, minutes: 20, phase: widen, at: "10:15", energy: 3, format: pairs}
        - {id: welcome, title: Welcome, minutes: 5}
      """;

  @Test
  void a_brief_may_say_no_more_than_the_least() {
    assertThat(BriefFormat.read("brief.yaml", LEAST))
        .isEqualTo(
            Brief.builder(
                    "Winter planning", "choose-a-direction", Mode.REMOTE, 12, Duration.ofHours(3))
                .build());
  }

  @Test
  void a_brief_may_say_everything() {
    Brief brief = BriefFormat.read("brief.yaml", WHOLE);

    assertThat(brief.group()).isEqualTo(new Group(12, Acquaintance.COLLEAGUES, 1));
    assertThat(brief.mode()).isEqualTo(Mode.IN_PERSON);
    assertThat(brief.cap()).isEqualTo(minutes(390));
    assertThat(brief.start())
        .contains(ZonedDateTime.parse("2026-12-03T09:30:00+01:00[Europe/Vienna]"));
    assertThat(brief.zones())
        .containsExactly(ZoneId.of("Asia/Kolkata"), ZoneId.of("Europe/Lisbon"));
    assertThat(brief.tools()).containsExactly("paper", "wall");
    assertThat(brief.rhythm()).isEqualTo(new Rhythm(minutes(40), minutes(90), minutes(20)));
    assertThat(brief.meals())
        .containsExactly(
            new Meal(minutes(150), minutes(195), minutes(45)),
            new Meal(minutes(330), minutes(330), minutes(20)));
    assertThat(brief.curve().points())
        .containsExactly(new Point(0, 30), new Point(40, 36), new Point(100, 24));
    assertThat(brief.bufferPercent()).isEqualTo(12);
    assertThat(brief.given()).containsExactly("shared-picture");
    assertThat(brief.wishes())
        .isEqualTo(
            new Wishes(
                Set.of("dot-voting"),
                Set.of("premortem"),
                List.of(
                    new Wishes.Pin("chat-burst", new Moment.Clock(LocalTime.of(10, 30))),
                    new Wishes.Pin("dot-voting", new Moment.After(minutes(60)))),
                Set.of("weather-report")));
    assertThat(brief.ownItems())
        .containsExactly(
            new OwnItem(
                "guest-talk",
                "A guest's view",
                minutes(20),
                Optional.of("widen"),
                Optional.of(new Moment.Clock(LocalTime.of(10, 15))),
                3,
                Format.PAIRS),
            new OwnItem(
                "welcome",
                "Welcome",
                minutes(5),
                Optional.empty(),
                Optional.empty(),
                Defaults.OWN_ITEM_ENERGY,
                Defaults.OWN_ITEM_FORMAT));
  }

  @Test
  void a_brief_may_be_json() {
    String json =
        """
        {"title": "Winter planning", "goal": "choose-a-direction", "people": 12,
         "mode": "remote", "cap": "3h"}
        """;

    assertThat(BriefFormat.read("brief.json", json))
        .isEqualTo(BriefFormat.read("brief.yaml", LEAST));
  }

  @Test
  void what_is_written_is_read_as_the_same_brief() {
    Brief brief = BriefFormat.read("brief.yaml", WHOLE);

    assertThat(BriefFormat.read("again.yaml", BriefFormat.write(brief))).isEqualTo(brief);
  }

  @Test
  void what_is_written_looks_as_if_a_person_had() {
    assertThat(BriefFormat.write(BriefFormat.read("brief.yaml", WHOLE)))
        .isEqualTo(
            """
            title: Winter planning
            goal: choose-a-direction
            people: {count: 12, acquainted: colleagues, openness: 1}
            mode: in-person
            cap: 6h30m
            start: 2026-12-03 09:30
            zone: Europe/Vienna
            zones: [Asia/Kolkata, Europe/Lisbon]
            tools: [paper, wall]
            rhythm: {stretch: 40m..1h30m, break: 20m}
            meals:
              - {at: 2h30m..3h15m, minutes: 45}
              - {at: 5h30m..5h30m, minutes: 20}
            curve: [[0, 3], [40, 3.6], [100, 2.4]]
            buffer: 12%
            given: [shared-picture]
            wishes:
              include: [dot-voting]
              leave-out: [premortem]
              used-last-time: [weather-report]
              pin:
                - {exercise: chat-burst, at: '10:30'}
                - {exercise: dot-voting, at: 1h}
            own-items:
              - id: guest-talk
                title: A guest's view
                minutes: 20
                phase: widen
                at: 10:15
                energy: 3
                format: pairs
              - {id: welcome, title: Welcome, minutes: 5, energy: 2, format: plenary}
            """);
  }

  @Test
  void a_meal_may_stand_alone_and_shapes_and_no_breaks_have_words() {
    Brief brief =
        BriefFormat.read(
            "brief.yaml",
            LEAST + "meal: {at: 2h..2h30m, minutes: 45}\ncurve: rising\nrhythm: {break: none}\n");

    assertThat(brief.meals()).containsExactly(new Meal(minutes(120), minutes(150), minutes(45)));
    assertThat(brief.curve()).isEqualTo(EnergyCurve.Shape.RISING.curve());
    assertThat(brief.rhythm()).isEqualTo(new Rhythm(minutes(30), minutes(60), Duration.ZERO));
  }

  @Test
  void a_time_of_day_before_the_start_is_on_the_next_day() {
    Brief brief =
        BriefFormat.read(
            "brief.yaml",
            LEAST
                + "start: 2026-12-03T22:00\nzone: Europe/Vienna\n"
                + "meal: {at: 23:30..0:15, minutes: 30}\n");

    assertThat(brief.meals()).containsExactly(new Meal(minutes(90), minutes(135), minutes(30)));
  }

  @Test
  void every_missing_key_is_named_with_an_example() {
    assertThat(Complaints.of(() -> BriefFormat.read("brief.yaml", "tools: [board]\n")))
        .containsExactly(
            "brief.yaml:1:1: missing key, title: add it, such as title: Winter planning",
            "brief.yaml:1:1: missing key, goal: add it, such as goal: choose-a-direction",
            "brief.yaml:1:1: missing key, people: add it, such as people: 12",
            "brief.yaml:1:1: missing key, mode: add it, such as mode: remote",
            "brief.yaml:1:1: missing key, cap: add it, such as cap: 3h");
  }

  @Test
  void all_faults_are_told_at_once_in_the_order_of_places() {
    String text =
        """
        title: Winter planning
        gaol: choose-a-direction
        people: many
        mode: remotely
        cap: 3 hrs
        mode: hybrid
        own-items:
          - {id: Talk, title: x, minutes: 10}
          - {id: talk, minutes: ten}
        """;

    assertThat(Complaints.of(() -> BriefFormat.read("brief.yaml", text)))
        .containsExactly(
            "brief.yaml:1:1: missing key, goal: add it, such as goal: choose-a-direction",
            "brief.yaml:2:1: unknown key, gaol: perhaps goal",
            "brief.yaml:3:9: people, many: a whole number is right",
            "brief.yaml:4:7: mode, remotely: perhaps remote",
            "brief.yaml:5:6: cap, 3 hrs: write it as 3h, 90m or 2h30m",
            "brief.yaml:6:1: key twice, mode: it stands in line 4 already; keep one of the two",
            "brief.yaml:8:10: id, Talk: an id has at most 80 lower-case letters, digits and single"
                + " hyphens",
            "brief.yaml:9:5: missing key, title: add it, such as title: A guest's view",
            "brief.yaml:9:25: minutes, ten: write a number of minutes, such as 5 or 0.5");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "title: Winter planning ~ title: 2026 ~ 1:8: title, 2026: a text is right; put it in quotes",
        "title: Winter planning ~ title: [x] ~ 1:8: title, a list: a text is right",
        "people: 12 ~ people: 0 ~ 3:9: people, 0: a whole number from 1 to 1000 is right",
        "people: 12 ~ people: {count: 0} ~ 3:17: people, 0: a whole number from 1 to 1000 is right",
        "people: 12 ~ people: 12.5 ~ 3:9: people, 12.5: a whole number is right",
        "people: 12 ~ people: 99999999999 ~ 3:9: people, 99999999999: a whole number up to 2147483647 is right",
        "people: 12 ~ people: {count: 3, acquainted: stranger} ~ 3:32: acquainted, stranger: perhaps strangers",
        "people: 12 ~ people: {count: 3, openness: 4} ~ 3:30: openness, 4: a whole number from 0 to 3 is right",
        "mode: remote ~ mode: online ~ 4:7: mode, online: remote, in-person or hybrid is right",
        "cap: 3h ~ cap: 180 ~ 5:6: cap, 180: say the unit, such as 180m",
        "cap: 3h ~ cap: PT3H30S ~ 5:6: cap, PT3H30S: write it as 3h, 90m or 2h30m",
        "cap: 3h ~ cap: -3h ~ 5:6: cap, -3h: write it as 3h, 90m or 2h30m",
        "cap: 3h ~ cap: [3h] ~ 5:6: cap, a list: write it as 3h, 90m or 2h30m",
        "cap: 3h ~ cap: ~ 5:1: key without a value, cap: add it, such as cap: 3h",
        "cap: 3h ~ cap: 10m ~ 5:6: cap, 10m: from 15 minutes to 40 hours is right",
      })
  void a_fault_among_the_least(String line, String faulty, String complaint) {
    assertThat(Complaints.of(() -> BriefFormat.read("brief.yaml", LEAST.replace(line, faulty))))
        .containsExactly("brief.yaml:" + complaint);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "start: 2026-12-03 09:30 ~ 1:1: missing key, zone: add it, such as zone: Europe/Vienna",
        "zone: Europe/Vienna ~ 6:7: zone, Europe/Vienna: it goes with a start; add one or strike the zone",
        "'start: 3 December|zone: Europe/Vienna' ~ 6:8: start, 3 December: write date and time as 2026-12-03 09:30",
        "'start: 2026-12-03 09:30|zone: Europe/Viena' ~ 7:7: unknown zone, Europe/Viena: perhaps Europe/Vienna",
        "'start: 2026-12-03 09:30|zone: vienna' ~ 7:7: unknown zone, vienna: perhaps Europe/Vienna",
        "'start: 2026-12-03 09:30|zone: Mars' ~ 7:7: unknown zone, Mars: write continent and city, such as Europe/Vienna",
        "'zones: [UTC, Europe/Viena]' ~ 6:14: unknown zone, Europe/Viena: perhaps Europe/Vienna",
        "'zones: [UTC, UTC]' ~ 6:14: zones, UTC: it stands here twice; name it once",
        "'start: 2026-03-29 02:30|zone: Europe/Vienna' ~ 6:8: start, 2026-03-29 02:30: the clocks skip this hour there; choose another",
        "'meal: {at: 12:00..12:45, minutes: 45}' ~ 6:12: at, 12:00..12:45: a time of day needs a start; add start and zone to the brief",
        "'meal: {at: noon, minutes: 45}' ~ 6:12: at, noon: write when it may start, such as 12:00..12:45 or 2h..2h30m",
        "'meal: {at: 2h..1h, minutes: 45}' ~ 6:12: at, 2h..1h: it starts after the workshop does, and the earliest start comes first",
        "'meal: {at: 1h, minutes: 2}' ~ 6:25: minutes, 2: from 5 to 240 minutes is right",
        "'meal: {at: 4h, minutes: 45}' ~ 6:12: meals[0].at, 4h: it must start before the workshop ends at 180 min",
        "'meal: {at: 1h, minutes: 45}|meals: []' ~ 7:8: meals, a list: there is a meal already; list it here and strike it there",
        "'rhythm: {stretch: 60m..30m}' ~ 6:19: stretch, 60m..30m: write it ascending: shortest, longest",
        "'rhythm: {stretch: 60m}' ~ 6:19: stretch, 60m: write shortest and longest, such as 30m..60m",
        "'rhythm: {break: 10}' ~ 6:17: break, 10: say the unit, such as 10m",
        "curve: arc ~ 6:8: curve, arc: perhaps arch",
        "'curve: [[0, 3], [40, 3.65]]' ~ 6:22: energy, 3.65: 1 (calm) to 5 (lively) with one decimal is right",
        "'curve: [[0, 3], [40]]' ~ 6:17: point of the curve, a list: write per cent and energy, such as [40, 3.6]",
        "'curve: [[0, 3], [40, 6]]' ~ 6:22: energy, 6: 1 (calm) to 5 (lively) with one decimal is right",
        "'curve: [[40, 3], [20, 3]]' ~ 6:8: curve, 20: write the points in the order of time",
        "buffer: 15 ~ 6:9: buffer, 15: write it in per cent of the working time, such as 15%",
        "buffer: 150% ~ 6:9: buffer, 150%: a whole number from 0 to 100 is right",
        "tools: board ~ 6:8: tools, board: a list is right, such as [a, b]",
        "'tools: [board, call, board]' ~ 6:22: tools, board: it stands here twice; name it once",
        "'tools: [1]' ~ 6:9: tools, 1: a text is right; put it in quotes",
        "'wishes: {include: [x], leave-out: [x]}' ~ 6:36: leave-out, x: it is also wished for; strike it from one of the two",
        "'wishes: {pin: [{exercise: x, at: later}]}' ~ 6:34: at, later: write a time of day such as 10:30, or a time after the start such as 60m",
        "'wishes: {pin: [{exercise: x, at: 10:30}]}' ~ 6:34: wishes.pin[0].at, 10:30: a time of day needs a start; add start and zone to the brief",
        "'wishes: {pin: [{exercise: x, at: 5h}]}' ~ 6:34: wishes.pin[0].at, 5h: it must start before the workshop ends at 180 min",
        "'own-items: [{id: a, title: x, minutes: 20, at: 5h}]' ~ 6:48: own-items[0].at, 5h: it must start before the workshop ends at 180 min",
        "'own-items: [{id: a, title: x, minutes: 0}]' ~ 6:40: minutes, 0: from 1 to 300 minutes is right",
        "'own-items: [{id: a, title: x, minutes: 5, format: plenery}]' ~ 6:51: format, plenery: perhaps plenary",
      })
  void a_fault_in_what_may_be_left_out(String lines, String complaint) {
    String text = LEAST + lines.replace('|', '\n') + "\n";

    assertThat(Complaints.of(() -> BriefFormat.read("brief.yaml", text)))
        .containsExactly("brief.yaml:" + complaint);
  }

  private static Duration minutes(int minutes) {
    return Duration.ofMinutes(minutes);
  }
}
