package org.arcwright.cli;

import java.text.Normalizer;
import java.util.Locale;

/** Ids made of titles. */
final class Ids {
  private static final int MOST = 80;

  private Ids() {}

  /** The title in lower-case letters, digits and hyphens; empty if none are left, or too many. */
  static String of(String title) {
    String id =
        Normalizer.normalize(title.replace("ß", "ss"), Normalizer.Form.NFD)
            .replaceAll("\\p{M}+", "")
            .toLowerCase(Locale.ROOT)
            .replaceAll("['\u2019]", "")
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^-|-$", "");
    return id.length() > MOST ? "" : id;
  }
}
