package org.arcwright.vote;

import static org.arcwright.vote.Slips.none;
import static org.arcwright.vote.Slips.sums;
import static org.arcwright.vote.Slips.tie;
import static org.arcwright.vote.Slips.winner;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.vote.Multivote.Allotment;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Votes spread over a list. */
class MultivoteTest {
  private static final List<String> NINE = List.of("a", "b", "c", "d", "e", "f", "g", "h", "i");

  /**
   * freerangelearner.com, "Multi-Voting": N / 3, fractions rounded to the lower number; with more
   * than 60 items no more than 20 votes; three from one person for one item. Thirty-two items and
   * ten votes is the example of our own exercise.
   */
  @ParameterizedTest
  @CsvSource({"3, 1, 1", "5, 1, 1", "6, 2, 2", "32, 10, 3", "60, 20, 3", "61, 20, 3", "300, 20, 3"})
  void a_third_of_the_items_are_the_votes(int items, int votes, int onOne) {
    assertThat(Allotment.ofThird(items)).isEqualTo(new Allotment(votes, onOne));
  }

  @Test
  void two_items_have_no_third() {
    assertThatThrownBy(() -> Allotment.ofThird(2))
        .hasMessage("items is 2: a whole number from 3 to 500 is right");
  }

  @Test
  void votes_add_up_person_by_person() {
    Multivote vote = nine("a3", "a1 b2", "c1", "b1 i1");

    assertThat(vote.scores().get(1).parts()).hasToString("[0, 2, 0, 1]");
    assertThat(sums(vote)).containsExactly("4", "3", "1", "0", "0", "0", "0", "0", "1");
    assertThat(vote.outcome()).isEqualTo(winner("a"));
  }

  @Test
  void a_place_that_is_shared_leaves_the_next_one_empty() {
    Ranking ranking = nine("c1 b1 a1", "i2").ranking();

    assertThat(ranking.standings())
        .extracting(Ranking.Standing::place)
        .containsExactly(1, 2, 2, 2, 5, 5, 5, 5, 5);
    assertThat(ranking.options()).startsWith("i", "a", "b", "c", "d");
  }

  @Test
  void level_items_tie_and_no_votes_are_no_result() {
    assertThat(nine("b1 f1").outcome()).isEqualTo(tie("b", "f"));
    assertThat(nine("", "b0").outcome())
        .isEqualTo(none(Outcome.Cause.NO_VOTES, NINE.toArray(String[]::new)));
  }

  @Test
  void the_line_goes_through_the_widest_gap_and_never_through_a_tie() {
    Ranking ranking = nine("a3", "a3", "b3", "b2 c1", "d1").ranking();

    assertThat(ranking.cut(1, 7)).contains(new Ranking.Cut(List.of("a", "b"), Fraction.of(4)));
    assertThat(ranking.cut(3, 7))
        .contains(new Ranking.Cut(List.of("a", "b", "c", "d"), Fraction.of(1)));
    assertThat(ranking.cut(3, 3)).isEmpty();
    assertThat(ranking.cut(4, 4)).isEqualTo(ranking.cut(3, 7));
    assertThat(ranking.cut(5, 20)).isEmpty();
  }

  @Test
  void of_two_gaps_the_one_that_keeps_more_counts() {
    Ranking ranking = nine("a2 b1").ranking();

    assertThat(ranking.cut(1, 3)).contains(new Ranking.Cut(List.of("a", "b"), Fraction.of(1)));
    assertThatThrownBy(() -> ranking.cut(3, 2)).isInstanceOf(InvalidValueException.class);
    assertThatThrownBy(() -> ranking.cut(0, 2)).isInstanceOf(InvalidValueException.class);
  }

  @Test
  void a_ballot_that_breaks_the_rule_is_handed_back_by_its_number() {
    assertThatThrownBy(() -> nine("", "z1"))
        .hasMessage("ballot 2 is z: one of a, b, c, d, e, f, g, h, i is right");
    assertThatThrownBy(() -> nine("a4"))
        .hasMessage("ballot 1, a is 4: a whole number from 0 to 3 is right");
    assertThatThrownBy(() -> nine("a-1")).isInstanceOf(InvalidValueException.class);
    assertThatThrownBy(() -> nine("a2 b2"))
        .hasMessage("ballot 1 is 4 votes: each person has 3; hand it back");
    assertThatThrownBy(() -> nine())
        .hasMessage("number of ballots is 0: a whole number from 1 to 1000 is right");
  }

  @Test
  void the_list_has_two_options_at_least_and_none_twice() {
    Allotment one = new Allotment(1, 1);
    assertThatThrownBy(() -> new Multivote(List.of("a"), one, List.of(Map.of())))
        .hasMessage("number of options is 1: a whole number from 2 to 500 is right");
    assertThatThrownBy(() -> new Multivote(List.of("a", " a "), one, List.of(Map.of())))
        .hasMessage("options is a: it stands here twice; name it once");
    assertThatThrownBy(() -> new Allotment(3, 4)).isInstanceOf(InvalidValueException.class);
    assertThatThrownBy(() -> new Allotment(1001, 1)).isInstanceOf(InvalidValueException.class);
  }

  @Test
  void of_a_long_list_a_message_names_a_dozen() {
    List<String> dozen = IntStream.rangeClosed(1, 12).mapToObj(String::valueOf).toList();
    List<String> fourteen = IntStream.rangeClosed(1, 14).mapToObj(String::valueOf).toList();
    List<Map<String, Integer>> slip = List.of(Map.of("z", 1));

    assertThatThrownBy(() -> new Multivote(dozen, new Allotment(4, 3), slip))
        .hasMessage("ballot 1 is z: one of 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12 is right");
    assertThatThrownBy(() -> new Multivote(fourteen, new Allotment(4, 3), slip))
        .hasMessage(
            "ballot 1 is z: one of 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12 and 2 more is right");
  }

  /** Nine options and three votes each; a ballot such as {@code a2 b1}. */
  private static Multivote nine(String... ballots) {
    return new Multivote(
        NINE, Allotment.ofThird(9), Arrays.stream(ballots).map(MultivoteTest::ballot).toList());
  }

  private static Map<String, Integer> ballot(String text) {
    return Arrays.stream(text.split(" "))
        .filter(vote -> !vote.isEmpty())
        .collect(
            Collectors.toMap(
                vote -> vote.substring(0, 1), vote -> Integer.valueOf(vote.substring(1))));
  }
}
