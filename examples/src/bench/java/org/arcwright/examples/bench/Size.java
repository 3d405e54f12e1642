package org.arcwright.examples.bench;

import java.util.stream.LongStream;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.oracle.Instances;

/**
 * How large an instance is.
 *
 * @param candidates how many
 * @param cap minutes
 */
record Size(int candidates, int cap) {
  private static final int HALF_DAY = 480;
  private static final long MANY = 9;
  private static final long FEW = 3;

  /** Reads {@code 150/180}. */
  static Size of(String text) {
    String[] parts = text.split("/");
    return new Size(Integer.parseInt(parts[0]), Integer.parseInt(parts[1]));
  }

  /** Instances of this size from fixed seeds; fewer of those that take longer. */
  Instance[] instances(boolean wished) {
    return LongStream.range(0, cap <= HALF_DAY ? MANY : FEW)
        .mapToObj(seed -> instance(wished, seed))
        .toArray(Instance[]::new);
  }

  private Instance instance(boolean wished, long seed) {
    return wished
        ? Instances.wished(candidates, cap, seed)
        : Instances.of(candidates, cap, seed);
  }
}
