package org.arcwright.catalog;

/**
 * A work product: something an exercise yields and a later one needs.
 *
 * @param id such as {@code idea-pool}
 * @param title in words, such as "idea pool"
 * @param meaning what exists afterwards, in one line
 */
public record Product(String id, String title, String meaning) {
  /** Refuses a malformed id and blank texts. */
  public Product {
    Checks.id("id", id);
    title = Checks.text("title", title, 60);
    meaning = Checks.text("meaning", meaning, 200);
  }
}
