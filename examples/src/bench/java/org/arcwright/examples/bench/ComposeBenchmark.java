package org.arcwright.examples.bench;

import java.time.Duration;
import java.util.concurrent.TimeUnit;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Mode;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Composition;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.search.Limit;
import org.arcwright.compose.search.Search;
import org.arcwright.compose.search.Solution;
import org.arcwright.library.BuiltIn;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** From a brief to the proven-best agenda, over the whole built-in catalog, on one thread. */
@State(Scope.Benchmark)
@BenchmarkMode(org.openjdk.jmh.annotations.Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
public class ComposeBenchmark {
  /** Minutes in all, remote, 9 people. */
  @Param({"60", "120", "210"})
  int cap;

  private Composer composer;
  private Brief brief;
  private Composed composed;

  /** Composes once, so that a brief which is not proven stops the run. */
  @Setup
  public void compose() {
    composer = Composer.of(BuiltIn.catalog());
    brief =
        Brief.builder("What next?", "choose-a-direction", Mode.REMOTE, 9, Duration.ofMinutes(cap))
            .build();
    composed = (Composed) composer.compose(brief, Budget.USUAL);
    if (!composed.proof().best()) {
      throw new IllegalStateException("not proven within the usual budget");
    }
  }

  /** Reduction, search, proof and the agenda's figures. */
  @Benchmark
  public Composition composeBrief() {
    return composer.compose(brief, Budget.USUAL);
  }

  /** Search and proof alone. */
  @Benchmark
  public Solution searchInstance() {
    return Search.solve(composed.instance(), Limit.NONE);
  }
}
