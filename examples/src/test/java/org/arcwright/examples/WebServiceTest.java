package org.arcwright.examples;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.Composition.NothingFits;
import org.arcwright.format.BriefFormat;
import org.arcwright.format.CompositionFormat;
import org.arcwright.format.Problem;
import org.arcwright.format.ProblemsFormat;
import org.arcwright.library.BuiltIn;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The web service as its clients see it. */
class WebServiceTest {
  private static final String PATH = "/compositions";
  private static final String TOO_SHORT =
      """
      title: In a hurry
      goal: choose-a-direction
      people: 9
      mode: remote
      cap: 15m
      """;

  private static WebService service;

  @BeforeAll
  static void start() throws IOException {
    service = WebService.start(BuiltIn.catalog(), 0);
  }

  @AfterAll
  static void stop() {
    service.close();
  }

  static Iterable<Path> briefs() {
    return Repository.briefs();
  }

  @ParameterizedTest
  @MethodSource("briefs")
  void answers_a_brief_in_yaml_or_json(Path file) throws Exception {
    HttpResponse<String> yaml = post("text/yaml", Files.readString(file));
    HttpResponse<String> json =
        post("application/json", BriefFormat.writeJson(BriefFormat.read(file)));

    assertThat(yaml.statusCode()).isEqualTo(200);
    assertThat(yaml.headers().firstValue("Content-Type"))
        .contains("application/json; charset=utf-8");
    assertThat(CompositionFormat.read("answer.json", yaml.body())).isInstanceOf(Composed.class);
    assertThat(json.body()).isEqualTo(yaml.body());
  }

  @Test
  void that_nothing_fits_is_an_answer() throws Exception {
    HttpResponse<String> answer = post("text/yaml", TOO_SHORT);

    assertThat(answer.statusCode()).isEqualTo(200);
    assertThat(CompositionFormat.read("answer.json", answer.body()))
        .isInstanceOf(NothingFits.class);
  }

  @Test
  void says_what_is_wrong_and_where() throws Exception {
    HttpResponse<String> answer =
        post("text/yaml", TOO_SHORT.replace("15m", "3 hrs").replace("goal: ", "goal: x"));

    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(ProblemsFormat.read("answer.json", answer.body()))
        .extracting(Problem::text)
        .anyMatch(text -> text.startsWith("brief.yaml:2:7: "))
        .anyMatch(text -> text.startsWith("brief.yaml:5:6: cap, 3 hrs: "));
    assertThat(post("application/json", "{").statusCode()).isEqualTo(400);
    assertThat(post("text/yaml", "").statusCode()).isEqualTo(400);
  }

  @Test
  void refuses_times_that_cannot_be_planned() throws Exception {
    HttpResponse<String> answer =
        post("text/yaml", TOO_SHORT.replace("cap: 15m", "cap: 40h\nrhythm: {break: 7m}"));

    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(ProblemsFormat.read("answer.json", answer.body())).isNotEmpty();
  }

  @Test
  void refuses_what_is_no_post() throws Exception {
    HttpResponse<String> got = send(HttpRequest.newBuilder(uri(PATH)).GET().build());
    HttpResponse<String> head =
        send(HttpRequest.newBuilder(uri(PATH)).method("HEAD", BodyPublishers.noBody()).build());

    assertRefused(got, 405, "request: method, GET: POST a brief");
    assertThat(got.headers().firstValue("Allow")).contains("POST");
    assertThat(head.statusCode()).isEqualTo(405);
    assertThat(head.body()).isEmpty();
  }

  /** Beyond 64 KiB of unread body the JDK's server may cut the line before its answer is read. */
  @Test
  void refuses_what_is_too_long() throws Exception {
    assertRefused(
        post("text/yaml", "#".repeat(120_000)),
        413,
        "request: body, over 100000 octets: 100000 octets at most are right");
  }

  @Test
  void refuses_other_paths() throws Exception {
    for (String path : List.of("/", "/compositions/1", "/agenda")) {
      HttpResponse<String> answer = send(HttpRequest.newBuilder(uri(path)).GET().build());

      assertRefused(answer, 404, "request: path, %s: briefs go to /compositions".formatted(path));
    }
  }

  @Test
  void refuses_what_is_no_utf8() throws Exception {
    BodyPublisher latin = BodyPublishers.ofString("title: Für alle", ISO_8859_1);

    assertRefused(
        send(HttpRequest.newBuilder(uri(PATH)).POST(latin).build()),
        400,
        "request: body: write it in UTF-8");
  }

  private static void assertRefused(HttpResponse<String> answer, int status, String problem) {
    assertThat(answer.statusCode()).isEqualTo(status);
    assertThat(ProblemsFormat.read("answer.json", answer.body()))
        .extracting(Problem::text)
        .containsExactly(problem);
  }

  private static HttpResponse<String> post(String type, String body) throws Exception {
    return send(
        HttpRequest.newBuilder(uri(PATH))
            .header("Content-Type", type)
            .POST(BodyPublishers.ofString(body))
            .build());
  }

  private static HttpResponse<String> send(HttpRequest request) throws Exception {
    return HttpClient.newHttpClient().send(request, BodyHandlers.ofString());
  }

  private static URI uri(String path) {
    return URI.create("http://localhost:" + service.port() + path);
  }
}
