package org.arcwright.format;

import java.nio.file.Path;
import java.util.Optional;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.catalog.Word;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.LeftOut;
import org.arcwright.compose.explain.Clash;
import org.arcwright.compose.explain.WhyNot;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.JsonWriter;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;

/**
 * Why an exercise is not in an agenda, in JSON for other programs. {@code answer} says what kind of
 * answer it is, and with it which keys stand there: {@code is-in} has the {@code activity}; {@code
 * ruled-out} has what was {@code leftOut}, by what in the brief and why, and the {@code clash} with
 * having it in; {@code possible} has the best composition {@code with} it; {@code impossible} has
 * the {@code clash}; {@code unknown} has nothing, for the budget ended.
 *
 * <pre>{@code
 * {
 *   "format": "arcwright-why-not", "version": 1,
 *   "answer": "ruled-out",
 *   "leftOut": {"exercise": "premortem", "field": "wishes.leave-out", "reason": "left out by the brief"},
 *   "clash": {"format": "arcwright-clash", ...}
 * }
 * }</pre>
 *
 * <p>What is written is read as an equal answer.
 */
public final class WhyNotFormat {
  private static final Keys KEYS =
      Keys.of(
          "format: \"arcwright-why-not\"",
          "version: 1",
          "answer: \"possible\"",
          "activity",
          "leftOut",
          "clash",
          "with");

  /** What kind of answer it is. */
  enum Kind implements Word {
    IS_IN("is-in"),
    RULED_OUT("ruled-out"),
    POSSIBLE("possible"),
    IMPOSSIBLE("impossible"),
    UNKNOWN("unknown");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    @Override
    public String word() {
      return word;
    }
  }

  private WhyNotFormat() {}

  /**
   * Reads a file of at most 64 MB.
   *
   * @throws FormatException with all that is wrong
   */
  public static WhyNot read(Path file) {
    return Document.json(file, Document.BY_PROGRAM).read(WhyNotFormat::read);
  }

  /**
   * Reads a text.
   *
   * @param name where it comes from, for messages
   * @throws FormatException with all that is wrong
   */
  public static WhyNot read(String name, String text) {
    return Document.json(name, text).read(WhyNotFormat::read);
  }

  private static Optional<WhyNot> read(Node node, Faults faults) {
    Fields fields = Fields.of(node, "answer", KEYS, faults);
    Header.WHY_NOT.demand(fields, faults);
    return switch (fields.word(Kind.class, "answer")) {
      case IS_IN -> {
        Optional<Activity> activity =
            fields.required("activity").flatMap(n -> AgendaReader.activity(n, faults));
        yield fields.build(() -> new WhyNot.IsIn(activity.orElseThrow()));
      }
      case RULED_OUT -> {
        Optional<LeftOut> leftOut =
            fields.required("leftOut").flatMap(n -> CompositionReader.leftOut(n, faults));
        Optional<Clash> clash = clash(fields, faults);
        yield fields.build(() -> new WhyNot.RuledOut(leftOut.orElseThrow(), clash.orElseThrow()));
      }
      case POSSIBLE -> {
        Optional<Composed> with =
            fields
                .required("with")
                .flatMap(
                    n -> CompositionReader.read(n, faults).flatMap(c -> composed(c, n, faults)));
        yield fields.build(() -> new WhyNot.Possible(with.orElseThrow()));
      }
      case IMPOSSIBLE -> {
        Optional<Clash> clash = clash(fields, faults);
        yield fields.build(() -> new WhyNot.Impossible(clash.orElseThrow()));
      }
      case UNKNOWN -> fields.build(WhyNot.Unknown::new);
    };
  }

  private static Optional<Clash> clash(Fields fields, Faults faults) {
    return fields.required("clash").flatMap(n -> ClashFormat.read(n, faults));
  }

  private static Optional<Composed> composed(Object answer, Node node, Faults faults) {
    if (answer instanceof Composed composed) {
      return Optional.of(composed);
    }
    faults.add(node, "with", "an answer that is composed is right");
    return Optional.empty();
  }

  /** The answer in JSON. */
  public static String write(WhyNot answer) {
    Branch branch = Header.WHY_NOT.begin();
    if (answer instanceof WhyNot.IsIn in) {
      branch.put("answer", Kind.IS_IN.word()).put("activity", AgendaWriter.tree(in.activity()));
    } else if (answer instanceof WhyNot.RuledOut ruled) {
      branch
          .put("answer", Kind.RULED_OUT.word())
          .put("leftOut", CompositionWriter.tree(ruled.leftOut()))
          .put("clash", ClashFormat.tree(ruled.clash()));
    } else if (answer instanceof WhyNot.Possible possible) {
      branch
          .put("answer", Kind.POSSIBLE.word())
          .put("with", CompositionWriter.tree(possible.with()));
    } else if (answer instanceof WhyNot.Impossible impossible) {
      branch
          .put("answer", Kind.IMPOSSIBLE.word())
          .put("clash", ClashFormat.tree(impossible.clash()));
    } else {
      branch.put("answer", Kind.UNKNOWN.word());
    }
    return JsonWriter.write(branch.end());
  }
}
