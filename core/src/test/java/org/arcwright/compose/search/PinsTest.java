package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Set;
import org.arcwright.brief.Moment;
import org.arcwright.brief.Wishes;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.reduce.Sample;
import org.arcwright.compose.search.Solution.Status;
import org.junit.jupiter.api.Test;

/** The carousel takes 20 minutes at least, so that what starts 15 minutes later is in its way. */
class PinsTest {
  @Test
  void pins_in_each_others_way_are_told_without_a_search() {
    Solution overlapping = Search.solve(pinned(60, 75), Limit.NONE);
    Solution apart = Search.solve(pinned(60, 80), Limit.NONE);

    assertThat(overlapping.status()).isEqualTo(Status.INFEASIBLE);
    assertThat(overlapping.labels()).isZero();
    assertThat(apart.labels()).isPositive();
  }

  private static Instance pinned(int carousel, int sorting) {
    List<Wishes.Pin> pins =
        List.of(
            new Wishes.Pin("carousel", new Moment.After(Duration.ofMinutes(carousel))),
            new Wishes.Pin("sorting", new Moment.After(Duration.ofMinutes(sorting))));
    return Sample.reduce(Sample.brief(180).wishes(new Wishes(Set.of(), Set.of(), pins, Set.of())))
        .instance();
  }
}
