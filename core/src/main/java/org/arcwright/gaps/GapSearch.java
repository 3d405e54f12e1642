package org.arcwright.gaps;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import org.arcwright.catalog.Catalog;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Cancel;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Variety;

/**
 * Asks the composer for the agendas of every brief of a grid, on all processors. The answer is the
 * same on any machine unless a brief takes longer than {@link #BUDGET} or somebody cancels.
 */
public final class GapSearch {
  /** For each brief; a usual one takes a hundredth of it. */
  public static final Budget BUDGET = new Budget(20_000_000, Duration.ofSeconds(30));

  private final Catalog catalog;
  private final int most;
  private final Watch watch;
  private final Cancel cancel;

  private GapSearch(Catalog catalog, int most, Watch watch, Cancel cancel) {
    this.catalog = catalog;
    this.most = most;
    this.watch = watch;
    this.cancel = cancel;
  }

  /** Somebody who wants to know how far the work is. Called from several threads. */
  @FunctionalInterface
  public interface Watch {
    /** Nobody. */
    Watch NOBODY = (stage, done, of) -> {};

    /** So many of all are done. */
    void done(Stage stage, int done, int of);
  }

  /** The parts of the work, one after the other. */
  public enum Stage {
    /** Counting the agendas of each brief. */
    COUNT,
    /** Trying what would fill a gap. */
    FILL
  }

  /**
   * Tries all briefs of a grid.
   *
   * @param most how many different agendas to look for in each, 1 or more
   * @param fill for how many gaps to find out what would fill them, the thinnest first
   * @throws org.arcwright.catalog.InvalidValueException if the grid names what the catalog does not
   *     have, or times that cannot be planned
   */
  public static Gaps run(
      Catalog catalog, Grid grid, int most, int fill, Watch watch, Cancel cancel) {
    GapSearch search = new GapSearch(catalog, most, watch, cancel);
    Composer composer = Composer.of(catalog);
    List<Count> counts =
        search.each(Stage.COUNT, grid.cells(), cell -> search.count(composer, cell));
    List<List<Count>> thin = thin(counts, most);
    List<Gap> gaps =
        search.each(Stage.FILL, thin.subList(0, Math.min(fill, thin.size())), search::gaps).stream()
            .flatMap(List::stream)
            .toList();
    return new Gaps(grid, most, counts, gaps);
  }

  private <A, B> List<B> each(Stage stage, List<A> values, Function<A, B> work) {
    AtomicInteger done = new AtomicInteger();
    return values.parallelStream()
        .map(
            value -> {
              B result = work.apply(value);
              watch.done(stage, done.incrementAndGet(), values.size());
              return result;
            })
        .toList();
  }

  private Count count(Composer composer, Cell cell) {
    Variety variety = composer.variety(cell.brief(), most, BUDGET, cancel);
    return new Count(cell, variety.agendas().size(), variety.counted());
  }

  /** Counts under {@code most} that differ in length only, the thinnest first. */
  private static List<List<Count>> thin(List<Count> counts, int most) {
    record Key(int agendas, String goal, int people, ToolSet tools) {}
    Map<Key, List<Count>> groups = new LinkedHashMap<>();
    counts.stream()
        .filter(count -> count.counted() && count.agendas() < most)
        .sorted(Comparator.comparingInt(Count::agendas))
        .forEach(
            count -> {
              Cell cell = count.cell();
              Key key = new Key(count.agendas(), cell.goal(), cell.people(), cell.tools());
              groups.computeIfAbsent(key, k -> new ArrayList<>()).add(count);
            });
    return List.copyOf(groups.values());
  }

  /** What would fill these; the same exercises for as many lengths as they help. */
  private List<Gap> gaps(List<Count> counts) {
    List<Gap> gaps = new ArrayList<>();
    List<Count> left = new ArrayList<>(counts);
    while (!left.isEmpty()) {
      Count first = left.remove(0);
      List<Draft> drafts = DraftSearch.missing(catalog, first, most, BUDGET, cancel);
      List<Duration> lengths = new ArrayList<>(List.of(first.cell().length()));
      left.removeIf(
          other ->
              DraftSearch.help(catalog, other, drafts, most, BUDGET, cancel)
                  && lengths.add(other.cell().length()));
      Cell cell = first.cell();
      gaps.add(new Gap(cell.goal(), cell.tools(), cell.people(), lengths, first.agendas(), drafts));
    }
    return gaps;
  }
}
