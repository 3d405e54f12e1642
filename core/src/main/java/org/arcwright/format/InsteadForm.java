package org.arcwright.format;

import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.catalog.Word;
import org.arcwright.compose.Price;
import org.arcwright.compose.Proof;
import org.arcwright.compose.explain.WhyThis.Instead;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;

/** Reads and writes what would be if an exercise were not in. */
final class InsteadForm {
  private static final Keys KEYS =
      Keys.of("kind: \"swap\"", "exercise: \"card-sort\"", "agenda", "proof", "prices: []");

  /** What would be. */
  enum Kind implements Word {
    ASKED("asked"),
    SWAP("swap"),
    ANEW("anew"),
    NOTHING("nothing"),
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

  private InsteadForm() {}

  static Optional<Instead> read(Node node, Faults faults) {
    Fields fields = Fields.of(node, "instead", KEYS, faults);
    return switch (fields.word(Kind.class, "kind")) {
      case ASKED -> fields.build(Instead.Asked::new);
      case NOTHING -> fields.build(Instead.Nothing::new);
      case UNKNOWN -> fields.build(Instead.Unknown::new);
      case SWAP -> {
        String exercise = fields.text("exercise");
        Optional<Agenda> agenda = agenda(fields, faults);
        List<Price> prices = fields.list("prices", CompositionReader::price);
        yield fields.build(() -> new Instead.Swap(exercise, agenda.orElseThrow(), prices));
      }
      case ANEW -> {
        Optional<Agenda> agenda = agenda(fields, faults);
        Optional<Proof> proof = fields.required("proof").flatMap(n -> ProofForm.read(n, faults));
        List<Price> prices = fields.list("prices", CompositionReader::price);
        yield fields.build(
            () -> new Instead.Anew(agenda.orElseThrow(), proof.orElseThrow(), prices));
      }
    };
  }

  private static Optional<Agenda> agenda(Fields fields, Faults faults) {
    return fields.required("agenda").flatMap(n -> AgendaReader.read(n, faults));
  }

  static Node tree(Instead instead) {
    Branch branch = new Branch();
    if (instead instanceof Instead.Swap swap) {
      return branch
          .put("kind", Kind.SWAP.word())
          .put("exercise", swap.exercise())
          .put("agenda", AgendaWriter.tree(swap.agenda()).end())
          .put("prices", Branch.list(swap.prices(), CompositionWriter::tree))
          .end();
    }
    if (instead instanceof Instead.Anew anew) {
      return branch
          .put("kind", Kind.ANEW.word())
          .put("agenda", AgendaWriter.tree(anew.agenda()).end())
          .put("proof", ProofForm.tree(anew.proof()))
          .put("prices", Branch.list(anew.prices(), CompositionWriter::tree))
          .end();
    }
    Kind kind =
        instead instanceof Instead.Asked
            ? Kind.ASKED
            : instead instanceof Instead.Nothing ? Kind.NOTHING : Kind.UNKNOWN;
    return branch.put("kind", kind.word()).end();
  }
}
