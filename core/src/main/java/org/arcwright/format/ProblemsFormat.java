package org.arcwright.format;

import java.util.List;
import java.util.Optional;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.JsonWriter;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;

/**
 * What is wrong with a document, in JSON, for a program that has to tell somebody else:
 *
 * <pre>{@code
 * {
 *   "format": "arcwright-problems", "version": 1,
 *   "problems": [{"file": "brief.yaml", "line": 5, "column": 6, "what": "cap", "value": "3 hrs",
 *     "remedy": "write it as 3h, 90m or 2h30m"}]
 * }
 * }</pre>
 *
 * <p>Lines and columns count from 1; both are 0 for the file as a whole. {@code hints}, which may
 * be missing, lists in the same way what is allowed but odd.
 */
public final class ProblemsFormat {
  private static final Keys KEYS =
      Keys.of("format: \"arcwright-problems\"", "version: 1", "problems: []", "hints");
  private static final Keys PROBLEM =
      Keys.of(
          "file: \"brief.yaml\"",
          "line: 5",
          "column: 6",
          "what: \"cap\"",
          "value: \"3 hrs\"",
          "remedy: \"write it as 3h, 90m or 2h30m\"");

  private ProblemsFormat() {}

  /**
   * Reads a text.
   *
   * @param name where it comes from, for messages
   * @throws FormatException with all that is wrong with it
   */
  public static List<Problem> read(String name, String text) {
    return Document.json(name, text).read(ProblemsFormat::problems);
  }

  private static Optional<List<Problem>> problems(Node node, Faults faults) {
    Fields fields = Fields.of(node, "problems", KEYS, faults);
    Header.PROBLEMS.demand(fields, faults);
    List<Problem> problems = fields.list("problems", ProblemsFormat::problem);
    fields.optionalList("hints", ProblemsFormat::problem);
    return fields.build(() -> List.copyOf(problems));
  }

  private static Optional<Problem> problem(Node node, Faults faults) {
    Fields fields = Fields.of(node, "problem", PROBLEM, faults);
    String file = fields.text("file");
    int line = fields.whole("line");
    int column = fields.whole("column");
    String what = fields.text("what");
    String value = fields.text("value");
    String remedy = fields.text("remedy");
    return fields.build(() -> new Problem(new Place(file, line, column), what, value, remedy));
  }

  /** The problems in JSON. */
  public static String write(List<Problem> problems) {
    return JsonWriter.write(begin(problems).end());
  }

  /** The problems in JSON, and beside them, alike, what is allowed but odd. */
  public static String write(List<Problem> problems, List<Problem> hints) {
    return JsonWriter.write(
        begin(problems).put("hints", Branch.list(hints, ProblemsFormat::tree)).end());
  }

  private static Branch begin(List<Problem> problems) {
    return Header.PROBLEMS.begin().put("problems", Branch.list(problems, ProblemsFormat::tree));
  }

  static Node tree(Problem problem) {
    return new Branch()
        .put("file", problem.place().file())
        .put("line", problem.place().line())
        .put("column", problem.place().column())
        .put("what", problem.what())
        .put("value", problem.value())
        .put("remedy", problem.remedy())
        .end();
  }
}
