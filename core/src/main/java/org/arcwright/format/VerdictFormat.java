package org.arcwright.format;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.Figures.Cost;
import org.arcwright.compose.check.Finding;
import org.arcwright.compose.check.Verdict;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.JsonWriter;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;

/**
 * What a checker says of a solution of the composition problem, in JSON, for those who hold another
 * solver against this one:
 *
 * <pre>{@code
 * {
 *   "format": "arcwright-verdict", "version": 1,
 *   "findings": [{"kind": "side-by-side", "rule": 5, "at": 35, "text": "The break at 35 ...",
 *     "values": {"at": 35}}],
 *   "cost": {...}, "tie": 7531
 * }
 * }</pre>
 *
 * <p>A finding's {@code kind} and {@code values} are the record of that name in {@link Finding} and
 * its components. What is written is read as an equal verdict.
 */
public final class VerdictFormat {
  private static final Keys KEYS =
      Keys.of("format: \"arcwright-verdict\"", "version: 1", "findings: []", "cost", "tie: 7531");

  private VerdictFormat() {}

  /**
   * Reads a file of at most 64 MB.
   *
   * @throws FormatException with all that is wrong
   */
  public static Verdict read(Path file) {
    return Document.json(file, Document.BY_PROGRAM).read(VerdictFormat::verdict);
  }

  /**
   * Reads a text.
   *
   * @param name where it comes from, for messages
   * @throws FormatException with all that is wrong
   */
  public static Verdict read(String name, String text) {
    return Document.json(name, text).read(VerdictFormat::verdict);
  }

  private static Optional<Verdict> verdict(Node node, Faults faults) {
    Fields fields = Fields.of(node, "verdict", KEYS, faults);
    Header.VERDICT.demand(fields, faults);
    List<Finding> findings = fields.list("findings", FindingForm::read);
    Optional<Cost> cost = fields.required("cost").flatMap(n -> FiguresForm.cost(n, faults));
    long tie = fields.longWhole("tie");
    return fields.build(() -> new Verdict(findings, cost.orElseThrow(), tie));
  }

  /** The verdict in JSON. */
  public static String write(Verdict verdict) {
    return JsonWriter.write(
        Header.VERDICT
            .begin()
            .put("findings", Branch.list(verdict.findings(), FindingForm::tree))
            .put("cost", FiguresForm.tree(verdict.cost()))
            .put("tie", verdict.tie())
            .end());
  }
}
