package org.arcwright.format;

import java.math.BigDecimal;
import java.util.Optional;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Node;
import org.arcwright.format.tree.Node.Scalar;
import org.arcwright.format.tree.Node.ScalarType;
import org.arcwright.format.tree.Values;

/** Energy in files: 1 calm to 5 lively, with one decimal; in the model it is counted in tenths. */
final class Levels {
  private static final BigDecimal CALM = BigDecimal.valueOf(10);
  private static final BigDecimal LIVELY = BigDecimal.valueOf(50);

  private Levels() {}

  /** The energy in tenths; what is beyond the scale or between the tenths is a fault. */
  static Optional<Integer> read(Node node, Faults faults) {
    Optional<BigDecimal> energy = Values.number(node, "energy", faults);
    if (energy.isEmpty()) {
      return Optional.empty();
    }
    BigDecimal tenths = energy.get().movePointRight(1).stripTrailingZeros();
    if (tenths.scale() > 0 || tenths.compareTo(CALM) < 0 || tenths.compareTo(LIVELY) > 0) {
      faults.add(node, "energy", "1 (calm) to 5 (lively) with one decimal is right");
      return Optional.empty();
    }
    return Optional.of(tenths.intValueExact());
  }

  /** The energy as a number. */
  static Node tree(int tenths) {
    if (tenths % 10 == 0) {
      return new Scalar(0, 0, ScalarType.WHOLE, String.valueOf(tenths / 10));
    }
    return new Scalar(0, 0, ScalarType.DECIMAL, BigDecimal.valueOf(tenths, 1).toPlainString());
  }
}
