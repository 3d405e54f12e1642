package org.arcwright.gaps;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.catalog.Mode;

/**
 * The briefs to try: each goal with each set of tools, number of people and length.
 *
 * @param goals ids of goals
 * @param tools where people are, and what is at hand
 * @param people numbers of people
 * @param lengths from the start to the end
 */
public record Grid(
    List<String> goals, List<ToolSet> tools, List<Integer> people, List<Duration> lengths) {
  /** Most briefs in a grid. */
  public static final int MOST = 100_000;

  /**
   * Groups as facilitators meet them: every size while one person more makes a difference, then in
   * steps. Common practice, no source.
   */
  private static final List<Integer> PEOPLE = List.of(4, 5, 6, 8, 10, 12, 16, 20, 25, 30);

  /** From an hour to half a day. Common practice, no source. */
  private static final List<Duration> LENGTHS =
      Stream.of(60, 90, 120, 180, 240).map(Duration::ofMinutes).toList();

  /** Takes copies; refuses an empty list and a grid that is too large. */
  public Grid {
    goals = some("goals", goals);
    tools = some("tools", tools);
    people = some("people", people);
    lengths = some("lengths", lengths);
    long size = (long) goals.size() * tools.size() * people.size() * lengths.size();
    if (size > MOST) {
      throw new InvalidValueException("grid", size + " briefs", "at most " + MOST + "; narrow it");
    }
  }

  private static <T> List<T> some(String field, List<T> values) {
    if (values.isEmpty()) {
      throw new InvalidValueException(field, "empty", "name at least one");
    }
    return List.copyOf(values);
  }

  /** What a facilitator meets: every goal, every mode with the usual tools and the barest. */
  public static Grid usual(Catalog catalog) {
    List<ToolSet> tools = new ArrayList<>();
    for (Mode mode : Mode.values()) {
      tools.add(ToolSet.usual(mode));
    }
    for (Mode mode : Mode.values()) {
      ToolSet.barest(mode, catalog).ifPresent(tools::add);
    }
    return new Grid(List.copyOf(catalog.goals().keySet()), tools, PEOPLE, LENGTHS);
  }

  /** With these goals. */
  public Grid withGoals(List<String> values) {
    return new Grid(values, tools, people, lengths);
  }

  /** With these sets of tools. */
  public Grid withTools(List<ToolSet> values) {
    return new Grid(goals, values, people, lengths);
  }

  /** With these numbers of people. */
  public Grid withPeople(List<Integer> values) {
    return new Grid(goals, tools, values, lengths);
  }

  /** With these lengths. */
  public Grid withLengths(List<Duration> values) {
    return new Grid(goals, tools, people, values);
  }

  /** How many briefs. */
  public int size() {
    return goals.size() * tools.size() * people.size() * lengths.size();
  }

  /** All briefs: by tools, then goal, people and length. */
  List<Cell> cells() {
    List<Cell> cells = new ArrayList<>(size());
    for (ToolSet set : tools) {
      for (String goal : goals) {
        for (int count : people) {
          for (Duration length : lengths) {
            cells.add(new Cell(goal, set, count, length));
          }
        }
      }
    }
    return cells;
  }
}
