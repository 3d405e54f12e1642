package org.arcwright.format;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.arcwright.catalog.Word;

/**
 * JSON Schemas (draft 2020-12) of the files that people and programs write, so that editors
 * complete and validate while typing. They hold YAML and JSON alike. What only a reader can tell,
 * such as figures that do not ascend or words that the catalog does not have, they let pass.
 *
 * <p>The texts stand in the jar as {@code org/arcwright/schema/<word>.schema.json}.
 */
public enum Schema implements Word {
  /** One exercise; see {@link CatalogFormat}. */
  EXERCISE("exercise"),
  /** One goal; see {@link CatalogFormat}. */
  GOAL("goal"),
  /** A brief; see {@link BriefFormat}. */
  BRIEF("brief"),
  /** An agenda; see {@link AgendaFormat}. */
  AGENDA("agenda"),
  /** An instance of the composition problem; see {@link InstanceFormat}. */
  INSTANCE("instance");

  private final String word;

  Schema(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }

  /** The schema in JSON; ends with a line break. */
  public String text() {
    String resource = "/org/arcwright/schema/" + word + ".schema.json";
    try (InputStream in = Schema.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException(resource + " is missing from the core's jar");
      }
      return new String(in.readAllBytes(), UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
