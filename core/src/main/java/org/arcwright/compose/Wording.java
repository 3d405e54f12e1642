package org.arcwright.compose;

import java.time.Duration;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.Iterator;
import java.util.Locale;
import org.arcwright.brief.OwnItem;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Phase;
import org.arcwright.catalog.Product;
import org.arcwright.compose.reduce.Reduction;

/** Names as people say them: titles for ids, the time of day for minutes. */
final class Wording {
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  private final Reduction reduction;

  Wording(Reduction reduction) {
    this.reduction = reduction;
  }

  /** The title of an exercise or own item in quotes; its id if nobody knows it. */
  String title(String id) {
    String title =
        reduction
            .catalog()
            .exercise(id)
            .map(Exercise::title)
            .or(
                () ->
                    reduction.brief().ownItems().stream()
                        .filter(item -> item.id().equals(id))
                        .map(OwnItem::title)
                        .findFirst())
            .orElse(id);
    return quoted(title);
  }

  /** The title of a phase in quotes. */
  String phase(String name) {
    return quoted(
        reduction.goal().arc().stream()
            .filter(phase -> phase.name().equals(name))
            .map(Phase::title)
            .findFirst()
            .orElse(name));
  }

  /** A work product, such as {@code the idea pool}. */
  String product(String id) {
    Product product = reduction.catalog().products().get(id);
    return "the " + (product == null ? id : product.title());
  }

  /** {@code 10:15} if the brief says when it starts, else {@code minute 75}. */
  String time(long minute) {
    return reduction
        .brief()
        .start()
        .map(start -> CLOCK.format(start.plus(Duration.ofMinutes(minute))))
        .orElse("minute " + minute);
  }

  /** {@code 10, 15 or 20}; {@code nothing} for none. */
  static String or(Collection<?> values) {
    StringBuilder text = new StringBuilder();
    Iterator<?> each = values.iterator();
    while (each.hasNext()) {
      Object value = each.next();
      String link = text.isEmpty() ? "" : each.hasNext() ? ", " : " or ";
      text.append(link).append(value);
    }
    return text.isEmpty() ? "nothing" : text.toString();
  }

  static String quoted(String text) {
    return "\"" + text + "\"";
  }
}
