package org.arcwright.cli.handout;

import static java.nio.charset.StandardCharsets.UTF_8;

/**
 * Lines of at most 75 octets, as RFC 5545 (3.1) wants them: the calendar library folds by
 * characters, which makes lines in most scripts too long.
 */
final class Folding {
  private static final int OCTETS = 75;

  private Folding() {}

  /** The calendar folded anew, never inside a character. */
  static String anew(String calendar) {
    StringBuilder folded = new StringBuilder();
    for (String line : calendar.replace("\r\n ", "").split("\r\n", -1)) {
      int octets = 0;
      for (int i = 0; i < line.length(); i += Character.charCount(line.codePointAt(i))) {
        String character = Character.toString(line.codePointAt(i));
        int more = character.getBytes(UTF_8).length;
        if (octets + more > OCTETS) {
          folded.append("\r\n ");
          octets = 1;
        }
        folded.append(character);
        octets += more;
      }
      folded.append("\r\n");
    }
    folded.setLength(folded.length() - 2);
    return folded.toString();
  }
}
