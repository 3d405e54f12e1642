package org.arcwright.catalog;

import java.util.Set;

/**
 * Something an exercise leans on: a function of the online meeting, or a thing in the room.
 *
 * @param id such as {@code breakouts}
 * @param title in words, such as "breakout rooms"
 * @param meaning what it is for, in one line
 * @param modes where it is usual: a brief that names no tools has those of its mode
 */
public record Tool(String id, String title, String meaning, Set<Mode> modes) {
  /** Refuses a malformed id and blank texts. */
  public Tool {
    Checks.id("id", id);
    title = Checks.text("title", title, 60);
    meaning = Checks.text("meaning", meaning, 200);
    modes = Set.copyOf(modes);
  }
}
