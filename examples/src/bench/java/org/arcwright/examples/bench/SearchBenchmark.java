package org.arcwright.examples.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.search.Limit;
import org.arcwright.compose.search.Listener;
import org.arcwright.compose.search.BoundPass;
import org.arcwright.compose.search.Search;
import org.arcwright.compose.search.Solution;
import org.arcwright.compose.search.Solution.Status;
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
 * The search on made-up workshops, one thread, in a heap of 256 MB. Each call takes the next of a
 * few instances, so that a figure speaks for the size and not for one instance.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx256m")
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 4, time = 2)
public class SearchBenchmark {
  /** Ends a search at its first agenda. */
  private static final Listener FIRST =
      new Listener() {
        @Override
        public void incumbent(long cost, List<Item> items) {
          throw new Found(cost);
        }
      };

  /** An agenda is found. */
  private static final class Found extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final long cost;

    Found(long cost) {
      super("found", null, false, false);
      this.cost = cost;
    }
  }

  /** Candidates and cap. */
  @Param({"150/180", "150/480", "1000/960"})
  String size;

  /** Whether three exercises must appear and one is pinned. */
  @Param({"false", "true"})
  boolean wished;

  private Instance[] instances;
  private BoundPass[] passes;
  private int next;

  /** Makes the instances and solves each once, so that one which is not proven stops the run. */
  @Setup
  public void setup() {
    Size of = Size.of(size);
    instances = of.instances(wished);
    passes = new BoundPass[instances.length];
    for (int i = 0; i < instances.length; i++) {
      if (Search.solve(instances[i], Limit.NONE).status() != Status.OPTIMAL) {
        throw new IllegalStateException("instance " + i + " is not proven");
      }
      passes[i] = BoundPass.of(instances[i]);
    }
  }

  private int turn() {
    next = (next + 1) % instances.length;
    return next;
  }

  /** To the proof. */
  @Benchmark
  public Solution proof() {
    return Search.solve(instances[turn()], Limit.NONE);
  }

  /** To the first agenda. */
  @Benchmark
  public long firstAgenda() {
    try {
      throw new IllegalStateException("only " + Search.solve(instances[turn()], Limit.NONE, FIRST));
    } catch (Found found) {
      return found.cost;
    }
  }

  /** The backward pass that bounds every completion, and nothing else. */
  @Benchmark
  public long boundPass() {
    return passes[turn()].run();
  }
}
