package org.arcwright.format;

import java.util.List;
import java.util.stream.Collectors;

/** Files that cannot be read as what they should be, with every problem found in them. */
public final class FormatException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<Problem> problems;

  /**
   * @param problems at least one, in the order of places
   */
  public FormatException(List<Problem> problems) {
    super(problems.stream().map(Problem::text).collect(Collectors.joining("\n")));
    this.problems = List.copyOf(problems);
  }

  /** The problems, in the order of places. */
  public List<Problem> problems() {
    return problems;
  }
}
