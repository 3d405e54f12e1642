package org.arcwright.format.tree;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/**
 * The keys that a mapping may have, each with an example of its value for the message when it is
 * missing.
 */
public final class Keys {
  private final Map<String, String> examples = new LinkedHashMap<>();

  private Keys() {}

  /** Keys, each as {@code key} or {@code key: example}. */
  public static Keys of(String... keys) {
    Keys all = new Keys();
    for (String key : keys) {
      int colon = key.indexOf(':');
      all.examples.put(colon < 0 ? key : key.substring(0, colon), colon < 0 ? "" : key);
    }
    return all;
  }

  /** The keys, in the order of writing. */
  public Set<String> names() {
    return examples.keySet();
  }

  /** What to do when the key is missing. */
  String remedy(String key) {
    String example = examples.getOrDefault(key, "");
    return example.isEmpty() ? "add it" : "add it, such as " + example;
  }
}
