package org.arcwright.compose.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Candidates that differ in length and price alone. */
class AlikeTest {
  private static final Peers.Key KEY = new Peers.Key(2, 1, 0b0110, 0b1000, 0, 0, 0, -1);

  @Test
  void are_peers_by_length_the_cheapest_first() {
    Alike alike = new Alike(KEY);
    alike.add(3, 9, 10);
    alike.add(3, 2, 12);
    alike.add(1, 5, 10);
    alike.add(3, 2, 11);
    alike.add(3, 0, 99_999);
    alike.add(3, Integer.MAX_VALUE, 7);
    List<Peers> peers = peers(alike);

    assertThat(peers).extracting(p -> p.length).containsExactly(1, 3);
    assertThat(peers.get(0).members).containsExactly(10);
    assertThat(peers.get(0).costs).containsExactly(5);
    assertThat(peers.get(1).members).containsExactly(99_999, 11, 12, 10, 7);
    assertThat(peers.get(1).costs).containsExactly(0, 2, 2, 9, Integer.MAX_VALUE);
  }

  /** Of what they need and yield the bound follows the second and the fourth product. */
  @Test
  void moves_differ_by_length_format_and_awaited_products_in_that_order() {
    long shorter = move(1, 2, 0b0010, 0b0000);
    long otherFormat = move(1, 3, 0b0000, 0b0000);
    long yielding = move(1, 2, 0b0000, 0b1000);
    long plain = move(1, 2, 0b0000, 0b0000);
    long longer = move(2, 0, 0b0000, 0b0000);
    assertThat(List.of(plain, shorter, yielding, otherFormat, longer))
        .isSorted()
        .doesNotHaveDuplicates();
    assertThat(move(1, 2, 0b0101, 0b0000)).isEqualTo(plain);
  }

  private static long move(int length, int format, long needs, long yields) {
    Alike alike = new Alike(new Peers.Key(format, 1, needs, yields, 0, 0, 0, -1));
    alike.add(length, 0, 0);
    return peers(alike).get(0).move;
  }

  private static List<Peers> peers(Alike alike) {
    List<Peers> peers = new ArrayList<>();
    alike.addPeers(peers, new long[] {0b0010, 0b1000});
    return peers;
  }
}
