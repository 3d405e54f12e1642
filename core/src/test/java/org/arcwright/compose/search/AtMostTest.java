package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.BitSet;
import java.util.Map;
import java.util.Set;
import org.arcwright.compose.instance.Instance;
import org.junit.jupiter.api.Test;

/** Sets of which an agenda holds only so many. */
class AtMostTest {
  private static final Map<String, Integer> NUMBERS = Map.of("a", 0, "b", 1, "c", 2);

  @Test
  void names_that_name_no_candidate_ask_for_nothing() {
    BitSet members = rule(1, "a", "c", "nobody").members();
    assertThat(members.stream()).containsExactly(0, 2);
    assertThat(rule(1, "a", "c", "nobody").most()).isEqualTo(1);
  }

  /** What does not matter takes no room in a label. */
  @Test
  void matters_if_an_agenda_could_hold_one_too_many() {
    assertThat(rule(1, "a", "c").matters(10)).isTrue();
    assertThat(rule(2, "a", "c").matters(10)).isFalse();
    assertThat(rule(1, "a", "c").matters(2)).isTrue();
    assertThat(rule(1, "a", "c").matters(1)).isFalse();
    assertThat(rule(0, "a").matters(1)).isTrue();
    assertThat(rule(0, "nobody").matters(10)).isFalse();
  }

  private static AtMost rule(int most, String... ids) {
    return AtMost.of(new Instance.AtMost("rule", Set.of(ids), most), NUMBERS);
  }
}
