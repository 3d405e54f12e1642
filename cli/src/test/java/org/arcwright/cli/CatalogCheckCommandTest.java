package org.arcwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.arcwright.catalog.Exercise;
import org.arcwright.format.CatalogFormat;
import org.arcwright.library.BuiltIn;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every problem of a trainer's files, at its place, with what would be right. */
class CatalogCheckCommandTest {
  @TempDir Path folder;

  @ParameterizedTest(name = "{2}")
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      value = {
        "title: Paper ~ titel: Paper ~ 2:1: unknown key, titel: perhaps title",
        "title: Paper ~ titel: Paper ~ 1:1: missing key, title: add it, such as title: Two objects from your desk",
        "  hybrid: ~   hybird: ~ 25:3: unknown key, hybird: perhaps hybrid",
        "    who: each ~     whom: each ~ 18:5: unknown key, whom: perhaps who",
        "openness: 0 ~ colour: blue\\nopenness: 0 ~ 8:1: unknown key, colour: here stand id, title, kind,",
        "{min: 3, max: 60} ~ {min: 60, max: 3} ~ 5:24: max, 3: it is under min 60; swap the two",
        "{min: 3, max: 5} ~ {min: 5, max: 3} ~ 6:25: max, 3: it is under min 5; swap the two",
        "[1, 1, 1.5] ~ [2, 1, 1.5] ~ 16:14: minutes, [2, 1, 1.5]: write them ascending: min, typical, max",
        "[0.5, 0.75, 1] ~ [0.5, 1] ~ 20:14: minutes, 2 values: 3 are right, such as [1, 2, 3]",
        "[0.5, 0.75, 1] ~ [0.5, 0.75, many] ~ 20:26: minutes, many: write a number of minutes, such as 5 or 0.5",
        "{min: 3, max: 5} ~ {min: 4, max: 5} ~ 6:11: breakout, 4-5: 3, 6, 7 and 11 people cannot be split so; a max of 7 splits any number from 4 on",
        "{min: 3, max: 60} ~ {min: 1, max: 60} ~ 6:11: breakout, 3-5: 1 and 2 people cannot be split so; start the range at 1, or raise people.min",
        "{min: 3, max: 60}\\nbreakout: {min: 3, max: 5} ~ {min: 6, max: 7}\\nbreakout: {min: 4, max: 5} ~ 6:11: breakout, 4-5: none of 6-7 people split into such groups; widen one of the two",
        "breakout: {min: 3, max: 5}\\n ~ `` ~ 18:13: breakout, missing: a step works in small groups; say how large they are",
        "format: small-groups ~ format: plenary ~ 6:11: breakout, 3-5: no step works in small groups; strike it, or say \"format: small-groups\" in a step",
        "people: {min: 3, max: 60}\\nbreakout: {min: 3, max: 5}\\n|format: small-groups ~ people: {min: 1, max: 60}\\n|format: pairs ~ 18:13: format, pairs: a pair needs two; raise people.min to 2",
        "[0.5, 0.75, 1] ~ [20, 60, 61] ~ 5:23: people.max, 60: with so many it takes 5 h 1 min; lower it, or let small groups take turns",
        "[0.5, 0.75, 1] ~ [60, 300, 300] ~ 5:23: people.max, 60: with so many it takes more than a day; lower it, or let small groups take turns",
        "format: plenary ~ format: solo\\n    per: person ~ 16:10: per, person: working alone, all work at once: write \"per: session\"",
        "    per: person ~     per: person\\n    rounds: 3 ~ 22:13: rounds, 3: rounds go with \"per: round\" only",
        "[1, 1, 1.5] ~ [-1, 1, 1.5] ~ 16:14: minutes, -1 to 1.5: from 0 minutes to a day is right",
        "`    who: each\\n` ~ `` ~ 17:5: missing key, who: add it, such as who: facilitator",
        "per: person ~ per: round ~ 17:5: missing key, rounds: add it, such as rounds: 3",
        "[call, breakouts] ~ [call, breakout] ~ 23:34: unknown tool, breakout: perhaps breakouts",
        "[call, breakouts] ~ [call, whiteboard] ~ 23:34: unknown tool, whiteboard: the catalog has none of that name",
        "[call, breakouts] ~ [call, wall] ~ 23:34: tools, wall: \"free wall\" is usual in-person or hybrid, not remote; name what takes its place",
        "[call, breakouts] ~ [] ~ 23:27: tools, none: people far apart need at least a call; name what they meet in",
        "[call, breakouts] ~ [call, board] ~ 23:27: tools, call, board: pairs and small groups far apart need rooms of their own; name breakouts, or chat if they write to each other",
        "how: Small rooms. ~ how: Small rooms; lines go into the chat. ~ 23:51: how, chat: tools does not name chat; add it there, or say \"where there is\" one",
        "text: In small groups, each reads one line.|[0.5, 0.75, 1] ~ text: 'Say: \"<40 words>\"'|[0.1, 0.1, 0.2] ~ 17:11: text, 40 words to say: read aloud at 183 words a minute they take 13 s, but the step usually lasts 6 s; shorten them, or give the step more",
        "needs: [decision] ~ needs: [decisions] ~ 9:9: unknown work product, decisions: perhaps decision",
        "yields: [takeaways, feedback] ~ yields: [] ~ 10:9: yields, empty: name at least one work product that it leaves behind",
        "source: {mark: published, cite: 'Reed, A. (2001). Slips. Ghent.'}\\n ~ `` ~ 1:1: missing key, source: add it, such as source: {mark: common-practice}",
        "(2001) ~ (once) ~ 29:33: cite, Reed, A. (once). Slips. Ghent.: say who, which year and what: Author (year). Title.",
        "cite: 'Reed, A. (2001). Slips. Ghent.' ~ cite: '' ~ 29:33: cite, empty: it needs a text",
        "mark: published ~ mark: hearsay ~ 29:16: mark, hearsay: published, common-practice or memory is right",
        "opening: Before we part, ~ opening: <200 words> ~ 11:10: opening, 210 words: read aloud at 183 words a minute they take 1 min 8 s, but the first step usually lasts 1 min; shorten them, or give the step more",
        "Say the opening. ~ Everybody stretches and jumps ten times. ~ 13:11: moves, stretches: such words ask bodies to move; add \"moves: true\", cautions and an opt-out",
        "What was useful ~ Please stand up ~ 11:10: moves, stand up: such words ask bodies to move;",
        "Say the opening. ~ Tell a memory of your childhood. ~ 13:11: openness, childhood: such words ask for what is personal; raise openness to 2 or 3, and add cautions and an opt-out",
        "openness: 0 ~ openness: 3 ~ 8:11: openness, 3: what moves bodies or asks for disclosure needs cautions and an opt-out",
        "openness: 0 ~ openness: 0\\nmoves: true ~ 9:8: moves, true: what moves bodies or asks for disclosure needs cautions and an opt-out",
        "openness: 0 ~ openness: 0\\ncautions: [Sharp edges.] ~ 9:11: opt-out, missing: where there is something to heed, say how a person may stay out of it",
        "energy: 2 ~ energy: 7 ~ 7:9: energy, 7: a whole number from 1 to 5 is right",
        "energy: 2 ~ energy: lively ~ 7:9: energy, lively: a whole number is right",
        "energy: 2 ~ energy: 2\\nenergy: 3 ~ 8:1: key twice, energy: it stands in line 7 already; keep one of the two",
        "kind: reflection ~ kind: reflecting ~ 3:7: kind, reflecting: perhaps reflection",
        "id: paper-slips ~ id: paper-slip ~ 1:5: id, paper-slip: it equals the file's name, paper-slips",
        "id: paper-slips ~ id: Paper Slips ~ 1:5: id, Paper Slips: an id has at most 80 lower-case letters, digits and single hyphens",
        "title: Paper slips ~ title: Dot voting ~ 2:8: title, Dot voting: dot-voting has it, too; choose another",
        "purpose: Learn what was useful. ~ purpose: ~ 4:1: key without a value, purpose: add it, such as purpose: Everybody is heard once.",
        "watch: [Praise alone.] ~ watch: [] ~ 26:8: watch, empty: name what the facilitator keeps an eye on",
        "access: [A line may be dictated.] ~ access: [] ~ 27:9: access, empty: say how everybody can take part",
        "feedback] ~ feedback ~ 10:9: list left open, [takeaways, feedback: close it with ]",
        "energy: 2 ~ \\tenergy: 2 ~ 7:1: tab, energy: 2: indent with spaces",
      })
  void one_problem(String right, String wrong, String problem) throws IOException {
    String text = Slips.TEXT;
    String[] rights = right.replace("\\n", "\n").split("\\|", -1);
    String[] wrongs = wrong.replace("\\n", "\n").replace("\\t", "\t").split("\\|", -1);
    for (int i = 0; i < rights.length; i++) {
      assertThat(text).contains(rights[i]);
      text =
          text.replace(
              rights[i],
              wrongs[i]
                  .replace("<200 words>", "word ".repeat(200))
                  .replace("<40 words>", "word ".repeat(40).strip()));
    }
    Path file = Slips.write(folder, Slips.ID, text);

    Run run = Run.of("catalog", "check", folder);

    assertThat(run.code()).isEqualTo(Exit.NEGATIVE);
    assertThat(run.err()).isEmpty();
    assertThat(run.out()).contains(file + ":" + problem);
    assertThat(run.out().lines().filter(line -> line.startsWith(file.toString())).count())
        .as(run.out())
        .isLessThanOrEqualTo(2);
    assertThat(Run.of("catalog", "check", file)).isEqualTo(run);
  }

  @Test
  void nothing_is_found_in_what_is_sound() throws IOException {
    Slips.write(folder, Slips.ID, Slips.TEXT);

    assertThat(Run.of("catalog", "check", folder))
        .isEqualTo(new Run(Exit.DONE, "1 entry, no problems.\n", ""));
  }

  @Test
  void a_tool_that_may_be_there_need_not_be_named() throws IOException {
    String text =
        Slips.TEXT.replace("Small rooms.", "'Small rooms. Where there is a chat, lines go there.'");
    Slips.write(folder, Slips.ID, text);

    assertThat(Run.of("catalog", "check", folder).out()).isEqualTo("1 entry, no problems.\n");
  }

  @Test
  void the_whole_shelf_passes() {
    Run run = Run.of("catalog", "check", "../library-data/src/main/catalog");

    assertThat(run.code()).as(run.out()).isEqualTo(Exit.DONE);
    assertThat(run.out()).matches("\\d+ entries, no problems.\n");
  }

  @Test
  void work_products_come_from_somewhere_and_lead_somewhere() throws IOException {
    Files.writeString(
        folder.resolve("products.yaml"),
        "- {id: mood, title: mood, meaning: It is clear how all are.}\n");
    Path needs =
        Slips.write(folder, Slips.ID, Slips.TEXT.replace("needs: [decision]", "needs: [mood]"));

    assertThat(Run.of("catalog", "check", folder).out())
        .contains(
            needs
                + ":9:9: needs, mood: no other exercise leaves it and no goal is given it, so this"
                + " one can never be used; strike it, or add an exercise that leaves it");

    Path yields =
        Slips.write(folder, Slips.ID, Slips.TEXT.replace("[takeaways, feedback]", "[mood]"));

    assertThat(Run.of("catalog", "check", folder).out())
        .contains(
            yields
                + ":10:10: yields, mood: no exercise needs it and no goal asks for it; name what"
                + " others can use");
  }

  @Test
  void a_list_in_place_of_an_exercise_is_one_problem() throws IOException {
    Path file = Slips.write(folder, Slips.ID, "- a\n- b\n");

    assertThat(Run.of("catalog", "check", folder).out())
        .isEqualTo(
            file
                + ":1:1: exercise, a list: keys and values are right, such as id: two-objects\n"
                + "1 entry, 1 problem.\n");
  }

  @Test
  void nothing_is_said_of_modes_that_are_missing() throws IOException {
    String text = Slips.TEXT.replaceFirst("(?s)modes:.*(?=watch:)", "");
    Path file = Slips.write(folder, Slips.ID, text);

    assertThat(Run.of("catalog", "check", folder).out())
        .isEqualTo(file + ":1:1: missing key, modes: add it\n1 entry, 1 problem.\n");
  }

  @Test
  void the_same_id_in_two_files() throws IOException {
    Slips.write(folder, Slips.ID, Slips.TEXT);
    Path again = folder.resolve("exercises/reflection/paper-slips.yaml");
    Files.createDirectories(again.getParent());
    Files.writeString(again, Slips.TEXT);

    assertThat(Run.of("catalog", "check", folder).out())
        .contains(
            again
                + ":1:5: id, paper-slips: "
                + folder.resolve("exercises/paper-slips.yaml")
                + " has it already; rename one")
        .endsWith("2 entries, 1 problem.\n");
  }

  @Test
  void nearly_the_same_exercise_under_another_id() throws IOException {
    Exercise premortem = BuiltIn.catalog().exercise("premortem").orElseThrow();
    String text =
        CatalogFormat.write(premortem)
            .replace("id: premortem", "id: look-ahead")
            .replaceFirst("title: .*", "title: Looking ahead")
            .replace("Everybody", "Each person")
            .replace("failed", "gone wrong");
    Path file = Slips.write(folder, "look-ahead", text);

    Run run = Run.of("catalog", "check", folder);

    assertThat(run.out())
        .containsPattern(
            "\\Q"
                + file
                + "\\E:1:5: nearly the same as premortem, \\d\\d % alike: keep one of the two");
    assertThat(run.out()).contains("1 entry, 1 problem.");
  }

  @Test
  void files_that_lie_anywhere_are_read_together() throws IOException {
    Path loose = Files.createDirectory(folder.resolve("loose"));
    Path one = Files.writeString(loose.resolve("a.yaml"), Slips.TEXT.replace("paper-slips", "a"));
    Path goal =
        Files.writeString(
            loose.resolve("win.yaml"),
            """
            id: win
            title: Win
            purpose: To win.
            yields: [decision]
            arc:
              - {name: open, title: Arrive, kinds: [icebreaker], count: [1, 2], share: [5, 10, 20]}
              - {name: choose, title: Choose, kinds: [reflection], count: [1, 4], share: [40, 80, 90], yields: [decision]}
            """);

    Run run = Run.of("catalog", "check", loose);

    assertThat(run.out())
        .isEqualTo(
            goal
                + ":6:3: share, the wished shares are 90 %: make them 100 together\n"
                + goal
                + ":7:101: yields, decision: no exercise that may stand in this phase (reflection)"
                + " leaves it; allow another kind, or strike it\n"
                + "2 entries, 2 problems.\n");
    assertThat(Run.of("catalog", "check", one, goal)).isEqualTo(run);
  }

  @Test
  void a_whole_catalog_in_one_document() throws IOException {
    Path json = folder.resolve("all.json");
    Run.of("catalog", "export", "--format", "json", "--out", json);
    String text = Files.readString(json);
    Files.writeString(json, text.replaceFirst("\"energy\":\\d", "\"energy\":9"));

    Run run = Run.of("catalog", "check", json);

    assertThat(run.out())
        .matches(
            "\\Q"
                + json
                + "\\E:1:\\d+: energy, 9: a whole number from 1 to 5 is right\n"
                + "\\d+ entries, 1 problem.\n");
  }

  @Test
  void as_json_for_tools() throws IOException {
    Path file = Slips.write(folder, Slips.ID, Slips.TEXT.replace("energy: 2", "energy: 7"));

    Run run = Run.of("catalog", "check", folder, "--format", "json");

    assertThat(run.code()).isEqualTo(Exit.NEGATIVE);
    assertThat(run.out())
        .contains(
            "{\"file\": \"" + file + "\", \"line\": 7, \"column\": 9, \"what\": \"energy\"",
            "\"value\": \"7\", \"remedy\": \"a whole number from 1 to 5 is right\"}");
  }

  @Test
  void only_what_was_named_is_told() throws IOException {
    Path sound = Slips.write(folder, Slips.ID, Slips.TEXT);
    Slips.write(folder, "broken", "id: broken\n");

    assertThat(Run.of("catalog", "check", sound).out()).isEqualTo("1 entry, no problems.\n");
    assertThat(Run.of("catalog", "check", folder).out()).contains("broken.yaml:1:1:");
  }

  @Test
  void what_takes_the_place_of_another_is_said() throws IOException {
    Slips.write(folder, "dot-voting", "id: dot-voting\nretired: true\n");

    assertThat(Run.of("catalog", "check", folder).out())
        .isEqualTo("These take the place of what lies below: dot-voting.\n1 entry, no problems.\n");
  }

  @Test
  void what_is_not_there() {
    Run run = Run.of("catalog", "check", folder.resolve("none"));

    assertThat(run)
        .isEqualTo(
            new Run(
                Exit.WRONG_INPUT,
                "",
                folder.resolve("none") + ": no such file or folder: check its name\n"));
    assertThat(Run.of("catalog", "check", folder).err())
        .isEqualTo(folder + ": nothing to check: name a folder with YAML files in it\n");
    assertThat(Run.of("catalog", "check").err()).contains("PATH");
  }
}
