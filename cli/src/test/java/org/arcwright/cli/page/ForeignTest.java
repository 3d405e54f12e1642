package org.arcwright.cli.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.arcwright.cli.page.Block.Cell;
import org.arcwright.cli.page.Block.Table;
import org.arcwright.cli.words.Language;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is in another language than the page says so. */
class ForeignTest {
  private static final Foreign ENGLISH =
      new Foreign(
          "en", List.of("Map of where we are", "Map of where we are now", "board", "paper"));

  /** English pieces in square brackets. */
  private static String marked(String text) {
    return ENGLISH.pieces(text).stream()
        .map(piece -> piece.tag().isEmpty() ? piece.text() : "[" + piece.text() + "]")
        .collect(Collectors.joining());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Map of where we are | [Map of where we are]",
        "1. Map of where we are | 1. [Map of where we are]",
        "„Map of where we are now“ und Map of where we are. | „[Map of where we are now]“ und [Map of"
            + " where we are].",
        "Map of where we aren | Map of where we aren",
        "XMap of where we are | XMap of where we are",
        "board | [board]",
        "Wir schreiben auf das board. | Wir schreiben auf das board.",
        "kurz | kurz"
      })
  void a_text_is_cut_where_the_language_changes(String text, String pieces) {
    assertThat(marked(text)).isEqualTo(pieces);
  }

  @Test
  void an_empty_text_is_one_piece() {
    assertThat(ENGLISH.pieces("")).hasSize(1);
    assertThat(Foreign.NONE.pieces("Map of where we are").get(0).tag()).isEmpty();
  }

  @Test
  void the_page_tells_those_who_hear_it() {
    Table table =
        new Table(
            "Ablauf",
            List.of("Zeit", "Was"),
            List.of(List.of(Cell.of("09:00"), Cell.of("1. Map of where we are", "<b>board</b>"))));
    Sheet sheet = new Sheet("Ideen", "Ablauf", List.of(), List.of(table));
    Language german = Language.of("de").orElseThrow();

    Document page = Jsoup.parse(new Pages(german, Look.OURS, ENGLISH).html(sheet));

    assertThat(page.select("html").attr("lang")).isEqualTo("de");
    assertThat(page.select("main > .wide span[lang=en]").eachText())
        .containsExactly("Map of where we are");
    assertThat(page.select("td .more").first().text()).isEqualTo("<b>board</b>");
    assertThat(Markdown.of(sheet)).contains("1. Map of where we are");
  }
}
