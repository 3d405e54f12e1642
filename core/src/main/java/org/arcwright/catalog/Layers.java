package org.arcwright.catalog;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * A catalog built up from layers, the upper over the lower, that knows where each entry comes from.
 * Immutable.
 */
public final class Layers {
  private final List<Layer> layers;
  private final Catalog catalog;

  private Layers(List<Layer> layers, Catalog catalog) {
    this.layers = List.copyOf(layers);
    this.catalog = catalog;
  }

  /**
   * Which layer has the last word on an entry.
   *
   * @param layer its name
   * @param retired whether it takes the entry out
   * @param below names of the layers whose entry it replaces or takes out, the uppermost first
   */
  public record Origin(String layer, boolean retired, List<String> below) {
    /** Takes a copy. */
    public Origin {
      below = List.copyOf(below);
    }
  }

  /** A single layer: the whole catalog, under a name. */
  public static Layers of(String name, Catalog catalog) {
    return new Layers(List.of(Layer.of(name, catalog)), catalog);
  }

  /**
   * These layers with another on top. Linear in the size of all.
   *
   * @throws InvalidValueException if an entry of it uses a word that no layer names
   */
  public Layers with(Layer upper) {
    List<Layer> all = new ArrayList<>(layers);
    all.add(upper);
    return new Layers(
        all,
        Catalog.of(
                merged(catalog.products(), upper.products(), Product::id).values(),
                merged(catalog.tools(), upper.tools(), Tool::id).values(),
                merged(
                        without(catalog.exercises(), upper.retiredExercises()),
                        upper.exercises(),
                        Exercise::id)
                    .values(),
                merged(without(catalog.goals(), upper.retiredGoals()), upper.goals(), Goal::id)
                    .values())
            .withRules(catalog.rules().values().toArray(Rule[]::new)));
  }

  private static <T> Map<String, T> without(Map<String, T> entries, Collection<String> retired) {
    Map<String, T> left = new LinkedHashMap<>(entries);
    left.keySet().removeAll(retired);
    return left;
  }

  private static <T> Map<String, T> merged(
      Map<String, T> lower, Collection<T> upper, Function<T, String> id) {
    Map<String, T> all = new LinkedHashMap<>(lower);
    for (T value : upper) {
      all.put(id.apply(value), value);
    }
    return all;
  }

  /** The catalog that they make together. */
  public Catalog catalog() {
    return catalog;
  }

  /** The layers, the lowest first. */
  public List<Layer> all() {
    return layers;
  }

  /** Where the exercise with that id comes from, or went; nothing if no layer knows it. */
  public Optional<Origin> ofExercise(String id) {
    return origin(
        layer -> layer.exercises().stream().anyMatch(exercise -> exercise.id().equals(id)),
        layer -> layer.retiredExercises().contains(id));
  }

  /** Where the goal with that id comes from, or went; nothing if no layer knows it. */
  public Optional<Origin> ofGoal(String id) {
    return origin(
        layer -> layer.goals().stream().anyMatch(goal -> goal.id().equals(id)),
        layer -> layer.retiredGoals().contains(id));
  }

  private Optional<Origin> origin(Predicate<Layer> has, Predicate<Layer> retires) {
    List<Layer> having = new ArrayList<>();
    Optional<Layer> last = Optional.empty();
    boolean retired = false;
    for (int i = layers.size() - 1; i >= 0; i--) {
      Layer layer = layers.get(i);
      if (last.isEmpty() && (has.test(layer) || retires.test(layer))) {
        last = Optional.of(layer);
        retired = !has.test(layer);
      } else if (last.isPresent() && has.test(layer)) {
        having.add(layer);
      }
    }
    boolean out = retired;
    return last.map(
        layer -> new Origin(layer.name(), out, having.stream().map(Layer::name).toList()));
  }
}
