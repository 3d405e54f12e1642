package org.arcwright.cli;

import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;

/** A tab of the browser, in which one page is open at a time. */
final class Tab {
  private final Browser browser;
  private final String session;

  Tab(Browser browser, String session) {
    this.browser = browser;
    this.session = session;
    for (String domain : List.of("Page", "Network", "Runtime", "Log")) {
      ask(domain + ".enable", Map.of());
    }
  }

  private JsonNode ask(String method, Map<String, ?> values) {
    return browser.ask(session, method, values);
  }

  /** Opens a file and waits until all of it is there. */
  void open(Path page) {
    browser.forget();
    ask("Page.navigate", Map.of("url", page.toUri().toString()));
    browser.await(session, "Page.loadEventFired");
  }

  /** Opens the same page again. */
  void reload() {
    browser.forget();
    ask("Page.reload", Map.of());
    browser.await(session, "Page.loadEventFired");
  }

  /** Runs a script in every page before its own scripts. */
  void before(String script) {
    ask("Page.addScriptToEvaluateOnNewDocument", Map.of("source", script));
  }

  /** What an expression comes to, as a text; a promise is waited for. */
  String text(String expression) {
    JsonNode answer =
        ask(
            "Runtime.evaluate",
            Map.of("expression", expression, "awaitPromise", true, "returnByValue", true));
    if (answer.has("exceptionDetails")) {
      throw new IllegalStateException(answer.get("exceptionDetails").toString());
    }
    return answer.at("/result/value").asString("");
  }

  /** How wide and high the window is. */
  void size(int width, int height) {
    ask(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
  }

  /** Shows the page as {@code screen} or {@code print}, in {@code light} or {@code dark}. */
  void look(String medium, String scheme) {
    ask(
        "Emulation.setEmulatedMedia",
        Map.of(
            "media",
            medium,
            "features",
            List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
  }

  /** The page as it is printed. */
  byte[] pdf(double inchesWide, double inchesHigh) {
    JsonNode answer =
        ask(
            "Page.printToPDF",
            Map.of("paperWidth", inchesWide, "paperHeight", inchesHigh, "printBackground", true));
    return Base64.getDecoder().decode(answer.path("data").asString());
  }

  /** The addresses of all that was asked for since the page was opened. */
  List<String> requests() {
    return browser.events(session, "Network.requestWillBeSent").stream()
        .map(event -> event.at("/request/url").asString())
        .toList();
  }

  /** What went wrong in the page since it was opened. */
  List<String> complaints() {
    List<JsonNode> thrown = browser.events(session, "Runtime.exceptionThrown");
    List<JsonNode> logged = browser.events(session, "Log.entryAdded");
    return Stream.concat(thrown.stream(), logged.stream()).map(JsonNode::toString).toList();
  }
}
