package org.arcwright.examples;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
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
import org.arcwright.format.Problem;
import org.arcwright.format.ProblemsFormat;
import org.arcwright.library.BuiltIn;

/**
 * A small web service: a brief in YAML or JSON is posted to {@code /compositions}, and the answer
 * comes back as JSON. That nothing fits is an answer, too; what is wrong with a brief is a 400 with
 * each problem and its place.
 *
 * <pre>
 * curl --data-binary @brief.yaml http://localhost:8080/compositions
 * curl --json @brief.json http://localhost:8080/compositions
 * </pre>
 */
public final class WebService implements AutoCloseable {
  private static final int MOST_OCTETS = 100_000;
  private static final Budget BUDGET = Budget.of(Duration.ofSeconds(2));

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
    service.server.createContext("/compositions", service::handle);
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
      if (!exchange.getRequestMethod().equals("POST")) {
        exchange.getResponseHeaders().set("Allow", "POST");
        answer(exchange, 405, problems("request", exchange.getRequestMethod(), "POST a brief"));
        return;
      }
      byte[] body = exchange.getRequestBody().readNBytes(MOST_OCTETS + 1);
      if (body.length > MOST_OCTETS) {
        String remedy = "a brief of at most " + MOST_OCTETS + " octets is right";
        answer(exchange, 413, problems("request", "too long", remedy));
        return;
      }
      String name = isJson(exchange) ? "brief.json" : "brief.yaml";
      try {
        Brief brief = BriefFormat.read(name, new String(body, UTF_8), catalog);
        answer(exchange, 200, CompositionFormat.write(composer.compose(brief, BUDGET)));
      } catch (FormatException wrong) {
        answer(exchange, 400, ProblemsFormat.write(wrong.problems()));
      } catch (InvalidValueException refused) {
        answer(exchange, 400, ProblemsFormat.write(List.of(Problem.of(name, refused))));
      }
    }
  }

  private static boolean isJson(HttpExchange exchange) {
    String type = exchange.getRequestHeaders().getFirst("Content-Type");
    return type != null && type.startsWith("application/json");
  }

  private static String problems(String field, String value, String remedy) {
    InvalidValueException problem = new InvalidValueException(field, value, remedy);
    return ProblemsFormat.write(List.of(Problem.of("request", problem)));
  }

  private static void answer(HttpExchange exchange, int status, String json) throws IOException {
    byte[] octets = json.getBytes(UTF_8);
    exchange.getResponseHeaders().set("Content-Type", "application/json; charset=utf-8");
    exchange.sendResponseHeaders(status, octets.length);
    exchange.getResponseBody().write(octets);
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
    System.out.println("Listening at http://localhost:" + service.port() + "/compositions");
  }
}
