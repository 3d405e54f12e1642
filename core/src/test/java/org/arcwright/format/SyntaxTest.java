package org.arcwright.format;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is no YAML and no JSON at all, told in plain words at the place to mend. */
class SyntaxTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "title:\\n\\tgoal: x ~ 2:1: tab, goal: x: indent with spaces",
        "a: b: c ~ 1:5: colon out of place, : c: put a text with a colon in quotes, or mend the indentation",
        "a: 1\\n b: 2 ~ 2:3: colon out of place, : 2: put a text with a colon in quotes, or mend the indentation",
        "a: \"open\\nb: 1 ~ 1:4: quote left open, \"open: close it with the same quote",
        "a: \"open\\nb: 1\\nc: go\" then ~ 1:4: quote left open, \"open: close it with the same quote",
        "- x: 1\\n- 'open\\n- it's ~ 2:3: quote left open, 'open: close it with the same quote",
        "a: \"a text\\n  of two lines\"\\nb: c: d ~ 3:5: colon out of place, : d: put a text with a colon in quotes, or mend the indentation",
        "a: [1, 2\\nb: 1 ~ 1:4: list left open, [1, 2: close it with ]",
        "a: [ ~ 1:5: end of file too early: close every bracket, brace and quote",
        "a: {x: 1\\nb: 1 ~ 1:4: brace left open, {x: 1: close it with }",
        "a: @home ~ 1:4: text that begins with a sign of YAML's own, @home: put the text in quotes",
        "a: b\\nc ~ 2:1: line without a colon, c: write key: value",
        "- a\\nb: 1 ~ 2:1: line out of place, b: 1: entries of one list or group start in one column",
        "a: - b ~ 1:4: hyphen out of place, - b: start the list on a line of its own, or put the text in quotes",
        "a: |b ~ 1:5: text right behind | or >, b: start it on the next line, or put it in quotes",
        "a: \"\\q\" ~ 1:6: backslash, q\": in double quotes write two of them, or use single quotes",
        "a: } ~ 1:4: bracket out of place, }: strike it, or put the text in quotes",
        "? [a, b]\\n: c ~ 1:4: key that is no plain text, a, b]: a key is one word, such as title",
        "a: &x 1\\nb: *x ~ 2:4: alias, *x: write the value out here",
        "a: !!str 1 ~ 1:4: tag, !!str: strike it; the value alone is enough",
        "a: !own {b: 1} ~ 1:4: tag, !own: strike it; the value alone is enough",
        "a: 1\\n---\\nb: 2 ~ 3:1: text after the end: one file holds one document; strike the rest",
        "%YAML 9.9\\n---\\na: 1 ~ 1:1: malformed YAML, %YAML 9.9: mend it here or just before",
        "# nothing ~ 1:1: empty file: write something into it",
        "--- ~ 1:1: empty file: write something into it",
      })
  void malformed_yaml(String text, String complaint) {
    assertThat(complaintsAbout("brief.yaml", text)).isEqualTo("brief.yaml:" + complaint);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "{\"a\": 1,} ~ 1:9: key expected, }: keys stand in double quotes; after the last entry comes no comma",
        "{a: 1} ~ 1:2: key expected, a: 1}: keys stand in double quotes; after the last entry comes no comma",
        "{\"a\" 1} ~ 1:6: colon expected, 1}: write \"key\": value",
        "[1 2] ~ 1:4: comma expected, 2]: write one before this",
        "{\"a\": 1] ~ 1:8: wrong bracket, ]: close what was opened last",
        "{\"a\": 1 ~ 1:8: end of file too early: close every bracket, brace and quote",
        "{\"a\": \"x ~ 1:9: quote left open: close it with a double quote",
        "{\"a\": tru} ~ 1:7: value expected, tru}: texts stand in double quotes; else write a number, true, false or null",
        "[1,,2] ~ 1:4: value expected, ,2]: texts stand in double quotes; else write a number, true, false or null",
        "{\"a\": 01} ~ 1:8: zero before a number, 1}: strike it",
        "{\"a\": -} ~ 1:8: number left unfinished, }: write it as 1, -1 or 1.5",
        "{\"a\": NaN} ~ 1:10: malformed JSON, }: mend it here or just before",
        "{\"a\": \"x\\ny\"} ~ 1:9: line break or tab in a text: write \\n or \\t",
        "{\"a\": \"\\q\"} ~ 1:9: backslash, q\"}: write two of them",
        "{\"a\": \"\\u12\"} ~ 1:12: backslash, \"}: \\u takes four digits or letters a to f",
        "{\"a\": // c\\n1} ~ 1:7: comment, // c: JSON knows none; strike it",
        "{\"a\": 1} {} ~ 1:10: text after the end: one file holds one document; strike the rest",
        "{\"a\": 1} x ~ 1:10: text after the end: one file holds one document; strike the rest",
      })
  void malformed_json(String text, String complaint) {
    assertThat(complaintsAbout("brief.json", text))
        .isEqualTo("brief.json:" + complaint.replace("write \n or \t", "write \\n or \\t"));
  }

  @Test
  void nesting_beyond_all_need_is_not_followed() {
    assertThat(complaintsAbout("brief.yaml", "[".repeat(100_000)))
        .isEqualTo("brief.yaml:1:34: nesting too deep: at most 32 levels are read");
    assertThat(complaintsAbout("brief.json", "[".repeat(100_000)))
        .isEqualTo("brief.json:1:34: nesting too deep: at most 32 levels are read");
  }

  @Test
  void a_number_of_a_thousand_digits_is_not_read() {
    assertThat(complaintsAbout("brief.json", "[" + "9".repeat(2000) + "]"))
        .isEqualTo("brief.json:1:2002: number too large before this, ]: a smaller one is right");
  }

  @Test
  void a_bomb_of_aliases_does_not_go_off() {
    String bomb = "a: &a [x, x]\nb: &b [*a, *a]\nc: [*b, *b]\n";

    assertThat(complaintsAbout("brief.yaml", bomb))
        .isEqualTo("brief.yaml:2:8: alias, *a: write the value out here");
  }

  @Test
  void the_name_says_how_a_file_is_written_and_else_its_first_sign() {
    assertThat(Complaints.of(() -> BriefFormat.read("brief.yml", "{a: 1}")))
        .contains("brief.yml:1:2: unknown key, a: " + ALL_KEYS);
    assertThat(complaintsAbout("input", "{a: 1}"))
        .startsWith("input:1:2: key expected, a: 1}: keys stand in double quotes");
    assertThat(Complaints.of(() -> BriefFormat.read("input", "a: 1")))
        .contains("input:1:1: unknown key, a: " + ALL_KEYS);
  }

  private static final String ALL_KEYS =
      "here stand title, goal, people, mode, cap, start, zone, zones, tools, rhythm, meal, meals,"
          + " curve, buffer, given, wishes, own-items, format, version";

  private static String complaintsAbout(String name, String text) {
    String lines = text.replace("\\n", "\n").replace("\\t", "\t");
    return String.join("\n", Complaints.of(() -> BriefFormat.read(name, lines)));
  }
}
