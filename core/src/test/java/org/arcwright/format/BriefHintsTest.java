package org.arcwright.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Tool;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What is allowed but odd in a brief. The figures: breaks of 5 to 10 minutes after 50 to 60 minutes
 * of screen work (HSE L26), a break about every 90 minutes in a room (KACEE, "Building your
 * agenda"), remote workshops under four hours (common practice, no source).
 */
class BriefHintsTest {
  private static final Catalog CATALOG =
      Catalog.of(
          SmallCatalog.read().products().values(),
          List.of(
              new Tool("call", "call", "To hear each other.", Set.of(Mode.REMOTE)),
              new Tool("board", "board", "To write on.", Set.of(Mode.REMOTE)),
              new Tool("wall", "wall", "To pin on.", Set.of(Mode.IN_PERSON))),
          SmallCatalog.read().exercises().values(),
          SmallCatalog.read().goals().values());
  private static final String BRIEF =
      """
      title: Winter planning
      goal: generate-ideas
      people: {count: 12, acquainted: mixed}
      mode: remote
      cap: 4h
      """;

  @Test
  void nothing_is_odd_in_a_usual_brief() {
    assertThat(hints(BRIEF)).isEmpty();
    assertThat(hints(BRIEF.replace("mode: remote", "mode: in-person"))).isEmpty();
  }

  @ParameterizedTest(name = "{0} -> {1}: {2}")
  @CsvSource(
      delimiter = '~',
      value = {
        "cap: 4h ~ cap: 4h15m ~ b.yaml:5:6: cap, 4h15m: at screens",
        "count: 12 ~ count: 2 ~ b.yaml:3:17: count, 2: most exercises",
        "count: 12 ~ count: 31 ~ b.yaml:3:17: count, 31: so many at screens",
        "mixed ~ strangers, openness: 2 ~ b.yaml:3:54: openness, 2: strangers",
        "cap: 4h ~ 'cap: 4h\nrhythm: {break: none}' ~ b.yaml:6:17: break, none: nobody can rest",
        "cap: 4h ~ 'cap: 4h\nrhythm: {stretch: 30m..75m}' ~ b.yaml:6:19: stretch, 1h15m: people want a break about every 60 minutes (HSE L26)",
        "cap: 4h ~ 'cap: 4h\nrhythm: {break: 3m}' ~ b.yaml:6:17: break, 3m: under 5 minutes",
        "cap: 4h ~ 'cap: 4h\nbuffer: 5%' ~ 'b.yaml:6:9: buffer, 5%: discussions run over'",
        "cap: 4h ~ 'cap: 4h\nmeal: {at: 2h, minutes: 20}' ~ b.yaml:6:25: minutes, 20: that is short",
        "cap: 4h ~ 'cap: 4h\nmeals: [{at: 2h, minutes: 20}]' ~ b.yaml:6:27: minutes, 20: that is short",
        "cap: 4h ~ 'cap: 4h\ntools: [wall]' ~ b.yaml:6:8: tools, a list: people far apart",
        "cap: 4h ~ 'cap: 4h\ntools: [call, wall]' ~ b.yaml:6:15: tools, wall: it is nothing for",
        "cap: 4h ~ 'cap: 4h\nstart: 2027-03-06 09:00\nzone: Europe/Vienna' ~ b.yaml:6:8: start, 2027-03-06: that is a Saturday",
        "cap: 4h ~ 'cap: 4h\nstart: 2027-03-05 22:30\nzone: Europe/Vienna' ~ b.yaml:6:8: start, 22:30: it would end at 02:30",
        "cap: 4h ~ 'cap: 4h\nstart: 2027-03-05 05:30\nzone: Europe/Vienna' ~ b.yaml:6:8: start, 05:30: that is early",
        "cap: 4h ~ 'cap: 4h\nstart: 2027-03-05 09:00\nzone: Europe/Vienna\nzones: [America/Lima, Asia/Tokyo]' ~ b.yaml:8:9: zones, America/Lima: there it would last from 03:00 to 07:00",
        "cap: 4h ~ 'cap: 4h\nown-items: [{id: talk, title: Talk, minutes: 150}]' ~ b.yaml:6:46: minutes, 150: your own items",
        "cap: 4h ~ 'cap: 4h\nown-items: [{id: talk, title: Talk, minutes: 20}]' ~ b.yaml:6:31: title, Talk: nothing says when it comes",
        "count: 12 ~ 'count: 12, acquainted: colleagues, openness: 1}\nwishes: {include: [two-objects], used-last-time: [two-objects]}\n#' ~ b.yaml:4:20: include, two-objects: this group had it last time",
        "count: 12 ~ 'count: 900, acquainted: colleagues, openness: 1}\nwishes: {pin: [{exercise: two-objects, at: 1h}]}\n#' ~ b.yaml:4:27: exercise, two-objects: it does not work with 900 people",
      })
  void what_is_odd_is_told_with_its_place(String usual, String odd, String hint) {
    assertThat(BRIEF).contains(usual);
    String text = BRIEF.replace(usual, odd);

    BriefReading reading = BriefFormat.check("b.yaml", text, CATALOG);

    assertThat(reading.problems()).isEmpty();
    assertThat(reading.hints().stream().map(Problem::text))
        .anyMatch(found -> found.startsWith(hint));
  }

  @Test
  void a_room_bears_longer_stretches() {
    String room = BRIEF.replace("mode: remote", "mode: in-person");

    assertThat(hints(room + "rhythm: {stretch: 45m..90m}\n")).isEmpty();
    assertThat(hints(room + "rhythm: {stretch: 45m..95m}\n")).hasSize(1);
    assertThat(hints(room.replace("cap: 4h", "cap: 6h")))
        .singleElement()
        .asString()
        .contains("meal");
  }

  @Test
  void a_brief_with_problems_has_no_hints() {
    BriefReading reading =
        BriefFormat.check("b.yaml", BRIEF.replace("cap: 4h", "cap: 5h\ncolour: blue"), CATALOG);

    assertThat(reading.brief()).isEmpty();
    assertThat(reading.problems()).hasSize(1);
    assertThat(reading.hints()).isEmpty();
  }

  private static List<String> hints(String text) {
    return BriefFormat.check("b.yaml", text, CATALOG).hints().stream().map(Problem::text).toList();
  }
}
