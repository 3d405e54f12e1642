package org.arcwright.examples;

import static java.util.stream.Collectors.toMap;
import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.arcwright.examples.Repository.Ran;
import org.arcwright.format.CatalogFormat;
import org.arcwright.format.Schema;
import org.arcwright.library.BuiltIn;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Every file we ship or write keeps to its JSON Schema, in the eyes of a validator that is not
 * ours.
 */
class SchemaTest {
  private static final SchemaRegistry VALIDATORS =
      SchemaRegistry.withDefaultDialect(
          SpecificationVersion.DRAFT_2020_12,
          registry ->
              registry.schemas(
                  Stream.of(Schema.values()).collect(toMap(Schema::id, Schema::text))));
  private static final Path CATALOG = Repository.ROOT.resolve("library-data/src/main/catalog");

  @TempDir Path scratch;

  @Test
  void every_exercise_of_the_shelf() {
    List<Path> files = files(CATALOG.resolve("exercises"));

    assertThat(files).hasSameSizeAs(BuiltIn.catalog().exercises().keySet());
    assertThat(refused(Schema.EXERCISE, files)).isEmpty();
  }

  @Test
  void every_goal() {
    List<Path> files = files(CATALOG.resolve("goals"));

    assertThat(files).hasSameSizeAs(BuiltIn.catalog().goals().keySet());
    assertThat(refused(Schema.GOAL, files)).isEmpty();
  }

  @Test
  void every_exercise_and_goal_as_we_write_them() {
    assertThat(BuiltIn.catalog().exercises().values())
        .allSatisfy(
            exercise ->
                assertThat(complaints(Schema.EXERCISE, CatalogFormat.write(exercise))).isEmpty());
    assertThat(BuiltIn.catalog().goals().values())
        .allSatisfy(
            goal -> assertThat(complaints(Schema.GOAL, CatalogFormat.write(goal))).isEmpty());
  }

  @Test
  void every_brief() {
    assertThat(Repository.briefs()).isNotEmpty();
    assertThat(refused(Schema.BRIEF, Repository.briefs())).isEmpty();
  }

  @Test
  void an_agenda_and_an_instance_as_they_are_written() {
    Path instance = scratch.resolve("instance.json");
    Path agenda = scratch.resolve("agenda.json");

    Ran ran =
        Repository.arcwright(
            scratch,
            "compose",
            "examples/briefs/repair-year.yaml",
            "--instance",
            "instance.json",
            "--out",
            "agenda.json");

    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(refused(Schema.AGENDA, List.of(agenda))).isEmpty();
    assertThat(refused(Schema.INSTANCE, List.of(instance))).isEmpty();
  }

  @Test
  void editors_offer_the_words_of_the_built_in_catalog() {
    List<String> products = offered(Schema.EXERCISE, "/$defs/products/items/anyOf/0/enum");

    assertThat(products)
        .containsExactlyInAnyOrderElementsOf(BuiltIn.catalog().products().keySet())
        .isEqualTo(offered(Schema.GOAL, "/$defs/products/items/anyOf/0/enum"))
        .isEqualTo(offered(Schema.BRIEF, "/$defs/products/items/anyOf/0/enum"));
    assertThat(offered(Schema.EXERCISE, "/$defs/tools/items/anyOf/0/enum"))
        .containsExactlyInAnyOrderElementsOf(BuiltIn.catalog().tools().keySet())
        .isEqualTo(offered(Schema.BRIEF, "/properties/tools/items/anyOf/0/enum"));
    assertThat(offered(Schema.BRIEF, "/properties/goal/anyOf/0/enum"))
        .containsExactlyInAnyOrderElementsOf(BuiltIn.catalog().goals().keySet());
  }

  private static List<String> offered(Schema schema, String place) {
    return tree(schema).at(place).valueStream().map(JsonNode::stringValue).toList();
  }

  private static Map<Path, List<String>> refused(Schema schema, Collection<Path> files) {
    Map<Path, List<String>> refused = new TreeMap<>();
    for (Path file : files) {
      List<String> complaints = complaints(schema, read(file));
      if (!complaints.isEmpty()) {
        refused.put(file, complaints);
      }
    }
    return refused;
  }

  static List<String> complaints(Schema schema, String text) {
    InputFormat format = text.startsWith("{") ? InputFormat.JSON : InputFormat.YAML;
    List<Error> errors = VALIDATORS.getSchema(tree(schema)).validate(text, format);
    return errors.stream().map(Error::toString).toList();
  }

  private static JsonNode tree(Schema schema) {
    return JsonMapper.shared().readTree(schema.text());
  }

  private static List<Path> files(Path folder) {
    try (Stream<Path> files = Files.walk(folder)) {
      return new ArrayList<>(files.filter(Files::isRegularFile).sorted().toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
