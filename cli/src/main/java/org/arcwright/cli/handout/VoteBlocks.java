package org.arcwright.cli.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.arcwright.cli.page.Block;
import org.arcwright.cli.page.Block.Cell;
import org.arcwright.cli.page.Block.Facts;
import org.arcwright.cli.page.Block.Note;
import org.arcwright.cli.page.Block.Point;
import org.arcwright.cli.page.Block.Points;
import org.arcwright.cli.page.Block.Table;
import org.arcwright.cli.page.Block.Text;
import org.arcwright.cli.words.Language;
import org.arcwright.record.Doubt;
import org.arcwright.record.Verdict;
import org.arcwright.record.Vote;
import org.arcwright.vote.Consent;
import org.arcwright.vote.Consent.Voice;
import org.arcwright.vote.FistToFive;
import org.arcwright.vote.Fraction;
import org.arcwright.vote.Motion;
import org.arcwright.vote.Outcome;
import org.arcwright.vote.Pairwise;
import org.arcwright.vote.ProposalVote;
import org.arcwright.vote.Ranking.Standing;
import org.arcwright.vote.Score;
import org.arcwright.vote.Tally;
import org.arcwright.vote.Totals;

/** A vote with its arithmetic: how it was counted, how the sums come about, what they say. */
final class VoteBlocks {
  /** Longer sums are shown as their total alone. */
  private static final int MOST_PARTS = 12;

  private final Language language;
  private final List<Block> blocks = new ArrayList<>();

  private VoteBlocks(Language language) {
    this.language = language;
  }

  static List<Block> of(Vote vote, Language language) {
    VoteBlocks made = new VoteBlocks(language);
    made.blocks.add(new Text(new VoteWords(language).method(vote)));
    if (vote instanceof Vote.Choice choice) {
      made.choice(choice);
    } else if (vote instanceof Vote.Proposal proposal) {
      made.proposal(proposal);
    }
    vote.doubt().ifPresent(doubt -> made.blocks.add(made.note(doubt)));
    return made.blocks;
  }

  private void choice(Vote.Choice vote) {
    blocks.add(sums(vote));
    if (vote.tally() instanceof Pairwise pairs) {
      blocks.add(
          new Points(
              pairs.duels().stream()
                  .map(
                      duel ->
                          Point.of(
                              language.say(
                                  "vote.duel",
                                  duel.first(),
                                  duel.forFirst(),
                                  duel.forSecond(),
                                  duel.second())))
                  .toList()));
    }
    if (!vote.result().isEmpty()) {
      result(vote, language.list(vote.result()));
    } else {
      blocks.add(new Text(said(vote.tally().outcome())));
    }
  }

  /** What the figures say by themselves. */
  private String said(Outcome outcome) {
    if (outcome instanceof Outcome.Winner winner) {
      return language.say("vote.ahead", winner.option());
    }
    if (outcome instanceof Outcome.Tie tie) {
      return language.say("vote.level", language.list(tie.options()));
    }
    Outcome.NoResult none = (Outcome.NoResult) outcome;
    return none(none.cause(), none.options());
  }

  private String none(Outcome.Cause cause, List<String> options) {
    return switch (cause) {
      case NO_VOTES -> language.say("vote.none.no-votes");
      case NO_QUORUM -> language.say("vote.none.no-quorum");
      case NO_MAJORITY -> language.say("vote.none.no-majority", language.list(options));
      case CYCLE -> language.say("vote.none.cycle", language.list(options));
      case LEVEL_PAIRS -> language.say("vote.none.level-pairs", language.list(options));
      case MIXED -> language.say("vote.none.mixed", language.list(options));
    };
  }

  /** The options by their place, each with the sum that led to it. */
  private Table sums(Vote.Choice vote) {
    Tally tally = vote.tally();
    boolean shown =
        !(tally instanceof Totals)
            && tally.scores().stream().allMatch(score -> score.parts().size() <= MOST_PARTS);
    List<String> heads = new ArrayList<>();
    heads.add(language.say("vote.option"));
    if (shown) {
      heads.add(language.say("vote.adds-up"));
    }
    heads.add(language.say("vote.sum"));
    heads.add(language.say("vote.place"));
    List<List<Cell>> rows = new ArrayList<>();
    for (Standing standing : tally.ranking().standings()) {
      boolean kept = vote.result().contains(standing.option());
      List<Cell> row = new ArrayList<>();
      row.add(new Cell(standing.option(), "", kept));
      if (shown) {
        row.add(Cell.of(addition(tally.scores(), standing.option())));
      }
      row.add(new Cell(number(standing.sum()), "", kept));
      row.add(new Cell(language.say("number", standing.place()), "", kept));
      rows.add(row);
    }
    return new Table(vote.question(), heads, rows);
  }

  private static String addition(List<Score> scores, String option) {
    return scores.stream()
        .filter(score -> score.option().equals(option))
        .flatMap(score -> score.parts().stream())
        .map(VoteBlocks::number)
        .collect(Collectors.joining(" + "))
        .replace("+ \u2212", "\u2212\u00a0");
  }

  private static String number(Fraction fraction) {
    return fraction.toString().replace("1/2", "½").replace('-', '\u2212');
  }

  private void proposal(Vote.Proposal vote) {
    ProposalVote count = vote.count();
    if (count instanceof FistToFive fist) {
      blocks.add(fingers(vote.question(), fist));
    } else if (count instanceof Consent consent) {
      List<Point> voices = new ArrayList<>();
      for (Voice voice : consent.voices()) {
        if (voice instanceof Voice.Objection objection) {
          voices.add(Point.of(language.say("vote.objection"), objection.reason()));
        } else if (voice instanceof Voice.Reservation reservation) {
          voices.add(Point.of(language.say("vote.reservation"), reservation.text()));
        }
      }
      if (!voices.isEmpty()) {
        blocks.add(new Points(voices));
      }
    } else if (count instanceof Motion motion && motion.rule().quorum() > 0) {
      blocks.add(new Text(language.say("vote.quorum", motion.present(), motion.rule().quorum())));
    }
    Verdict verdict = vote.result().orElseGet(() -> Verdict.of(count.outcome()));
    result(vote, language.name("verdict", verdict));
  }

  private void result(Vote vote, String result) {
    String label = language.say(vote.doubt().isPresent() ? "vote.stated" : "vote.result");
    blocks.add(new Facts(List.of(Point.of(label, result))));
  }

  private Table fingers(String question, FistToFive fist) {
    List<List<Cell>> rows = new ArrayList<>();
    for (int shown = fist.counts().size() - 1; shown >= 0; shown--) {
      rows.add(
          List.of(
              Cell.of(language.say("number", shown)),
              Cell.of(language.say("number", fist.counts().get(shown)))));
    }
    return new Table(
        question, List.of(language.say("vote.fingers"), language.say("vote.people")), rows);
  }

  private Note note(Doubt doubt) {
    String text;
    if (doubt instanceof Doubt.OthersAhead others) {
      text = language.say("vote.doubt.others-ahead", language.list(others.options()));
    } else if (doubt instanceof Doubt.Level level) {
      text = language.say("vote.doubt.level", language.list(level.options()));
    } else if (doubt instanceof Doubt.NoAnswer answer) {
      text = language.say("vote.doubt.no-answer", none(answer.cause(), answer.options()));
    } else {
      Verdict verdict = ((Doubt.OtherVerdict) doubt).verdict();
      text = language.say("vote.doubt.other-verdict", language.name("verdict", verdict));
    }
    return new Note(language.say("vote.doubt"), text);
  }
}
