package org.arcwright.format;

import java.util.Optional;
import org.arcwright.catalog.Checks;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;
import org.arcwright.format.tree.Node.Mapping;
import org.arcwright.format.tree.Node.Scalar;
import org.arcwright.format.tree.Node.ScalarType;

/**
 * A file that takes an entry out of the catalog below it: {@code retired: true} beside its id. What
 * else stands there is kept for a later day and not looked at.
 *
 * @param id of the entry that is taken out
 * @param bare whether nothing else stands there
 */
record Retirement(String id, boolean bare) {
  static final String KEY = "retired";

  /** Whether the file takes an entry out. */
  static boolean isOne(Node node) {
    return node instanceof Mapping mapping
        && mapping
            .find(KEY)
            .filter(
                member ->
                    member.value() instanceof Scalar scalar
                        && scalar.type() == ScalarType.FLAG
                        && scalar.text().equals("true"))
            .isPresent();
  }

  /** Reads it; {@code keys} are those of the entry. */
  static Optional<Retirement> read(Node node, String what, Keys keys, Faults faults) {
    Fields fields = Fields.of(node, what, keys, faults);
    String id = fields.text("id");
    boolean bare = node instanceof Mapping mapping && mapping.members().size() <= 2;
    return fields.build(() -> new Retirement(Checks.id("id", id), bare));
  }

  /** Where an entry itself is asked for, one that is taken out is a fault. */
  static void refuse(Fields fields, Faults faults) {
    if (fields.flag(KEY)) {
      fields
          .optional(KEY)
          .ifPresent(
              node ->
                  faults.add(
                      node,
                      KEY,
                      "only a folder that adds to another catalog takes out; strike it"));
    }
  }
}
