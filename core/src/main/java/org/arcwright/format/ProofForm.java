package org.arcwright.format;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.Optional;
import org.arcwright.compose.Proof;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;
import org.arcwright.format.tree.Node.Scalar;
import org.arcwright.format.tree.Node.ScalarType;
import org.arcwright.format.tree.Values;

/** Reads and writes how sure an agenda is. */
final class ProofForm {
  private static final Keys KEYS =
      Keys.of("best: true", "cost: 120", "bound: 120", "labels: 900", "milliseconds: 3.5");

  private ProofForm() {}

  static Optional<Proof> read(Node node, Faults faults) {
    Fields fields = Fields.of(node, "proof", KEYS, faults);
    fields.required("best");
    boolean best = fields.flag("best");
    long cost = fields.longWhole("cost");
    long bound = fields.longWhole("bound");
    long labels = fields.longWhole("labels");
    Optional<Duration> time = fields.required("milliseconds").flatMap(n -> duration(n, faults));
    return fields.build(() -> new Proof(best, cost, bound, labels, time.orElseThrow()));
  }

  private static Optional<Duration> duration(Node node, Faults faults) {
    Optional<BigDecimal> micros =
        Values.number(node, "milliseconds", faults).map(number -> number.movePointRight(3));
    if (micros.isEmpty()) {
      return Optional.empty();
    }
    if (micros.get().signum() < 0 || micros.get().stripTrailingZeros().scale() > 0) {
      faults.add(node, "milliseconds", "0 or more, with at most three decimals, is right");
      return Optional.empty();
    }
    return Optional.of(Duration.ofNanos(1_000 * micros.get().longValueExact()));
  }

  static Node tree(Proof proof) {
    return new Branch()
        .put("best", proof.best())
        .put("cost", proof.cost())
        .put("bound", proof.bound())
        .put("labels", proof.labels())
        .put("milliseconds", milliseconds(proof.time()))
        .end();
  }

  private static Node milliseconds(Duration time) {
    long micros = time.toNanos() / 1_000;
    if (micros % 1_000 == 0) {
      return Branch.number(micros / 1_000);
    }
    String text = BigDecimal.valueOf(micros, 3).stripTrailingZeros().toPlainString();
    return new Scalar(0, 0, ScalarType.DECIMAL, text);
  }
}
