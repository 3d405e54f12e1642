package org.arcwright.format;

import static java.util.stream.Collectors.toSet;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Product;
import org.arcwright.catalog.Tool;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;

/** Reads and writes a whole catalog as one document. */
final class CatalogForm {
  static final Keys KEYS = Keys.of("products", "tools", "exercises", "goals");

  private CatalogForm() {}

  static Optional<Catalog> read(Node node, Faults faults) {
    Fields fields = Fields.of(node, "catalog", KEYS, faults);
    List<Product> products =
        fields.required("products").flatMap(n -> WordsForm.products(n, faults)).orElse(List.of());
    List<Tool> tools =
        fields.required("tools").flatMap(n -> WordsForm.tools(n, faults)).orElse(List.of());
    Set<String> productIds = products.stream().map(Product::id).collect(toSet());
    Set<String> toolIds = tools.stream().map(Tool::id).collect(toSet());
    Vocabulary vocabulary = Vocabulary.of(productIds, toolIds);
    List<Exercise> exercises =
        fields.list("exercises", (n, all) -> ExerciseReader.read(n, vocabulary, all));
    List<Goal> goals = fields.list("goals", (n, all) -> GoalForm.read(n, vocabulary, all));
    return fields.build(() -> Catalog.of(products, tools, exercises, goals));
  }

  static Node tree(Catalog catalog) {
    return new Branch()
        .put("products", WordsForm.productsTree(catalog.products().values()))
        .put("tools", WordsForm.toolsTree(catalog.tools().values()))
        .put("exercises", Branch.list(catalog.exercises().values(), ExerciseWriter::tree))
        .put("goals", Branch.list(catalog.goals().values(), GoalForm::tree))
        .end();
  }
}
