package org.arcwright.compose.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.arcwright.compose.check.Checker;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Item;
import org.assertj.core.api.SoftAssertions;

/** What all options have to pass, whatever else is asked of them. */
final class OptionPasses {
  private OptionPasses() {}

  /** A rule of every kind, by turns. */
  static OptionRule rule(long seed, int count) {
    int[] shares = {50, 0, 30, 67, 99};
    int[] within = {25, 100, 5, 1000};
    return new OptionRule(count, shares[(int) (seed % 5)], within[(int) (seed % 4)]);
  }

  /** Each fits, shares little enough with those before it, and costs no less and not too much. */
  static void theRule(
      SoftAssertions softly, long seed, Instance instance, OptionRule rule, OptionList options) {
    List<Set<String>> earlier = new ArrayList<>();
    long before = 0;
    long ceiling = rule.ceiling(options.solutions().get(0).cost());
    for (Solution solution : options.solutions()) {
      if (!solution.items().isEmpty()) {
        Set<String> ids = ids(solution.items());
        softly.assertThat(Checker.check(instance, solution.items()).feasible()).isTrue();
        softly
            .assertThat(earlier)
            .describedAs("shares little enough, seed %d", seed)
            .allMatch(other -> differs(ids, other, rule));
        softly.assertThat(solution.cost()).isBetween(before, ceiling);
        earlier.add(ids);
        before = solution.cost();
      }
    }
  }

  /** Whether an agenda of these exercises shares little enough with an earlier one. */
  static boolean differs(Set<String> ids, Set<String> earlier, OptionRule rule) {
    long shared = earlier.stream().filter(ids::contains).count();
    return shared <= earlier.size() * rule.share() / 100;
  }

  /** The exercises of an agenda. */
  static Set<String> ids(List<Item> items) {
    return items.stream()
        .filter(Item.Activity.class::isInstance)
        .map(item -> ((Item.Activity) item).id())
        .collect(Collectors.toSet());
  }
}
