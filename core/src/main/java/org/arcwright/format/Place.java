package org.arcwright.format;

/**
 * A place in a file.
 *
 * @param file its name, as it was given
 * @param line from 1; 0 for the file as a whole
 * @param column from 1; 0 for the file as a whole
 */
public record Place(String file, int line, int column) {
  @Override
  public String toString() {
    return line == 0 ? file : file + ":" + line + ":" + column;
  }
}
