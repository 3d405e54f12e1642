package org.arcwright.compose.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.instance.Item.Activity;
import org.arcwright.compose.instance.Item.Pause;
import org.arcwright.compose.oracle.Draft;
import org.arcwright.compose.oracle.Instances;
import org.junit.jupiter.api.Test;

/** Lists that nobody would write: the checker reports and never fails. */
class CheckerOnAnythingTest {
  private static final int[] NUMBERS = {
    0, 5, 10, 15, 20, 30, 45, 60, 7, -5, Integer.MIN_VALUE, Integer.MAX_VALUE
  };

  @Test
  void reports_every_list_in_order_and_in_whole_sentences() {
    SplittableRandom random = new SplittableRandom(20260101);
    Set<Class<?>> seen = new HashSet<>();
    for (int i = 0; i < 5000; i++) {
      Instance instance = Instances.ruled(Instances.tiny(i), i);
      List<Item> items = anything(instance, random);
      Verdict verdict = Checker.check(instance, items);
      assertThat(verdict.findings()).isSortedAccordingTo(Comparator.comparingLong(Finding::at));
      for (Finding finding : verdict.findings()) {
        seen.add(finding.getClass());
        assertThat(finding.rule()).isBetween(1, 8);
        assertThat(finding.text())
            .matches("[A-Z][^.;]*(; [^.;]*)\\.")
            .contains(finding instanceof Finding.WishMissing w ? w.id() : "");
      }
    }
    assertThat(seen).containsExactlyInAnyOrder(Finding.class.getPermittedSubclasses());
  }

  @Test
  void counts_beyond_the_range_of_an_int() {
    Item vast = new Activity("two-objects", 0, 0, Integer.MAX_VALUE);
    Item late = new Pause(Integer.MAX_VALUE, Integer.MAX_VALUE);
    Instance instance = Draft.of(Example.draft().build()).bufferPercent(10_000).build();
    assertThat(Checker.check(instance, List.of(vast, late)).findings())
        .contains(
            new Finding.OverCap(
                Integer.MAX_VALUE, Integer.MAX_VALUE, 5 * 42_949_672_940L, instance.cap()));
  }

  private static List<Item> anything(Instance instance, SplittableRandom random) {
    List<Item> items = new ArrayList<>();
    int now = 0;
    for (int n = random.nextInt(7); n > 0; n--) {
      int start = random.nextInt(4) > 0 ? now : number(random);
      if (random.nextInt(3) == 0) {
        items.add(new Pause(start, random.nextBoolean() ? 10 : number(random)));
      } else {
        String id = "exercise-" + random.nextInt(instance.candidates().size() + 1);
        int phase = random.nextInt(20) > 0 ? random.nextInt(3) : number(random);
        items.add(new Activity(id, phase, start, number(random)));
      }
      now = items.get(items.size() - 1).end();
    }
    return items;
  }

  private static int number(SplittableRandom random) {
    return NUMBERS[random.nextInt(NUMBERS.length)];
  }
}
