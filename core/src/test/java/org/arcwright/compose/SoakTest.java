package org.arcwright.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Mode;
import org.arcwright.compose.reduce.Crowd;
import org.arcwright.compose.reduce.Sample;
import org.arcwright.format.CompositionFormat;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Many threads share one composer for a minute: the same answers, and nothing is kept. */
@Tag("slow")
class SoakTest {
  private static final int THREADS = 16;
  private static final Duration TIME = Duration.ofMinutes(1);
  private static final long MEGABYTE = 1 << 20;

  /** What a heap may grow by for reasons of its own. */
  private static final long SLACK = 8 * MEGABYTE;

  private final Catalog catalog = Sample.only(Crowd.exercises(150));
  private final Composer composer = Composer.of(catalog);

  @Test
  void sixteen_threads_get_the_same_answers_and_leave_nothing_behind() throws Exception {
    List<Brief> briefs = briefs();
    List<String> expected = briefs.stream().map(this::answer).toList();
    int answers = ask(briefs, expected);
    long before = used();
    answers += ask(briefs, expected);
    long after = used();

    assertThat(answers).isGreaterThan(THREADS * briefs.size());
    assertThat(after).isLessThan(before + SLACK);
  }

  /** Half of the time with all threads; how many answers there were. */
  private int ask(List<Brief> briefs, List<String> expected) throws Exception {
    Instant end = Instant.now().plus(TIME.dividedBy(2));
    ExecutorService threads = Executors.newFixedThreadPool(THREADS);
    List<Future<Integer>> done = new ArrayList<>();
    for (int i = 0; i < THREADS; i++) {
      int first = i;
      done.add(threads.submit(() -> askUntil(end, first, briefs, expected)));
    }
    int answers = 0;
    for (Future<Integer> each : done) {
      answers += each.get();
    }
    threads.shutdown();
    return answers;
  }

  private int askUntil(Instant end, int first, List<Brief> briefs, List<String> expected) {
    int answers = 0;
    for (int i = first; Instant.now().isBefore(end); i++) {
      int number = i % briefs.size();
      assertThat(answer(briefs.get(number))).isEqualTo(expected.get(number));
      answers++;
    }
    return answers;
  }

  /** As JSON, without the time that it took. */
  private String answer(Brief brief) {
    return CompositionFormat.write(
            composer.compose(brief, new Budget(300_000, Duration.ofHours(1))))
        .replaceAll("\"milliseconds\": [0-9.]+", "");
  }

  private static List<Brief> briefs() {
    List<Brief> briefs = new ArrayList<>();
    for (Mode mode : Mode.values()) {
      for (int cap = 20; cap <= 140; cap += 15) {
        briefs.add(Sample.brief(mode, 4 + cap / 10, cap).build());
      }
    }
    return briefs;
  }

  /** Octets in use once what nobody holds is gone. */
  private static long used() {
    long least = Long.MAX_VALUE;
    for (int i = 0; i < 3; i++) {
      System.gc();
      Runtime runtime = Runtime.getRuntime();
      least = Math.min(least, runtime.totalMemory() - runtime.freeMemory());
    }
    return least;
  }
}
