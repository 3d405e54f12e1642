package org.arcwright.catalog;

import java.util.Collection;
import java.util.List;
import java.util.Set;

/**
 * A shelf that lies over another catalog: what has a new id is added, what has an id of the other's
 * takes its place, and what is retired is taken out.
 *
 * @param name of the shelf, such as its folder
 * @param products its work products
 * @param tools its tools
 * @param exercises its exercises
 * @param goals its goals
 * @param retiredExercises ids of exercises that it takes out
 * @param retiredGoals ids of goals that it takes out
 */
public record Layer(
    String name,
    List<Product> products,
    List<Tool> tools,
    List<Exercise> exercises,
    List<Goal> goals,
    Set<String> retiredExercises,
    Set<String> retiredGoals) {
  /** Takes copies; refuses a blank name. */
  public Layer {
    name = Checks.text("name", name, 4096);
    products = List.copyOf(products);
    tools = List.copyOf(tools);
    exercises = List.copyOf(exercises);
    goals = List.copyOf(goals);
    retiredExercises = Set.copyOf(retiredExercises);
    retiredGoals = Set.copyOf(retiredGoals);
  }

  /** A whole catalog as a layer that takes nothing out. */
  public static Layer of(String name, Catalog catalog) {
    return new Layer(
        name,
        copy(catalog.products().values()),
        copy(catalog.tools().values()),
        copy(catalog.exercises().values()),
        copy(catalog.goals().values()),
        Set.of(),
        Set.of());
  }

  private static <T> List<T> copy(Collection<T> values) {
    return List.copyOf(values);
  }
}
