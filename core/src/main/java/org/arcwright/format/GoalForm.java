package org.arcwright.format;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Phase;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.Fields.Slot;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;
import org.arcwright.format.tree.Values;

/** Reads and writes a goal with its arc. */
final class GoalForm {
  static final Keys KEYS =
      Keys.of(
          "id: choose-a-direction",
          "title: Choose a direction",
          "purpose: Several ways are open and one is to be taken.",
          "given: [question]",
          "yields: [decision]",
          "cautions",
          "arc",
          Retirement.KEY);
  private static final Keys PHASE =
      Keys.of(
          "name: open",
          "title: Arrive",
          "kinds: [icebreaker]",
          "count: [1, 2]",
          "share: [5, 10, 20]",
          "yields: [arrival]");

  /** What takes the place of a value that is wrong, so that the rest is looked at, too. */
  private static final class StandIn {
    static final String ID = "x";
    static final String TEXT = "...";
    static final List<Integer> COUNT = List.of(1, 1);
    static final List<Integer> SHARE = List.of(0, 50, 100);
    static final List<Phase> ARC =
        List.of(
            new Phase(
                ID, TEXT, Set.of(Kind.ICEBREAKER), 1, 1, new Phase.Share(0, 50, 100), Set.of()));
  }

  private GoalForm() {}

  static Optional<Goal> read(Node node, Vocabulary vocabulary, Faults faults) {
    Fields fields = Fields.of(node, "goal", KEYS, faults);
    Slot<String> id = fields.slot("id", fields.text("id"), StandIn.ID);
    Slot<String> title = fields.slot("title", fields.text("title"), StandIn.TEXT);
    Slot<String> purpose = fields.slot("purpose", fields.text("purpose"), StandIn.TEXT);
    Slot<List<String>> yields = fields.slot("yields", fields.texts("yields"), List.of());
    Slot<List<String>> given = fields.slot("given", fields.optionalTexts("given"), List.of());
    vocabulary.checkProducts(fields, "yields", faults);
    vocabulary.checkProducts(fields, "given", faults);
    Slot<List<String>> cautions =
        fields.slot("cautions", fields.optionalTexts("cautions"), List.of());
    Slot<List<Phase>> arc =
        fields.slot("arc", fields.list("arc", (n, all) -> phase(n, vocabulary, all)), StandIn.ARC);
    Retirement.refuse(fields, faults);
    return fields.build(
        () ->
            new Goal(
                id.get(),
                title.get(),
                purpose.get(),
                arc.get() == StandIn.ARC ? Set.of() : Checks.ids("yields", yields.get()),
                Checks.ids("given", given.get()),
                cautions.get(),
                arc.get()));
  }

  private static Optional<Phase> phase(Node node, Vocabulary vocabulary, Faults faults) {
    Fields fields = Fields.of(node, "phase", PHASE, faults);
    Slot<String> name = fields.slot("name", fields.text("name"), StandIn.ID);
    Slot<String> title = fields.slot("title", fields.text("title"), StandIn.TEXT);
    Slot<List<Kind>> kinds =
        fields.slot(
            "kinds",
            fields.list("kinds", (n, all) -> Values.word(n, "kinds", Kind.class, all)),
            List.of(Kind.ICEBREAKER));
    List<Integer> counts = fields.wholes("count");
    fields.checkLength("count", 2, "[1, 3]");
    Slot<List<Integer>> count =
        fields.slot("count", counts.size() == 2 ? counts : StandIn.COUNT, StandIn.COUNT);
    List<Integer> shares = fields.wholes("share");
    fields.checkLength("share", 3, "[5, 10, 20]");
    Slot<List<Integer>> share =
        fields.slot("share", shares.size() == 3 ? shares : StandIn.SHARE, StandIn.SHARE);
    Slot<List<String>> yields = fields.slot("yields", fields.optionalTexts("yields"), List.of());
    vocabulary.checkProducts(fields, "yields", faults);
    return fields.build(
        () ->
            new Phase(
                name.get(),
                title.get(),
                new LinkedHashSet<>(kinds.get()),
                count.get().get(0),
                count.get().get(1),
                new Phase.Share(share.get().get(0), share.get().get(1), share.get().get(2)),
                Checks.ids("yields", yields.get())));
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
