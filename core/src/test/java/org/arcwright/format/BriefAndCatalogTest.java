package org.arcwright.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.arcwright.catalog.Catalog;
import org.junit.jupiter.api.Test;

/** A brief held against the catalog whose words it uses. */
class BriefAndCatalogTest {
  private static final Catalog CATALOG = SmallCatalog.read();

  @Test
  void words_of_the_catalog_are_fine() {
    assertThat(Complaints.of(() -> read("two-objects", "board", "open"))).isEmpty();
  }

  @Test
  void every_unknown_word_is_told_with_the_nearest_known() {
    String text =
        """
        title: T
        goal: generate-idea
        people: 12
        mode: remote
        cap: 3h
        tools: [board, bord]
        given: [arival]
        wishes:
          include: [two-object]
          leave-out: [zzz]
          used-last-time: [chat-brust]
          pin: [{exercise: two-objetcs, at: 1h}]
        """;

    assertThat(Complaints.of(() -> BriefFormat.read("brief.yaml", text, CATALOG)))
        .containsExactly(
            "brief.yaml:2:7: unknown goal, generate-idea: perhaps generate-ideas",
            "brief.yaml:6:16: unknown tool, bord: perhaps board",
            "brief.yaml:7:9: unknown work product, arival: perhaps arrival",
            "brief.yaml:9:13: unknown exercise, two-object: perhaps two-objects",
            "brief.yaml:10:15: unknown exercise, zzz: known here: chat-burst, two-objects",
            "brief.yaml:11:20: unknown exercise, chat-brust: perhaps chat-burst",
            "brief.yaml:12:20: unknown exercise, two-objetcs: perhaps two-objects");
  }

  @Test
  void an_own_item_belongs_to_a_phase_of_the_goal_and_has_an_id_of_its_own() {
    String text =
        """
        title: T
        goal: generate-ideas
        people: 12
        mode: remote
        cap: 3h
        own-items:
          - {id: chat-burst, title: x, minutes: 10, phase: opn}
        """;

    assertThat(Complaints.of(() -> BriefFormat.read("brief.yaml", text, CATALOG)))
        .containsExactly(
            "brief.yaml:7:10: id, chat-burst: an exercise of the catalog has it; choose another",
            "brief.yaml:7:52: unknown phase, opn: perhaps open");
  }

  private static void read(String exercise, String tool, String phase) {
    String text =
        String.join(
            "\n",
            List.of(
                "title: T",
                "goal: generate-ideas",
                "people: 12",
                "mode: remote",
                "cap: 3h",
                "tools: [" + tool + "]",
                "wishes: {include: [" + exercise + "]}",
                "own-items: [{id: talk, title: x, minutes: 10, phase: " + phase + "}]"));
    BriefFormat.read("brief.yaml", text, CATALOG);
  }
}
