package org.arcwright.format;

import java.util.Optional;
import java.util.Set;
import org.arcwright.catalog.Catalog;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.Node;

/**
 * The words that exercises and goals may use.
 *
 * @param products ids of the work products, if they are known
 * @param tools ids of the tools, if they are known
 */
record Vocabulary(Optional<Set<String>> products, Optional<Set<String>> tools) {
  /** Any word at all: a single file says nothing about the catalog it will belong to. */
  static final Vocabulary ANY = new Vocabulary(Optional.empty(), Optional.empty());

  static Vocabulary of(Set<String> products, Set<String> tools) {
    return new Vocabulary(Optional.of(products), Optional.of(tools));
  }

  static Vocabulary of(Catalog catalog) {
    return of(catalog.products().keySet(), catalog.tools().keySet());
  }

  /** An unknown work product under the key is a fault. */
  void checkProducts(Fields fields, String key, Faults faults) {
    check(fields.optional(key), "work product", products, faults);
  }

  /** An unknown tool under the key is a fault. */
  void checkTools(Fields fields, String key, Faults faults) {
    check(fields.optional(key), "tool", tools, faults);
  }

  private static void check(
      Optional<Node> words, String what, Optional<Set<String>> known, Faults faults) {
    if (words.isPresent() && known.isPresent()) {
      Known.check(words.get(), what, known.get(), faults);
    }
  }
}
