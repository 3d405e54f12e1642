package org.arcwright.compose.reduce;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.arcwright.compose.instance.Instance.Candidate;

/** How short and how long the candidates can fill a phase: what its bounds must leave room for. */
final class Supply {
  private final int grid;
  private final Map<String, Shelf> shelves = new HashMap<>();

  /** The candidates of one kind, counted by their shortest and longest length in cells. */
  private static final class Shelf {
    final int[] shortest;
    final int[] longest;
    final Map<String, Candidate> yielding = new HashMap<>();

    Shelf(int cells) {
      shortest = new int[cells];
      longest = new int[cells];
    }
  }

  Supply(Collection<Candidate> candidates, int grid, int longestStretch) {
    this.grid = grid;
    int cells = longestStretch / grid + 1;
    for (Candidate candidate : candidates) {
      Shelf shelf = shelves.computeIfAbsent(candidate.kind(), kind -> new Shelf(cells));
      shelf.shortest[shortest(candidate) / grid]++;
      shelf.longest[candidate.lengths().get(candidate.lengths().size() - 1) / grid]++;
      for (String product : candidate.yields()) {
        shelf.yielding.merge(product, candidate, Supply::shorter);
      }
    }
  }

  private static int shortest(Candidate candidate) {
    return candidate.lengths().get(0);
  }

  private static Candidate shorter(Candidate one, Candidate other) {
    return shortest(other) < shortest(one) ? other : one;
  }

  /**
   * Minutes in which a phase can do its duty: for each product the shortest exercise that yields
   * it, and the shortest others up to {@code fewest}. An estimate from above, for one exercise may
   * yield two products; what the exercises themselves need is not counted.
   */
  int needed(Set<String> kinds, int fewest, Collection<String> products) {
    List<Candidate> chosen = new ArrayList<>();
    for (String product : products) {
      if (chosen.stream().noneMatch(candidate -> candidate.yields().contains(product))) {
        shelves(kinds).stream()
            .map(shelf -> shelf.yielding.get(product))
            .filter(Objects::nonNull)
            .reduce(Supply::shorter)
            .ifPresent(chosen::add);
      }
    }
    int minutes = chosen.stream().mapToInt(Supply::shortest).sum();
    int missing = fewest - chosen.size();
    for (int cell = 0; missing > 0 && cell < cells(kinds); cell++) {
      for (Shelf shelf : shelves(kinds)) {
        int taken = Math.min(missing, shelf.shortest[cell] - among(chosen, shelf, cell));
        minutes += taken * cell * grid;
        missing -= taken;
      }
    }
    return minutes;
  }

  /** How many of the chosen ones a shelf counts under that length. */
  private int among(List<Candidate> chosen, Shelf shelf, int cell) {
    int among = 0;
    for (Candidate candidate : chosen) {
      if (shortest(candidate) / grid == cell && shelves.get(candidate.kind()) == shelf) {
        among++;
      }
    }
    return among;
  }

  /** Minutes that {@code most} exercises can fill at the most. */
  int longest(Set<String> kinds, int most) {
    int minutes = 0;
    int missing = most;
    for (int cell = cells(kinds) - 1; missing > 0 && cell >= 0; cell--) {
      for (Shelf shelf : shelves(kinds)) {
        int taken = Math.min(missing, shelf.longest[cell]);
        minutes += taken * cell * grid;
        missing -= taken;
      }
    }
    return minutes;
  }

  private List<Shelf> shelves(Set<String> kinds) {
    return kinds.stream().sorted().filter(shelves::containsKey).map(shelves::get).toList();
  }

  private int cells(Set<String> kinds) {
    return shelves(kinds).stream().mapToInt(shelf -> shelf.shortest.length).max().orElse(0);
  }
}
