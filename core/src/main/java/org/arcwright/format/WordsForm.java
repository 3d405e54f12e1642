package org.arcwright.format;

import java.util.Collection;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Product;
import org.arcwright.catalog.Tool;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;
import org.arcwright.format.tree.Node.Scalar;
import org.arcwright.format.tree.Node.Sequence;
import org.arcwright.format.tree.Values;

/** Reads and writes the words that a catalog uses: work products and tools. */
final class WordsForm {
  private static final Keys PRODUCT =
      Keys.of("id: idea-pool", "title: idea pool", "meaning: many ideas, unsorted");
  private static final Keys TOOL =
      Keys.of(
          "id: board",
          "title: shared board",
          "meaning: a surface that all can write on",
          "modes: [remote, hybrid]");

  private WordsForm() {}

  static Optional<List<Product>> products(Node node, Faults faults) {
    return Optional.of(list(node, "work products", faults, WordsForm::product));
  }

  static Optional<List<Tool>> tools(Node node, Faults faults) {
    return Optional.of(list(node, "tools", faults, WordsForm::tool));
  }

  /** The words; one whose id stands twice is a fault. */
  private static <T> List<T> list(
      Node node, String what, Faults faults, BiFunction<Node, Faults, Optional<T>> word) {
    List<T> words = Values.list(node, what, faults, word);
    Set<String> seen = new HashSet<>();
    if (node instanceof Sequence sequence) {
      for (Node child : sequence.nodes()) {
        if (child.at("id") instanceof Scalar id && !seen.add(id.text())) {
          faults.add(id, "id", "it stands above already; strike one of the two");
        }
      }
    }
    return words;
  }

  private static Optional<Product> product(Node node, Faults faults) {
    Fields fields = Fields.of(node, "work product", PRODUCT, faults);
    String id = fields.text("id");
    String title = fields.text("title");
    String meaning = fields.text("meaning");
    return fields.build(() -> new Product(id, title, meaning));
  }

  private static Optional<Tool> tool(Node node, Faults faults) {
    Fields fields = Fields.of(node, "tool", TOOL, faults);
    String id = fields.text("id");
    String title = fields.text("title");
    String meaning = fields.text("meaning");
    List<Mode> modes = fields.list("modes", (n, all) -> Values.word(n, "modes", Mode.class, all));
    return fields.build(() -> new Tool(id, title, meaning, Set.copyOf(modes)));
  }

  static Node productsTree(Collection<Product> products) {
    return Branch.list(products, WordsForm::tree);
  }

  static Node toolsTree(Collection<Tool> tools) {
    return Branch.list(tools, WordsForm::tree);
  }

  private static Node tree(Product product) {
    return new Branch()
        .put("id", product.id())
        .put("title", product.title())
        .put("meaning", product.meaning())
        .end();
  }

  private static Node tree(Tool tool) {
    EnumSet<Mode> modes = EnumSet.noneOf(Mode.class);
    modes.addAll(tool.modes());
    return new Branch()
        .put("id", tool.id())
        .put("title", tool.title())
        .put("meaning", tool.meaning())
        .put("modes", modes.stream().map(Mode::word).toList())
        .end();
  }
}
