package org.arcwright.format.tree;

/**
 * Something wrong in a file.
 *
 * @param line from 1; 0 for the file as a whole
 * @param column from 1; 0 for the file as a whole
 * @param what is wrong
 * @param value as it stands there, on one line; empty if there is none
 * @param remedy what would be right
 */
public record Fault(int line, int column, String what, String value, String remedy) {
  private static final int LONGEST = 60;

  /** Shortens the value to one line. */
  public Fault {
    String oneLine = value.replaceAll("[\\p{Cntrl}\\p{Zl}\\p{Zp}\\s]+", " ").strip();
    value = oneLine.length() <= LONGEST ? oneLine : oneLine.substring(0, LONGEST - 3) + "...";
  }
}
