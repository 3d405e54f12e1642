package org.arcwright.examples;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Mode;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Composition;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.Composition.NothingFits;
import org.arcwright.library.BuiltIn;

/** Answers thousands of briefs on all processors with one composer. */
public final class Batch {
  private static final Budget BUDGET = Budget.of(Duration.ofSeconds(2));

  private Batch() {}

  /**
   * What came of many briefs.
   *
   * @param proven agendas that are proven best
   * @param nothing briefs that nothing fits
   * @param unproven all others: the budget ended first
   */
  record Tally(long proven, long nothing, long unproven) {}

  /** Briefs drawn from a seed: any goal and mode, 4 to 20 people, an hour to four. */
  static List<Brief> briefs(Catalog catalog, int count, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<String> goals = List.copyOf(catalog.goals().keySet());
    List<Mode> modes = List.of(Mode.values());
    List<Brief> briefs = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      String goal = goals.get(random.nextInt(goals.size()));
      Mode mode = modes.get(random.nextInt(modes.size()));
      int people = random.nextInt(4, 21);
      Duration cap = Duration.ofMinutes(15L * random.nextInt(4, 17));
      briefs.add(Brief.builder("Workshop " + i, goal, mode, people, cap).build());
    }
    return briefs;
  }

  /** Composes all of them. */
  static Tally compose(Catalog catalog, List<Brief> briefs) {
    Composer composer = Composer.of(catalog);
    return briefs.parallelStream()
        .map(brief -> tally(composer.compose(brief, BUDGET)))
        .reduce(
            new Tally(0, 0, 0),
            (a, b) ->
                new Tally(a.proven + b.proven, a.nothing + b.nothing, a.unproven + b.unproven));
  }

  private static Tally tally(Composition answer) {
    boolean proven = answer instanceof Composed composed && composed.proof().best();
    boolean nothing = answer instanceof NothingFits;
    return new Tally(proven ? 1 : 0, nothing ? 1 : 0, proven || nothing ? 0 : 1);
  }

  /** Composes as many briefs as are asked for, or 10,000, and prints how fast that was. */
  public static void main(String[] args) {
    int count = args.length > 0 ? Integer.parseInt(args[0]) : 10_000;
    Catalog catalog = BuiltIn.catalog();
    List<Brief> briefs = briefs(catalog, count, 1);
    Instant begin = Instant.now();
    Tally tally = compose(catalog, briefs);
    double seconds = Duration.between(begin, Instant.now()).toMillis() / 1000.0;
    System.out.println(
        count
            + " briefs: "
            + tally.proven()
            + " proven best, "
            + tally.nothing()
            + " fit nothing, "
            + tally.unproven()
            + " ended by the budget");
    System.out.println(
        Math.round(count / seconds)
            + " a second on "
            + Runtime.getRuntime().availableProcessors()
            + " processors, "
            + Math.round(seconds)
            + " s in all");
  }
}
