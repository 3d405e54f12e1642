package org.arcwright.format;

import java.util.List;
import java.util.Set;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Product;
import org.arcwright.catalog.Tool;

/** Two exercises, a goal and their words, as files. */
final class SmallCatalog {
  static final String TWO_OBJECTS =
      """
      id: two-objects
      title: Two objects
      kind: icebreaker
      purpose: Everybody is heard once.
      people: {min: 4, max: 12}
      energy: 3
      openness: 1
      yields: [arrival]
      opening: Take two things from your desk.
      steps:
        - text: Everybody shows two things and says why.
          who: each
          format: plenary
          minutes: [0.5, 1, 1.25]
          per: person
      modes:
        remote: {fit: 3, tools: [call], how: Into the camera.}
        in-person: {fit: 2, tools: [], how: From the bag.}
        hybrid: {fit: 1, tools: [call], how: The room first.}
      watch: [Who talks long.]
      access: [Say what is seen.]
      carry-over: Names and faces.
      source: {mark: common-practice}
      """;

  static final String CHAT_BURST =
      TWO_OBJECTS
          .replace("two-objects", "chat-burst")
          .replace("Two objects", "Chat burst")
          .replace("kind: icebreaker", "kind: divergent")
          .replace("yields: [arrival]", "yields: [idea-pool]");

  static final String GENERATE_IDEAS =
      """
      id: generate-ideas
      title: Generate ideas
      purpose: A question needs many answers.
      yields: [idea-pool]
      arc:
        - {name: open, title: Arrive, kinds: [icebreaker], count: [1, 2], share: [5, 20, 40], yields: [arrival]}
        - {name: gather, title: Gather, kinds: [divergent], count: [1, 5], share: [50, 80, 90], yields: [idea-pool]}
      """;

  private SmallCatalog() {}

  static Exercise exercise() {
    return CatalogFormat.readExercise("two-objects.yaml", TWO_OBJECTS);
  }

  static Goal goal() {
    return CatalogFormat.readGoal("generate-ideas.yaml", GENERATE_IDEAS);
  }

  static Catalog read() {
    return Catalog.of(
        List.of(
            new Product("arrival", "arrival", "Everybody has arrived."),
            new Product("idea-pool", "pool of ideas", "Many ideas are there.")),
        List.of(
            new Tool("call", "call", "People hear and see each other.", Set.of(Mode.REMOTE)),
            new Tool("board", "board", "All can write on it.", Set.of(Mode.REMOTE))),
        List.of(exercise(), CatalogFormat.readExercise("chat-burst.yaml", CHAT_BURST)),
        List.of(goal()));
  }
}
