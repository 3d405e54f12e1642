package org.arcwright.compose;

import java.util.List;
import java.util.stream.IntStream;
import org.arcwright.catalog.InvalidValueException;

/**
 * The values that a parameter takes, one after another: from one to another in equal steps, the
 * last one only if a step meets it.
 *
 * @param parameter which
 * @param from the first, in the parameter's unit
 * @param to none is over it
 * @param step over 0; at most {@value #MOST} values come of it
 */
public record Sweep(Parameter parameter, int from, int to, int step) {
  /** Most values. */
  public static final int MOST = 100;

  /** Refuses values that the parameter cannot take, and too many. */
  public Sweep {
    bounded(parameter, from);
    bounded(parameter, to);
    if (from > to) {
      throw refused(parameter, from + ".." + to, "the smaller one comes first");
    }
    if (step < 1) {
      throw refused(parameter, "/" + step, "a step is over 0");
    }
    int values = (to - from) / step + 1;
    if (values > MOST) {
      throw refused(
          parameter,
          from + ".." + to + "/" + step,
          "these are " + values + " values, " + MOST + " at most are right; take a larger step");
    }
  }

  private static void bounded(Parameter parameter, int value) {
    if (value < parameter.least() || value > parameter.most()) {
      throw refused(
          parameter, value, "from " + parameter.least() + " to " + parameter.most() + " is right");
    }
  }

  private static InvalidValueException refused(Parameter parameter, Object value, String remedy) {
    return new InvalidValueException(parameter.word(), value, remedy);
  }

  /** The values, ascending. */
  public List<Integer> values() {
    return IntStream.iterate(from, value -> value <= to, value -> value + step).boxed().toList();
  }
}
