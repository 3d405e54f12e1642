package org.arcwright.format;

import org.arcwright.compose.Composition;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.Composition.NothingFits;
import org.arcwright.compose.Composition.Stopped;
import org.arcwright.compose.LeftOut;
import org.arcwright.compose.Price;
import org.arcwright.format.CompositionReader.Kind;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.Node;

/** Writes a composer's answer as {@link CompositionReader} reads it. */
final class CompositionWriter {
  private CompositionWriter() {}

  static Node tree(Composition answer) {
    return branch(answer).end();
  }

  static Branch branch(Composition answer) {
    Branch branch = Header.COMPOSITION.begin();
    if (answer instanceof Composed composed) {
      branch
          .put("answer", Kind.COMPOSED.word())
          .put("agenda", AgendaWriter.tree(composed.agenda()).end())
          .put("proof", ProofForm.tree(composed.proof()))
          .put("prices", Branch.list(composed.prices(), CompositionWriter::tree));
    } else if (answer instanceof NothingFits nothing) {
      branch.put("answer", Kind.NOTHING_FITS.word()).put("reasons", nothing.reasons());
    } else if (answer instanceof Stopped stopped) {
      branch.put("answer", Kind.STOPPED.word());
      stopped.bound().ifPresent(bound -> branch.put("bound", bound));
      branch.put("labels", stopped.labels());
    }
    return branch
        .put("leftOut", Branch.list(answer.leftOut(), CompositionWriter::tree))
        .put("instance", InstanceFormat.tree(answer.instance()));
  }

  static Node tree(Price price) {
    return new Branch()
        .put("exercise", price.exercise())
        .put("why", price.why())
        .put("points", price.points())
        .end();
  }

  static Node tree(LeftOut leftOut) {
    return new Branch()
        .put("exercise", leftOut.exercise())
        .put("field", leftOut.field())
        .put("reason", leftOut.reason())
        .end();
  }
}
