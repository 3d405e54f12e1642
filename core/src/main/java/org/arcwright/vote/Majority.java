package org.arcwright.vote;

import java.util.List;
import java.util.Optional;
import org.arcwright.catalog.Checks;

/**
 * Each person votes for one option or for none; to win takes more than half. Time is linear in
 * ballots times options.
 *
 * @param options 2 to 500
 * @param rule of what more than half is asked, and the quorum
 * @param ballots one for each person present; empty for an abstention
 */
public record Majority(List<String> options, MajorityRule rule, List<Optional<String>> ballots)
    implements Tally {
  /** Refuses an unknown option, and more ballots than people who may vote. */
  public Majority {
    options = Ballots.options(options);
    Checks.range("number of ballots", ballots.size(), 0, rule.entitled());
    ballots = List.copyOf(ballots);
    for (int i = 0; i < ballots.size(); i++) {
      Ballots.known(Ballots.field(i), ballots.get(i).stream().toList(), options);
    }
  }

  /** Votes cast, abstentions left out. */
  public int cast() {
    return (int) ballots.stream().filter(Optional::isPresent).count();
  }

  /** The fewest votes that win. */
  public int needed() {
    return rule.needed(cast(), ballots.size());
  }

  @Override
  public List<Score> scores() {
    return options.stream()
        .map(
            o ->
                Score.of(
                    o, ballots.stream().mapToInt(b -> b.filter(o::equals).isPresent() ? 1 : 0)))
        .toList();
  }

  /**
   * The option with more than half; a tie if there are two options and they are level; otherwise no
   * result, with those that go into a second round: the two strongest, and whoever is level with
   * them.
   */
  @Override
  public Outcome outcome() {
    if (ballots.size() < rule.quorum()) {
      return new Outcome.NoResult(Outcome.Cause.NO_QUORUM, options);
    }
    if (cast() == 0) {
      return new Outcome.NoResult(Outcome.Cause.NO_VOTES, options);
    }
    Ranking ranking = ranking();
    Ranking.Standing top = ranking.standings().get(0);
    if (top.sum().compareTo(Fraction.of(needed())) >= 0) {
      return new Outcome.Winner(top.option());
    }
    if (options.size() == 2 && ranking.first().size() == 2) {
      return new Outcome.Tie(options);
    }
    return new Outcome.NoResult(Outcome.Cause.NO_MAJORITY, strongest(ranking));
  }

  /**
   * A second round, in which most votes win and a tie goes to the option that had more votes in the
   * round before.
   *
   * @param before the first round; it has every option of this one
   */
  public Decision decision(Majority before) {
    Ballots.known("second round", options, before.options());
    return Decision.of(Decision.Measure.SUM, scores())
        .thenBy(Decision.Measure.FIRST_COUNT, before.scores());
  }

  /** In the order of the options, as all lists of options are. */
  private List<String> strongest(Ranking ranking) {
    List<String> strongest =
        ranking.standings().stream()
            .filter(s -> s.place() <= 2 && s.sum().signum() > 0)
            .map(Ranking.Standing::option)
            .toList();
    return options.stream().filter(strongest::contains).toList();
  }
}
