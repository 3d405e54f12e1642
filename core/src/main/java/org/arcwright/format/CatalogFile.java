package org.arcwright.format;

import java.util.List;
import java.util.Optional;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Goal;
import org.arcwright.format.tree.Fault;
import org.arcwright.format.tree.Node;

/**
 * An exercise or a goal in a file, as far as it can be read, with the place of each value: for
 * those who look for more than the reader does. Where a value is wrong, another stands in for it;
 * ask {@link #isSound(String)} before saying anything about it.
 */
public final class CatalogFile {
  private final Document document;
  private final Node root;
  private final Optional<Exercise> exercise;
  private final Optional<Goal> goal;

  CatalogFile(Document document, Node root, Optional<Exercise> exercise, Optional<Goal> goal) {
    this.document = document;
    this.root = root;
    this.exercise = exercise;
    this.goal = goal;
  }

  /** The file's name, as it was given. */
  public String name() {
    return document.name();
  }

  /** The exercise as far as it can be read, if the file holds one. */
  public Optional<Exercise> exercise() {
    return exercise;
  }

  /** The goal as far as it can be read, if the file holds one. */
  public Optional<Goal> goal() {
    return goal;
  }

  /** Whether nothing is wrong in it. */
  public boolean isSound() {
    return !document.faults().isWithin(root);
  }

  /**
   * Whether nothing is wrong at a path, such as {@code people}, {@code steps[0].text} or {@code
   * modes.remote.tools}. What may be left out and is left out is right.
   */
  public boolean isSound(String path) {
    Optional<Node> node = root.lookUp(path);
    if (node.isPresent()) {
      return !document.faults().isWithin(node.get());
    }
    int dot = path.lastIndexOf('.');
    Optional<Node> parent = dot < 0 ? Optional.of(root) : root.lookUp(path.substring(0, dot));
    String key = path.substring(dot + 1);
    return parent
        .map(owner -> !document.faults().isMissing(owner, key))
        .orElseGet(() -> isSound(path.substring(0, dot)));
  }

  /** Whether a value stands at the path. */
  public boolean has(String path) {
    return root.lookUp(path).isPresent();
  }

  /** Something wrong with the value at a path, or with what lacks it. */
  public Problem problem(String path, String what, String value, String remedy) {
    Node node = root.at(path);
    return document.problem(new Fault(node.line(), node.column(), what, value, remedy));
  }

  /** What the reader found wrong in the file as a whole; other entries of the file included. */
  public List<Problem> problems() {
    return document.problems();
  }
}
