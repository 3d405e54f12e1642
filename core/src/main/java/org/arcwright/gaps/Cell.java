package org.arcwright.gaps;

import java.time.Duration;
import org.arcwright.brief.Brief;

/**
 * One brief of a grid, all else as is usual.
 *
 * @param goal id of a goal
 * @param tools where people are, and what is at hand
 * @param people how many
 * @param length from the start to the end, breaks and buffer included
 */
public record Cell(String goal, ToolSet tools, int people, Duration length) {
  /** The brief. */
  Brief brief() {
    return Brief.builder("Any", goal, tools.mode(), people, length).tools(tools.tools()).build();
  }
}
