package org.arcwright.format.tree;

import java.io.IOException;
import java.io.Reader;

/**
 * Reads a text and never ends a piece between the two halves of a character outside the basic
 * plane: snakeyaml-engine 3 asks its reader for the missing half at a place beyond its buffer and
 * fails.
 */
final class WholeCharacters extends Reader {
  private final String text;
  private int next;

  WholeCharacters(String text) {
    this.text = text;
  }

  @Override
  public int read(char[] buffer, int offset, int length) throws IOException {
    if (next == text.length()) {
      return -1;
    }
    int end = Math.min(text.length(), next + length);
    if (end - next > 1 && Character.isHighSurrogate(text.charAt(end - 1))) {
      end--;
    }
    text.getChars(next, end, buffer, offset);
    int count = end - next;
    next = end;
    return count;
  }

  @Override
  public void close() {
    // Nothing is open.
  }
}
