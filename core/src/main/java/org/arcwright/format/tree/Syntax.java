package org.arcwright.format.tree;

import java.util.Locale;

/** How a file is written. */
public enum Syntax {
  /** YAML 1.2, one document. */
  YAML,
  /** JSON (RFC 8259). */
  JSON;

  /** The syntax that the file's name says; without such a name, JSON if the text starts so. */
  public static Syntax of(String name, String text) {
    String lower = name.toLowerCase(Locale.ROOT);
    if (lower.endsWith(".json")) {
      return JSON;
    }
    if (lower.endsWith(".yaml") || lower.endsWith(".yml")) {
      return YAML;
    }
    return text.stripLeading().startsWith("{") ? JSON : YAML;
  }
}
