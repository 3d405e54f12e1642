package org.arcwright.format;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.catalog.Word;
import org.arcwright.compose.Parameter;
import org.arcwright.compose.Proof;
import org.arcwright.compose.Sweep;
import org.arcwright.compose.WhatIf;
import org.arcwright.compose.WhatIf.Row;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.JsonWriter;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;

/**
 * How the best agenda changes while one figure of a brief is varied, in JSON for other programs.
 * {@code answer} says of each value what became of it: {@code best} has an agenda and its proof,
 * {@code none} has reasons, {@code open} a bound, if one is known, and the labels used, {@code
 * refused} why there is no such brief. Values are minutes, people, per cent, or tenths of a level
 * of energy.
 *
 * <pre>{@code
 * {
 *   "format": "arcwright-what-if", "version": 1,
 *   "vary": "cap", "from": 120, "to": 240, "step": 15, "own": 210,
 *   "rows": [
 *     {"value": 120, "answer": "none", "reasons": ["..."]},
 *     {"value": 135, "answer": "best", "agenda": {"format": "arcwright-agenda", ...},
 *      "proof": {"best": true, "cost": 695, "bound": 695, "labels": 1006, "milliseconds": 4.5}}]
 * }
 * }</pre>
 *
 * <p>What is written is read as an equal answer.
 */
public final class WhatIfFormat {
  private static final Keys KEYS =
      Keys.of(
          "format: \"arcwright-what-if\"",
          "version: 1",
          "vary: \"cap\"",
          "from: 120",
          "to: 240",
          "step: 15",
          "own: 210",
          "rows: []");
  private static final Keys ROW =
      Keys.of(
          "value: 120",
          "answer: \"best\"",
          "agenda",
          "proof",
          "reasons: []",
          "bound: 120",
          "labels: 900",
          "why: \"cap is 10 min\"");

  /** What became of a value. */
  enum Kind implements Word {
    BEST("best"),
    NONE("none"),
    OPEN("open"),
    REFUSED("refused");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    @Override
    public String word() {
      return word;
    }
  }

  private WhatIfFormat() {}

  /**
   * Reads a file of at most 64 MB.
   *
   * @throws FormatException with all that is wrong
   */
  public static WhatIf.Answer read(Path file) {
    return Document.json(file, Document.BY_PROGRAM).read(WhatIfFormat::read);
  }

  /**
   * Reads a text.
   *
   * @param name where it comes from, for messages
   * @throws FormatException with all that is wrong
   */
  public static WhatIf.Answer read(String name, String text) {
    return Document.json(name, text).read(WhatIfFormat::read);
  }

  private static Optional<WhatIf.Answer> read(Node node, Faults faults) {
    Fields fields = Fields.of(node, "what-if", KEYS, faults);
    Header.WHAT_IF.demand(fields, faults);
    Parameter parameter = fields.word(Parameter.class, "vary");
    int from = fields.whole("from");
    int to = fields.whole("to");
    int step = fields.whole("step");
    int own = fields.whole("own");
    List<Row> rows = fields.list("rows", WhatIfFormat::row);
    return fields.build(() -> new WhatIf.Answer(new Sweep(parameter, from, to, step), own, rows));
  }

  private static Optional<Row> row(Node node, Faults faults) {
    Fields fields = Fields.of(node, "row", ROW, faults);
    int value = fields.whole("value");
    Kind kind = fields.word(Kind.class, "answer");
    return switch (kind) {
      case BEST -> {
        Optional<Agenda> agenda =
            fields.required("agenda").flatMap(n -> AgendaReader.read(n, faults));
        Optional<Proof> proof = fields.required("proof").flatMap(n -> ProofForm.read(n, faults));
        yield fields.build(() -> new Row.Best(value, agenda.orElseThrow(), proof.orElseThrow()));
      }
      case NONE -> {
        List<String> reasons = fields.texts("reasons");
        yield fields.build(() -> new Row.None(value, reasons));
      }
      case OPEN -> {
        Optional<Long> bound =
            fields.optional("bound").isEmpty()
                ? Optional.empty()
                : Optional.of(fields.longWhole("bound"));
        long labels = fields.longWhole("labels");
        yield fields.build(() -> new Row.Open(value, bound, labels));
      }
      case REFUSED -> {
        String why = fields.text("why");
        yield fields.build(() -> new Row.Refused(value, why));
      }
    };
  }

  /** The answer in JSON. */
  public static String write(WhatIf.Answer answer) {
    Sweep sweep = answer.sweep();
    return JsonWriter.write(
        Header.WHAT_IF
            .begin()
            .put("vary", sweep.parameter().word())
            .put("from", sweep.from())
            .put("to", sweep.to())
            .put("step", sweep.step())
            .put("own", answer.own())
            .put("rows", Branch.list(answer.rows(), WhatIfFormat::tree))
            .end());
  }

  private static Node tree(Row row) {
    Branch branch = new Branch().put("value", row.value());
    if (row instanceof Row.Best best) {
      branch
          .put("answer", Kind.BEST.word())
          .put("agenda", AgendaWriter.tree(best.agenda()).end())
          .put("proof", ProofForm.tree(best.proof()));
    } else if (row instanceof Row.None none) {
      branch.put("answer", Kind.NONE.word()).put("reasons", none.reasons());
    } else if (row instanceof Row.Open open) {
      branch.put("answer", Kind.OPEN.word());
      open.bound().ifPresent(bound -> branch.put("bound", bound));
      branch.put("labels", open.labels());
    } else if (row instanceof Row.Refused refused) {
      branch.put("answer", Kind.REFUSED.word()).put("why", refused.why());
    }
    return branch.end();
  }
}
