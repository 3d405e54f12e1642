package org.arcwright.cli.document;

import java.time.Duration;
import org.arcwright.compose.Proof;

/** Says how sure an agenda is. */
final class ProofLine {
  private ProofLine() {}

  /** For whoever composed it. */
  static String full(Answer answer) {
    Proof proof = answer.composed().proof();
    String work = Words.grouped(proof.labels()) + " search steps, " + seconds(proof.time()) + " s";
    String considered = considered(answer);
    if (proof.best()) {
      return "Proven best: no agenda from the "
          + considered
          + " costs less than these "
          + Words.grouped(proof.cost())
          + " points ("
          + work
          + ").";
    }
    return "Best so far, not proven: from the "
        + considered
        + " an agenda might cost up to "
        + Words.grouped(proof.cost() - proof.bound())
        + " of these "
        + Words.grouped(proof.cost())
        + " points less, "
        + percent(proof)
        + " % ("
        + work
        + "). A larger --budget may find it, or prove that there is none.";
  }

  /** For those it is sent to. */
  static String plain(Answer answer) {
    Proof proof = answer.composed().proof();
    return proof.best()
        ? "Composed with Arcwright from "
            + considered(answer)
            + ", and proven: none of them makes a better agenda for this brief."
        : "Composed with Arcwright from " + considered(answer) + ".";
  }

  private static String considered(Answer answer) {
    return Words.count(
        answer.instance().candidates().size(),
        "exercise that suits this brief",
        "exercises that suit this brief");
  }

  private static long percent(Proof proof) {
    return proof.cost() == 0
        ? 0
        : (100 * (proof.cost() - proof.bound()) + proof.cost() - 1) / proof.cost();
  }

  /** {@code 0.21}, never less than a hundredth. */
  private static String seconds(Duration time) {
    long hundredths = Math.max(1, (time.toMillis() + 5) / 10);
    return hundredths / 100 + "." + hundredths / 10 % 10 + hundredths % 10;
  }
}
