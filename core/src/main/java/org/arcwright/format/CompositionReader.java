package org.arcwright.format;

import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.catalog.Word;
import org.arcwright.compose.Composition;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.Composition.NothingFits;
import org.arcwright.compose.Composition.Stopped;
import org.arcwright.compose.LeftOut;
import org.arcwright.compose.Price;
import org.arcwright.compose.Proof;
import org.arcwright.compose.instance.Instance;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;

/** Reads a composer's answer. */
final class CompositionReader {
  private static final Keys KEYS =
      Keys.of(
          "format: \"arcwright-composition\"",
          "version: 1",
          "answer: \"composed\"",
          "agenda",
          "proof",
          "prices: []",
          "reasons: []",
          "bound: 120",
          "labels: 900",
          "leftOut: []",
          "instance",
          "clash");
  private static final Keys PRICE =
      Keys.of("exercise: \"dot-voting\"", "why: \"used last time\"", "points: 500");
  private static final Keys LEFT_OUT =
      Keys.of(
          "exercise: \"premortem\"",
          "field: \"wishes.leave-out\"",
          "reason: \"left out by the brief\"");

  /** What kind of answer it is. */
  enum Kind implements Word {
    COMPOSED("composed"),
    NOTHING_FITS("nothing-fits"),
    STOPPED("stopped");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    @Override
    public String word() {
      return word;
    }
  }

  private CompositionReader() {}

  static Optional<Composition> read(Node node, Faults faults) {
    Fields fields = Fields.of(node, "composition", KEYS, faults);
    Header.COMPOSITION.demand(fields, faults);
    Kind kind = fields.word(Kind.class, "answer");
    List<LeftOut> leftOut = fields.list("leftOut", CompositionReader::leftOut);
    Optional<Instance> instance =
        fields.required("instance").flatMap(n -> InstanceReader.read(n, faults));
    return switch (kind) {
      case COMPOSED -> composed(fields, leftOut, instance, faults).map(answer -> answer);
      case NOTHING_FITS -> {
        List<String> reasons = fields.texts("reasons");
        yield fields.build(() -> new NothingFits(reasons, leftOut, instance.orElseThrow()));
      }
      case STOPPED -> {
        Optional<Long> bound =
            fields.optional("bound").isEmpty()
                ? Optional.empty()
                : Optional.of(fields.longWhole("bound"));
        long labels = fields.longWhole("labels");
        yield fields.build(() -> new Stopped(bound, labels, leftOut, instance.orElseThrow()));
      }
    };
  }

  /** An agenda with its proof and prices, which stand among the fields. */
  static Optional<Composed> composed(
      Fields fields, List<LeftOut> leftOut, Optional<Instance> instance, Faults faults) {
    Optional<Agenda> agenda = fields.required("agenda").flatMap(n -> AgendaReader.read(n, faults));
    Optional<Proof> proof = fields.required("proof").flatMap(n -> ProofForm.read(n, faults));
    List<Price> prices = fields.list("prices", CompositionReader::price);
    return fields.build(
        () ->
            new Composed(
                agenda.orElseThrow(),
                proof.orElseThrow(),
                prices,
                leftOut,
                instance.orElseThrow()));
  }

  static Optional<Price> price(Node node, Faults faults) {
    Fields fields = Fields.of(node, "price", PRICE, faults);
    String exercise = fields.text("exercise");
    String why = fields.text("why");
    int points = fields.whole("points");
    return fields.build(() -> new Price(exercise, why, points));
  }

  static Optional<LeftOut> leftOut(Node node, Faults faults) {
    Fields fields = Fields.of(node, "exercise left out", LEFT_OUT, faults);
    String exercise = fields.text("exercise");
    Optional<String> field = fields.optionalText("field");
    String reason = fields.text("reason");
    return fields.build(() -> new LeftOut(exercise, field, reason));
  }
}
