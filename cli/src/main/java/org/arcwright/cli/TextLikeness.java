package org.arcwright.cli;

import java.util.Collection;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.apache.commons.text.similarity.CosineSimilarity;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Step;
import org.arcwright.shelf.Likeness;

/**
 * How alike two exercises tell what is done: the cosine between their words, each weighted by how
 * often it stands there and how rare it is on the shelf (Salton and Buckley 1988, "Term-weighting
 * approaches in automatic text retrieval").
 */
final class TextLikeness implements Likeness {
  private static final Pattern BETWEEN_WORDS = Pattern.compile("[^\\p{L}\\p{N}]+");

  /** The cosine is worked out in whole numbers, so weights have two digits more. */
  private static final int SCALE = 100;

  private final CosineSimilarity cosine = new CosineSimilarity();
  private final Map<String, Integer> shelves = new HashMap<>();
  private final int size;
  private final IdentityHashMap<Exercise, Map<CharSequence, Integer>> weighted =
      new IdentityHashMap<>();

  /** Learns from a shelf which words are rare. */
  TextLikeness(Collection<Exercise> shelf) {
    this.size = shelf.size();
    for (Exercise exercise : shelf) {
      counts(exercise).keySet().forEach(word -> shelves.merge(word, 1, Integer::sum));
    }
  }

  @Override
  public double of(Exercise one, Exercise other) {
    Map<CharSequence, Integer> left = weighted.computeIfAbsent(one, this::weigh);
    Map<CharSequence, Integer> right = weighted.computeIfAbsent(other, this::weigh);
    return left.isEmpty() || right.isEmpty() ? 0 : cosine.cosineSimilarity(left, right);
  }

  private Map<CharSequence, Integer> weigh(Exercise exercise) {
    Map<CharSequence, Integer> weights = new HashMap<>();
    counts(exercise)
        .forEach(
            (word, count) -> {
              double rarity = Math.log((size + 1.0) / (shelves.getOrDefault(word, 0) + 0.5));
              int weight = (int) Math.round(SCALE * count * Math.max(0, rarity));
              if (weight > 0) {
                weights.put(word, weight);
              }
            });
    return weights;
  }

  private static Map<String, Integer> counts(Exercise exercise) {
    StringBuilder text = new StringBuilder(exercise.title());
    text.append(' ').append(exercise.purpose()).append(' ').append(exercise.opening());
    for (Step step : exercise.steps()) {
      text.append(' ').append(step.text());
    }
    Map<String, Integer> counts = new HashMap<>();
    for (String word : BETWEEN_WORDS.split(text.toString().toLowerCase(Locale.ROOT), -1)) {
      if (!word.isEmpty()) {
        counts.merge(word, 1, Integer::sum);
      }
    }
    return counts;
  }
}
