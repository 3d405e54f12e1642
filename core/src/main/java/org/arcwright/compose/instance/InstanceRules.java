package org.arcwright.compose.instance;

import static org.arcwright.compose.instance.Instance.refuse;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.arcwright.compose.instance.Instance.Apart;
import org.arcwright.compose.instance.Instance.AtMost;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Instance.Meal;
import org.arcwright.compose.instance.Instance.Phase;
import org.arcwright.compose.instance.Instance.Pin;
import org.arcwright.compose.instance.Instance.Rules;
import org.arcwright.compose.instance.Instance.Stretch;
import org.arcwright.compose.instance.Instance.Weights;

/**
 * The form of an instance: signs, limits, multiples of the grid, names that are declared. A field
 * is named as a path, such as {@code candidates[3].lengths}. Bounds with min above max, and wishes
 * that name no candidate, are no breach of form: nothing fits them.
 */
final class InstanceRules {
  private final int grid;
  private final Set<String> known;

  private InstanceRules(int grid, Set<String> known) {
    this.grid = grid;
    this.known = known;
  }

  static void check(
      int grid,
      int cap,
      List<Integer> curve,
      Stretch stretch,
      int breakMinutes,
      List<Meal> meals,
      int bufferPercent,
      List<String> products,
      List<String> initial,
      List<Phase> phases,
      List<Candidate> candidates,
      List<String> include,
      List<Pin> pins,
      Rules own,
      Weights weights) {
    between("grid", grid, 1, 1440);
    InstanceRules rules = new InstanceRules(grid, new HashSet<>());
    rules.cells("cap", cap, Instance.MOST_CELLS);
    if (curve.size() != cap / grid) {
      throw refuse(
          "curve", curve.size() + " numbers", "one for each cell, cap / grid = " + cap / grid);
    }
    rules.cells("stretch.max", stretch.max(), Instance.MOST_BITS);
    rules.multiple("stretch.min", stretch.min());
    rules.multiple("breakMinutes", breakMinutes);
    between("bufferPercent", bufferPercent, 0, 10_000);
    for (int i = 0; i < meals.size(); i++) {
      Meal meal = meals.get(i);
      rules.multiple("meals[" + i + "].from", meal.from());
      rules.multiple("meals[" + i + "].to", meal.to());
      rules.multiple("meals[" + i + "].minutes", meal.minutes());
      if (meal.minutes() == 0) {
        throw refuse("meals[" + i + "].minutes", 0, "a meal takes some time");
      }
    }
    for (int i = 0; i < products.size(); i++) {
      if (!rules.known.add(products.get(i))) {
        throw refuse("products[" + i + "]", products.get(i), "it stands here twice; name it once");
      }
    }
    rules.named("initial", initial);
    wishes(products, include, pins);
    between("phases", phases.size(), 1, Instance.MOST_PHASES);
    for (int i = 0; i < phases.size(); i++) {
      rules.phase("phases[" + i + "]", phases.get(i));
    }
    between("candidates", candidates.size(), 0, Instance.MOST_CANDIDATES);
    Set<String> ids = new HashSet<>();
    for (int i = 0; i < candidates.size(); i++) {
      rules.candidate(i, candidates.get(i), stretch.max());
      if (!ids.add(candidates.get(i).id())) {
        throw refuse(path(i, "id"), candidates.get(i).id(), "two candidates share it; rename one");
      }
    }
    for (int i = 0; i < pins.size(); i++) {
      rules.multiple("pins[" + i + "].at", pins.get(i).at());
    }
    own(own);
    weights(weights);
  }

  private static void own(Rules own) {
    for (Apart rule : own.apart()) {
      named("rules.apart", rule.name());
    }
    between("rules.atMost", own.atMost().size(), 0, Instance.MOST_COUNTED);
    for (AtMost rule : own.atMost()) {
      named("rules.atMost", rule.name());
      between("rules.atMost", rule.most(), 0, Integer.MAX_VALUE);
    }
  }

  private static void named(String path, String name) {
    if (name.isBlank()) {
      throw refuse(path, "a blank name", "a rule is told by its name; give it one");
    }
  }

  private static void wishes(List<String> products, List<String> include, List<Pin> pins) {
    Set<String> wished = new HashSet<>(include);
    pins.forEach(pin -> wished.add(pin.id()));
    int bits = products.size() + wished.size();
    if (bits > Instance.MOST_BITS) {
      throw refuse(
          "products", bits + " with the wishes", "at most " + Instance.MOST_BITS + " in all");
    }
  }

  private void phase(String path, Phase phase) {
    between(path + ".count.min", phase.count().min(), 1, Integer.MAX_VALUE);
    between(path + ".count.max", phase.count().max(), 0, Integer.MAX_VALUE);
    multiple(path + ".minutes.min", phase.minutes().min());
    multiple(path + ".minutes.max", phase.minutes().max());
    named(path + ".yields", phase.yields());
  }

  /** Where something stands; written only for what is refused, for candidates are many. */
  private static String path(int candidate, String field) {
    return "candidates[" + candidate + "]." + field;
  }

  private void candidate(int number, Candidate candidate, int longest) {
    if (candidate.id().isEmpty()) {
      throw refuse(path(number, "id"), "empty", "it needs an id");
    }
    List<Integer> lengths = candidate.lengths();
    if (lengths.isEmpty()) {
      throw refuse(path(number, "lengths"), "empty", "give at least one length");
    }
    if (candidate.lengthCosts().size() != lengths.size()) {
      throw refuse(
          path(number, "lengthCosts"),
          candidate.lengthCosts().size() + " numbers",
          "one for each of the " + lengths.size() + " lengths");
    }
    int before = 0;
    for (int i = 0; i < lengths.size(); i++) {
      int length = lengths.get(i);
      if (length < 0 || length % grid != 0) {
        multiple(path(number, "lengths"), length);
      }
      if (length <= before) {
        throw refuse(path(number, "lengths"), lengths, "over 0 and ascending");
      }
      if (length > longest) {
        throw refuse(path(number, "lengths"), length, "at most stretch.max, " + longest);
      }
      notNegative(number, "lengthCosts", candidate.lengthCosts().get(i));
      before = length;
    }
    notNegative(number, "cost", candidate.cost());
    named(number, "needs", candidate.needs());
    named(number, "yields", candidate.yields());
  }

  private static void notNegative(int candidate, String field, int value) {
    if (value < 0) {
      between(path(candidate, field), value, 0, Integer.MAX_VALUE);
    }
  }

  private void named(int candidate, String field, List<String> names) {
    for (int i = 0; i < names.size(); i++) {
      if (!known.contains(names.get(i))) {
        named(path(candidate, field), names);
      }
    }
  }

  private static void weights(Weights weights) {
    between("weights.energy", weights.energy(), 0, Integer.MAX_VALUE);
    between("weights.share", weights.share(), 0, Integer.MAX_VALUE);
    between("weights.monotony", weights.monotony(), 0, Integer.MAX_VALUE);
    between("weights.monotonyAcrossBreak", weights.monotonyAcrossBreak(), 0, Integer.MAX_VALUE);
    between("weights.rhythm", weights.rhythm(), 0, Integer.MAX_VALUE);
    between("weights.pause", weights.pause(), 0, Integer.MAX_VALUE);
    between("weights.idle", weights.idle(), 0, Integer.MAX_VALUE);
  }

  private void named(String path, List<String> names) {
    for (String name : names) {
      if (!known.contains(name)) {
        throw refuse(path, name, "it is not among the products; add it there");
      }
    }
  }

  private void cells(String path, int minutes, int most) {
    multiple(path, minutes);
    if (minutes == 0 || minutes / grid > most) {
      throw refuse(path, minutes, "from 1 to " + most + " cells of " + grid + " minutes");
    }
  }

  private void multiple(String path, int minutes) {
    if (minutes < 0 || minutes % grid != 0) {
      throw refuse(path, minutes, "zero or more, and a multiple of the grid, " + grid);
    }
  }

  private static void between(String path, int value, int least, int most) {
    if (value < least || value > most) {
      throw refuse(
          path,
          value,
          most == Integer.MAX_VALUE
              ? "a whole number from " + least + " on"
              : "a whole number from " + least + " to " + most);
    }
  }
}
