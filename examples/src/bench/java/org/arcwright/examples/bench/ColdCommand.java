package org.arcwright.examples.bench;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Times whole processes, two by turns, so that both meet the same machine: the command that composes
 * a brief, and a program that reads one JSON file with Jackson ({@link ReadJson}); a program that
 * loads the built-in catalog ({@link LoadCatalog}), and the same one that does not.
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
        List.of(JAVA, "-cp", alone(ReadJson.class, "jackson"), ReadJson.class.getName(), json.toString());
    Pair pair = Pair.of(compose, read);
    Files.delete(json);
    return "| cold compose of %s | %.0f | ≤ 3 times | %.2f times %.0f, one JSON file read with Jackson |"
        .formatted(brief.getFileName(), pair.one(), pair.one() / pair.other(), pair.other());
  }

  /** A line of the table: what loading the whole built-in catalog adds to a process. */
  static String catalogLine(Path jar) throws IOException, InterruptedException {
    String path = jar + File.pathSeparator + alone(LoadCatalog.class, "");
    List<String> nothing = List.of(JAVA, "-cp", path, LoadCatalog.class.getName());
    List<String> load = List.of(JAVA, "-cp", path, LoadCatalog.class.getName(), "catalog");
    Pair pair = Pair.of(load, nothing);
    return "| cold load of the built-in catalog | %.0f | ≤ 150 more | %.0f more than %.0f, the same without |"
        .formatted(pair.one(), pair.one() - pair.other(), pair.other());
  }

  /** The medians of two commands, run by turns. */
  private record Pair(double one, double other) {
    static Pair of(List<String> one, List<String> other) throws IOException, InterruptedException {
      double[] first = new double[RUNS];
      double[] second = new double[RUNS];
      for (int i = 0; i < RUNS; i++) {
        first[i] = milliseconds(one);
        second[i] = milliseconds(other);
      }
      return new Pair(median(first), median(second));
    }
  }

  /** The class path without all that the program does not take. */
  private static String alone(Class<?> program, String library) {
    return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
        .filter(
            entry ->
                (!library.isEmpty() && entry.contains(library))
                    || Files.exists(own(Path.of(entry), program)))
        .collect(Collectors.joining(File.pathSeparator));
  }

  private static Path own(Path folder, Class<?> program) {
    return folder.resolve(program.getName().replace('.', '/') + ".class");
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
