package org.arcwright.cli.page;

import java.util.Map;

/**
 * What a firm puts over our own look.
 *
 * @param templates its own templates by the name of the one whose place each takes
 * @param css rules that come after ours
 */
public record Look(Map<String, String> templates, String css) {
  /** Ours alone. */
  public static final Look OURS = new Look(Map.of(), "");

  /** Copies the map. */
  public Look {
    templates = Map.copyOf(templates);
  }
}
