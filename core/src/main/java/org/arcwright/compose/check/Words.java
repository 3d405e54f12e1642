package org.arcwright.compose.check;

import java.util.Collection;
import java.util.Iterator;
import org.arcwright.compose.instance.Instance.Bounds;

/** Puts values into sentences. */
final class Words {
  private Words() {}

  /** {@code 10, 15 or 20}; {@code nothing} for none. */
  static String or(Collection<?> values) {
    if (values.isEmpty()) {
      return "nothing";
    }
    StringBuilder text = new StringBuilder();
    Iterator<?> each = values.iterator();
    text.append(each.next());
    while (each.hasNext()) {
      Object value = each.next();
      text.append(each.hasNext() ? ", " : " or ").append(value);
    }
    return text.toString();
  }

  /** {@code from 5 to 25}, {@code exactly 5}, or that nothing lies between. */
  static String within(Bounds bounds) {
    if (bounds.min() > bounds.max()) {
      return "at least %s and at most %s, so nothing".formatted(bounds.min(), bounds.max());
    }
    return bounds.min() == bounds.max()
        ? "exactly " + bounds.min()
        : "from %s to %s".formatted(bounds.min(), bounds.max());
  }
}
