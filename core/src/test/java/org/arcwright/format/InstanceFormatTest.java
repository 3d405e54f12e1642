package org.arcwright.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Bounds;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Instance.Meal;
import org.arcwright.compose.instance.Instance.Phase;
import org.arcwright.compose.instance.Instance.Pin;
import org.arcwright.compose.instance.Instance.Rules;
import org.arcwright.compose.instance.Instance.Stretch;
import org.arcwright.compose.instance.Instance.Weights;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InstanceFormatTest {
  /** The example of the problem statement, with a curve for its whole cap of 15 minutes. */
  private static final String STATED =
      """
      {
        "grid": 5,
        "cap": 15,
        "curve": [30, 30, 32],
        "stretch": {"min": 10, "max": 15},
        "breakMinutes": 10,
        "meals": [{"from": 120, "to": 150, "minutes": 45}],
        "bufferPercent": 15,
        "products": ["introductions", "idea-pool", "shortlist", "decision", "takeaways"],
        "initial": [],
        "phases": [
          {"name": "open", "kinds": ["ICEBREAKER"], "count": [1, 2], "minutes": [5, 25], "target": 15, "yields": ["introductions"]}
        ],
        "candidates": [
          {"id": "two-objects", "kind": "ICEBREAKER", "lengths": [10, 15], "lengthCosts": [0, 5], "energy": 40,
           "format": "PAIRS", "needs": [], "yields": ["introductions"], "cost": 12}
        ],
        "include": [],
        "pins": [{"id": "guest-talk", "at": 60}],
        "weights": {"energy": 1, "share": 10, "monotony": 60, "monotonyAcrossBreak": 30, "rhythm": 5, "pause": 20, "idle": 2}
      }
      """;

  private static final Instance READ =
      new Instance(
          5,
          15,
          List.of(30, 30, 32),
          new Stretch(10, 15),
          10,
          List.of(new Meal(120, 150, 45)),
          15,
          List.of("introductions", "idea-pool", "shortlist", "decision", "takeaways"),
          List.of(),
          List.of(
              new Phase(
                  "open",
                  Set.of("ICEBREAKER"),
                  new Bounds(1, 2),
                  new Bounds(5, 25),
                  15,
                  List.of("introductions"))),
          List.of(
              new Candidate(
                  "two-objects",
                  "ICEBREAKER",
                  List.of(10, 15),
                  List.of(0, 5),
                  40,
                  "PAIRS",
                  List.of(),
                  List.of("introductions"),
                  12)),
          List.of(),
          List.of(new Pin("guest-talk", 60)),
          Rules.NONE,
          new Weights(1, 10, 60, 30, 5, 20, 2));

  @Test
  void the_stated_example_is_read_field_for_field() {
    assertThat(InstanceFormat.read("instance.json", STATED)).isEqualTo(READ);
  }

  @Test
  void what_is_written_is_read_as_the_same_instance_and_written_alike() {
    String text = InstanceFormat.write(READ);

    assertThat(InstanceFormat.read("again.json", text)).isEqualTo(READ);
    assertThat(InstanceFormat.write(InstanceFormat.read("again.json", text))).isEqualTo(text);
  }

  @Test
  void a_candidate_stands_on_a_line() {
    assertThat(InstanceFormat.write(READ))
        .contains(
            """
              "candidates": [{"id": "two-objects", "kind": "ICEBREAKER", "lengths": [10, 15], "lengthCosts": [0, 5], "energy": 40, "format": "PAIRS", "needs": [], "yields": ["introductions"], "cost": 12}],
            """);
  }

  @Test
  void what_may_be_left_out_is_empty() {
    String text =
        """
        {"grid": 5, "cap": 5, "curve": [30], "stretch": {"min": 0, "max": 5}, "breakMinutes": 0,
         "bufferPercent": 0, "products": [],
         "phases": [{"name": "x", "kinds": [], "count": [1, 1], "minutes": [0, 5], "target": 0, "yields": []}],
         "candidates": []}
        """;
    Instance instance = InstanceFormat.read("instance.json", text);

    assertThat(instance.initial()).isEmpty();
    assertThat(instance.include()).isEmpty();
    assertThat(instance.pins()).isEmpty();
    assertThat(instance.meals()).isEmpty();
    assertThat(instance.weights()).isEqualTo(new Weights(0, 0, 0, 0, 0, 0, 0));
  }

  @Test
  void a_weight_left_out_is_nothing() {
    String text = STATED.replaceFirst("\"weights\": \\{.*}", "\"weights\": {\"pause\": 7}");

    assertThat(InstanceFormat.read("instance.json", text).weights())
        .isEqualTo(new Weights(0, 0, 0, 0, 0, 7, 0));
  }

  @Test
  void an_instance_is_json_whatever_the_name_of_its_file() {
    assertThat(InstanceFormat.read("instance.yaml", STATED)).isEqualTo(READ);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      value = {
        "\"grid\": 5 ~ \"grd\": 5 ~ 2:3: unknown key, grd: perhaps grid",
        "\"bufferPercent\": 15, ~ `` ~ 1:1: missing key, bufferPercent: add it, such as bufferPercent: 15",
        "\"cap\": 15 ~ \"cap\": \"15\" ~ 3:10: cap, 15: a whole number is right",
        "\"cap\": 15 ~ \"cap\": 15.5 ~ 3:10: cap, 15.5: a whole number is right",
        "\"cap\": 15 ~ \"cap\": 9999999999 ~ 3:10: cap, 9999999999: a whole number up to 2147483647 is right",
        "\"cap\": 15 ~ \"cap\": 12 ~ 3:10: cap, 12: zero or more, and a multiple of the grid, 5",
        "\"count\": [1, 2] ~ \"count\": [0, 2] ~ 12:57: phases[0].count.min, 0: a whole number from 1 on",
        "\"count\": [1, 2] ~ \"count\": [1] ~ 12:56: count, 1 value: 2 are right, such as [1, 2]",
        "\"lengths\": [10, 15] ~ \"lengths\": [15, 10] ~ 15:60: candidates[0].lengths, [15, 10]: over 0 and ascending",
        "\"lengths\": [10, 15] ~ \"lengths\": [10, 20] ~ 15:65: candidates[0].lengths, 20: at most stretch.max, 15",
        "\"needs\": [] ~ \"needs\": [\"x\"] ~ 16:35: candidates[0].needs, x: it is not among the products; add it there",
        "\"weights\": ~ \"rules\": {\"apart\": [{\"name\": \"x\", \"then\": []}]}, \"weights\": ~ 20:23: missing key, first: add it, such as first: [\"two-objects\"]",
        "\"weights\": ~ \"rules\": {\"atMost\": [{\"name\": \"x\", \"of\": [], \"most\": -1}]}, \"weights\": ~ 20:56: rules.atMost, -1: a whole number from 0 on",
        "\"pause\": 20 ~ \"pause\": -1 ~ 20:106: weights.pause, -1: a whole number from 0 on",
        "\"energy\": 40 ~ \"enery\": 40 ~ 15:93: unknown key, enery: perhaps energy",
      })
  void a_fault_is_told_at_its_place(String text, String faulty, String complaint) {
    assertThat(Complaints.of(() -> InstanceFormat.read("i.json", STATED.replace(text, faulty))))
        .contains("i.json:" + complaint);
  }

  @Test
  void a_hundred_thousand_candidates_are_read_as_written() {
    List<Candidate> candidates = new ArrayList<>();
    for (int i = 0; i < Instance.MOST_CANDIDATES; i++) {
      candidates.add(
          new Candidate(
              "exercise-" + i,
              "ICEBREAKER",
              List.of(10, 15),
              List.of(0, i % 50),
              10 + i % 40,
              "PAIRS",
              List.of("idea-pool"),
              List.of("introductions"),
              i));
    }
    Instance large =
        new Instance(
            READ.grid(),
            READ.cap(),
            READ.curve(),
            READ.stretch(),
            READ.breakMinutes(),
            READ.meals(),
            READ.bufferPercent(),
            READ.products(),
            READ.initial(),
            READ.phases(),
            candidates,
            READ.include(),
            READ.pins(),
            READ.rules(),
            READ.weights());

    assertThat(InstanceFormat.read("large.json", InstanceFormat.write(large))).isEqualTo(large);
  }
}
