package org.arcwright.format;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import org.arcwright.format.tree.Fault;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Node;
import org.arcwright.format.tree.Syntax;
import org.arcwright.format.tree.TextFile;
import org.arcwright.format.tree.TreeReader;

/**
 * One file: its text becomes a tree, the tree becomes a value, and what is wrong becomes problems.
 */
final class Document {
  /** Briefs, exercises, goals and agendas are written by hand; a larger one is a mistake. */
  static final int BY_HAND = 1 << 20;

  /** Instances and whole catalogs are written by programs. */
  static final int BY_PROGRAM = 64 << 20;

  private final String name;
  private final Faults faults = new Faults();
  private Optional<Node> root = Optional.empty();

  private Document(String name) {
    this.name = name;
  }

  /** Reads a file of at most so many bytes; its name says whether it is YAML or JSON. */
  static Document of(Path file, int mostBytes) {
    Document document = new Document(file.toString());
    document.parse(TextFile.read(file, mostBytes, document.faults), Optional.empty());
    return document;
  }

  /** Takes a text; its name says whether it is YAML or JSON. */
  static Document of(String name, String text) {
    Document document = new Document(name);
    document.parse(TextFile.check(text, document.faults), Optional.empty());
    return document;
  }

  /** Reads a file of at most so many bytes as JSON, whatever its name. */
  static Document json(Path file, int mostBytes) {
    Document document = new Document(file.toString());
    document.parse(TextFile.read(file, mostBytes, document.faults), Optional.of(Syntax.JSON));
    return document;
  }

  /** Takes a text as JSON, whatever its name. */
  static Document json(String name, String text) {
    Document document = new Document(name);
    document.parse(TextFile.check(text, document.faults), Optional.of(Syntax.JSON));
    return document;
  }

  private void parse(Optional<String> text, Optional<Syntax> syntax) {
    root =
        text.flatMap(t -> TreeReader.read(syntax.orElseGet(() -> Syntax.of(name, t)), t, faults));
  }

  String name() {
    return name;
  }

  /** Whether nothing is wrong with it so far. */
  boolean isSound() {
    return faults.count() == 0;
  }

  /** Its tree, unless it could not be parsed. */
  Optional<Node> root() {
    return root;
  }

  Faults faults() {
    return faults;
  }

  /** What is wrong with it so far, by place. */
  List<Problem> problems() {
    return faults.list().stream().map(this::problem).toList();
  }

  /** A fault as something wrong in this file. */
  Problem problem(Fault fault) {
    return new Problem(
        new Place(name, fault.line(), fault.column()), fault.what(), fault.value(), fault.remedy());
  }

  /** Reads the tree as a value. */
  <T> Optional<T> tryRead(BiFunction<Node, Faults, Optional<T>> reader) {
    return root.flatMap(node -> reader.apply(node, faults));
  }

  /**
   * Reads the tree as a value.
   *
   * @throws FormatException if anything is wrong
   */
  <T> T read(BiFunction<Node, Faults, Optional<T>> reader) {
    Optional<T> value = tryRead(reader);
    if (faults.count() > 0 || value.isEmpty()) {
      throw new FormatException(problems());
    }
    return value.get();
  }
}
