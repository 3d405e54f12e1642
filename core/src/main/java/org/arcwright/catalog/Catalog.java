package org.arcwright.catalog;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Exercises, goals and the words they use, each found by its id, and rules, found by their names.
 * Immutable; everything is kept in the order of ids, so that the order of files never changes an
 * answer.
 */
public final class Catalog {
  /** Most rules of the kind "at most so many of these". */
  public static final int MOST_COUNTING = 6;

  private final Map<String, Product> products;
  private final Map<String, Tool> tools;
  private final Map<String, Exercise> exercises;
  private final Map<String, Goal> goals;
  private final Map<String, Rule> rules;

  private Catalog(
      Map<String, Product> products,
      Map<String, Tool> tools,
      Map<String, Exercise> exercises,
      Map<String, Goal> goals,
      Map<String, Rule> rules) {
    this.products = products;
    this.tools = tools;
    this.exercises = exercises;
    this.goals = goals;
    this.rules = rules;
  }

  /**
   * Builds a catalog.
   *
   * @throws InvalidValueException if an id stands twice, or an exercise or a goal uses a work
   *     product or a tool that is not named here
   */
  public static Catalog of(
      Collection<Product> products,
      Collection<Tool> tools,
      Collection<Exercise> exercises,
      Collection<Goal> goals) {
    Map<String, Product> productsById = new TreeMap<>();
    for (Product product : products) {
      put(productsById, "products", product.id(), product);
    }
    Map<String, Tool> toolsById = new TreeMap<>();
    for (Tool tool : tools) {
      put(toolsById, "tools", tool.id(), tool);
    }
    Map<String, Exercise> exercisesById = new TreeMap<>();
    for (Exercise exercise : exercises) {
      put(exercisesById, "exercises", exercise.id(), exercise);
    }
    Map<String, Goal> goalsById = new TreeMap<>();
    for (Goal goal : goals) {
      put(goalsById, "goals", goal.id(), goal);
    }
    Catalog catalog =
        new Catalog(
            Collections.unmodifiableMap(productsById),
            Collections.unmodifiableMap(toolsById),
            Collections.unmodifiableMap(exercisesById),
            Collections.unmodifiableMap(goalsById),
            Map.of());
    for (UnknownWord problem : catalog.problems()) {
      throw new InvalidValueException(
          problem.owner() + "." + problem.field(), problem.word(), problem.remedy());
    }
    return catalog;
  }

  private static <T> void put(Map<String, T> map, String field, String id, T value) {
    if (map.put(id, value) != null) {
      throw new InvalidValueException(
          field,
          id,
          "two entries share this " + (value instanceof Rule ? "name" : "id") + "; rename one");
    }
  }

  /**
   * A word that an entry uses and the catalog does not name.
   *
   * @param owner id of the exercise or goal
   * @param field the field it stands in
   * @param word the unknown word
   * @param remedy what would be right
   */
  public record UnknownWord(String owner, String field, String word, String remedy) {}

  private List<UnknownWord> problems() {
    List<UnknownWord> found = new ArrayList<>();
    for (Exercise exercise : exercises.values()) {
      unknown(found, exercise.id(), "needs", exercise.needs(), products);
      unknown(found, exercise.id(), "yields", exercise.yields(), products);
      for (Suitability suitability : exercise.modes().values()) {
        unknown(found, exercise.id(), "tools", suitability.tools(), tools);
      }
    }
    for (Goal goal : goals.values()) {
      unknown(found, goal.id(), "yields", goal.yields(), products);
      unknown(found, goal.id(), "given", goal.given(), products);
      for (Phase phase : goal.arc()) {
        unknown(found, goal.id(), "yields", phase.yields(), products);
      }
    }
    return found;
  }

  private static void unknown(
      List<UnknownWord> found,
      String owner,
      String field,
      Collection<String> words,
      Map<String, ?> known) {
    for (String word : words) {
      if (!known.containsKey(word)) {
        found.add(
            new UnknownWord(
                owner,
                field,
                word,
                Nearest.to(word, known.keySet())
                    .map(near -> "the catalog has no such word; perhaps " + near)
                    .orElse("the catalog has no such word; add it there first")));
      }
    }
  }

  /** All work products, by id. */
  public Map<String, Product> products() {
    return products;
  }

  /** All tools, by id. */
  public Map<String, Tool> tools() {
    return tools;
  }

  /** All exercises, by id. */
  public Map<String, Exercise> exercises() {
    return exercises;
  }

  /**
   * The same catalog with more rules, which every agenda from it then keeps. Files hold no rules.
   *
   * @throws InvalidValueException if two rules share a name, or more than {@value #MOST_COUNTING}
   *     of all count exercises
   */
  public Catalog withRules(Rule... more) {
    Map<String, Rule> all = new TreeMap<>(rules);
    for (Rule rule : more) {
      put(all, "rules", rule.name(), rule);
    }
    long counting = all.values().stream().filter(Rule.AtMost.class::isInstance).count();
    if (counting > MOST_COUNTING) {
      throw new InvalidValueException(
          "rules", counting + " that count", "at most " + MOST_COUNTING + " are right");
    }
    return with(all);
  }

  /** The same catalog without the rules of these names, so far as it has them. */
  public Catalog withoutRules(Collection<String> names) {
    Map<String, Rule> left = new TreeMap<>(rules);
    left.keySet().removeAll(names);
    return with(left);
  }

  private Catalog with(Map<String, Rule> others) {
    return new Catalog(products, tools, exercises, goals, Collections.unmodifiableMap(others));
  }

  /** All rules, by name. */
  public Map<String, Rule> rules() {
    return rules;
  }

  /** All goals, by id. */
  public Map<String, Goal> goals() {
    return goals;
  }

  /** The exercise with that id, if there is one. */
  public Optional<Exercise> exercise(String id) {
    return Optional.ofNullable(exercises.get(id));
  }

  /** The goal with that id, if there is one. */
  public Optional<Goal> goal(String id) {
    return Optional.ofNullable(goals.get(id));
  }
}
