package org.arcwright.format;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Optional;
import org.arcwright.catalog.Word;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Node.Scalar;
import org.arcwright.format.tree.Syntax;
import org.arcwright.format.tree.TreeReader;

/**
 * JSON Schemas (draft 2020-12) of the files that people and programs write, so that editors
 * complete and validate while typing. They hold YAML and JSON alike. What only a reader can tell,
 * such as figures that do not ascend or words that the catalog does not have, they let pass.
 *
 * <p>A document within a document is described by its own schema, by its {@link #id}. The texts
 * stand in the jar as {@code org/arcwright/schema/<word>.schema.json}.
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
  /** A composer's answer; see {@link CompositionFormat}. */
  COMPOSITION("composition"),
  /** Ways to go on with a day; see {@link ReplanFormat}. */
  REPLAN("replan"),
  /** Options to choose from; see {@link OptionsFormat}. */
  OPTIONS("options"),
  /** How the best agenda changes while a figure is varied; see {@link WhatIfFormat}. */
  WHAT_IF("what-if"),
  /** What clashes where nothing fits, and the ways out; see {@link ClashFormat}. */
  CLASH("clash"),
  /** Why an exercise is not in an agenda; see {@link WhyNotFormat}. */
  WHY_NOT("why-not"),
  /** Why an agenda's exercises are in their places; see {@link WhyThisFormat}. */
  WHY_THIS("why-this"),
  /** What a checker says of an agenda; see {@link ReviewFormat}. */
  REVIEW("review"),
  /** When an agenda will really end; see {@link ForecastFormat}. */
  FORECAST("forecast"),
  /** What to do when a tool or a person fails; see {@link StandInsFormat}. */
  STAND_INS("stand-ins"),
  /** What logs teach; see {@link LessonsFormat}. */
  LESSONS("lessons"),
  /** A line of a progress log; see {@link LogFormat}. */
  LOG("log"),
  /** What came of a workshop; see {@link RecordFormat}. */
  RECORD("record"),
  /** What is wrong with a document; see {@link ProblemsFormat}. */
  PROBLEMS("problems"),
  /** An instance of the composition problem; see {@link InstanceFormat}. */
  INSTANCE("instance"),
  /** A solution of the composition problem; see {@link SolutionFormat}. */
  SOLUTION("solution"),
  /** What a checker says of a solution; see {@link VerdictFormat}. */
  VERDICT("verdict");

  private final String word;

  Schema(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }

  /** Its {@code $id}, by which other schemas refer to it. */
  public String id() {
    return "urn:arcwright:schema:" + word;
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

  /**
   * What the schema says of a place in it, such as {@code properties.energy} or {@code
   * $defs.step.properties.who}.
   */
  public Optional<String> explanation(String place) {
    return TreeReader.read(Syntax.JSON, text(), new Faults())
        .flatMap(root -> root.lookUp(place + ".description"))
        .filter(Scalar.class::isInstance)
        .map(node -> ((Scalar) node).text());
  }
}
