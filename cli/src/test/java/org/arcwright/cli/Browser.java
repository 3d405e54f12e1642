package org.arcwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.concurrent.TimeUnit.SECONDS;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * Chromium without a window, told what to do by its own protocol over a pipe: JSON messages, each
 * ended by a zero octet (Chrome DevTools Protocol). No driver and no port are needed for that. For
 * one thread.
 */
final class Browser implements AutoCloseable {
  private static final JsonMapper JSON = new JsonMapper();
  private static final Duration PATIENCE = Duration.ofSeconds(60);
  private static final List<String> NAMES =
      List.of("chromium", "chromium-browser", "google-chrome");

  private final Process process;
  private final Path profile;
  private final OutputStream to;
  private final BlockingQueue<JsonNode> heard = new LinkedBlockingQueue<>();
  private final List<JsonNode> events = new ArrayList<>();
  private String tab = "";
  private int asked;

  private Browser(Process process, Path profile) {
    this.process = process;
    this.profile = profile;
    this.to = process.getOutputStream();
    Thread reader = new Thread(this::listen, "browser");
    reader.setDaemon(true);
    reader.start();
  }

  /** Where it is installed, if it is. */
  static Optional<Path> installed() {
    String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
    return Stream.of(path.split(File.pathSeparator))
        .flatMap(folder -> NAMES.stream().map(name -> Path.of(folder, name)))
        .filter(Files::isExecutable)
        .findFirst();
  }

  /** Starts it with a profile of its own, which is thrown away at the end. */
  static Browser start(Path program) throws IOException {
    Path profile = Files.createTempDirectory("browser");
    String command =
        "exec \"$0\" --headless --no-sandbox --disable-gpu --no-first-run --disable-extensions"
            + " --user-data-dir=\"$1\" --remote-debugging-pipe 3<&0 4>&1 >/dev/null 2>&1";
    return new Browser(
        new ProcessBuilder("sh", "-c", command, program.toString(), profile.toString()).start(),
        profile);
  }

  /** An empty tab; the one before is closed. */
  Tab tab() {
    if (!tab.isEmpty()) {
      ask("", "Target.closeTarget", Map.of("targetId", tab));
    }
    tab = ask("", "Target.createTarget", Map.of("url", "about:blank")).at("/targetId").asString();
    String session =
        ask("", "Target.attachToTarget", Map.of("targetId", tab, "flatten", true))
            .at("/sessionId")
            .asString();
    return new Tab(this, session);
  }

  /** Sends a message and waits for its answer. */
  JsonNode ask(String session, String method, Map<String, ?> values) {
    ObjectNode message = JSON.createObjectNode();
    message.put("id", ++asked);
    message.put("method", method);
    message.set("params", JSON.valueToTree(values));
    if (!session.isEmpty()) {
      message.put("sessionId", session);
    }
    try {
      to.write(JSON.writeValueAsBytes(message));
      to.write(0);
      to.flush();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    for (; ; ) {
      JsonNode answer = next(method);
      if (answer.path("id").asInt(0) == asked) {
        if (answer.has("error")) {
          throw new IllegalStateException(method + ": " + answer.get("error"));
        }
        return answer.path("result");
      }
    }
  }

  /** Waits for an event, unless it has come already. */
  void await(String session, String method) {
    while (events.stream().noneMatch(event -> is(event, session, method))) {
      next(method);
    }
  }

  /** What has been told so far. */
  List<JsonNode> events(String session, String method) {
    return events.stream()
        .filter(event -> is(event, session, method))
        .map(event -> event.path("params"))
        .toList();
  }

  /** Forgets what has been told. */
  void forget() {
    events.clear();
  }

  private static boolean is(JsonNode event, String session, String method) {
    return event.path("method").asString("").equals(method)
        && event.path("sessionId").asString("").equals(session);
  }

  private JsonNode next(String awaited) {
    try {
      JsonNode message = heard.poll(PATIENCE.toSeconds(), SECONDS);
      if (message == null) {
        throw new IllegalStateException("the browser does not answer " + awaited);
      }
      if (message.has("method")) {
        events.add(message);
      }
      return message;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    }
  }

  private void listen() {
    try (InputStream from = new BufferedInputStream(process.getInputStream())) {
      ByteArrayOutputStream text = new ByteArrayOutputStream();
      for (int octet = from.read(); octet >= 0; octet = from.read()) {
        if (octet == 0) {
          heard.add(JSON.readTree(text.toString(UTF_8)));
          text.reset();
        } else {
          text.write(octet);
        }
      }
    } catch (IOException e) {
      // It has been ended; whoever waits for an answer is told so in time.
    }
  }

  @Override
  public void close() {
    List<ProcessHandle> all = process.descendants().toList();
    process.destroy();
    all.forEach(ProcessHandle::destroy);
    all.forEach(child -> child.onExit().join());
    process.onExit().join();
    try (Stream<Path> files = Files.walk(profile)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(file);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
