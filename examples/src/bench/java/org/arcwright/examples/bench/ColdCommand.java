package org.arcwright.examples.bench;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Times whole processes: the command that composes a brief, and a program that reads one JSON file
 * with Jackson ({@link ReadJson}), by turns, so that both meet the same machine.
 */
final class ColdCommand {
  private static final int RUNS = 15;
  private static final String JAVA =
      Path.of(System.getProperty("java.home"), "bin", "java").toString();

  private ColdCommand() {}

  /**
   * A line of the table.
   *
   * @param jar the command line's jar
   * @param brief to compose
   */
  static String line(Path jar, Path brief) throws IOException, InterruptedException {
    Path json = Files.createTempFile("read", ".json");
    Files.writeString(json, "{\"title\": \"What next?\", \"people\": 9, \"cap\": \"210m\"}");
    List<String> compose = List.of(JAVA, "-jar", jar.toString(), "compose", brief.toString());
    List<String> read =
        List.of(JAVA, "-cp", jacksonAlone(), ReadJson.class.getName(), json.toString());
    double[] composing = new double[RUNS];
    double[] reading = new double[RUNS];
    for (int i = 0; i < RUNS; i++) {
      composing[i] = milliseconds(compose);
      reading[i] = milliseconds(read);
    }
    Files.delete(json);
    return "| cold compose of %s | %.0f | ≤ 3 times | %.2f times %.0f, one JSON file read with Jackson |"
        .formatted(
            brief.getFileName(),
            median(composing),
            median(composing) / median(reading),
            median(reading));
  }

  /** The class path without all that reading JSON does not take. */
  private static String jacksonAlone() {
    return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
        .filter(entry -> entry.contains("jackson") || Files.exists(own(Path.of(entry))))
        .collect(Collectors.joining(File.pathSeparator));
  }

  private static Path own(Path folder) {
    return folder.resolve(ReadJson.class.getName().replace('.', '/') + ".class");
  }

  private static double milliseconds(List<String> command)
      throws IOException, InterruptedException {
    long begin = System.nanoTime();
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    if (process.waitFor() != 0) {
      throw new IllegalStateException("failed: " + String.join(" ", command));
    }
    return (System.nanoTime() - begin) / 1e6;
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }
}
