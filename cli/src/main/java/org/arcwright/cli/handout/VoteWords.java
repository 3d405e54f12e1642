package org.arcwright.cli.handout;

import java.util.List;
import org.arcwright.cli.words.Language;
import org.arcwright.record.Vote;
import org.arcwright.vote.Approval;
import org.arcwright.vote.Borda;
import org.arcwright.vote.Consent;
import org.arcwright.vote.DatumMatrix;
import org.arcwright.vote.FistToFive;
import org.arcwright.vote.Fraction;
import org.arcwright.vote.Majority;
import org.arcwright.vote.MajorityRule;
import org.arcwright.vote.Motion;
import org.arcwright.vote.Multivote;
import org.arcwright.vote.ProposalVote;
import org.arcwright.vote.RankedPoints;
import org.arcwright.vote.Score;
import org.arcwright.vote.Tally;
import org.arcwright.vote.Totals;
import org.arcwright.vote.WeightedMatrix;

/** Says in a sentence or two how a vote was counted. */
final class VoteWords {
  private final Language language;

  VoteWords(Language language) {
    this.language = language;
  }

  String method(Vote vote) {
    return vote instanceof Vote.Choice choice
        ? choice(choice)
        : proposal(((Vote.Proposal) vote).count());
  }

  private String choice(Vote.Choice vote) {
    Tally tally = vote.tally();
    return switch (vote.method()) {
      case MULTIVOTING ->
          tally instanceof Multivote votes
              ? spread(
                  votes.ballots().size(),
                  votes.allotment().votes(),
                  votes.allotment().onOne(),
                  tally)
              : spread(ballots(tally), limits(tally).points(), limits(tally).onOne(), tally);
      case RANKED_POINTS ->
          language.say(
              "vote.ranked-points",
              ballots(tally),
              tally instanceof RankedPoints points ? points.picks() : limits(tally).onOne());
      case BORDA -> language.say("vote.borda", ballots(tally));
      case CONDORCET -> language.say("vote.condorcet");
      case APPROVAL -> language.say("vote.approval", ballots(tally));
      case MAJORITY -> majority((Majority) tally);
      case WEIGHTED_MATRIX -> weighted((WeightedMatrix) tally);
      default -> datum((DatumMatrix) tally);
    };
  }

  private String spread(int people, int each, int onOne, Tally tally) {
    Fraction used = tally.scores().stream().map(Score::sum).reduce(Fraction.ZERO, Fraction::plus);
    String text = language.say("vote.multivoting", people, each, onOne);
    return text + " " + language.say("vote.used", used.numerator(), (long) people * each);
  }

  private static Totals.Limits limits(Tally tally) {
    return ((Totals) tally).limits();
  }

  private static int ballots(Tally tally) {
    if (tally instanceof Totals totals) {
      return totals.ballots();
    }
    if (tally instanceof RankedPoints points) {
      return points.ballots().size();
    }
    return tally instanceof Borda borda
        ? borda.ballots().size()
        : ((Approval) tally).ballots().size();
  }

  private String majority(Majority majority) {
    return language.say(
        "vote.majority",
        majority.cast(),
        majority.ballots().size() - majority.cast(),
        majority.needed(),
        base(majority.rule()));
  }

  private String base(MajorityRule rule) {
    return switch (rule.base()) {
      case CAST -> language.say("vote.base.cast");
      case PRESENT -> language.say("vote.base.present");
      case ENTITLED -> language.say("vote.base.entitled", rule.entitled());
    };
  }

  private String weighted(WeightedMatrix matrix) {
    List<String> weights =
        matrix.criteria().stream()
            .map(criterion -> language.say("vote.weight", criterion.name(), criterion.weight()))
            .toList();
    return language.say("vote.weighted-matrix", language.list(weights));
  }

  private String datum(DatumMatrix matrix) {
    return language.say("vote.datum-matrix", matrix.datum(), language.list(matrix.criteria()));
  }

  private String proposal(ProposalVote count) {
    if (count instanceof Motion motion) {
      return language.say(
          "vote.show-of-hands",
          motion.yes(),
          motion.no(),
          motion.abstentions(),
          motion.needed(),
          base(motion.rule()));
    }
    if (count instanceof FistToFive fist) {
      return language.say("vote.fist-to-five", fist.fingers().size());
    }
    Consent consent = (Consent) count;
    int objections = consent.objectors().size();
    int reservations =
        (int) consent.voices().stream().filter(Consent.Voice.Reservation.class::isInstance).count();
    return language.say("vote.consent", consent.voices().size(), objections, reservations);
  }
}
