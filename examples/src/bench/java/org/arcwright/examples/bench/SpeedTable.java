package org.arcwright.examples.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.NoBenchmarksException;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Runs the benchmarks, then two general solvers on the same instances, and writes one table. */
public final class SpeedTable {
  private static final String NONE = "none";
  private static final String COLD = "coldCommand";
  private static final String COLD_CATALOG = "coldCatalog";

  private final Map<String, Double> medians = new HashMap<>();
  private final List<String> lines = new ArrayList<>();

  private SpeedTable() {}

  /**
   * Takes the benchmarks to run (a regular expression over class and method), the sizes to run
   * ({@code all}, or some with commas between), the seconds each general solver may take ({@code
   * none} to leave them out), the file to write, the command line's jar and a brief.
   */
  public static void main(String[] args) throws RunnerException, IOException, InterruptedException {
    SpeedTable table = new SpeedTable();
    table.measure(args[0], args[1]);
    table.fill();
    if (!args[2].equals(NONE)) {
      table.peers(Double.parseDouble(args[2]));
    }
    if (Pattern.compile(args[0]).matcher(COLD).find()) {
      table.lines.add(ColdCommand.line(Path.of(args[4]), Path.of(args[5])));
    }
    if (Pattern.compile(args[0]).matcher(COLD_CATALOG).find()) {
      table.lines.add(ColdCommand.catalogLine(Path.of(args[4])));
    }
    String text = String.join("\n", table.lines) + "\n";
    Files.writeString(Path.of(args[3]), text);
    System.out.println(text);
  }

  private void measure(String benchmarks, String sizes) throws RunnerException {
    OptionsBuilder options = new OptionsBuilder();
    options.include(benchmarks);
    if (!sizes.equals("all")) {
      options.param("size", sizes.split(","));
    }
    for (RunResult result : run(options)) {
      BenchmarkParams params = result.getParams();
      String method = params.getBenchmark().replaceAll(".*\\.", "");
      String wished = "true".equals(params.getParam("wished")) ? " wished" : "";
      medians.put(
          params.getParam("size") + wished + " " + method,
          result.getPrimaryResult().getStatistics().getPercentile(50));
    }
  }

  /** The results; none if no benchmark has such a name. */
  private static Collection<RunResult> run(OptionsBuilder options) throws RunnerException {
    try {
      return new Runner(options.build()).run();
    } catch (NoBenchmarksException none) {
      return List.of();
    }
  }

  private void fill() {
    lines.add("| what | median ms | bar | set against |");
    lines.add("| --- | ---: | ---: | --- |");
    row("150/180 proof", 2);
    row("150/480 proof", 25);
    row("1000/960 proof", 500);
    row("150/180 options", 60);
    row("150/480 options", 600);
    row("10000/180 composeBrief", 25);
    row("built-in/210 composeBrief", Double.NaN);
    row("built-in/75 explainClash", Double.NaN);
    row("several/120 explainClash", Double.NaN);
    row("built-in/210 replan", 100);
    for (String size : List.of("150/180", "150/480", "1000/960")) {
      ratio(size + " wished proof", size + " proof", 5);
      ratio(size + " proof", size + " boundPass", 3);
      ratio(size + " firstAgenda", size + " proof", 0.1);
    }
  }

  private void row(String what, double bar) {
    Double median = medians.get(what);
    if (median != null) {
      String most = Double.isNaN(bar) ? "" : "≤ " + number(bar);
      lines.add("| " + what + " | " + number(median) + " | " + most + " | |");
    }
  }

  private void ratio(String what, String against, double bar) {
    Double median = medians.get(what);
    Double other = medians.get(against);
    if (median != null && other != null) {
      lines.add(
          "| %s | %s | ≤ %s times | %s times %s |"
              .formatted(what, number(median), number(bar), number(median / other), against));
    }
  }

  private void peers(double seconds) {
    for (Peer peer : Peer.values()) {
      peer.agree();
      for (String size : List.of("150/180", "150/480")) {
        Double median = medians.get(size + " proof");
        if (median != null) {
          Peer.Answer answer = peer.solve(Size.of(size).instances(false)[0], seconds);
          double took = answer.seconds() * 1000;
          lines.add(
              "| %s %s: %s | %s | ≥ 1000 times | %s times %s proof |"
                  .formatted(
                      size, peer.title(), answer, number(took), number(took / median), size));
        }
      }
    }
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, value >= 100 ? "%.0f" : value >= 10 ? "%.1f" : "%.2f", value);
  }
}
