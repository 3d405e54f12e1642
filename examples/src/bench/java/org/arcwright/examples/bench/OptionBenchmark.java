package org.arcwright.examples.bench;

import java.util.concurrent.TimeUnit;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.search.Limit;
import org.arcwright.compose.search.OptionList;
import org.arcwright.compose.search.OptionRule;
import org.arcwright.compose.search.OptionSearch;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Five options on made-up workshops, one thread: each shares at most half with every one before it,
 * and costs at most a quarter more than the best.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx256m")
@Warmup(iterations = 4, time = 4)
@Measurement(iterations = 4, time = 4)
public class OptionBenchmark {
  private static final OptionRule RULE = new OptionRule(5, 50, 25);

  /** Candidates and cap. */
  @Param({"150/180", "150/480"})
  String size;

  private Instance[] instances;
  private int next;

  /** Makes the instances. */
  @Setup
  public void setup() {
    instances = Size.of(size).instances(false);
  }

  /** To the proof of the last one. */
  @Benchmark
  public OptionList options() {
    next = (next + 1) % instances.length;
    return OptionSearch.solve(instances[next], RULE, Limit.NONE);
  }
}
