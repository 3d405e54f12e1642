package org.arcwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.reduce.Sample;
import org.junit.jupiter.api.Test;

/** A catalog's rules, as they are told to it. */
class RuleTest {
  private static final Rule LIVELY = Rule.atMost("at most two lively ones", 2, (e, n) -> true);
  private static final Rule SOLO = Rule.neverInARow("never two alone in a row", (e, n) -> true);

  private final Catalog plain = Sample.catalog();

  @Test
  void a_catalog_has_none_until_it_is_told_some() {
    assertThat(plain.rules()).isEmpty();
    assertThat(plain.withRules(SOLO, LIVELY).rules().values()).containsExactly(LIVELY, SOLO);
    assertThat(plain.rules()).isEmpty();
  }

  @Test
  void a_rule_may_be_taken_back() {
    Catalog ruled = plain.withRules(SOLO, LIVELY);

    assertThat(ruled.withoutRules(Set.of(SOLO.name(), "unheard of")).rules().values())
        .containsExactly(LIVELY);
  }

  @Test
  void a_name_stands_once() {
    assertThatThrownBy(() -> plain.withRules(SOLO).withRules(SOLO))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("never two alone in a row")
        .hasMessageContaining("two entries share this name; rename one");
  }

  @Test
  void a_rule_has_a_name_and_counts_what_can_be_counted() {
    assertThatThrownBy(() -> Rule.neverInARow(" ", (e, n) -> true))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("it needs a text");
    assertThatThrownBy(() -> Rule.atMost("too few", -1, (e, n) -> true))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("from 0 to 100");
  }

  @Test
  void only_so_many_rules_may_count() {
    Rule[] counting =
        IntStream.rangeClosed(0, Catalog.MOST_COUNTING)
            .mapToObj(i -> Rule.atMost("rule " + i, 1, (e, n) -> true))
            .toArray(Rule[]::new);

    assertThatThrownBy(() -> plain.withRules(counting))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("at most 6");
    assertThat(Catalog.MOST_COUNTING).isEqualTo(Instance.MOST_COUNTED);
  }

  @Test
  void a_layer_more_leaves_the_rules() {
    Layers layers = Layers.of("ours", plain.withRules(SOLO));
    Layer nothing =
        new Layer("more", List.of(), List.of(), List.of(), List.of(), Set.of(), Set.of());

    assertThat(layers.with(nothing).catalog().rules().values()).containsExactly(SOLO);
  }
}
