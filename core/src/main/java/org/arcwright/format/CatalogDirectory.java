package org.arcwright.format;

import static java.util.stream.Collectors.toList;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Product;
import org.arcwright.catalog.Tool;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Node;

/** Reads a catalog folder, the words first, and collects the problems of all its files. */
final class CatalogDirectory {
  private static final String PRODUCTS = "products.yaml";
  private static final String TOOLS = "tools.yaml";

  private final Path directory;
  private final Catalog base;
  private final List<Problem> problems = new ArrayList<>();

  CatalogDirectory(Path directory, Catalog base) {
    this.directory = directory;
    this.base = base;
  }

  Catalog read() {
    if (!Files.isDirectory(directory)) {
      problem(directory, "no such folder", "", "name a catalog folder");
      throw new FormatException(problems);
    }
    refuseStrays();
    Optional<Map<String, Product>> products =
        words(PRODUCTS, WordsForm::products, base.products(), Product::id);
    Optional<Map<String, Tool>> tools = words(TOOLS, WordsForm::tools, base.tools(), Tool::id);
    Vocabulary vocabulary = new Vocabulary(products.map(Map::keySet), tools.map(Map::keySet));
    Map<String, Exercise> exercises =
        entries(
            "exercises",
            (node, faults) -> ExerciseReader.read(node, vocabulary, faults),
            Exercise::id);
    Map<String, Goal> goals =
        entries("goals", (node, faults) -> GoalForm.read(node, vocabulary, faults), Goal::id);
    if (!problems.isEmpty()) {
      throw new FormatException(problems);
    }
    return Catalog.of(
        products.orElseThrow().values(),
        tools.orElseThrow().values(),
        merged(base.exercises(), exercises.values(), Exercise::id).values(),
        merged(base.goals(), goals.values(), Goal::id).values());
  }

  /** A YAML file where none is expected would be left out without a word. */
  private void refuseStrays() {
    for (Path file : yamlFiles(directory, 1)) {
      String name = String.valueOf(file.getFileName());
      if (!name.equals(PRODUCTS) && !name.equals(TOOLS)) {
        problem(file, "file out of place", "", "exercises go into exercises/, goals into goals/");
      }
    }
  }

  /**
   * The words of the base and of the file; none if there are problems, for then every use of a word
   * would seem to be another.
   */
  private <T> Optional<Map<String, T>> words(
      String name,
      BiFunction<Node, Faults, Optional<List<T>>> reader,
      Map<String, T> base,
      Function<T, String> id) {
    Path file = directory.resolve(name);
    if (!Files.exists(file)) {
      return Optional.of(base);
    }
    Document document = Document.of(file, Document.BY_HAND);
    Optional<List<T>> words = document.tryRead(reader);
    problems.addAll(document.problems());
    return document.problems().isEmpty()
        ? words.map(added -> merged(base, added, id))
        : Optional.empty();
  }

  private <T> Map<String, T> entries(
      String folder, BiFunction<Node, Faults, Optional<T>> reader, Function<T, String> id) {
    Map<String, T> entries = new TreeMap<>();
    Map<String, Path> files = new HashMap<>();
    for (Path file : yamlFiles(directory.resolve(folder), Integer.MAX_VALUE)) {
      Document document = Document.of(file, Document.BY_HAND);
      document
          .tryRead(reader)
          .ifPresent(
              entry -> {
                checkId(document, file, id.apply(entry), files);
                entries.put(id.apply(entry), entry);
              });
      problems.addAll(document.problems());
    }
    return entries;
  }

  private static void checkId(Document document, Path file, String id, Map<String, Path> files) {
    Node node = document.root().orElseThrow().at("id");
    String name = String.valueOf(file.getFileName()).replaceFirst("\\.ya?ml$", "");
    Path before = files.putIfAbsent(id, file);
    if (!id.equals(name)) {
      document.faults().add(node, "id", "it equals the file's name, " + name);
    } else if (before != null) {
      document.faults().add(node, "id", before + " has it already; rename one");
    }
  }

  private List<Path> yamlFiles(Path folder, int depth) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.walk(folder, depth)) {
      return files
          .filter(file -> String.valueOf(file.getFileName()).matches("[^.].*\\.ya?ml"))
          .filter(Files::isRegularFile)
          .sorted()
          .collect(toList());
    } catch (IOException | UncheckedIOException e) {
      problem(folder, "folder that cannot be read", "", "check its permissions");
      return List.of();
    }
  }

  private static <T> Map<String, T> merged(
      Map<String, T> base, Collection<T> added, Function<T, String> id) {
    Map<String, T> all = new LinkedHashMap<>(base);
    added.forEach(value -> all.put(id.apply(value), value));
    return all;
  }

  private void problem(Path file, String what, String value, String remedy) {
    problems.add(new Problem(new Place(file.toString(), 0, 0), what, value, remedy));
  }
}
