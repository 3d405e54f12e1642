package org.arcwright.examples.bench;

import java.time.Duration;
import java.util.concurrent.TimeUnit;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Mode;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Composition;
import org.arcwright.compose.Composition.Composed;
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

/**
 * From a brief to the proven-best agenda on one thread: reduction, search, proof and the agenda's
 * figures. The brief asks for a direction, remote, of 9 people.
 */
@State(Scope.Benchmark)
@BenchmarkMode(org.openjdk.jmh.annotations.Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 4, time = 2)
public class ComposeBenchmark {
  /** The built-in catalog's own exercises. */
  static final String BUILT_IN = "built-in";

  /** Exercises and cap; a number of exercises means variants of the built-in ones. */
  @Param({BUILT_IN + "/210", "10000/180"})
  String size;

  private Composer composer;
  private Brief brief;

  /** Composes once, so that a brief which is not proven stops the run. */
  @Setup
  public void compose() {
    String[] parts = size.split("/");
    Catalog catalog = BuiltIn.catalog();
    composer =
        Composer.of(
            parts[0].equals(BUILT_IN)
                ? catalog
                : Catalogs.grown(catalog, Integer.parseInt(parts[0]), 1));
    Duration cap = Duration.ofMinutes(Long.parseLong(parts[1]));
    brief = Brief.builder("What next?", "choose-a-direction", Mode.REMOTE, 9, cap).build();
    Composition answer = composer.compose(brief, Budget.USUAL);
    if (!(answer instanceof Composed composed) || !composed.proof().best()) {
      throw new IllegalStateException("not proven within the usual budget");
    }
  }

  /** From brief to answer. */
  @Benchmark
  public Composition composeBrief() {
    return composer.compose(brief, Budget.USUAL);
  }
}
