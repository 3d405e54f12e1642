package org.arcwright.compose.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Wishes are numbers here, and sets of them bits; what clashes is drawn by lot. */
class QuickXplainTest {
  private static final int WISHES = 8;

  /**
   * Oracle: every set of wishes. Junker 2004: of two sets that clash and can spare nothing, the one
   * is preferred that has the earlier one of the last wishes in which they differ.
   */
  @Property(tries = 1000, seed = "2004")
  void it_is_the_preferred_one_of_all_sets_that_clash_and_can_spare_nothing(
      @ForAll("clashes") List<Integer> clashes) {
    IntPredicate clash = set -> clashes.stream().anyMatch(bits -> (set & bits) == bits);
    int preferred =
        IntStream.range(0, 1 << WISHES)
            .filter(clash)
            .filter(set -> bits(set).noneMatch(bit -> clash.test(set & ~(1 << bit))))
            .min()
            .orElseThrow();

    List<Integer> found =
        QuickXplain.conflict(
            IntStream.range(0, WISHES).boxed().toList(), kept -> clash.test(set(kept)));

    assertThat(found).isEqualTo(bits(preferred).boxed().toList());
  }

  /** Junker 2004: k wishes among n take 2k log2(n/k) + 2k questions at the most. */
  @Property(tries = 500, seed = "2004")
  void it_takes_few_questions(@ForAll @IntRange(min = 1, max = 5) int k, @ForAll long lot) {
    int n = 256;
    List<Integer> culprits =
        new SplittableRandom(lot).ints(0, n).distinct().limit(k).boxed().toList();
    int[] asked = new int[1];

    List<Integer> found =
        QuickXplain.conflict(
            IntStream.range(0, n).boxed().toList(),
            kept -> {
              asked[0]++;
              return kept.containsAll(culprits);
            });

    assertThat(found).containsExactlyInAnyOrderElementsOf(culprits);
    double most = 2 * k * Math.log((double) n / k) / Math.log(2) + 2 * k;
    assertThat(asked[0])
        .as("and one whether anything has to be asked")
        .isLessThanOrEqualTo((int) most + 1);
  }

  @Test
  void what_clashes_without_any_wish_is_nobody_s_fault() {
    assertThat(QuickXplain.conflict(List.of("a", "b"), kept -> true)).isEmpty();
  }

  @Test
  void a_single_wish_is_to_blame_without_further_questions() {
    int[] asked = new int[1];

    assertThat(
            QuickXplain.conflict(
                List.of("a"),
                kept -> {
                  asked[0]++;
                  return !kept.isEmpty();
                }))
        .containsExactly("a");
    assertThat(asked[0]).isEqualTo(1);
  }

  private static IntStream bits(int set) {
    return IntStream.range(0, WISHES).filter(bit -> (set >> bit & 1) != 0);
  }

  private static int set(List<Integer> kept) {
    return kept.stream().mapToInt(bit -> 1 << bit).sum();
  }

  @Provide
  Arbitrary<List<Integer>> clashes() {
    return Arbitraries.integers().between(1, (1 << WISHES) - 1).list().ofMinSize(1).ofMaxSize(6);
  }
}
