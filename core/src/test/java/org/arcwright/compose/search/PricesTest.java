package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.oracle.Instances;
import org.arcwright.compose.search.Prices.Row;
import org.junit.jupiter.api.Test;

/** The price of each move, against every candidate that makes it. */
class PricesTest {
  @Test
  void a_move_costs_what_its_cheapest_candidate_does() {
    for (long seed = 0; seed < 200; seed++) {
      ModelBuilder.build(Instances.tiny(seed), Models.work())
          .ifPresent(model -> equalsTheCheapest(model, new Prices(model)));
    }
  }

  @Test
  void tolls_are_charged_beside_the_cost() {
    for (long seed = 0; seed < 200; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      ModelBuilder.build(Instances.tiny(seed), Models.work())
          .ifPresent(
              model -> {
                int[] tolls =
                    IntStream.range(0, model.ids.length)
                        .map(i -> Math.max(0, random.nextInt(-20, 20)))
                        .toArray();
                equalsTheCheapest(model, new Prices(model).with(tolls));
              });
    }
  }

  private static void equalsTheCheapest(Model model, Prices prices) {
    for (Stage stage : model.stages) {
      for (int start = 0; start < model.cells; start++) {
        for (int move = 0; move < stage.movePeers.length; move++) {
          assertThat(prices.at(stage, start)[move])
              .isEqualTo(cheapest(model, prices.tolls, stage, move, start));
        }
      }
    }
  }

  private static long cheapest(Model model, int[] tolls, Stage stage, int move, int start) {
    long least = Model.INFINITE;
    int length = stage.moveLength[move];
    if (!model.free(start, start + length)) {
      return least;
    }
    for (Peers peers : stage.movePeers[move]) {
      for (int i = 0; i < peers.members.length; i++) {
        if (model.mayStart(peers, start)) {
          int candidate = peers.members[i];
          long cost = peers.costs[i] + tolls[candidate] + model.energyCost(peers, start);
          long tie = model.tie(candidate, stage.number, start, length);
          least = Math.min(least, model.pack(cost) + tie);
        }
      }
    }
    return least;
  }

  /** The bound asks for nothing else, and for each length from the cheapest on. */
  @Test
  void a_row_holds_the_moves_that_no_cheaper_one_before_them_replaces() {
    for (long seed = 0; seed < 200; seed++) {
      Instance instance = Instances.tiny(seed);
      ModelBuilder.build(instance, Models.work()).ifPresent(PricesTest::holdsWhatIsWorthIt);
    }
  }

  private static void holdsWhatIsWorthIt(Model model) {
    Prices prices = new Prices(model);
    for (Stage stage : model.stages) {
      for (int start = 0; start < model.cells; start++) {
        long[] all = prices.at(stage, start);
        Row row = prices.row(stage, start);
        for (int l = 0; l < stage.lengths.length; l++) {
          int length = stage.lengths[l];
          long[] worthIt =
              IntStream.range(0, all.length)
                  .filter(k -> stage.moveLength[k] == length && all[k] < Model.INFINITE)
                  .filter(k -> !replaced(stage, all, k))
                  .mapToLong(k -> all[k])
                  .sorted()
                  .toArray();
          int from = row.from(l);
          assertThat(IntStream.range(from, row.ends[l]).mapToLong(i -> row.price[i]))
              .containsExactly(Arrays.stream(worthIt).boxed().toArray(Long[]::new));
          assertThat(row.none(l)).isEqualTo(worthIt.length == 0);
        }
      }
    }
  }

  private static boolean replaced(Stage stage, long[] price, int move) {
    return IntStream.range(0, move)
        .filter(k -> stage.moveLength[k] == stage.moveLength[move])
        .filter(k -> stage.moveFormat[k] == stage.moveFormat[move])
        .filter(k -> (stage.moveNeed[k] | stage.moveNeed[move]) == stage.moveNeed[move])
        .filter(k -> (stage.moveGain[k] & stage.moveGain[move]) == stage.moveGain[move])
        .anyMatch(k -> price[k] <= price[move]);
  }
}
