package org.arcwright.format;

import static java.util.stream.Collectors.toMap;

import com.networknt.schema.Error;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.Arrays;
import java.util.List;
import org.arcwright.format.tree.WholeCharacters;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** A schema of ours, in the hands of a validator that is not. */
final class SchemaFile {
  static final String DRAFT = SpecificationVersion.DRAFT_2020_12.getDialectId();

  private static final SchemaRegistry VALIDATORS =
      SchemaRegistry.withDefaultDialect(
          SpecificationVersion.DRAFT_2020_12,
          registry ->
              registry.schemas(
                  Arrays.stream(Schema.values()).collect(toMap(Schema::id, Schema::text))));

  private SchemaFile() {}

  static JsonNode tree(Schema schema) {
    return JsonMapper.shared().readTree(schema.text());
  }

  /** What the schema refuses in a text. */
  static List<String> complaints(Schema schema, String text) {
    JsonNode instance =
        text.startsWith("{")
            ? JsonMapper.shared().readTree(text)
            : YAMLMapper.shared().readTree(new WholeCharacters(text));
    return texts(VALIDATORS.getSchema(tree(schema)).validate(instance));
  }

  /** What the meta-schema refuses in the schema. */
  static List<String> complaints(Schema schema) {
    return texts(
        VALIDATORS.getSchema(com.networknt.schema.SchemaLocation.of(DRAFT)).validate(tree(schema)));
  }

  private static List<String> texts(List<Error> errors) {
    return errors.stream().map(Error::toString).toList();
  }
}
