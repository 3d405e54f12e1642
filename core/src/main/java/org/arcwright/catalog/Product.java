package org.arcwright.catalog;

import java.util.Set;

/**
 * A work product: something an exercise yields and a later one needs.
 *
 * @param id such as {@code idea-pool}
 * @param title in words, such as "idea pool"
 * @param meaning what exists afterwards, in one line
 */
public record Product(String id, String title, String meaning) {
  /** Work products that help on the way to any goal, whether or not another exercise needs them. */
  public static final Set<String> ALWAYS_OF_USE = Set.of("themes", "criteria", "feedback");

  /** Refuses a malformed id and blank texts. */
  public Product {
    Checks.id("id", id);
    title = Checks.text("title", title, 60);
    meaning = Checks.text("meaning", meaning, 200);
  }
}
