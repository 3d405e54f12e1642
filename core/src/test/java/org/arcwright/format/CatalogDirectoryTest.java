package org.arcwright.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.arcwright.catalog.Catalog;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A catalog in a folder, and as one document. */
class CatalogDirectoryTest {
  private static final Catalog CATALOG = SmallCatalog.read();

  @TempDir Path folder;

  @BeforeEach
  void write() throws IOException {
    Files.createDirectories(folder.resolve("exercises/icebreaker"));
    Files.createDirectories(folder.resolve("goals"));
    put("products.yaml", CatalogFormat.writeProducts(CATALOG.products().values()));
    put("tools.yaml", CatalogFormat.writeTools(CATALOG.tools().values()));
    put("exercises/icebreaker/two-objects.yaml", SmallCatalog.TWO_OBJECTS);
    put("exercises/chat-burst.yaml", SmallCatalog.CHAT_BURST);
    put("goals/generate-ideas.yaml", SmallCatalog.GENERATE_IDEAS);
  }

  @Test
  void a_folder_is_read_as_a_catalog() {
    assertSame(CatalogFormat.readDirectory(folder), CATALOG);
  }

  @Test
  void a_catalog_is_written_as_one_document_and_read_again() {
    assertSame(CatalogFormat.read("catalog.json", CatalogFormat.write(CATALOG)), CATALOG);
  }

  @Test
  void a_compiled_catalog_is_the_same_catalog() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    CatalogFormat.writeCompiled(CATALOG, out);

    assertSame(CatalogFormat.readCompiled(new ByteArrayInputStream(out.toByteArray())), CATALOG);
  }

  @Test
  void a_compiled_catalog_that_is_damaged_is_refused() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    CatalogFormat.writeCompiled(CATALOG, out);
    byte[] half = Arrays.copyOf(out.toByteArray(), out.size() / 2);

    assertThatExceptionOfType(IOException.class)
        .isThrownBy(() -> CatalogFormat.readCompiled(new ByteArrayInputStream(half)))
        .withMessage("damaged, or compiled for another version");
    assertThatExceptionOfType(IOException.class)
        .isThrownBy(() -> CatalogFormat.readCompiled(new ByteArrayInputStream(new byte[9])))
        .withMessage("compiled for another version");
  }

  @Test
  void a_folder_may_add_to_another_catalog_and_replace_its_entries() throws IOException {
    Path own = Files.createDirectory(folder.resolve("own"));
    Files.createDirectory(own.resolve("exercises"));
    Files.writeString(
        own.resolve("exercises/two-objects.yaml"),
        SmallCatalog.TWO_OBJECTS.replace("Two objects", "Two things"));
    Files.writeString(
        own.resolve("exercises/three-objects.yaml"),
        SmallCatalog.TWO_OBJECTS.replace("two-objects", "three-objects"));
    Catalog both = CatalogFormat.readDirectory(own, CATALOG);

    assertThat(both.exercises().keySet())
        .containsExactly("chat-burst", "three-objects", "two-objects");
    assertThat(both.exercises().get("two-objects").title()).isEqualTo("Two things");
    assertThat(both.goals()).isEqualTo(CATALOG.goals());
  }

  @Test
  void the_problems_of_all_files_are_told_at_once() throws IOException {
    put("products.yaml", "- {id: arrival, title: arrival}\n");
    put("goals/generate-ideas.yaml", "id: [\n");
    put("exercises/chat-burst.yaml", SmallCatalog.CHAT_BURST.replace("[call]", "[cal]"));
    put("two-objects.yaml", SmallCatalog.TWO_OBJECTS);
    put("exercises/readme.md", "Not for programs.");

    assertThat(Complaints.of(() -> CatalogFormat.readDirectory(folder)))
        .containsExactly(
            in("two-objects.yaml")
                + ": file out of place: exercises go into exercises/, goals into"
                + " goals/",
            in("products.yaml")
                + ":1:3: missing key, meaning: add it, such as meaning: many ideas,"
                + " unsorted",
            in("exercises/chat-burst.yaml") + ":17:28: unknown tool, cal: perhaps call",
            in("exercises/chat-burst.yaml") + ":19:28: unknown tool, cal: perhaps call",
            in("goals/generate-ideas.yaml")
                + ":2:1: end of file too early: close every bracket, brace and quote");
  }

  @Test
  void words_that_are_not_named_are_told() throws IOException {
    put("products.yaml", CatalogFormat.writeProducts(List.of(CATALOG.products().get("arrival"))));

    assertThat(Complaints.of(() -> CatalogFormat.readDirectory(folder)))
        .containsExactly(
            in("exercises/chat-burst.yaml")
                + ":8:10: unknown work product, idea-pool: known here: arrival",
            in("goals/generate-ideas.yaml")
                + ":4:10: unknown work product, idea-pool: known here: arrival",
            in("goals/generate-ideas.yaml")
                + ":7:100: unknown work product, idea-pool: known here: arrival");
  }

  @Test
  void an_exercise_has_the_name_of_its_file_and_no_other_has_it() throws IOException {
    put("exercises/chat.yaml", SmallCatalog.CHAT_BURST);
    put("exercises/two-objects.yaml", SmallCatalog.TWO_OBJECTS);

    assertThat(Complaints.of(() -> CatalogFormat.readDirectory(folder)))
        .containsExactly(
            in("exercises/chat.yaml") + ":1:5: id, chat-burst: it equals the file's name, chat",
            in("exercises/two-objects.yaml")
                + ":1:5: id, two-objects: "
                + in("exercises/icebreaker/two-objects.yaml")
                + " has it already; rename one");
  }

  @Test
  void a_folder_that_is_not_there() {
    assertThat(Complaints.of(() -> CatalogFormat.readDirectory(folder.resolve("none"))))
        .containsExactly(in("none") + ": no such folder: name a catalog folder");
  }

  private void put(String name, String text) throws IOException {
    Files.writeString(folder.resolve(name), text);
  }

  private String in(String name) {
    return folder.resolve(name).toString();
  }

  private static void assertSame(Catalog actual, Catalog expected) {
    assertThat(actual.products()).isEqualTo(expected.products());
    assertThat(actual.tools()).isEqualTo(expected.tools());
    assertThat(actual.exercises()).isEqualTo(expected.exercises());
    assertThat(actual.goals()).isEqualTo(expected.goals());
  }
}
