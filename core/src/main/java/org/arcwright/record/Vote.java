package org.arcwright.record;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.vote.Outcome;
import org.arcwright.vote.ProposalVote;
import org.arcwright.vote.Ranking.Standing;
import org.arcwright.vote.Tally;

/** A vote with its figures, and the result that was stated in the room. */
public sealed interface Vote {
  /** What was asked. */
  String question();

  /** How it was counted. */
  Method method();

  /** Why the stated result does not follow from the figures; nothing if it does. */
  Optional<Doubt> doubt();

  /**
   * A vote among options.
   *
   * @param question at most 200 characters
   * @param tally the figures
   * @param result the option that was chosen, or those that were kept; empty if nothing was stated
   */
  record Choice(String question, Method method, Tally tally, List<String> result) implements Vote {
    /** Refuses a result that was not among the options, or stands twice. */
    public Choice {
      question = Checks.text("question", question, 200);
      result = List.copyOf(result);
      Set<String> seen = new HashSet<>();
      for (String option : result) {
        if (!tally.options().contains(option)) {
          throw new InvalidValueException(
              "result", option, "it is none of the options " + String.join(", ", tally.options()));
        }
        if (!seen.add(option)) {
          throw new InvalidValueException("result", option, "it stands here twice; name it once");
        }
      }
    }

    @Override
    public Optional<Doubt> doubt() {
      Outcome outcome = tally.outcome();
      if (result.isEmpty() || follows(outcome)) {
        return Optional.empty();
      }
      if (outcome instanceof Outcome.NoResult none) {
        return Optional.of(new Doubt.NoAnswer(none.cause(), none.options()));
      }
      if (result.size() > 1) {
        return line();
      }
      return Optional.of(
          outcome instanceof Outcome.Tie tie && tie.options().containsAll(result)
              ? new Doubt.Level(tie.options())
              : new Doubt.OthersAhead(ahead(outcome)));
    }

    /** Whether the result is just what the method says; one that is in question is no winner. */
    private boolean follows(Outcome outcome) {
      boolean open = outcome instanceof Outcome.NoResult && result.size() == 1;
      return !open && Set.copyOf(ahead(outcome)).equals(Set.copyOf(result));
    }

    private static List<String> ahead(Outcome outcome) {
      if (outcome instanceof Outcome.Winner winner) {
        return List.of(winner.option());
      }
      return outcome instanceof Outcome.Tie tie
          ? tie.options()
          : ((Outcome.NoResult) outcome).options();
    }

    /** Several that were kept must be the first by their sums, with a line that parts no tie. */
    private Optional<Doubt> line() {
      List<Standing> standings = tally.ranking().standings();
      Standing last = standings.get(result.size() - 1);
      List<String> above =
          standings.stream()
              .filter(standing -> standing.sum().compareTo(last.sum()) > 0)
              .map(Standing::option)
              .toList();
      List<String> level =
          standings.stream()
              .filter(standing -> standing.sum().equals(last.sum()))
              .map(Standing::option)
              .toList();
      List<String> first = tally.ranking().options().subList(0, result.size());
      if (above.size() + level.size() == result.size()) {
        return Set.copyOf(first).equals(Set.copyOf(result))
            ? Optional.empty()
            : Optional.of(new Doubt.OthersAhead(first));
      }
      return Optional.of(
          result.containsAll(above) && result.stream().allMatch(o -> among(o, above, level))
              ? new Doubt.Level(level)
              : new Doubt.OthersAhead(first));
    }

    private static boolean among(String option, List<String> above, List<String> level) {
      return above.contains(option) || level.contains(option);
    }
  }

  /**
   * A vote on one proposal.
   *
   * @param question the proposal, at most 200 characters
   * @param count the figures
   * @param result what was stated
   */
  record Proposal(String question, Method method, ProposalVote count, Optional<Verdict> result)
      implements Vote {
    /** Refuses an empty proposal. */
    public Proposal {
      question = Checks.text("question", question, 200);
    }

    @Override
    public Optional<Doubt> doubt() {
      Verdict verdict = Verdict.of(count.outcome());
      return result.filter(stated -> stated != verdict).map(s -> new Doubt.OtherVerdict(verdict));
    }
  }
}
