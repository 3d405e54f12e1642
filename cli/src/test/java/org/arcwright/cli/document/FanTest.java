package org.arcwright.cli.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.time.Duration;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.arcwright.agenda.Agenda;
import org.arcwright.catalog.Catalog;
import org.arcwright.forecast.Forecast;
import org.arcwright.forecast.Forecaster;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class FanTest {
  /** No catalog knows these exercises, so each takes a rule of thumb around its plan. */
  private static final Forecast FORECAST =
      Forecaster.of(Catalog.of(List.of(), List.of(), List.of(), List.of()))
          .forecast(Samples.agenda());

  @Test
  void it_opens_from_the_late_start_to_the_end() {
    Fan fan = Fan.of(FORECAST);

    assertThat(fan.points()).hasSize(10);
    assertThat(fan.points().get(0).late()).containsExactly(0, 0, 5, 5, 10);
    assertThat(fan.slack()).isEqualTo(10);
    assertThat(fan.at(0)).containsExactly(0, 0, 5, 5, 10);
    int end = (int) Samples.agenda().end().toMinutes();
    for (int percent : new int[] {5, 20, 50, 80, 95}) {
      Duration late = FORECAST.end(percent).minusMinutes(end);
      assertThat(fan.at(end)).contains((double) late.toMinutes());
    }
  }

  @Test
  void between_two_points_it_runs_straight() {
    Fan fan = Fan.of(FORECAST);
    Fan.Point from = fan.points().get(0);
    Fan.Point to = fan.points().get(1);

    assertThat(fan.at(5)[4]).isEqualTo((from.late().get(4) + to.late().get(4)) / 2.0);
  }

  @Test
  void the_strip_is_no_wider_than_the_page_and_names_its_bands() {
    for (Marks marks : List.of(Marks.UNICODE, Marks.ASCII)) {
      List<String> lines = FanStrip.draw(FORECAST, marks, 70);

      assertThat(lines).allMatch(line -> line.length() <= 70);
      assertThat(lines).anyMatch(line -> line.startsWith("  on plan"));
      assertThat(String.join("\n", lines)).contains("3 days of 5", "9 days of 10", "kept free");
    }
    assertThat(String.join("", FanStrip.draw(FORECAST, Marks.ASCII, 70))).isASCII();
  }

  @Test
  void the_drawing_is_well_formed_and_says_in_words_what_it_shows() throws Exception {
    Document svg = parse(FanDrawing.svg(FORECAST));

    assertThat(svg.getDocumentElement().getAttribute("role")).isEqualTo("img");
    assertThat(text(svg, "title")).isEqualTo("A sample: when it will really end");
    assertThat(text(svg, "desc")).contains("The chance to be done by 1:20 is", "with 95 %.");
  }

  /** Contrasts after WCAG 2.2; what is drawn in grey alone carries a black edge beside it. */
  @Test
  void the_drawing_needs_no_colour() throws Exception {
    NodeList all = parse(FanDrawing.svg(FORECAST)).getElementsByTagName("*");
    for (int i = 0; i < all.getLength(); i++) {
      for (String attribute : List.of("fill", "stroke")) {
        String colour =
            all.item(i).getAttributes().getNamedItem(attribute) == null
                ? ""
                : all.item(i).getAttributes().getNamedItem(attribute).getNodeValue();
        assertThat(colour).matches("|none|#([0-9a-f]{1,2})\\1\\1");
      }
    }
  }

  @Test
  void whatever_a_title_holds_is_text_in_the_drawing() throws Exception {
    Agenda plain = Samples.agenda();
    Agenda agenda =
        new Agenda(
            "Us & <them>",
            plain.goal(),
            plain.mode(),
            plain.people(),
            plain.cap(),
            plain.start(),
            plain.phases(),
            plain.items(),
            plain.buffer(),
            plain.curve(),
            plain.figures());
    Catalog none = Catalog.of(List.of(), List.of(), List.of(), List.of());

    Document svg = parse(FanDrawing.svg(Forecaster.of(none).forecast(agenda)));

    assertThat(text(svg, "title")).startsWith("Us & <them>");
  }

  private static Document parse(String svg) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(svg)));
  }

  private static String text(Document svg, String tag) {
    return svg.getElementsByTagName(tag).item(0).getTextContent();
  }
}
