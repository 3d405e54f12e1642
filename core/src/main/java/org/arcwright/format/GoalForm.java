package org.arcwright.format;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Phase;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;
import org.arcwright.format.tree.Values;

/** Reads and writes a goal with its arc. */
final class GoalForm {
  private static final Keys KEYS =
      Keys.of(
          "id: choose-a-direction",
          "title: Choose a direction",
          "purpose: Several ways are open and one is to be taken.",
          "given: [question]",
          "yields: [decision]",
          "cautions",
          "arc");
  private static final Keys PHASE =
      Keys.of(
          "name: open",
          "title: Arrive",
          "kinds: [icebreaker]",
          "count: [1, 2]",
          "share: [5, 10, 20]",
          "yields: [arrival]");

  private GoalForm() {}

  static Optional<Goal> read(Node node, Vocabulary vocabulary, Faults faults) {
    Fields fields = Fields.of(node, "goal", KEYS, faults);
    String id = fields.text("id");
    String title = fields.text("title");
    String purpose = fields.text("purpose");
    List<String> yields = fields.texts("yields");
    List<String> given = fields.optionalTexts("given");
    vocabulary.checkProducts(fields, "yields", faults);
    vocabulary.checkProducts(fields, "given", faults);
    List<String> cautions = fields.optionalTexts("cautions");
    List<Phase> arc = fields.list("arc", (n, all) -> phase(n, vocabulary, all));
    return fields.build(
        () ->
            new Goal(
                id,
                title,
                purpose,
                Checks.ids("yields", yields),
                Checks.ids("given", given),
                cautions,
                arc));
  }

  private static Optional<Phase> phase(Node node, Vocabulary vocabulary, Faults faults) {
    Fields fields = Fields.of(node, "phase", PHASE, faults);
    String name = fields.text("name");
    String title = fields.text("title");
    List<Kind> kinds = fields.list("kinds", (n, all) -> Values.word(n, "kinds", Kind.class, all));
    List<Integer> count = fields.wholes("count");
    fields.checkLength("count", 2, "[1, 3]");
    List<Integer> share = fields.wholes("share");
    fields.checkLength("share", 3, "[5, 10, 20]");
    List<String> yields = fields.optionalTexts("yields");
    vocabulary.checkProducts(fields, "yields", faults);
    return fields.build(
        () ->
            new Phase(
                name,
                title,
                new LinkedHashSet<>(kinds),
                count.get(0),
                count.get(1),
                new Phase.Share(share.get(0), share.get(1), share.get(2)),
                Checks.ids("yields", yields)));
  }

  static Node tree(Goal goal) {
    return new Branch()
        .put("id", goal.id())
        .put("title", goal.title())
        .put("purpose", goal.purpose())
        .putSome("given", goal.given())
        .put("yields", goal.yields())
        .putSome("cautions", goal.cautions())
        .put("arc", Branch.list(goal.arc(), GoalForm::tree))
        .end();
  }

  private static Node tree(Phase phase) {
    Phase.Share share = phase.share();
    return new Branch()
        .put("name", phase.name())
        .put("title", phase.title())
        .put("kinds", phase.kinds().stream().map(Kind::word).toList())
        .put("count", Branch.numbers(List.of(phase.fewest(), phase.most())))
        .put("share", Branch.numbers(List.of(share.min(), share.target(), share.max())))
        .putSome("yields", phase.yields())
        .end();
  }
}
