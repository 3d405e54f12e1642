package org.arcwright.format;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that hold no text of ours. */
class TextFileTest {
  private static final String BRIEF =
      """
      title: Frühjahr
      goal: choose-a-direction
      people: 12
      mode: remote
      cap: 3h
      """;

  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void name() {
    file = folder.resolve("brief.yaml");
  }

  @Test
  void a_byte_order_mark_does_no_harm() throws IOException {
    Files.writeString(file, "\uFEFF" + BRIEF);

    assertThat(BriefFormat.read(file).title()).isEqualTo("Frühjahr");
  }

  @Test
  void no_such_file() {
    assertThat(complaint()).isEqualTo(file + ": no such file: check its name and folder");
  }

  @Test
  void a_folder_instead_of_a_file() throws IOException {
    Files.createDirectory(file);

    assertThat(complaint()).isEqualTo(file + ": directory: name a file");
  }

  @Test
  void an_empty_file() throws IOException {
    Files.writeString(file, "");

    assertThat(complaint()).isEqualTo(file + ":1:1: empty file: write something into it");
  }

  @Test
  void a_file_beyond_the_limit() throws IOException {
    Files.write(file, new byte[(1 << 20) + 1]);

    assertThat(complaint()).isEqualTo(file + ": file too large: at most 1 MB are read");
  }

  @Test
  void an_instance_may_be_64_MB_long() throws IOException {
    Path instance = folder.resolve("instance.json");
    Files.write(instance, " ".repeat((64 << 20) + 1).getBytes(UTF_8));

    assertThat(Complaints.of(() -> InstanceFormat.read(instance)))
        .containsExactly(instance + ": file too large: at most 64 MB are read");
  }

  @Test
  void another_encoding() throws IOException {
    Files.write(file, BRIEF.getBytes(ISO_8859_1));

    assertThat(complaint())
        .isEqualTo(file + ":1:10: text that is not UTF-8: save the file as UTF-8");
  }

  @Test
  void an_encoding_with_zeros() throws IOException {
    Files.write(file, BRIEF.getBytes(UTF_16));

    assertThat(complaint()).isEqualTo(file + ": binary file: a text file in UTF-8 is right");
  }

  @Test
  void a_binary_file() throws IOException {
    Files.write(file, new byte[] {'P', 'K', 3, 4, 0, 0});

    assertThat(complaint()).isEqualTo(file + ": binary file: a text file in UTF-8 is right");
  }

  @Test
  void a_control_character() throws IOException {
    Files.writeString(file, "title: a\ngoal: \u0007b\n");

    assertThat(complaint()).isEqualTo(file + ":2:7: control character, U+0007: take it out");
  }

  private String complaint() {
    return String.join("\n", Complaints.of(() -> BriefFormat.read(file)));
  }
}
