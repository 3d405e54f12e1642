package org.arcwright.cli.document;

/** How text may look. Nothing is said by looks alone. */
public enum Style {
  /** Letters only. */
  PLAIN,
  /** Headings bold and side notes faint, by ANSI escapes (ECMA-48, SGR 1 and 2). */
  ANSI;

  String heading(String text) {
    return this == PLAIN ? text : "\u001b[1m" + text + "\u001b[0m";
  }

  String faint(String text) {
    return this == PLAIN ? text : "\u001b[2m" + text + "\u001b[0m";
  }
}
