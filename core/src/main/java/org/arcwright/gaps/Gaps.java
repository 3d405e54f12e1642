package org.arcwright.gaps;

import java.util.List;

/**
 * Where a shelf is thin.
 *
 * @param grid the briefs that were tried
 * @param most how many different agendas were looked for in each
 * @param counts how many there are, by tools, then goal, people and length
 * @param gaps briefs with fewer than {@code most}, the thinnest first
 */
public record Gaps(Grid grid, int most, List<Count> counts, List<Gap> gaps) {
  /** Takes copies. */
  public Gaps {
    counts = List.copyOf(counts);
    gaps = List.copyOf(gaps);
  }

  /** Briefs with fewer than {@code most} agendas, whose search was done. */
  public int thin() {
    return (int) counts.stream().filter(count -> count.agendas() < most && !isOpen(count)).count();
  }

  /** Briefs whose search was not done. */
  public long open() {
    return counts.stream().filter(this::isOpen).count();
  }

  /** Whether a brief may have more agendas than were found. */
  public boolean isOpen(Count count) {
    return !count.counted() && count.agendas() < most;
  }

  /** Briefs with so many different agendas. */
  public long having(int agendas) {
    return counts.stream().filter(count -> count.agendas() == agendas && !isOpen(count)).count();
  }

  /** What the gaps ask for, all together: what is missing most often first. */
  public List<Demand> demands() {
    return Demand.of(gaps);
  }
}
