package org.arcwright.format;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.arcwright.compose.check.Finding;
import org.arcwright.compose.instance.Instance.Bounds;
import org.arcwright.compose.instance.Instance.Meal;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;
import org.arcwright.format.tree.Values;

/**
 * Reads and writes a checker's finding: its kind is its record's name, and its values are the
 * record's components, so that a new kind of finding needs nothing here.
 */
final class FindingForm {
  private static final Keys KEYS =
      Keys.of(
          "kind: \"side-by-side\"", "rule: 5", "at: 35", "text: \"...\"", "values: {\"at\": 35}");

  private FindingForm() {}

  /** {@code StretchTooLong} as {@code stretch-too-long}. */
  static String kind(Class<?> type) {
    return type.getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
  }

  static Node tree(Finding finding) {
    Branch values = new Branch();
    for (RecordComponent component : finding.getClass().getRecordComponents()) {
      values.put(component.getName(), value(component, finding));
    }
    return new Branch()
        .put("kind", kind(finding.getClass()))
        .put("rule", finding.rule())
        .put("at", finding.at())
        .put("text", finding.text())
        .put("values", values.end())
        .end();
  }

  private static Node value(RecordComponent component, Finding finding) {
    try {
      return tree(component.getAccessor().invoke(finding));
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(component + " cannot be read", e);
    }
  }

  private static Node tree(Object value) {
    if (value instanceof Number number) {
      return Branch.number(number.longValue());
    }
    if (value instanceof Boolean flag) {
      return Branch.flag(flag);
    }
    if (value instanceof Set<?> words) {
      return tree(new ArrayList<>(new TreeSet<>(words)));
    }
    if (value instanceof Collection<?> list) {
      return Branch.list(list, FindingForm::tree);
    }
    if (value instanceof Bounds bounds) {
      return Branch.numbers(List.of(bounds.min(), bounds.max()));
    }
    if (value instanceof Meal meal) {
      return InstanceFormat.tree(meal);
    }
    return Branch.text(value.toString());
  }

  static Optional<Finding> read(Node node, Faults faults) {
    Fields fields = Fields.of(node, "finding", KEYS, faults);
    String kind = fields.text("kind");
    fields.whole("rule");
    fields.longWhole("at");
    fields.text("text");
    Optional<Node> values = fields.required("values");
    Optional<Class<?>> type = type(kind);
    if (type.isEmpty()) {
      fields.optional("kind").ifPresent(n -> Known.check(n, "kind of finding", kinds(), faults));
      return Optional.empty();
    }
    return values.flatMap(n -> finding(type.get(), n, faults));
  }

  private static Optional<Class<?>> type(String kind) {
    for (Class<?> type : Finding.class.getPermittedSubclasses()) {
      if (kind(type).equals(kind)) {
        return Optional.of(type);
      }
    }
    return Optional.empty();
  }

  /** All kinds of finding, by name. */
  static Set<String> kinds() {
    Set<String> kinds = new TreeSet<>();
    for (Class<?> type : Finding.class.getPermittedSubclasses()) {
      kinds.add(kind(type));
    }
    return kinds;
  }

  private static Optional<Finding> finding(Class<?> type, Node values, Faults faults) {
    RecordComponent[] components = type.getRecordComponents();
    String[] names = new String[components.length];
    Class<?>[] types = new Class<?>[components.length];
    Object[] arguments = new Object[components.length];
    for (int i = 0; i < components.length; i++) {
      names[i] = components[i].getName();
      types[i] = components[i].getType();
    }
    Fields fields = Fields.of(values, "values", Keys.of(names), faults);
    for (int i = 0; i < components.length; i++) {
      arguments[i] = value(types[i], names[i], fields, faults);
    }
    return fields.build(() -> make(type, types, arguments));
  }

  private static Finding make(Class<?> type, Class<?>[] types, Object[] arguments) {
    try {
      return (Finding) type.getDeclaredConstructor(types).newInstance(arguments);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(type + " cannot be made", e);
    }
  }

  private static Object value(Class<?> type, String name, Fields fields, Faults faults) {
    if (type == int.class) {
      return fields.whole(name);
    }
    if (type == long.class) {
      return fields.longWhole(name);
    }
    if (type == boolean.class) {
      return fields.required(name).flatMap(n -> Values.flag(n, name, faults)).orElse(Boolean.FALSE);
    }
    if (type == List.class) {
      return fields.wholes(name);
    }
    if (type == Set.class) {
      return Set.copyOf(fields.texts(name));
    }
    if (type == Bounds.class) {
      List<Integer> bounds = fields.wholes(name);
      fields.checkLength(name, 2, "[1, 2]");
      return bounds.size() == 2 ? new Bounds(bounds.get(0), bounds.get(1)) : new Bounds(0, 0);
    }
    if (type == Meal.class) {
      return fields
          .required(name)
          .flatMap(n -> InstanceReader.meal(n, faults))
          .orElse(new Meal(0, 0, 0));
    }
    return fields.text(name);
  }
}
