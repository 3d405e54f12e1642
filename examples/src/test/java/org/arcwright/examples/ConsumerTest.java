package org.arcwright.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.spi.ToolProvider;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A project outside this one, on the module path, with nothing but the published jars. */
class ConsumerTest {
  private static final Path SOURCES = Repository.ROOT.resolve("examples/consumer");

  /** What the two modules need, as their jars are called. */
  private static final Pattern NEEDED =
      Pattern.compile("(caffeine|jackson-|snakeyaml-engine|jspecify|error_prone_annotations).*");

  @TempDir Path folder;
  private String modulePath = "";

  @BeforeEach
  void findJars() throws IOException {
    List<Path> jars = new ArrayList<>();
    jar("core").ifPresent(jars::add);
    jar("library-data").ifPresent(jars::add);
    assumeThat(jars).as("built by the package phase").hasSize(2);
    jars.addAll(needed());
    modulePath = jars.stream().map(Path::toString).collect(Collectors.joining(File.pathSeparator));
  }

  @Test
  void compiles_without_a_warning_and_runs() throws Exception {
    Path classes = folder.resolve("classes");
    assertThat(compile(classes, SOURCES)).isEmpty();

    List<String> printed = run(classes);

    assertThat(printed).hasSizeGreaterThan(5).contains("read back: true");
    assertThat(printed.get(0)).matches("0 [a-z0-9-]+");
    assertThat(printed).last().asString().startsWith("way out: ");
  }

  @Test
  void cannot_reach_what_is_internal() throws Exception {
    Path sources = Files.createDirectories(folder.resolve("sources/planner"));
    Files.copy(SOURCES.resolve("module-info.java"), folder.resolve("sources/module-info.java"));
    Files.writeString(
        sources.resolve("Prying.java"),
        "package planner; class Prying { org.arcwright.compose.reduce.Reducer reducer; }");

    assertThat(compile(folder.resolve("classes"), folder.resolve("sources")))
        .contains("package org.arcwright.compose.reduce is not visible");
  }

  /** What the compiler says; nothing if all is well. */
  private String compile(Path classes, Path sources) throws IOException {
    List<String> words = new ArrayList<>();
    words.addAll(List.of("--module-path", modulePath, "-d", classes.toString()));
    words.addAll(List.of("--release", "17", "-Xlint:all", "-Werror", "-proc:none"));
    try (Stream<Path> files = Files.walk(sources)) {
      files.map(Path::toString).filter(name -> name.endsWith(".java")).forEach(words::add);
    }
    StringWriter said = new StringWriter();
    PrintWriter writer = new PrintWriter(said, true);
    ToolProvider javac = ToolProvider.findFirst("javac").orElseThrow();
    int code = javac.run(writer, writer, words.toArray(String[]::new));
    assertThat(code == 0).isEqualTo(said.toString().isEmpty());
    return said.toString();
  }

  private List<String> run(Path classes) throws Exception {
    Path out = folder.resolve("out.txt");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "--module-path",
                modulePath + File.pathSeparator + classes,
                "--module",
                "planner/planner.Planner")
            .redirectErrorStream(true)
            .redirectOutput(out.toFile())
            .start();
    assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
    assertThat(process.exitValue()).as(Files.readString(out)).isZero();
    return Files.readAllLines(out);
  }

  /** The jar of a module that the package phase leaves. */
  private static Optional<Path> jar(String module) throws IOException {
    Path target = Repository.ROOT.resolve(module).resolve("target");
    if (!Files.isDirectory(target)) {
      return Optional.empty();
    }
    try (Stream<Path> files = Files.list(target)) {
      return files
          .filter(
              file ->
                  file.getFileName()
                      .toString()
                      .matches("arcwright-" + module + "-[0-9.]+(-SNAPSHOT)?\\.jar"))
          .findFirst();
    }
  }

  /** The jars on the class path that the modules need. */
  private static List<Path> needed() {
    return ConsumerTest.class
        .getClassLoader()
        .resources("META-INF/MANIFEST.MF")
        .map(url -> url.toString().replaceFirst("^jar:(.*)!/.*$", "$1"))
        .filter(location -> location.endsWith(".jar"))
        .map(location -> Path.of(URI.create(location)))
        .filter(file -> NEEDED.matcher(file.getFileName().toString()).matches())
        .distinct()
        .toList();
  }
}
