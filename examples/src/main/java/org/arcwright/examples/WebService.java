package org.arcwright.examples;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.compose.Budget;
import org.arcwright.compose.CachingComposer;
import org.arcwright.compose.Composer;
import org.arcwright.format.BriefFormat;
import org.arcwright.format.CompositionFormat;
import org.arcwright.format.FormatException;
import org.arcwright.format.Place;
import org.arcwright.format.Problem;
import org.arcwright.format.ProblemsFormat;
import org.arcwright.library.BuiltIn;

/**
 * A small web service: a brief in YAML or JSON is posted to {@code /compositions}, and the answer
 * comes back as JSON. That nothing fits is an answer, too; what is wrong with a brief is a 400 with
 * each problem and its place. Every refusal is JSON of the same form.
 *
 * <pre>
 * curl --data-binary @brief.yaml http://localhost:8080/compositions
 * curl --json @brief.json http://localhost:8080/compositions
 * </pre>
 */
public final class WebService implements AutoCloseable {
  private static final String PATH = "/compositions";
  private static final int MOST_OCTETS = 100_000;
  private static final Budget BUDGET = Budget.of(Duration.ofSeconds(2));

  /** As {@link HttpExchange#sendResponseHeaders} wants it said. */
  private static final int NO_BODY = -1;

  /** The weight of remembered answers: some hundreds of briefs. */
  private static final long REMEMBERED = 50_000;

  private final Catalog catalog;
  private final CachingComposer composer;
  private final HttpServer server;
  private final ExecutorService threads;

  private WebService(Catalog catalog, HttpServer server) {
    this.catalog = catalog;
    this.composer = CachingComposer.of(Composer.of(catalog), REMEMBERED);
    this.server = server;
    this.threads = Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
  }

  /** Starts to serve this machine alone, at a port or, with 0, at any that is free. */
  public static WebService start(Catalog catalog, int port) throws IOException {
    InetSocketAddress address = new InetSocketAddress(InetAddress.getLoopbackAddress(), port);
    WebService service = new WebService(catalog, HttpServer.create(address, 0));
    service.server.createContext("/", service::handle);
    service.server.setExecutor(service.threads);
    service.server.start();
    return service;
  }

  /** The port that it listens to. */
  public int port() {
    return server.getAddress().getPort();
  }

  private void handle(HttpExchange exchange) throws IOException {
    try (exchange) {
      Answer answer = answer(exchange);
      byte[] octets = answer.json().getBytes(UTF_8);
      exchange.getResponseHeaders().set("Content-Type", "application/json; charset=utf-8");
      boolean headOnly = exchange.getRequestMethod().equals("HEAD");
      exchange.sendResponseHeaders(answer.status(), headOnly ? NO_BODY : octets.length);
      if (!headOnly) {
        exchange.getResponseBody().write(octets);
      }
    }
  }

  private Answer answer(HttpExchange exchange) throws IOException {
    String path = exchange.getRequestURI().getPath();
    if (!path.equals(PATH)) {
      return Answer.refusal(404, "path", path, "briefs go to " + PATH);
    }
    String method = exchange.getRequestMethod();
    if (!method.equals("POST")) {
      exchange.getResponseHeaders().set("Allow", "POST");
      return Answer.refusal(405, "method", method, "POST a brief");
    }
    byte[] body = exchange.getRequestBody().readNBytes(MOST_OCTETS + 1);
    if (body.length > MOST_OCTETS) {
      String most = MOST_OCTETS + " octets at most are right";
      return Answer.refusal(413, "body", "over " + MOST_OCTETS + " octets", most);
    }
    return compose(isJson(exchange) ? "brief.json" : "brief.yaml", body);
  }

  private Answer compose(String name, byte[] body) {
    try {
      String text = UTF_8.newDecoder().decode(ByteBuffer.wrap(body)).toString();
      Brief brief = BriefFormat.read(name, text, catalog);
      return new Answer(200, CompositionFormat.write(composer.compose(brief, BUDGET)));
    } catch (CharacterCodingException wrong) {
      return Answer.refusal(400, "body", "", "write it in UTF-8");
    } catch (FormatException wrong) {
      return new Answer(400, ProblemsFormat.write(wrong.problems()));
    } catch (InvalidValueException refused) {
      return new Answer(400, ProblemsFormat.write(List.of(Problem.of(name, refused))));
    }
  }

  private static boolean isJson(HttpExchange exchange) {
    String type = exchange.getRequestHeaders().getFirst("Content-Type");
    return type != null && type.startsWith("application/json");
  }

  /** What goes back. */
  private record Answer(int status, String json) {
    static Answer refusal(int status, String what, String value, String remedy) {
      Problem problem = new Problem(new Place("request", 0, 0), what, value, remedy);
      return new Answer(status, ProblemsFormat.write(List.of(problem)));
    }
  }

  /** Stops serving. */
  @Override
  public void close() {
    server.stop(0);
    threads.shutdownNow();
  }

  /** Serves at the port given, or 8080, until the process is ended. */
  public static void main(String[] args) throws IOException {
    int port = args.length > 0 ? Integer.parseInt(args[0]) : 8080;
    WebService service = start(BuiltIn.catalog(), port);
    System.out.println("Listening at http://localhost:" + service.port() + PATH);
  }
}
