package org.arcwright.examples.bench;

import java.time.Duration;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Mode;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.search.Limit;
import org.arcwright.library.BuiltIn;
import org.arcwright.live.Replan;
import org.arcwright.live.Replanner;
import org.arcwright.live.Stand;
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
 * From "I am 20 minutes late" to the ways to go on, on one thread: all their searches, proofs and
 * forecasts. The day is three and a half hours, remote, of 9 people, with the built-in catalog; its
 * second exercise runs over.
 */
@State(Scope.Benchmark)
@BenchmarkMode(org.openjdk.jmh.annotations.Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 4, time = 2)
public class ReplanBenchmark {
  /** Catalog and minutes of the day. */
  @Param({ComposeBenchmark.BUILT_IN + "/210"})
  String size;

  private final Replanner replanner = Replanner.of(BuiltIn.catalog());
  private Brief brief;
  private Agenda agenda;
  private Stand stand;

  /** Composes the day, and lets it slip. */
  @Setup
  public void slip() {
    Duration cap = Duration.ofMinutes(Long.parseLong(size.split("/")[1]));
    brief = Brief.builder("What next?", "choose-a-direction", Mode.REMOTE, 9, cap).build();
    agenda =
        ((Composed) Composer.of(BuiltIn.catalog()).compose(brief, Budget.USUAL)).agenda();
    Activity second = agenda.activities().get(1);
    Duration now = second.end().plusMinutes(20);
    stand = Stand.at(agenda, second.exercise(), Optional.empty(), now, agenda.cap());
    if (replan().ways().isEmpty()) {
      throw new IllegalStateException("there is no way to go on");
    }
  }

  /** From where the day stands to the ways. */
  @Benchmark
  public Replan replan() {
    return replanner.replan(brief, agenda, stand, Set.of(), Limit.NONE);
  }
}
