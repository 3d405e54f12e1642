package org.arcwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.arcwright.format.FormatException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CsvTest {
  /** The examples of RFC 4180, section 2, rules 1 to 7. */
  @Test
  void reads_what_the_standard_shows() {
    assertThat(
            Csv.read(
                "t.csv",
                """
                field_name,field_name,field_name
                aaa,bbb,ccc
                "aaa","bbb","ccc"
                "aaa","b
                bb","ccc"
                "aaa","b""bb","ccc"
                zzz,yyy,xxx"""
                    .replace("\n", "\r\n")))
        .containsExactly(
            List.of("field_name", "field_name", "field_name"),
            List.of("aaa", "bbb", "ccc"),
            List.of("aaa", "bbb", "ccc"),
            List.of("aaa", "b\r\nbb", "ccc"),
            List.of("aaa", "b\"bb", "ccc"),
            List.of("zzz", "yyy", "xxx"));
  }

  @Test
  void writes_what_the_standard_shows() {
    assertThat(Csv.write(List.of(List.of("aaa", "b\"bb", "c,c"), List.of("b\nb", "", "z"))))
        .isEqualTo("\uFEFFaaa,\"b\"\"bb\",\"c,c\"\r\n\"b\nb\",,z\r\n");
  }

  /** The signs that OWASP names in "CSV Injection". */
  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "\n=1"})
  void a_cell_that_a_spreadsheet_would_run_begins_with_an_apostrophe(String cell) {
    List<List<String>> rows = List.of(List.of("a", cell));

    assertThat(Csv.write(rows)).contains("'" + cell).doesNotContain("," + cell, "\"" + cell);
    assertThat(Csv.read("t.csv", Csv.write(rows))).isEqualTo(rows);
  }

  @Test
  void an_apostrophe_of_ones_own_stays() {
    List<List<String>> rows =
        List.of(
            List.of("=1", "'=1", "''=1", "'", "''", "'tis", "it's", "", "a=1", "'-"),
            List.of(
                "\u00A7",
                "\u2014 -",
                "\uD83D\uDE00",
                "a;b",
                "\"",
                "\"\"",
                ",",
                "#",
                " x ",
                "a\tb"));

    assertThat(Csv.read("t.csv", Csv.write(rows))).isEqualTo(rows);
  }

  @ParameterizedTest
  @ValueSource(strings = {",", ";", "\t"})
  void spreadsheets_part_cells_in_their_countrys_way(String sign) {
    assertThat(Csv.read("t.csv", ("id,title\r\na,\"b" + sign + "\"\r\n").replace(",", sign)))
        .containsExactly(List.of("id", "title"), List.of("a", "b" + sign));
  }

  @Test
  void a_quote_out_of_place_is_told_with_its_row() {
    assertThatThrownBy(() -> Csv.read("t.csv", "id,title\na,b\nc,\"d\" e\n"))
        .isInstanceOf(FormatException.class)
        .hasMessageStartingWith("t.csv:3:1: quote out of place:");
    assertThatThrownBy(() -> Csv.read("t.csv", "id,title\na,\"b\n"))
        .isInstanceOf(FormatException.class)
        .hasMessageStartingWith("t.csv:2:1: quote out of place:");
  }
}
