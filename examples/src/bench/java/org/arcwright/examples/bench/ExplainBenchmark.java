package org.arcwright.examples.bench;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.arcwright.brief.Brief;
import org.arcwright.brief.Meal;
import org.arcwright.brief.Moment;
import org.arcwright.brief.OwnItem;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Mode;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Composition;
import org.arcwright.compose.Composition.NothingFits;
import org.arcwright.compose.explain.Clash;
import org.arcwright.compose.explain.Explainer;
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
 * Why nothing fits, with every way out and its agenda, on one thread: once a direction is to be
 * chosen in an hour and a quarter, remote, by 9 people, with three long exercises; once all clashes
 * with all.
 */
@State(Scope.Benchmark)
@BenchmarkMode(org.openjdk.jmh.annotations.Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 4, time = 2)
public class ExplainBenchmark {
  private static final String SEVERAL = "several";
  private static final Budget AMPLE = Budget.of(Duration.ofMinutes(2));

  /** The built-in catalog's own exercises and the cap. */
  @Param({ComposeBenchmark.BUILT_IN + "/75", SEVERAL + "/120"})
  String size;

  private Brief brief;
  private NothingFits nothing;

  /** Explains once, so that a brief which fits, or is not explained to the end, stops the run. */
  @Setup
  public void compose() {
    Duration cap = Duration.ofMinutes(Long.parseLong(size.split("/")[1]));
    brief = size.startsWith(SEVERAL) ? severalClashes(cap) : tooLittleTime(cap);
    Composition answer = Composer.of(BuiltIn.catalog()).compose(brief, AMPLE);
    if (!(answer instanceof NothingFits none)) {
      throw new IllegalStateException("something fits");
    }
    nothing = none;
    if (!explainClash().complete()) {
      throw new IllegalStateException("not explained to the end");
    }
  }

  private static Brief tooLittleTime(Duration cap) {
    return Brief.builder("What next?", "choose-a-direction", Mode.REMOTE, 9, cap)
            .wishes(
                new Wishes(
                    Set.of("morphological-table", "one-page-proposals", "weighted-decision-matrix"),
                    Set.of(),
                    List.of(),
                    Set.of()))
            .build();
  }

  /** Two hours for ten people, with a long guest, a meal, long exercises and hardly a tool. */
  private static Brief severalClashes(Duration cap) {
    return Brief.builder("What went wrong?", "learn-from-an-incident", Mode.HYBRID, 10, cap)
        .tools(Set.of("chat"))
        .meal(new Meal(Duration.ofMinutes(60), Duration.ofMinutes(85), Duration.ofMinutes(30)))
        .ownItem(
            new OwnItem(
                "talk",
                "A guest speaks",
                Duration.ofMinutes(70),
                Optional.empty(),
                Optional.of(new Moment.After(Duration.ofMinutes(25))),
                2,
                Format.PLENARY))
        .wishes(
            new Wishes(
                Set.of("final-ranked-vote", "pairwise-duels", "strengths-and-concerns-carousel"),
                Set.of(),
                List.of(),
                Set.of()))
        .build();
  }

  /** From the composer's answer to the ways out. */
  @Benchmark
  public Clash explainClash() {
    return Explainer.of(BuiltIn.catalog()).whyNothingFits(brief, nothing, AMPLE);
  }
}
