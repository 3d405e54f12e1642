package org.arcwright.compose.reduce;

import static org.arcwright.compose.reduce.Sample.brief;
import static org.arcwright.compose.reduce.Sample.reduce;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.arcwright.brief.Wishes;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.search.Limit;
import org.arcwright.compose.search.Search;
import org.junit.jupiter.api.Test;

class ReductionTest {
  private final Reduction whole =
      reduce(brief(90).wishes(new Wishes(Set.of(), Set.of("names"), List.of(), Set.of())));

  @Test
  void without_some_exercises_has_all_others_as_they_were() {
    Reduction smaller = whole.without(Map.of("dots", "no stand-in"));

    Set<String> left = new HashSet<>(whole.instance().candidateIds());
    left.remove("dots");
    assertThat(smaller.instance().candidateIds()).isEqualTo(left);
    assertThat(smaller.instance().phases()).isEqualTo(whole.instance().phases());
    assertThat(smaller.complete()).isTrue();
  }

  @Test
  void says_why_each_is_out_and_the_brief_s_own_reason_comes_first() {
    assertThat(whole.without(Map.of("dots", "no stand-in", "names", "no stand-in")).leftOut())
        .isEqualTo(
            Map.of(
                "dots",
                new Refusal(Optional.empty(), "no stand-in"),
                "names",
                Refusal.by("wishes.leave-out", "left out by the brief")));
  }

  @Test
  void what_fits_without_some_fits_the_whole_at_the_same_cost() {
    Reduction smaller = whole.without(Map.of("dots", "no stand-in"));
    List<Item> items = Search.solve(smaller.instance(), Limit.NONE).items();

    assertThat(items).isNotEmpty();
    assertThat(FiguresOf.items(whole, items)).isEqualTo(FiguresOf.items(smaller, items));
  }

  @Test
  void reasons_cannot_be_changed_from_outside() {
    assertThatThrownBy(() -> whole.leftOut().remove("names"))
        .isInstanceOf(UnsupportedOperationException.class);
  }
}
