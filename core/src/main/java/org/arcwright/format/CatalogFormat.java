package org.arcwright.format;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Layers;
import org.arcwright.catalog.Product;
import org.arcwright.catalog.Tool;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.JsonWriter;
import org.arcwright.format.tree.Node;
import org.arcwright.format.tree.YamlWriter;

/**
 * Exercises, goals, work products and tools in files.
 *
 * <p>A catalog that people curate is a folder:
 *
 * <pre>
 * exercises/&lt;any folder&gt;/&lt;id&gt;.yaml   one exercise each
 * goals/&lt;id&gt;.yaml                    one goal each
 * products.yaml                      the work products
 * tools.yaml                         the tools
 * </pre>
 *
 * A catalog that programs exchange is one JSON document with the lists {@code products}, {@code
 * tools}, {@code exercises} and {@code goals}. Every reader throws {@link FormatException} with all
 * that is wrong.
 */
public final class CatalogFormat {
  private CatalogFormat() {}

  /** Reads one exercise, at most 1 MB; its words are not held against any catalog. */
  public static Exercise readExercise(Path file) {
    return Document.of(file, Document.BY_HAND).read(CatalogFormat::exercise);
  }

  /** Reads one exercise from a text; the name says where it comes from and how it is written. */
  public static Exercise readExercise(String name, String text) {
    return Document.of(name, text).read(CatalogFormat::exercise);
  }

  /** Reads one goal, at most 1 MB; its words are not held against any catalog. */
  public static Goal readGoal(Path file) {
    return Document.of(file, Document.BY_HAND).read(CatalogFormat::goal);
  }

  /** Reads one goal from a text; the name says where it comes from and how it is written. */
  public static Goal readGoal(String name, String text) {
    return Document.of(name, text).read(CatalogFormat::goal);
  }

  private static Optional<Exercise> exercise(Node node, Faults faults) {
    return ExerciseReader.read(node, Vocabulary.ANY, faults);
  }

  private static Optional<Goal> goal(Node node, Faults faults) {
    return GoalForm.read(node, Vocabulary.ANY, faults);
  }

  /** Reads a list of work products, at most 1 MB. */
  public static List<Product> readProducts(Path file) {
    return Document.of(file, Document.BY_HAND).read(WordsForm::products);
  }

  /** Reads a list of tools, at most 1 MB. */
  public static List<Tool> readTools(Path file) {
    return Document.of(file, Document.BY_HAND).read(WordsForm::tools);
  }

  /** Reads a catalog folder that stands on its own. */
  public static Catalog readDirectory(Path directory) {
    return readDirectory(directory, Catalog.of(List.of(), List.of(), List.of(), List.of()));
  }

  /**
   * Reads a catalog folder that adds to another catalog. It may use the other's words, and an entry
   * takes the place of the other's entry with the same id.
   */
  public static Catalog readDirectory(Path directory, Catalog base) {
    return Layers.of("below", base).with(readLayer(directory, base).strictly()).catalog();
  }

  /**
   * Reads a catalog folder as a layer over another catalog, whose words it may use. What is wrong
   * is in the answer, and the layer holds all that is sound.
   *
   * <p>A file with {@code retired: true} beside its {@code id} takes the entry of that id out.
   */
  public static LayerReading readLayer(Path folder, Catalog below) {
    return LayerReader.folder(folder, below);
  }

  /**
   * Reads files of a catalog that lie anywhere as a layer over another catalog: exercises, goals,
   * {@code products.yaml}, {@code tools.yaml} and whole catalogs in JSON, at most 64 MB each.
   *
   * @param name of the layer
   */
  public static LayerReading readLayer(String name, List<Path> files, Catalog below) {
    return LayerReader.files(name, files, below);
  }

  /** Reads a text as a layer of one file over another catalog; the name is the file's. */
  public static LayerReading readLayer(String name, String text, Catalog below) {
    return LayerReader.text(name, text, below);
  }

  /** Reads a whole catalog from one file, at most 64 MB. */
  public static Catalog read(Path file) {
    return Document.of(file, Document.BY_PROGRAM).read(CatalogForm::read);
  }

  /** Reads a whole catalog from one text. */
  public static Catalog read(String name, String text) {
    return Document.of(name, text).read(CatalogForm::read);
  }

  /** The exercise in YAML. */
  public static String write(Exercise exercise) {
    return YamlWriter.write(ExerciseWriter.tree(exercise));
  }

  /** The goal in YAML. */
  public static String write(Goal goal) {
    return YamlWriter.write(GoalForm.tree(goal));
  }

  /** The work products in YAML. */
  public static String writeProducts(Collection<Product> products) {
    return YamlWriter.write(WordsForm.productsTree(products));
  }

  /** The tools in YAML. */
  public static String writeTools(Collection<Tool> tools) {
    return YamlWriter.write(WordsForm.toolsTree(tools));
  }

  /** The whole catalog as one JSON document without white space. */
  public static String write(Catalog catalog) {
    return JsonWriter.writeDense(CatalogForm.tree(catalog));
  }

  /**
   * Writes the whole catalog in a form that {@link #readCompiled} of the same version reads in a
   * tenth of the time that JSON takes a program which has just started. No form to exchange.
   *
   * @throws IOException if the stream fails
   */
  public static void writeCompiled(Catalog catalog, OutputStream out) throws IOException {
    CompiledWriter.write(catalog, out);
  }

  /**
   * Reads what {@link #writeCompiled} wrote.
   *
   * @throws IOException if the stream fails or holds something else
   */
  public static Catalog readCompiled(InputStream in) throws IOException {
    return CompiledReader.read(in.readAllBytes());
  }
}
