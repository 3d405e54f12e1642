package org.arcwright.examples;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The jar as a user runs it: a process of its own, whatever the locale. */
class JarTest {
  @TempDir Path folder;

  @Test
  void speaks_utf8_only_where_the_terminal_does() throws Exception {
    String unicode = run(Map.of("LC_ALL", "C.UTF-8"), "compose", brief());
    String ascii = run(Map.of("LC_ALL", "C"), "compose", brief());

    assertThat(unicode).startsWith("Ideen für den offenen Tag\n").contains("┤", "•", "09:00–");
    assertThat(ascii).startsWith("Ideen für den offenen Tag\n").contains("energy 4 |", "09:00-");
    assertThat(ascii).doesNotContain("┤", "•", "–");
  }

  @Test
  void files_are_utf8_whatever_the_locale() throws Exception {
    Path here = folder.resolve("here.md");
    Path there = folder.resolve("there.md");

    run(Map.of("LC_ALL", "C.UTF-8"), "compose", brief(), "--out", here.toString());
    run(Map.of("LC_ALL", "C"), "compose", brief(), "--out", there.toString());

    assertThat(Files.readString(here)).contains("# Ideen für den offenen Tag");
    assertThat(Files.readString(there)).isEqualTo(Files.readString(here));
  }

  private String brief() throws IOException {
    String text =
        """
        title: Ideen für den offenen Tag
        goal: generate-ideas
        people: 5
        mode: remote
        cap: 75m
        start: 2027-03-02 09:00
        zone: Europe/Vienna
        """;
    return Files.writeString(folder.resolve("brief.yaml"), text).toString();
  }

  /** Standard output of a run that must succeed. */
  private String run(Map<String, String> environment, String... args) throws Exception {
    assumeThat(Repository.JAR).as("built by the package phase").exists();
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-jar", Repository.JAR.toString()));
    command.addAll(List.of(args));
    Path out = Files.createTempFile(folder, "out", ".txt");
    Path err = Files.createTempFile(folder, "err", ".txt");
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().putAll(environment);
    Process process = builder.redirectOutput(out.toFile()).redirectError(err.toFile()).start();
    assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
    assertThat(process.exitValue()).as(Files.readString(err, UTF_8)).isZero();
    return Files.readString(out, UTF_8);
  }
}
