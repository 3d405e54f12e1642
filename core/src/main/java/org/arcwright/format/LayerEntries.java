package org.arcwright.format;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import org.arcwright.catalog.Nearest;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;
import org.arcwright.format.tree.Node.Scalar;

/** The entries of one sort in a layer: which files hold them, and which are taken out. */
final class LayerEntries<T> {
  private final String what;
  private final Keys keys;
  private final Set<String> below;
  private final Function<T, String> id;
  private final Map<String, T> sound = new TreeMap<>();
  private final Map<String, String> names = new HashMap<>();
  private final Set<String> retired = new HashSet<>();

  LayerEntries(String what, Keys keys, Set<String> below, Function<T, String> id) {
    this.what = what;
    this.keys = keys;
    this.below = below;
    this.id = id;
  }

  void add(T entry) {
    sound.put(id.apply(entry), entry);
  }

  List<T> all() {
    return new ArrayList<>(sound.values());
  }

  Set<String> retired() {
    return retired;
  }

  /** An id that another file has, too, is a fault. */
  void checkClash(Document document, Node entry) {
    if (entry.lookUp("id").orElse(entry) instanceof Scalar node
        && !document.faults().isWithin(node)) {
      String before = names.putIfAbsent(node.text(), document.name());
      if (before != null) {
        document.faults().add(node, "id", before + " has it already; rename one");
      }
    }
  }

  /** An id that is not the file's name is a fault. */
  void checkName(Document document) {
    Optional<Node> found = document.root().flatMap(root -> root.lookUp("id"));
    if (found.isPresent()
        && found.get() instanceof Scalar node
        && !document.faults().isWithin(node)) {
      String name = document.name().replaceFirst("^.*[/\\\\]", "").replaceFirst("\\.[^.]*$", "");
      if (!node.text().equals(name)) {
        document.faults().add(node, "id", "it equals the file's name, " + name);
      }
    }
  }

  /** Reads a file that takes an entry out of what lies below. */
  void retire(Document document) {
    Optional<Retirement> retirement =
        document.tryRead((node, faults) -> Retirement.read(node, what, keys, faults));
    document.root().ifPresent(node -> checkClash(document, node));
    checkName(document);
    if (retirement.isEmpty() || !document.isSound()) {
      return;
    }
    String out = retirement.get().id();
    if (below.contains(out)) {
      retired.add(out);
    } else if (retirement.get().bare()) {
      document
          .faults()
          .add(
              document.root().orElseThrow().at("id"),
              "id",
              Nearest.to(out, below)
                  .map(near -> "there is no such " + what + " to take out; perhaps " + near)
                  .orElse("there is no such " + what + " to take out"));
    }
  }
}
