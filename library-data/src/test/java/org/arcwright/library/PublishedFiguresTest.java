package org.arcwright.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.stream.IntStream;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Minutes;
import org.arcwright.catalog.Per;
import org.arcwright.catalog.SizeRange;
import org.arcwright.catalog.Step;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Durations that follow from the steps, held against figures that others published. Methods without
 * a published figure that we found (force field, fishbone, SWOT, impact and effort, consent,
 * check-in rounds) are timed by common practice and not held here.
 */
class PublishedFiguresTest {
  /** 18F Methods (US General Services Administration, CC0): dot voting, 15 minutes, 3 to 5 dots. */
  @Test
  void dot_voting() {
    Exercise exercise = exercise("dot-voting");

    assertThat(exercise.notes().materials()).contains("Three to five dots for each person");
    sizes(exercise).forEach(n -> assertThat(holds(exercise.minutes(n), 15)).isTrue());
  }

  /** 18F Methods: affinity mapping, 60 minutes; no number of people is given. */
  @Test
  void affinity_mapping() {
    Exercise exercise = exercise("affinity-mapping");

    IntStream.rangeClosed(8, exercise.people().max())
        .forEach(n -> assertThat(holds(exercise.minutes(n), 60)).isTrue());
  }

  /** 18F Methods: KJ, at least 4 people, 60 to 120 minutes, 5 of writing and 15 of clustering. */
  @Test
  void kj() {
    Exercise exercise = exercise("kj-method");

    assertThat(exercise.people().min()).isEqualTo(4);
    sizes(exercise).forEach(n -> within(exercise.minutes(n), 60, 120));
    assertThat(step(exercise, "writes at least three notes").minutes().typical())
        .isEqualTo(Duration.ofMinutes(5));
    assertThat(step(exercise, "Group the notes without a word").minutes().typical())
        .isEqualTo(Duration.ofMinutes(15));
  }

  /** 18F Methods: five whys, under an hour. */
  @Test
  void five_whys() {
    Exercise exercise = exercise("five-whys");

    sizes(exercise).forEach(n -> within(exercise.minutes(n), 0, 60));
  }

  /** 18F Methods: hopes and fears, 30 to 60 minutes. */
  @Test
  void hopes_and_worries() {
    Exercise exercise = exercise("hopes-and-worries-wall");

    sizes(exercise).forEach(n -> within(exercise.minutes(n), 30, 60));
  }

  /**
   * 18F Methods: design studio, 6 to 12 people, 180 to 240 minutes; ours says that it is shorter.
   */
  @Test
  void design_studio() {
    Exercise exercise = exercise("design-studio-one-round");

    assertThat(exercise.people()).isEqualTo(new SizeRange(6, 12));
    sizes(exercise).forEach(n -> within(exercise.minutes(n), 0, 180));
    assertThat(exercise.source().toString()).contains("3 to 4 hours", "shortened form");
  }

  /** 18F Methods: a meeting without a predefined agenda, 2 minutes of writing topics. */
  @Test
  void topic_vote() {
    assertThat(
            step(exercise("topic-vote-discussion"), "writes one or two topics").minutes().typical())
        .isEqualTo(Duration.ofMinutes(2));
  }

  /**
   * Nominal group technique. CDC Evaluation Brief No. 7 (2006): 5 to 9 people, ideas in silence, a
   * round robin, then voting. A community-planning variant: 10 to 20 minutes of silence, 20 to 40
   * of round robin. Delbecq, Van de Ven and Gustafson (1975), from memory: 60 to 90 minutes in all.
   */
  @Test
  void nominal_group_technique() {
    Exercise ideas = exercise("ngt-ideas");
    Exercise vote = exercise("final-ranked-vote");

    assertThat(ideas.people()).isEqualTo(new SizeRange(5, 9));
    assertThat(vote.people()).isEqualTo(new SizeRange(5, 9));
    within(step(ideas, "writes alone and in silence").minutes(), 10, 20);
    within(step(ideas, "Go round.").minutes(), 20, 40);
    for (int people = 5; people <= 9; people++) {
      assertThat(ideas.minutes(people).plus(vote.minutes(people)).typical())
          .isBetween(Duration.ofMinutes(60), Duration.ofMinutes(90));
    }
  }

  /**
   * Brainwriting 6-3-5. Penn State's pages on creativity: 6 people, 3 ideas, 6 rounds of 5 minutes
   * make 108 ideas in 30 minutes; Rohrbach (1969), from memory.
   */
  @Test
  void brainwriting() {
    Exercise exercise = exercise("brainwriting-6-3-5");
    Step writing = step(exercise, "writes three ideas in the next free row");

    assertThat(exercise.breakout().orElseThrow().max()).isEqualTo(6);
    assertThat(writing.rounds()).isEqualTo(6);
    assertThat(writing.minutes().typical().multipliedBy(writing.rounds()))
        .isEqualTo(Duration.ofMinutes(30));
    assertThat(exercise.purpose()).contains(String.valueOf(6 * 3 * 6));
  }

  /**
   * World cafe. Brown and Isaacs (2005), from memory: 4 or 5 at a table, 3 rounds or more of 20 to
   * 30 minutes.
   */
  @Test
  void world_cafe() {
    Exercise exercise = exercise("world-cafe-ideas");
    Step round = step(exercise, "A round at the tables");

    assertThat(exercise.breakout()).contains(new SizeRange(4, 5));
    assertThat(round.rounds()).isGreaterThanOrEqualTo(3);
    within(round.minutes(), 20, 30);
  }

  /**
   * Multivoting, as quality handbooks have it: a third of the items, rounded down, at most 20 votes
   * in all and 3 on one item.
   */
  @Test
  void multivoting() {
    assertThat(exercise("multivoting").opening())
        .contains("a third of the number of items", "rounded down", "never more than twenty")
        .contains("at most three on any one item");
    step(exercise("multivoting"), "thirty-two items, ten votes");
  }

  /** A group that shows a whole piece of work has 4 minutes or more (a practitioner's page). */
  @ParameterizedTest
  @CsvSource({
    "design-studio-one-round, shows its design",
    "backwards-planning, walks through its line",
    "how-we-got-here, tells the turning points"
  })
  void reports_of_whole_pieces_of_work(String id, String words) {
    Step report = step(exercise(id), words);

    assertThat(report.per()).isEqualTo(Per.GROUP);
    assertThat(report.minutes().typical()).isGreaterThanOrEqualTo(Duration.ofMinutes(4));
  }

  /** Fishbowl. UNITAR: 4 or 5 chairs inside; in the open form one of them stays empty. */
  @Test
  void fishbowl() {
    assertThat(exercise("open-chair-fishbowl").opening())
        .contains("four people", "fifth chair", "stays empty");
  }

  /**
   * Fist to five, as practitioners describe it: three fingers or more from all pass, a fist stops.
   */
  @Test
  void fist_to_five() {
    assertThat(exercise("fist-to-five").opening())
        .contains("A fist: I stop this", "every one of us shows three or more");
  }

  private static Exercise exercise(String id) {
    return BuiltIn.catalog().exercise(id).orElseThrow();
  }

  private static Step step(Exercise exercise, String words) {
    return exercise.steps().stream()
        .filter(step -> step.text().contains(words))
        .findFirst()
        .orElseThrow();
  }

  private static IntStream sizes(Exercise exercise) {
    IntStream all = IntStream.rangeClosed(exercise.people().min(), exercise.people().max());
    return all.filter(exercise::serves);
  }

  private static boolean holds(Minutes range, int minutes) {
    return range.min().toMinutes() <= minutes && range.max().toMinutes() >= minutes;
  }

  private static void within(Minutes range, int least, int most) {
    assertThat(range.min()).isGreaterThanOrEqualTo(Duration.ofMinutes(least));
    assertThat(range.max()).isLessThanOrEqualTo(Duration.ofMinutes(most));
  }
}
