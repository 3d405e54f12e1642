package org.arcwright.format;

import static java.util.stream.Collectors.toList;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Layer;
import org.arcwright.catalog.Nearest;
import org.arcwright.catalog.Phase;
import org.arcwright.catalog.Product;
import org.arcwright.catalog.Suitability;
import org.arcwright.catalog.Tool;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.Node;
import org.arcwright.format.tree.Node.Sequence;

/** Reads the files of a layer, the words first, and collects the problems of all. */
final class LayerReader {
  private final LayerWords<Product> products;
  private final LayerWords<Tool> tools;
  private final LayerEntries<Exercise> exercises;
  private final LayerEntries<Goal> goals;
  private final List<CatalogFile> files = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();
  private final Set<String> leftOut = new LinkedHashSet<>();

  private LayerReader(Catalog base) {
    this.products = new LayerWords<>(base.products().keySet(), Product::id);
    this.tools = new LayerWords<>(base.tools().keySet(), Tool::id);
    this.exercises =
        new LayerEntries<>(
            "exercise", ExerciseReader.KEYS, base.exercises().keySet(), Exercise::id);
    this.goals = new LayerEntries<>("goal", GoalForm.KEYS, base.goals().keySet(), Goal::id);
  }

  /** Reads a catalog folder. */
  static LayerReading folder(Path folder, Catalog base) {
    LayerReader reader = new LayerReader(base);
    if (Files.isDirectory(folder)) {
      reader.read(folder);
    } else {
      reader.problem(folder, "no such folder", "", "name a catalog folder");
    }
    return reader.end(folder.toString());
  }

  /** Reads files that lie anywhere; each says by its content what it holds. */
  static LayerReading files(String name, List<Path> files, Catalog base) {
    LayerReader reader = new LayerReader(base);
    reader.read(files.stream().map(file -> Document.of(file, Document.BY_PROGRAM)).toList());
    return reader.end(name);
  }

  /** Reads one text as if it were a file of that name. */
  static LayerReading text(String name, String text, Catalog base) {
    LayerReader reader = new LayerReader(base);
    reader.read(List.of(Document.of(name, text)));
    return reader.end(name);
  }

  private void read(Path folder) {
    refuseStrays(folder);
    Path productsFile = folder.resolve(CatalogFolders.PRODUCTS);
    Path toolsFile = folder.resolve(CatalogFolders.TOOLS);
    if (Files.exists(productsFile)) {
      readWords(open(productsFile), WordsForm::products, products);
    }
    if (Files.exists(toolsFile)) {
      readWords(open(toolsFile), WordsForm::tools, tools);
    }
    for (Path file : yamlFiles(folder.resolve(CatalogFolders.EXERCISES), Integer.MAX_VALUE)) {
      readExercise(open(file));
    }
    for (Path file : yamlFiles(folder.resolve(CatalogFolders.GOALS), Integer.MAX_VALUE)) {
      readGoal(open(file));
    }
  }

  private static Document open(Path file) {
    return Document.of(file, Document.BY_HAND);
  }

  private void read(List<Document> documents) {
    List<Document> entries = new ArrayList<>();
    for (Document document : documents) {
      if (isList(document, CatalogFolders.PRODUCTS)) {
        readWords(document, WordsForm::products, products);
      } else if (isList(document, CatalogFolders.TOOLS)) {
        readWords(document, WordsForm::tools, tools);
      } else {
        entries.add(document);
      }
    }
    for (Document document : entries) {
      if (has(document, "exercises")) {
        readWhole(document);
      } else if (has(document, "arc")) {
        readGoal(document);
      } else {
        readExercise(document);
      }
    }
  }

  private static boolean isList(Document document, String name) {
    return document.name().endsWith(name)
        && document.root().filter(Sequence.class::isInstance).isPresent();
  }

  private static boolean has(Document document, String key) {
    return document.root().flatMap(node -> node.lookUp(key)).isPresent();
  }

  private <T> void readWords(
      Document document, BiFunction<Node, Faults, Optional<List<T>>> reader, LayerWords<T> words) {
    words.add(document.tryRead(reader).orElse(List.of()), document.isSound());
    close(document);
  }

  private void readExercise(Document document) {
    if (document.root().filter(Retirement::isOne).isPresent()) {
      exercises.retire(document);
    } else {
      Optional<Exercise> exercise = document.tryRead(this::readExercise);
      exercises.checkName(document);
      document.root().ifPresent(node -> keep(document, node, exercise, Optional.empty()));
    }
    close(document);
  }

  private void readGoal(Document document) {
    if (document.root().filter(Retirement::isOne).isPresent()) {
      goals.retire(document);
    } else {
      Optional<Goal> goal = document.tryRead(this::readGoal);
      goals.checkName(document);
      document.root().ifPresent(node -> keep(document, node, Optional.empty(), goal));
    }
    close(document);
  }

  private Optional<Exercise> readExercise(Node node, Faults faults) {
    return ExerciseReader.read(node, vocabulary(), faults);
  }

  private Optional<Goal> readGoal(Node node, Faults faults) {
    return GoalForm.read(node, vocabulary(), faults);
  }

  private void keep(
      Document document, Node node, Optional<Exercise> exercise, Optional<Goal> goal) {
    exercise.ifPresent(entry -> exercises.checkClash(document, node));
    goal.ifPresent(entry -> goals.checkClash(document, node));
    if (exercise.isPresent() || goal.isPresent()) {
      files.add(new CatalogFile(document, node, exercise, goal));
    }
  }

  /** A whole catalog as one document, as {@link CatalogFormat#write(Catalog)} writes it. */
  private void readWhole(Document document) {
    Faults faults = document.faults();
    Fields fields = Fields.of(document.root().orElseThrow(), "catalog", CatalogForm.KEYS, faults);
    List<Product> ownProducts =
        fields.required("products").flatMap(n -> WordsForm.products(n, faults)).orElse(List.of());
    List<Tool> ownTools =
        fields.required("tools").flatMap(n -> WordsForm.tools(n, faults)).orElse(List.of());
    products.add(ownProducts, document.isSound());
    tools.add(ownTools, document.isSound());
    fields
        .list("exercises", (n, all) -> Optional.of(n))
        .forEach(node -> keep(document, node, readExercise(node, faults), Optional.empty()));
    fields
        .list("goals", (n, all) -> Optional.of(n))
        .forEach(node -> keep(document, node, Optional.empty(), readGoal(node, faults)));
    close(document);
  }

  private Vocabulary vocabulary() {
    return new Vocabulary(products.vocabulary(), tools.vocabulary());
  }

  private void close(Document document) {
    problems.addAll(document.problems());
    if (!document.isSound()) {
      leftOut.add(document.name());
    }
  }

  /** What lies where nothing is expected would be left out without a word. */
  private void refuseStrays(Path folder) {
    for (Path file : yamlFiles(folder, 1)) {
      String name = String.valueOf(file.getFileName());
      if (!name.equals(CatalogFolders.PRODUCTS) && !name.equals(CatalogFolders.TOOLS)) {
        problem(file, "file out of place", "", "exercises go into exercises/, goals into goals/");
      }
    }
    List<String> expected = List.of(CatalogFolders.EXERCISES, CatalogFolders.GOALS);
    for (Path inner : folders(folder)) {
      String name = String.valueOf(inner.getFileName());
      Optional<String> near = Nearest.to(name, expected);
      if (near.isPresent() && !expected.contains(name)) {
        problem(inner, "unknown folder", name, "perhaps " + near.get());
      }
    }
  }

  private static List<Path> folders(Path folder) {
    try (Stream<Path> inner = Files.list(folder)) {
      return inner.filter(Files::isDirectory).sorted().collect(toList());
    } catch (IOException | UncheckedIOException e) {
      return List.of();
    }
  }

  private List<Path> yamlFiles(Path folder, int depth) {
    try {
      return CatalogFolders.yamlFiles(folder, depth);
    } catch (UncheckedIOException e) {
      problem(folder, "folder that cannot be read", "", "check its permissions");
      return List.of();
    }
  }

  private void problem(Path file, String what, String value, String remedy) {
    problems.add(new Problem(new Place(file.toString(), 0, 0), what, value, remedy));
    leftOut.add(file.toString());
  }

  private LayerReading end(String name) {
    for (CatalogFile file : files) {
      if (file.isSound() && usesKnownWords(file)) {
        file.exercise().ifPresent(exercises::add);
        file.goal().ifPresent(goals::add);
      } else {
        leftOut.add(file.name());
      }
    }
    Layer layer =
        new Layer(
            name,
            products.added(),
            tools.added(),
            exercises.all(),
            goals.all(),
            exercises.retired(),
            goals.retired());
    return new LayerReading(layer, files, problems, List.copyOf(leftOut));
  }

  /** After a faulty file of words, not every word that an entry uses need be known. */
  private boolean usesKnownWords(CatalogFile file) {
    return file.exercise().filter(exercise -> !usesKnownWords(exercise)).isEmpty()
        && file.goal().filter(goal -> !usesKnownWords(goal)).isEmpty();
  }

  private boolean usesKnownWords(Exercise exercise) {
    return products.haveAll(exercise.needs())
        && products.haveAll(exercise.yields())
        && exercise.modes().values().stream().map(Suitability::tools).allMatch(tools::haveAll);
  }

  private boolean usesKnownWords(Goal goal) {
    return products.haveAll(goal.yields())
        && products.haveAll(goal.given())
        && goal.arc().stream().map(Phase::yields).allMatch(products::haveAll);
  }
}
