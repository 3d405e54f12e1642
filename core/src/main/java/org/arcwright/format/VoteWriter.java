package org.arcwright.format;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.Node;
import org.arcwright.record.Method;
import org.arcwright.record.Vote;
import org.arcwright.vote.Approval;
import org.arcwright.vote.Borda;
import org.arcwright.vote.Consent;
import org.arcwright.vote.Consent.Voice;
import org.arcwright.vote.DatumMatrix;
import org.arcwright.vote.FistToFive;
import org.arcwright.vote.Majority;
import org.arcwright.vote.MajorityRule;
import org.arcwright.vote.Motion;
import org.arcwright.vote.Multivote;
import org.arcwright.vote.Pairwise;
import org.arcwright.vote.ProposalVote;
import org.arcwright.vote.RankedBallot;
import org.arcwright.vote.RankedPoints;
import org.arcwright.vote.Tally;
import org.arcwright.vote.Totals;
import org.arcwright.vote.WeightedMatrix;

/** Writes a vote as {@link VoteReader} reads it. */
final class VoteWriter {
  private VoteWriter() {}

  static Node tree(Vote vote) {
    Branch branch =
        new Branch().put("question", vote.question()).put("method", vote.method().word());
    if (vote instanceof Vote.Choice choice) {
      put(branch, choice.method(), choice.tally());
      if (!choice.result().isEmpty()) {
        branch.put("result", choice.result());
      }
    } else if (vote instanceof Vote.Proposal proposal) {
      put(branch, proposal.count());
      proposal.result().ifPresent(verdict -> branch.put("result", verdict.word()));
    }
    return branch.end();
  }

  private static void put(Branch branch, Method method, Tally tally) {
    if (tally instanceof WeightedMatrix matrix) {
      Map<String, Integer> weights = new LinkedHashMap<>();
      matrix.criteria().forEach(c -> weights.put(c.name(), c.weight()));
      branch.put("criteria", numbers(weights));
      branch.put("marks", rows(matrix.options(), matrix.marks()));
      return;
    }
    if (tally instanceof DatumMatrix matrix) {
      branch.put("datum", matrix.datum()).put("criteria", matrix.criteria());
      branch.put("signs", rows(matrix.options(), matrix.signs()));
      return;
    }
    if (tally instanceof Majority majority) {
      putMajority(branch, majority);
      return;
    }
    branch.put("options", tally.options());
    if (tally instanceof Multivote vote) {
      branch.put("votes-each", vote.allotment().votes()).put("on-one", vote.allotment().onOne());
      branch.put("ballots", Branch.list(vote.ballots(), VoteWriter::numbers));
    } else if (tally instanceof RankedPoints vote) {
      branch.put("picks", vote.picks()).put("ballots", lists(vote.ballots()));
    } else if (tally instanceof Borda vote) {
      branch.put("ballots", Branch.list(vote.ballots(), VoteWriter::ranked));
    } else if (tally instanceof Approval vote) {
      branch.put("ballots", lists(vote.ballots().stream().map(List::copyOf).toList()));
    } else if (tally instanceof Pairwise pairs) {
      branch.put("over", Branch.list(pairs.over(), Branch::numbers));
    } else if (tally instanceof Totals totals) {
      putTotals(branch, method, totals);
    }
  }

  private static void putMajority(Branch branch, Majority majority) {
    Map<String, Integer> totals = new LinkedHashMap<>();
    majority.options().forEach(option -> totals.put(option, 0));
    majority.ballots().forEach(b -> b.ifPresent(option -> totals.merge(option, 1, Integer::sum)));
    branch
        .put("totals", numbers(totals))
        .put("abstentions", majority.ballots().size() - majority.cast());
    put(branch, majority.rule());
  }

  private static void putTotals(Branch branch, Method method, Totals totals) {
    if (method == Method.MULTIVOTING) {
      branch.put("votes-each", totals.limits().points()).put("on-one", totals.limits().onOne());
    } else if (method == Method.RANKED_POINTS) {
      branch.put("picks", totals.limits().onOne());
    }
    Map<String, Integer> sums = new LinkedHashMap<>();
    for (int i = 0; i < totals.options().size(); i++) {
      sums.put(totals.options().get(i), totals.sums().get(i));
    }
    branch.put("voters", totals.ballots()).put("totals", numbers(sums));
  }

  private static void put(Branch branch, MajorityRule rule) {
    branch
        .put("entitled", rule.entitled())
        .put("quorum", rule.quorum())
        .put("more-than-half-of", VoteReader.Base.valueOf(rule.base().name()).word());
  }

  private static void put(Branch branch, ProposalVote count) {
    if (count instanceof Motion motion) {
      branch.put("yes", motion.yes()).put("no", motion.no());
      branch.put("abstentions", motion.abstentions());
      put(branch, motion.rule());
    } else if (count instanceof FistToFive fist) {
      branch.put("fingers", Branch.numbers(fist.fingers()));
    } else if (count instanceof Consent consent) {
      branch
          .put("people", consent.voices().size())
          .put("reservations", texts(consent, Voice.Reservation.class, Voice.Reservation::text))
          .put("objections", texts(consent, Voice.Objection.class, Voice.Objection::reason));
    }
  }

  private static <V extends Voice> List<String> texts(
      Consent consent, Class<V> type, Function<V, String> text) {
    return consent.voices().stream().filter(type::isInstance).map(type::cast).map(text).toList();
  }

  private static Node numbers(Map<String, Integer> numbers) {
    Branch branch = new Branch();
    numbers.forEach((name, number) -> branch.put(name, number));
    return branch.end();
  }

  private static Node rows(List<String> options, List<List<Integer>> rows) {
    Branch branch = new Branch();
    for (int i = 0; i < options.size(); i++) {
      branch.put(options.get(i), Branch.numbers(rows.get(i)));
    }
    return branch.end();
  }

  private static Node lists(List<List<String>> lists) {
    return Branch.list(lists, list -> Branch.list(list, Branch::text));
  }

  private static Node ranked(RankedBallot ballot) {
    List<Node> places = new ArrayList<>();
    for (List<String> tier : ballot.tiers()) {
      places.add(tier.size() == 1 ? Branch.text(tier.get(0)) : Branch.list(tier, Branch::text));
    }
    return Branch.list(places, node -> node);
  }
}
