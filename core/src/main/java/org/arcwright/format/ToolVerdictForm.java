package org.arcwright.format;

import java.util.List;
import java.util.Optional;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;
import org.arcwright.standin.ToolVerdict;

/** Reads and writes whether an agenda goes on when a tool fails. */
final class ToolVerdictForm {
  private static final Keys KEYS =
      Keys.of(
          "reached: true",
          "tools: [\"board\"]",
          "stops: 4",
          "bare: []",
          "leftOut: 2",
          "dearer: 160",
          "reasons: []",
          "complete: true");

  private ToolVerdictForm() {}

  static Optional<ToolVerdict> read(Node node, Faults faults) {
    Fields fields = Fields.of(node, "verdict", KEYS, faults);
    boolean reached = fields.flag("reached");
    List<String> tools = fields.texts("tools");
    int stops = fields.whole("stops");
    List<Integer> bare = fields.wholes("bare");
    int leftOut = fields.whole("leftOut");
    long dearer = fields.longWhole("dearer");
    List<String> reasons = fields.texts("reasons");
    fields.required("complete");
    boolean complete = fields.flag("complete");
    if (reached != bare.isEmpty()) {
      fields
          .required("reached")
          .ifPresent(
              n -> faults.add(n, "reached", "it goes with bare, which lists what has no stand-in"));
    }
    return fields.build(
        () -> new ToolVerdict(tools, stops, bare, leftOut, dearer, reasons, complete));
  }

  static Node tree(ToolVerdict verdict) {
    return new Branch()
        .put("reached", verdict.reached())
        .put("tools", verdict.tools())
        .put("stops", verdict.stops())
        .put("bare", Branch.numbers(verdict.bare()))
        .put("leftOut", verdict.leftOut())
        .put("dearer", verdict.dearer())
        .put("reasons", verdict.reasons())
        .put("complete", verdict.complete())
        .end();
  }
}
