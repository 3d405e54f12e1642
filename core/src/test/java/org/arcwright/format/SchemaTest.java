package org.arcwright.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/**
 * The schemas are schemas (JSON Schema 2020-12, checked against its meta-schema), and what they
 * refuse, the readers refuse.
 */
class SchemaTest {
  private static final String EXERCISE =
      """
      id: brainwriting
      title: Brainwriting in rounds
      kind: divergent
      purpose: Many ideas from everybody.
      people: {min: 4, max: 36}
      breakout: {min: 3, max: 5}
      energy: 2
      openness: 1
      moves: false
      needs: [question]
      yields: [idea-pool, items]
      opening: We write instead of talking.
      steps:
        - {text: Read the question aloud., who: facilitator, format: plenary, minutes: [1, 2, 3]}
        - {text: Write and pass on., who: nobody, format: small-groups, minutes: [4, 5, 6], per: round, rounds: 3}
        - {text: Read out two ideas., who: group, format: plenary, minutes: [0.5, 1.5, PT2M], per: group}
      modes:
        remote: {fit: 3, tools: [call, board], how: One column a person.}
        in-person: {fit: 3, tools: [paper], how: Sheets go to the left.}
        hybrid: {fit: 0, tools: [], how: Sheets do not travel.}
      watch: [Who stops writing.]
      access: [Dictating is fine.]
      carry-over: The sheets.
      source: {mark: memory, cite: 'Author (1969). Title.'}
      """;
  private static final String GOAL =
      """
      id: generate-ideas
      title: Generate ideas
      purpose: A question needs many answers.
      given: [question]
      yields: [idea-pool]
      arc:
        - {name: open, title: Arrive, kinds: [icebreaker], count: [1, 2], share: [5, 20, 40]}
        - {name: gather, title: Gather, kinds: [divergent], count: [1, 5], share: [50, 80, 90], yields: [idea-pool]}
      """;
  private static final String BRIEF =
      """
      title: Winter planning
      goal: choose-a-direction
      people: {count: 12, acquainted: mixed, openness: 1}
      mode: remote
      cap: 3h
      start: 2026-12-03 09:30
      zone: Europe/Vienna
      tools: [call, breakouts]
      rhythm: {stretch: 30m..60m, break: 10m}
      meals: [{at: '12:00..12:45', minutes: 45}]
      curve: [[0, 3], [40, 3.6]]
      buffer: 15%
      wishes: {include: [dot-voting], pin: [{exercise: chat-burst, at: 60m}]}
      own-items: [{id: guest-talk, title: A guest's view, minutes: 20, at: '10:30'}]
      """;
  private static final String AGENDA =
      """
      {"format": "arcwright-agenda", "version": 1, "title": "Winter planning", "goal": "choose",
       "mode": "remote", "people": 12, "items": [
        {"exercise": "weather-report", "title": "Weather report", "phase": "open", "length": 10},
        {"break": "ordinary", "length": "PT10M"}]}
      """;
  private static final String FORECAST =
      """
      {"format": "arcwright-forecast", "version": 1, "promised": 25, "onTime": 0.75,
       "begins": [0, 0, 5, 5, 10], "ends": [ENDS],
       "parts": [
        {"basis": "catalog", "took": [8, 9, 10, 12, 14], "begins": [0, 0, 5, 5, 10],
         "ends": [8, 11, 14, 17, 21], "kept": {"onTime": 0.94, "end": 84}},
        {"onTime": 0.71, "took": [10, 10, 15, 15, 20], "begins": [8, 11, 14, 17, 21],
         "ends": [19, 23, 27, 32, 38]}],
       "agenda": AGENDA}
      """
          .replace("ENDS", "20, ".repeat(98) + "20")
          .replace("AGENDA", AGENDA.strip());
  private static final String STAND_INS =
      """
      {"format": "arcwright-stand-ins", "version": 1, "pairs": 1, "covered": 1,
       "tools": [{"tool": "board", "swaps": [{"place": 0, "standIn": {"exercise": "chat-burst",
        "title": "Chat burst", "length": 15, "change": 5, "points": 40, "tools": ["chat"],
        "materials": []}}]}],
       "fewer": [{"place": 0, "impossible": [7, 6], "least": 6, "groups": 2, "usual": 8.5}],
       "alone": [{"place": 0}], "decisions": [], "agenda": AGENDA}
      """
          .replace("AGENDA", AGENDA.strip());
  private static final String LESSONS =
      """
      {"format": "arcwright-lessons", "version": 1, "logs": 8, "simulated": 2,
       "score": {"predictions": 59, "before": 6.31, "after": 2.42},
       "lessons": [{"exercise": "dot-voting", "logs": 8, "people": 9, "factor": 0.6803,
        "low": 0.6472, "high": 0.7151, "before": 15, "now": 10.25}]}
      """;
  private static final String LOG =
      """
      {"at": "2026-12-03T09:34:10+01:00", "started": "weather-report", "planned": 10}
      """;
  private static final String INSTANCE =
      """
      {"grid": 5, "cap": 10, "curve": [30, 30], "stretch": {"min": 0, "max": 10}, "breakMinutes": 0,
       "bufferPercent": 0, "products": ["p"], "phases": [{"name": "open", "kinds": ["A"],
       "count": [1, 2], "minutes": [0, 10], "target": 10, "yields": []}], "candidates": [
       {"id": "a", "kind": "A", "lengths": [5, 10], "lengthCosts": [1, 0], "energy": 30,
        "format": "X", "needs": [], "yields": ["p"], "cost": 0}], "weights": {"energy": 1}}
      """;

  private static final String COMPOSITION =
      """
      {"format": "arcwright-composition", "version": 1, "answer": "composed",
       "agenda": %s,
       "proof": {"best": true, "cost": 5, "bound": 5, "labels": 9, "milliseconds": 3.5},
       "prices": [{"exercise": "weather-report", "why": "used last time", "points": 5}],
       "leftOut": [{"exercise": "premortem", "reason": "left out by the brief"}],
       "instance": %s}
      """
          .formatted(AGENDA.strip(), INSTANCE.strip());
  private static final String REPLAN =
      """
      {"format": "arcwright-replan", "version": 1, "now": 10, "end": 30, "behind": 5,
       "unchanged": {"keeps": false, "onTime": 0.2, "agenda": %1$s},
       "ways": [{"kind": "shorten",
        "changes": [{"change": "resized", "exercise": "weather-report", "title": "Weather report",
         "from": 10, "to": 5}],
        "lost": ["arrival"], "onTime": 0.9, "cost": 40, "best": true, "agenda": %1$s}],
       "followUp": {"phases": ["Close"], "products": [], "inHand": ["decision"], "exercises": []}}
      """
          .formatted(AGENDA.strip());
  private static final String OPTIONS =
      """
      {"format": "arcwright-options", "version": 1,
       "rule": {"options": 3, "share": 50, "within": 25}, "end": "none-left",
       "options": [{"agenda": %s,
        "proof": {"best": true, "cost": 5, "bound": 5, "labels": 9, "milliseconds": 3.5},
        "prices": [],
        "profile": {"work": 160, "breaks": 2, "resting": 20, "energyFit": 91,
         "formats": {"plenary": 4, "small-groups": 3}, "talking": 84, "alone": 21, "openness": 1,
         "tools": ["board", "call"]}}],
       "leftOut": [],
       "instance": %s}
      """
          .formatted(AGENDA.strip(), INSTANCE.strip());
  private static final String WHAT_IF =
      """
      {"format": "arcwright-what-if", "version": 1, "vary": "energy", "from": -10, "to": 10,
       "step": 5, "own": 0, "rows": [
        {"value": -10, "answer": "best", "agenda": %s,
         "proof": {"best": true, "cost": 5, "bound": 5, "labels": 9, "milliseconds": 3.5}},
        {"value": -5, "answer": "none", "reasons": ["Too short."]},
        {"value": 0, "answer": "open", "bound": 4, "labels": 9},
        {"value": 5, "answer": "refused", "why": "cap is 5 min"}]}
      """
          .formatted(AGENDA.strip());
  private static final String CLASH =
      """
      {"format": "arcwright-clash", "version": 1,
       "conflicts": [{"wishes": [{"wish": {"wish": "cap", "time": 45}, "text": "45 min in all"}],
        "smallest": true}],
       "waysOut": [{"loosenings": [{"wish": {"wish": "cap", "time": 45},
        "instead": {"wish": "cap", "time": 50}, "text": "5 min more"}], "least": true,
        "givesUp": 5, "brief": {"title": "Winter", "goal": "choose", "people": 5, "mode": "remote",
        "cap": "50m"}, "agenda": %s, "best": true}],
       "complete": true}
      """
          .formatted(AGENDA.strip());
  private static final String WHY_NOT =
      """
      {"format": "arcwright-why-not", "version": 1, "answer": "ruled-out",
       "leftOut": {"exercise": "premortem", "field": "wishes.leave-out", "reason": "left out by the brief"},
       "clash": %s}
      """
          .formatted(CLASH.strip());
  private static final String WHY_THIS =
      """
      {"format": "arcwright-why-this", "version": 1, "agenda": %1$s,
       "reasons": [{"activity": {"exercise": "weather-report", "title": "Weather report",
        "phase": "open", "length": 10},
        "takesOver": [{"product": "question"}],
        "handsOn": [{"product": "arrival", "to": ["dot-voting"], "owed": true}],
        "place": {"wished": 3.1, "afterBreak": false, "beforeBreak": true,
         "asked": {"wish": "include", "exercise": "weather-report"}},
        "instead": {"kind": "swap", "exercise": "two-words", "agenda": %1$s,
         "prices": []}}]}
      """
          .formatted(AGENDA.strip());
  private static final String REVIEW =
      """
      {"format": "arcwright-review", "version": 1, "fits": false,
       "remarks": [{"rule": 5, "at": 10, "text": "It closes with a break."}],
       "figures": {"minutesByKind": {"decision": 10}, "energyFit": 90, "longestStretch": 10}}
      """;
  private static final String SOLUTION =
      """
      {"format": "arcwright-solution", "version": 1, "status": "optimal", "cost": 5, "tie": 7,
       "bound": 5, "labels": 9, "items": [{"id": "a", "phase": 0, "start": 0, "length": 5},
       {"break": true, "start": 5, "length": 5}]}
      """;

  private static final String PROBLEMS =
      """
      {"format": "arcwright-problems", "version": 1, "problems": [{"file": "b.yaml", "line": 5,
       "column": 6, "what": "cap", "value": "3 hrs", "remedy": "write it as 3h"}]}
      """;
  private static final String VERDICT =
      """
      {"format": "arcwright-verdict", "version": 1, "findings": [{"kind": "stretch-too-long",
       "rule": 5, "at": 0, "text": "Too long.", "values": {"at": 0, "minutes": 95, "most": 60}}],
       "cost": {"exercises": 1, "lengths": 0, "energy": 0, "share": 0, "monotony": 0, "rhythm": 0,
       "pauses": 0, "idle": 0}, "tie": 7}
      """;

  @ParameterizedTest
  @EnumSource
  void each_schema_is_one(Schema schema) {
    JsonNode tree = SchemaFile.tree(schema);

    assertThat(SchemaFile.complaints(schema)).isEmpty();
    assertThat(tree.path("$schema").stringValue()).isEqualTo(SchemaFile.DRAFT);
    assertThat(tree.path("$id").stringValue()).isEqualTo(schema.id());
    assertThat(schema.text()).endsWith("}\n");
  }

  @ParameterizedTest
  @EnumSource
  void schema_and_reader_take_what_is_right(Schema schema) {
    assertThat(SchemaFile.complaints(schema, right(schema))).isEmpty();
    assertThat(readerComplaints(schema, right(schema))).isEmpty();
  }

  @ParameterizedTest(name = "{0}: {1} -> {2}")
  @CsvSource(
      delimiter = '~',
      value = {
        "EXERCISE ~ id: brainwriting ~ id: Brain Writing",
        "EXERCISE ~ id: brainwriting ~ id: 635",
        "EXERCISE ~ title: Brainwriting in rounds ~ title: ' '",
        "EXERCISE ~ title: Brainwriting in rounds ~ titel: Brainwriting",
        "EXERCISE ~ kind: divergent ~ kind: diverging",
        "EXERCISE ~ 'purpose: Many ideas from everybody.\n' ~ ''",
        "EXERCISE ~ '{min: 4, max: 36}' ~ 4-36",
        "EXERCISE ~ '{min: 4, max: 36}' ~ '{min: 0, max: 36}'",
        "EXERCISE ~ '{min: 4, max: 36}' ~ '{min: 4, most: 36}'",
        "EXERCISE ~ 'breakout: {min: 3, max: 5}\n' ~ ''",
        "EXERCISE ~ energy: 2 ~ energy: 6",
        "EXERCISE ~ energy: 2 ~ energy: high",
        "EXERCISE ~ energy: 2 ~ energy: 2.5",
        "EXERCISE ~ openness: 1 ~ openness: 2",
        "EXERCISE ~ moves: false ~ moves: true",
        "EXERCISE ~ moves: false ~ moves: 'no'",
        "EXERCISE ~ '[idea-pool, items]' ~ idea-pool",
        "EXERCISE ~ '[idea-pool, items]' ~ []",
        "EXERCISE ~ '[idea-pool, items]' ~ '[items, items]'",
        "EXERCISE ~ who: nobody ~ who: none",
        "EXERCISE ~ 'minutes: [1, 2, 3]' ~ 'minutes: [1, 2]'",
        "EXERCISE ~ 'minutes: [1, 2, 3]' ~ 'minutes: [1, 2, 3, 4]'",
        "EXERCISE ~ 'minutes: [1, 2, 3]' ~ 'minutes: [0, 0, 0]'",
        "EXERCISE ~ 'minutes: [1, 2, 3]' ~ 'minutes: [1, 2, many]'",
        "EXERCISE ~ 'minutes: [1, 2, 3]' ~ 'minutes: 2'",
        "EXERCISE ~ ', rounds: 3' ~ ''",
        "EXERCISE ~ per: group ~ 'per: group, rounds: 2'",
        "EXERCISE ~ 'plenary, minutes: [1, 2, 3]' ~ 'solo, minutes: [1, 2, 3], per: person'",
        "EXERCISE ~ 'fit: 0' ~ 'fit: 4'",
        "EXERCISE ~ 'tools: [paper], how' ~ 'how'",
        "EXERCISE ~ '  in-person:' ~ '  on-site:'",
        "EXERCISE ~ 'watch: [Who stops writing.]' ~ 'watch: Who stops writing.'",
        "EXERCISE ~ 'mark: memory' ~ 'mark: common-practice'",
        "EXERCISE ~ 'mark: memory' ~ 'mark: hearsay'",
        "EXERCISE ~ ', cite: ''Author (1969). Title.''' ~ ''",
        "GOAL ~ 'kinds: [icebreaker]' ~ 'kinds: [opener]'",
        "GOAL ~ 'kinds: [icebreaker]' ~ 'kinds: []'",
        "GOAL ~ 'count: [1, 2]' ~ 'count: [0, 2]'",
        "GOAL ~ 'count: [1, 2]' ~ 'count: 2'",
        "GOAL ~ 'share: [5, 20, 40]' ~ 'share: [5, 20]'",
        "GOAL ~ 'share: [5, 20, 40]' ~ 'share: [5, 20, 140]'",
        "GOAL ~ 'name: open' ~ 'phase: open'",
        "GOAL ~ 'given: [question]' ~ 'given: question'",
        "BRIEF ~ cap: 3h ~ cap: 3 hours",
        "BRIEF ~ cap: 3h ~ cap: 180",
        "BRIEF ~ mode: remote ~ mode: online",
        "BRIEF ~ count: 12 ~ count: 0",
        "BRIEF ~ acquainted: mixed ~ acquainted: somewhat",
        "BRIEF ~ 'zone: Europe/Vienna\n' ~ ''",
        "BRIEF ~ 2026-12-03 09:30 ~ 3 December",
        "BRIEF ~ 30m..60m ~ 30-60",
        "BRIEF ~ 30m..60m ~ 30m..60m..90m",
        "BRIEF ~ 'break: 10m' ~ 'break: 10'",
        "BRIEF ~ 12:00..12:45 ~ noon",
        "BRIEF ~ 'meals: [' ~ 'meal: ['",
        "BRIEF ~ '[40, 3.6]' ~ '[40, 3.6, 1]'",
        "BRIEF ~ '[40, 3.6]' ~ '[40, 6]'",
        "BRIEF ~ buffer: 15% ~ buffer: 15",
        "BRIEF ~ buffer: 15% ~ buffer: 101%",
        "BRIEF ~ 'include: [dot-voting]' ~ 'includes: [dot-voting]'",
        "BRIEF ~ 'at: 60m' ~ 'at: later'",
        "BRIEF ~ 'minutes: 20' ~ 'minutes: 0'",
        "AGENDA ~ arcwright-agenda ~ agenda",
        "AGENDA ~ '\"version\": 1' ~ '\"version\": 2'",
        "AGENDA ~ '\"people\": 12' ~ '\"people\": \"12\"'",
        "AGENDA ~ '\"ordinary\"' ~ '\"coffee\"'",
        "AGENDA ~ '\"phase\": \"open\", ' ~ ''",
        "AGENDA ~ '\"length\": 10' ~ '\"length\": 0'",
        "AGENDA ~ '\"length\": 10' ~ '\"minutes\": 10'",
        "AGENDA ~ '\"length\": 10' ~ '\"length\": 10, \"energy\": 6'",
        "BRIEF ~ 'title: Winter planning' ~ 'format: arcwright-agenda\ntitle: Winter planning'",
        "BRIEF ~ 'title: Winter planning' ~ 'version: 2\ntitle: Winter planning'",
        "COMPOSITION ~ arcwright-composition ~ arcwright-agenda",
        "COMPOSITION ~ '\"answer\": \"composed\"' ~ '\"answer\": \"perhaps\"'",
        "COMPOSITION ~ '\"answer\": \"composed\"' ~ '\"answer\": \"nothing-fits\"'",
        "COMPOSITION ~ '\"answer\": \"composed\"' ~ '\"answer\": \"stopped\"'",
        "COMPOSITION ~ '\"mode\": \"remote\"' ~ '\"mode\": \"online\"'",
        "COMPOSITION ~ '\"grid\": 5' ~ '\"grid\": 0'",
        "COMPOSITION ~ '\"best\": true, ' ~ ''",
        "COMPOSITION ~ '\"milliseconds\": 3.5' ~ '\"milliseconds\": -1'",
        "COMPOSITION ~ '\"points\": 5' ~ '\"points\": \"5\"'",
        "COMPOSITION ~ '\"reason\": \"left' ~ '\"why\": \"left'",
        "REPLAN ~ arcwright-replan ~ arcwright-agenda",
        "REPLAN ~ '\"now\": 10, ' ~ ''",
        "REPLAN ~ '\"behind\": 5' ~ '\"behind\": 0.5'",
        "REPLAN ~ '\"shorten\"' ~ '\"hurry\"'",
        "REPLAN ~ '\"resized\"' ~ '\"moved-on\"'",
        "REPLAN ~ '\"resized\"' ~ '\"left-out\"'",
        "REPLAN ~ '\"exercises\": []' ~ '\"exercises\": \"none\"'",
        "OPTIONS ~ arcwright-options ~ arcwright-agenda",
        "OPTIONS ~ '\"options\": 3' ~ '\"options\": 0'",
        "OPTIONS ~ '\"share\": 50' ~ '\"share\": 100'",
        "OPTIONS ~ '\"within\": 25' ~ '\"within\": \"25%\"'",
        "OPTIONS ~ none-left ~ no-more",
        "OPTIONS ~ '\"openness\": 1,' ~ ''",
        "OPTIONS ~ '\"plenary\": 4' ~ '\"circle\": 4'",
        "OPTIONS ~ '\"leftOut\": [],' ~ ''",
        "WHAT_IF ~ arcwright-what-if ~ arcwright-options",
        "WHAT_IF ~ '\"vary\": \"energy\"' ~ '\"vary\": \"mood\"'",
        "WHAT_IF ~ '\"from\": -10' ~ '\"from\": \"-10\"'",
        "WHAT_IF ~ '\"step\": 5' ~ '\"step\": 0'",
        "WHAT_IF ~ ', \"own\": 0' ~ ''",
        "WHAT_IF ~ '{\"value\": -10, ' ~ '{'",
        "WHAT_IF ~ '\"answer\": \"best\"' ~ '\"answer\": \"none\"'",
        "WHAT_IF ~ '\"answer\": \"open\"' ~ '\"answer\": \"best\"'",
        "WHAT_IF ~ '\"why\"' ~ '\"because\"'",
        "CLASH ~ arcwright-clash ~ arcwright-agenda",
        "CLASH ~ '\"wish\": \"cap\", \"time\": 45' ~ '\"wish\": \"cap\", \"number\": 45'",
        "CLASH ~ '\"wish\": \"cap\"' ~ '\"wish\": \"hope\"'",
        "CLASH ~ '\"smallest\": true' ~ '\"smallest\": \"yes\"'",
        "CLASH ~ '\"givesUp\": 5, ' ~ ''",
        "CLASH ~ 'cap\": \"50m' ~ 'cap\": \"50'",
        "CLASH ~ '\"mode\": \"remote\", \"people\"' ~ '\"mode\": \"online\", \"people\"'",
        "WHY_NOT ~ arcwright-why-not ~ arcwright-agenda",
        "WHY_NOT ~ ruled-out ~ possible",
        "WHY_NOT ~ ruled-out ~ is-in",
        "WHY_NOT ~ ruled-out ~ unthinkable",
        "WHY_NOT ~ '\"field\": \"wishes.leave-out\"' ~ '\"field\": 3'",
        "WHY_THIS ~ arcwright-why-this ~ arcwright-agenda",
        "WHY_THIS ~ '\"product\": \"question\"' ~ '\"from\": \"question\"'",
        "WHY_THIS ~ '\"wished\": 3.1' ~ '\"wished\": \"3.1\"'",
        "WHY_THIS ~ '\"swap\", \"exercise\": \"two-words\"' ~ '\"swap\"'",
        "WHY_THIS ~ '\"swap\"' ~ '\"anew\"'",
        "REVIEW ~ arcwright-review ~ arcwright-agenda",
        "REVIEW ~ '\"fits\": false' ~ '\"fits\": true'",
        "REVIEW ~ ', \"fits\": false' ~ ''",
        "REVIEW ~ '\"at\": 10' ~ '\"at\": \"later\"'",
        "REVIEW ~ '\"energyFit\": 90' ~ '\"energyFit\": \"90\"'",
        "SOLUTION ~ '\"version\": 1' ~ '\"version\": 2'",
        "SOLUTION ~ '\"optimal\"' ~ '\"best\"'",
        "SOLUTION ~ '\"cost\": 5, ' ~ ''",
        "SOLUTION ~ '\"break\": true' ~ '\"break\": false'",
        "SOLUTION ~ '\"id\": \"a\", ' ~ ''",
        "FORECAST ~ arcwright-forecast ~ arcwright-agenda",
        "FORECAST ~ '\"promised\": 25' ~ '\"promised\": \"25m\"'",
        "FORECAST ~ '\"onTime\": 0.75' ~ '\"onTime\": 75'",
        "FORECAST ~ '[0, 0, 5, 5, 10]' ~ '[0, 5, 10]'",
        "FORECAST ~ '\"ends\": [20, 20, ' ~ '\"ends\": ['",
        "FORECAST ~ '\"catalog\"' ~ '\"guess\"'",
        "FORECAST ~ ', \"end\": 84' ~ ''",
        "FORECAST ~ '\"basis\": \"catalog\"' ~ '\"onTime\": 0.5'",
        "FORECAST ~ '\"mode\": \"remote\"' ~ '\"mode\": \"online\"'",
        "STAND_INS ~ arcwright-stand-ins ~ arcwright-agenda",
        "STAND_INS ~ '\"pairs\": 1' ~ '\"pairs\": \"1\"'",
        "STAND_INS ~ '\"covered\": 1,' ~ ''",
        "STAND_INS ~ '\"change\": 5' ~ '\"change\": \"5\"'",
        "STAND_INS ~ '\"place\": 0' ~ '\"place\": -1'",
        "STAND_INS ~ '\"impossible\": [7, 6]' ~ '\"impossible\": 7'",
        "STAND_INS ~ '\"alone\": [{\"place\": 0}]' ~ '\"alone\": [0]'",
        "LESSONS ~ arcwright-lessons ~ arcwright-log",
        "LESSONS ~ '\"simulated\": 2' ~ '\"simulated\": \"two\"'",
        "LESSONS ~ '\"factor\": 0.6803' ~ '\"factor\": \"0.6803\"'",
        "LESSONS ~ '\"low\": 0.6472' ~ '\"low\": 0'",
        "LESSONS ~ '\"people\": 9, ' ~ ''",
        "LESSONS ~ ', \"after\": 2.42' ~ ''",
        "LESSONS ~ '\"now\": 10.25' ~ '\"after\": 10.25'",
        "LOG ~ '09:34:10+01:00' ~ '09:34:10'",
        "LOG ~ '2026-12-03T09:34:10+01:00' ~ '9:34'",
        "LOG ~ '\"at\": \"2026-12-03T09:34:10+01:00\", ' ~ ''",
        "LOG ~ weather-report ~ Weather report",
        "LOG ~ '\"planned\": 10' ~ '\"planned\": 0'",
        "LOG ~ '\"planned\": 10' ~ '\"planned\": \"ten\"'",
        "LOG ~ '\"planned\": 10' ~ '\"plan\": 10'",
        "LOG ~ '\"started\": \"weather-report\", \"planned\": 10' ~ '\"agreed\": {}'",
        "LOG ~ '\"planned\": 10' ~ '\"ended\": \"weather-report\"'",
        "LOG ~ '\"started\": \"weather-report\", \"planned\": 10' ~ '\"energy\": 6'",
        "LOG ~ '\"started\": \"weather-report\", \"planned\": 10' ~ '\"note\": \" \"'",
        "LOG ~ '\"started\": \"weather-report\", \"planned\": 10' ~ '\"undo\": false'",
        "LOG ~ '\"started\": \"weather-report\", \"planned\": 10' ~ '\"paused\": true'",
        "RECORD ~ 'people: 9' ~ 'people: 0'",
        "RECORD ~ 'mode: remote' ~ 'mode: online'",
        "RECORD ~ 'title: Winter planning' ~ 'titel: Winter planning'",
        "RECORD ~ 'item: weather-report' ~ 'item: Weather report'",
        "RECORD ~ 'from: 09:33' ~ 'from: half past nine'",
        "RECORD ~ ', to: 09:44' ~ ''",
        "RECORD ~ 'method: multivoting' ~ 'method: lots'",
        "RECORD ~ 'votes-each: 3' ~ 'votes-each: three'",
        "RECORD ~ 'votes-each: 3' ~ 'picks: 3'",
        "RECORD ~ 'result: passed' ~ 'result: fine'",
        "RECORD ~ 'fingers: [5, 4, 3]' ~ 'fingers: [5, 4, 6]'",
        "RECORD ~ 'more-than-half-of: present' ~ 'more-than-half-of: all'",
        "RECORD ~ 'people: 3, reservations' ~ 'reservations'",
        "RECORD ~ 'when: 2026-12-10' ~ 'when: soon'",
        "RECORD ~ 'said: I did' ~ 'sad: I did'",
        "RECORD ~ 'every-weeks: 2' ~ 'every-weeks: 0'",
        "RECORD ~ 'handover: 2026-12-04 10:00' ~ 'handover: tomorrow'",
        "PROBLEMS ~ '\"line\": 5,' ~ ''",
        "PROBLEMS ~ '\"column\": 6' ~ '\"column\": \"6\"'",
        "VERDICT ~ stretch-too-long ~ stretch-too-short",
        "VERDICT ~ '{\"at\": 0, \"minutes\": 95, \"most\": 60}' ~ 95",
        "VERDICT ~ '\"tie\": 7' ~ '\"tie\": \"7\"'",
        "VERDICT ~ '\"idle\": 0' ~ '\"idle\": 0.5'",
        "INSTANCE ~ '\"grid\": 5' ~ '\"grid\": 0'",
        "INSTANCE ~ '\"grid\": 5' ~ '\"grid\": 2.5'",
        "INSTANCE ~ '\"count\": [1, 2]' ~ '\"count\": [0, 2]'",
        "INSTANCE ~ '\"cost\": 0' ~ '\"cost\": -1'",
        "INSTANCE ~ '\"lengths\": [5, 10]' ~ '\"lengths\": []'",
        "INSTANCE ~ '\"energy\": 1}' ~ '\"energie\": 1}'",
        "INSTANCE ~ '\"breakMinutes\": 0,' ~ ''",
      })
  void schema_and_reader_refuse_what_is_wrong(Schema schema, String right, String wrong) {
    assertThat(right(schema)).contains(right);
    String broken = right(schema).replaceFirst(java.util.regex.Pattern.quote(right), wrong);

    assertThat(SchemaFile.complaints(schema, broken)).isNotEmpty();
    assertThat(readerComplaints(schema, broken)).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"3h", "180m", "180 min", "180min", "3 h 0 min", "2h60m", "PT3H"})
  void a_cap_may_be_written_in_several_ways(String cap) {
    String brief = BRIEF.replace("cap: 3h", "cap: " + cap);

    assertThat(SchemaFile.complaints(Schema.BRIEF, brief)).isEmpty();
    assertThat(BriefFormat.read("brief.yaml", brief).cap()).isEqualTo(Duration.ofHours(3));
  }

  @ParameterizedTest
  @ValueSource(strings = {"3 hm", "h", "3h min", "3h 0", "3  h", "min", "3 m h"})
  void a_cap_without_sense_is_refused_by_both(String cap) {
    String brief = BRIEF.replace("cap: 3h", "cap: " + cap);

    assertThat(SchemaFile.complaints(Schema.BRIEF, brief)).isNotEmpty();
    assertThat(readerComplaints(Schema.BRIEF, brief)).isNotEmpty();
  }

  @Test
  void a_brief_has_a_meal_or_meals() {
    String both = BRIEF + "meal: {at: 1h, minutes: 30}\n";

    assertThat(SchemaFile.complaints(Schema.BRIEF, both)).isNotEmpty();
    assertThat(readerComplaints(Schema.BRIEF, both)).isNotEmpty();
  }

  private static String right(Schema schema) {
    return switch (schema) {
      case EXERCISE -> EXERCISE;
      case GOAL -> GOAL;
      case BRIEF -> BRIEF;
      case AGENDA -> AGENDA;
      case COMPOSITION -> COMPOSITION;
      case REPLAN -> REPLAN;
      case OPTIONS -> OPTIONS;
      case WHAT_IF -> WHAT_IF;
      case CLASH -> CLASH;
      case WHY_NOT -> WHY_NOT;
      case WHY_THIS -> WHY_THIS;
      case REVIEW -> REVIEW;
      case FORECAST -> FORECAST;
      case STAND_INS -> STAND_INS;
      case LESSONS -> LESSONS;
      case LOG -> LOG;
      case RECORD -> RecordSample.TEXT;
      case PROBLEMS -> PROBLEMS;
      case INSTANCE -> INSTANCE;
      case SOLUTION -> SOLUTION;
      case VERDICT -> VERDICT;
    };
  }

  private static List<String> readerComplaints(Schema schema, String text) {
    BiFunction<String, String, Object> reader =
        switch (schema) {
          case EXERCISE -> CatalogFormat::readExercise;
          case GOAL -> CatalogFormat::readGoal;
          case BRIEF -> BriefFormat::read;
          case AGENDA -> AgendaFormat::read;
          case COMPOSITION -> CompositionFormat::read;
          case REPLAN -> ReplanFormat::read;
          case OPTIONS -> OptionsFormat::read;
          case WHAT_IF -> WhatIfFormat::read;
          case CLASH -> ClashFormat::read;
          case WHY_NOT -> WhyNotFormat::read;
          case WHY_THIS -> WhyThisFormat::read;
          case REVIEW -> ReviewFormat::read;
          case FORECAST -> ForecastFormat::read;
          case STAND_INS -> StandInsFormat::read;
          case LESSONS -> LessonsFormat::read;
          case LOG -> (name, line) -> LogFormat.read(name, LogSample.FIRST_LINE + line);
          case RECORD -> RecordFormat::read;
          case PROBLEMS -> ProblemsFormat::read;
          case INSTANCE -> InstanceFormat::read;
          case SOLUTION -> SolutionFormat::read;
          case VERDICT -> VerdictFormat::read;
        };
    return Complaints.of(() -> reader.apply(schema.word(), text));
  }
}
