package org.arcwright.cli.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.arcwright.cli.page.Block.Part;
import org.arcwright.cli.page.Block.Point;
import org.arcwright.cli.page.Block.Points;
import org.arcwright.cli.page.Block.Text;
import org.arcwright.cli.words.Language;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;

class PagesTest {
  private static final String HOSTILE =
      "<script>alert(1)</script> \"&amp; {{x}} ${1+1} \u202Eoverride \uD83D\uDE80 ../../etc";

  private static Sheet sheet(String text) {
    return new Sheet(text, "", List.of(text), List.of(Part.of("a", text, new Text(text))));
  }

  private static Document page(Look look, String text) {
    return Jsoup.parse(new Pages(Language.ENGLISH, look).html(sheet(text)));
  }

  @Test
  void a_text_is_shown_as_it_stands_whatever_it_holds() {
    Document page = page(Look.OURS, HOSTILE);

    assertThat(page.select("script")).isEmpty();
    assertThat(page.select("main p").text()).isEqualTo(HOSTILE.replace("  ", " "));
  }

  @Test
  void the_browser_may_load_and_run_nothing() {
    String policy = page(Look.OURS, "x").select("meta[http-equiv]").attr("content");

    assertThat(policy)
        .startsWith("default-src 'none'; style-src 'sha256-")
        .doesNotContain("script");
  }

  /** HTML Living Standard, the bdi element: it sets its text apart from the direction around it. */
  @Test
  void a_label_in_another_direction_turns_nothing_that_stands_beside_it() {
    Points points =
        new Points(List.of(Point.of("\u05e9\u05dc\u05d5\u05dd", "9 (Mara)"), Point.of("x")));
    Sheet sheet = new Sheet("T", "", List.of(), List.of(points));

    Document page = Jsoup.parse(new Pages(Language.ENGLISH, Look.OURS).html(sheet));

    assertThat(page.select("li").eachAttr("dir")).containsOnly("auto");
    assertThat(page.select("li strong bdi").eachText()).containsExactly("\u05e9\u05dc\u05d5\u05dd");
  }

  @Test
  void own_rules_come_last_and_cannot_end_their_element() {
    Document page = page(new Look(Map.of(), "h1 {}</style><script>x</script>"), "x");

    assertThat(page.select("style")).hasSize(2);
    assertThat(page.select("script")).isEmpty();
  }

  @Test
  void an_own_template_takes_the_place_of_ours() {
    Look look = new Look(Map.of("sheet.ftlh", "<p>${sheet.title}</p>"), "");

    assertThat(page(look, "<b>").body().html()).isEqualTo("<p>&lt;b&gt;</p>");
  }

  @Test
  void a_fault_in_an_own_template_is_told_with_its_place() {
    Look broken = new Look(Map.of("sheet.ftlh", "<p>\n${sheet.titel}"), "");
    Look unread = new Look(Map.of("blocks.ftlh", "<#macro all"), "");

    assertThatThrownBy(() -> page(broken, "x"))
        .isInstanceOf(TemplateFault.class)
        .hasMessageStartingWith("sheet.ftlh:2:3: ")
        .hasMessageEndingWith(" sheet.titel");
    assertThatThrownBy(() -> page(unread, "x"))
        .isInstanceOf(TemplateFault.class)
        .hasMessageStartingWith("blocks.ftlh:1:");
  }

  @Test
  void an_own_template_may_not_reach_into_the_program() {
    Look look =
        new Look(Map.of("sheet.ftlh", "${'freemarker.template.utility.Execute'?new()}"), "");

    assertThatThrownBy(() -> page(look, "x")).isInstanceOf(TemplateFault.class);
  }

  @Test
  void in_markdown_nothing_of_a_text_is_markup() {
    assertThat(Markdown.of(sheet("*a* [b](c) <i> `d`")))
        .contains("\\*a\\* \\[b\\](c) \\<i\\> \\`d\\`");
  }
}
