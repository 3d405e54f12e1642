package org.arcwright.cli;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.arcwright.format.FormatException;
import org.arcwright.format.Place;
import org.arcwright.format.Problem;

/**
 * Rows of cells as comma-separated values (RFC 4180) that spreadsheets neither garble nor run: a
 * byte order mark says that the text is UTF-8, and a cell that a spreadsheet would take for a
 * formula begins with an apostrophe (OWASP, "CSV Injection"), which is taken off when it is read.
 */
final class Csv {
  private static final char BYTE_ORDER_MARK = '\uFEFF';

  /** What a formula may begin with. */
  private static final String FORMULA = "=+-@\t\r\n";

  private Csv() {}

  /** The rows as one text. */
  static String write(List<List<String>> rows) {
    StringBuilder text = new StringBuilder().append(BYTE_ORDER_MARK);
    try {
      for (List<String> row : rows) {
        CSVFormat.RFC4180.printRecord(text, row.stream().map(Csv::harmless).toArray());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  /**
   * Reads rows. Semicolons and tabs, which spreadsheets write in some countries, part the cells if
   * the first line has more of them than commas.
   *
   * @param name where the text comes from, for messages
   * @throws FormatException if a quote is out of place
   */
  static List<List<String>> read(String name, String text) {
    String plain = text.indexOf(BYTE_ORDER_MARK) == 0 ? text.substring(1) : text;
    CSVFormat format =
        CSVFormat.RFC4180.builder().setDelimiter(delimiter(plain)).setIgnoreEmptyLines(false).get();
    List<List<String>> rows = new ArrayList<>();
    try (CSVParser parser = CSVParser.parse(new StringReader(plain), format)) {
      for (CSVRecord row : parser) {
        rows.add(row.stream().map(Csv::asMeant).toList());
      }
    } catch (IOException | UncheckedIOException e) {
      throw new FormatException(
          List.of(
              new Problem(
                  new Place(name, rows.size() + 1, 1),
                  "quote out of place",
                  "",
                  "put the whole cell in double quotes, and write those within it twice")));
    }
    return rows;
  }

  private static char delimiter(String text) {
    String first = text.lines().findFirst().orElse("");
    return Stream.of(',', ';', '\t')
        .max(Comparator.comparingLong(sign -> first.chars().filter(c -> c == sign).count()))
        .orElse(',');
  }

  private static String harmless(String cell) {
    return startsAsFormula(cell) ? "'" + cell : cell;
  }

  private static String asMeant(String cell) {
    return cell.startsWith("'") && startsAsFormula(cell) ? cell.substring(1) : cell;
  }

  /** Whether a formula's sign comes first, or right behind apostrophes. */
  private static boolean startsAsFormula(String cell) {
    int at = 0;
    while (at < cell.length() && cell.charAt(at) == '\'') {
      at++;
    }
    return at < cell.length() && FORMULA.indexOf(cell.charAt(at)) >= 0;
  }
}
