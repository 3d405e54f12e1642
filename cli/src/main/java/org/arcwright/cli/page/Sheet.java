package org.arcwright.cli.page;

import java.util.List;

/**
 * What is handed out, whatever it becomes: a page in HTML, a text in Markdown.
 *
 * @param title what it is, such as the agenda's title
 * @param kicker what kind of sheet it is, above the title; may be empty
 * @param facts what stands below the title, in one line
 * @param blocks all the rest
 */
public record Sheet(String title, String kicker, List<String> facts, List<Block> blocks) {
  /** Copies the lists. */
  public Sheet {
    facts = List.copyOf(facts);
    blocks = List.copyOf(blocks);
  }
}
