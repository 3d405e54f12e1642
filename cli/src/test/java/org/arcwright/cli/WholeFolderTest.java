package org.arcwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A folder is written whole or not at all, and nothing outside it ever. */
class WholeFolderTest {
  @TempDir Path place;

  private Path out;

  @BeforeEach
  void write() {
    out = place.resolve("out");
    WholeFolder.to(out).write(Map.of("a.txt", "first"));
  }

  private List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void what_was_written_before_is_replaced_as_a_whole() throws IOException {
    WholeFolder.to(out).write(Map.of("b.txt", "second"));

    assertThat(names(out)).containsExactly(".arcwright-written", "b.txt");
    assertThat(names(place)).containsExactly("out");
  }

  @ParameterizedTest
  @ValueSource(strings = {"../b.txt", "/b.txt", "c/b.txt", "..", ".hidden", "", "b\u202Etxt"})
  void a_name_that_leads_elsewhere_leaves_everything_as_it_was(String name) throws IOException {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("a.txt", "second");
    files.put(name, "second");

    assertThatThrownBy(() -> WholeFolder.to(out).write(files))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(out.resolve("a.txt")).hasContent("first");
    assertThat(names(place)).containsExactly("out");
  }

  @Test
  void what_somebody_has_changed_stays_and_the_new_stands_beside_it() throws IOException {
    Files.writeString(out.resolve("a.txt"), "by hand");

    Map<String, Optional<String>> kept = WholeFolder.to(out).write(Map.of("a.txt", "second"));

    assertThat(kept).containsExactly(Map.entry("a.txt", Optional.of("a.new.txt")));
    assertThat(out.resolve("a.txt")).hasContent("by hand");
    assertThat(out.resolve("a.new.txt")).hasContent("second");
    WholeFolder.to(out).write(Map.of("a.txt", "third"));
    assertThat(out.resolve("a.txt")).hasContent("by hand");
    assertThat(out.resolve("a.new.txt")).hasContent("third");
    assertThat(names(out)).containsExactly(".arcwright-written", "a.new.txt", "a.txt");
  }

  @Test
  void the_new_is_not_repeated_where_it_says_nothing_new() throws IOException {
    Files.writeString(out.resolve("a.txt"), "by hand");

    Map<String, Optional<String>> kept = WholeFolder.to(out).write(Map.of("a.txt", "first"));

    assertThat(kept).containsExactly(Map.entry("a.txt", Optional.empty()));
    assertThat(out.resolve("a.txt")).hasContent("by hand");
    assertThat(names(out)).containsExactly(".arcwright-written", "a.txt");
  }

  @Test
  void what_somebody_has_changed_stays_even_where_it_is_not_written_any_more() throws IOException {
    Files.writeString(out.resolve("a.txt"), "by hand");

    WholeFolder.to(out).write(Map.of("b.txt", "second"));

    assertThat(out.resolve("a.txt")).hasContent("by hand");
    assertThat(out.resolve("b.txt")).hasContent("second");
  }

  /** Lists of names alone were written once. */
  @Test
  void a_list_without_sums_is_read_as_well() throws IOException {
    Files.writeString(out.resolve(".arcwright-written"), "a.txt\n");

    assertThat(WholeFolder.to(out).write(Map.of("a.txt", "second"))).isEmpty();
    assertThat(out.resolve("a.txt")).hasContent("second");
  }
}
