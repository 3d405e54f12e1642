package org.arcwright.format;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.catalog.Word;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;
import org.arcwright.format.tree.Node.Mapping;
import org.arcwright.format.tree.Node.Member;
import org.arcwright.format.tree.Node.Scalar;
import org.arcwright.format.tree.Node.Sequence;
import org.arcwright.format.tree.Values;
import org.arcwright.record.Method;
import org.arcwright.record.Verdict;
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
import org.arcwright.vote.Multivote.Allotment;
import org.arcwright.vote.Pairwise;
import org.arcwright.vote.ProposalVote;
import org.arcwright.vote.RankedBallot;
import org.arcwright.vote.RankedPoints;
import org.arcwright.vote.Tally;
import org.arcwright.vote.Totals;
import org.arcwright.vote.Totals.Limits;
import org.arcwright.vote.WeightedMatrix;
import org.arcwright.vote.WeightedMatrix.Criterion;

/** Reads a vote with its figures. Its method says which keys stand beside the question. */
final class VoteReader {
  private static final String QUESTION = "question: Where do we begin?";
  private static final String METHOD = "method: multivoting";
  private static final String OPTIONS = "options: [Repair kits, Seeds]";
  private static final String VOTERS = "voters: 9";
  private static final String TOTALS = "totals: {Repair kits: 9, Seeds: 4}";

  private static final Keys MULTIVOTING =
      Keys.of(
          QUESTION,
          METHOD,
          "result",
          OPTIONS,
          "votes-each: 3",
          "on-one: 2",
          "ballots",
          VOTERS,
          TOTALS);
  private static final Keys RANKED_POINTS =
      Keys.of(QUESTION, METHOD, "result", OPTIONS, "picks: 5", "ballots", VOTERS, TOTALS);
  private static final Keys BORDA =
      Keys.of(QUESTION, METHOD, "result", OPTIONS, "ballots", VOTERS, TOTALS);
  private static final Keys CONDORCET =
      Keys.of(QUESTION, METHOD, "result", OPTIONS, "ballots", "over: [[0, 5], [4, 0]]");
  private static final Keys APPROVAL =
      Keys.of(QUESTION, METHOD, "result", OPTIONS, "ballots", VOTERS, TOTALS);
  private static final Keys MAJORITY =
      Keys.of(
          QUESTION,
          METHOD,
          "result",
          TOTALS,
          "abstentions",
          "entitled",
          "quorum",
          "more-than-half-of");
  private static final Keys WEIGHTED_MATRIX =
      Keys.of(
          QUESTION,
          METHOD,
          "result",
          "criteria: {Cost: 2, Reach: 3}",
          "marks: {Repair kits: [4, 5], Seeds: [5, 3]}");
  private static final Keys DATUM_MATRIX =
      Keys.of(
          QUESTION,
          METHOD,
          "result",
          "datum: As it is",
          "criteria: [Cost, Reach]",
          "signs: {Repair kits: [1, 0], Seeds: [-1, 1]}");
  private static final Keys SHOW_OF_HANDS =
      Keys.of(
          QUESTION,
          METHOD,
          "result",
          "yes: 7",
          "no: 2",
          "abstentions",
          "entitled",
          "quorum",
          "more-than-half-of");
  private static final Keys FIST_TO_FIVE =
      Keys.of(QUESTION, METHOD, "result", "fingers: [5, 4, 4, 3]", "counts");
  private static final Keys CONSENT =
      Keys.of(QUESTION, METHOD, "result", "people: 9", "reservations", "objections");

  private static final Map<Method, Keys> KEYS =
      new EnumMap<>(
          Map.ofEntries(
              Map.entry(Method.MULTIVOTING, MULTIVOTING),
              Map.entry(Method.RANKED_POINTS, RANKED_POINTS),
              Map.entry(Method.BORDA, BORDA),
              Map.entry(Method.CONDORCET, CONDORCET),
              Map.entry(Method.APPROVAL, APPROVAL),
              Map.entry(Method.MAJORITY, MAJORITY),
              Map.entry(Method.WEIGHTED_MATRIX, WEIGHTED_MATRIX),
              Map.entry(Method.DATUM_MATRIX, DATUM_MATRIX),
              Map.entry(Method.SHOW_OF_HANDS, SHOW_OF_HANDS),
              Map.entry(Method.FIST_TO_FIVE, FIST_TO_FIVE),
              Map.entry(Method.CONSENT, CONSENT)));

  /** Of what more than half is asked, as files have it. */
  enum Base implements Word {
    CAST(MajorityRule.Base.CAST),
    PRESENT(MajorityRule.Base.PRESENT),
    ENTITLED(MajorityRule.Base.ENTITLED);

    private final MajorityRule.Base base;

    Base(MajorityRule.Base base) {
      this.base = base;
    }

    @Override
    public String word() {
      return base.name().toLowerCase(Locale.ROOT);
    }
  }

  private final Method method;
  private final Fields fields;
  private final Faults faults;

  private VoteReader(Method method, Fields fields, Faults faults) {
    this.method = method;
    this.fields = fields;
    this.faults = faults;
  }

  static Optional<Vote> read(Node node, Faults faults) {
    Optional<Node> word =
        node instanceof Mapping mapping
            ? mapping.find("method").map(Member::value).filter(value -> !value.isNothing())
            : Optional.empty();
    if (word.isEmpty()) {
      faults.add(node, "vote", "say how it was counted: method is " + Word.all(Method.class));
      return Optional.empty();
    }
    return Values.word(word.get(), "method", Method.class, faults)
        .flatMap(
            method -> {
              Keys keys = KEYS.getOrDefault(method, CONSENT);
              return new VoteReader(method, Fields.of(node, "vote", keys, faults), faults).vote();
            });
  }

  private Optional<Vote> vote() {
    String question = fields.text("question");
    return switch (method) {
      case SHOW_OF_HANDS, FIST_TO_FIVE, CONSENT -> {
        Optional<Verdict> result = fields.optionalWord(Verdict.class, "result");
        Supplier<ProposalVote> count = proposal();
        yield fields.build(() -> new Vote.Proposal(question, method, count.get(), result));
      }
      case MULTIVOTING,
          RANKED_POINTS,
          BORDA,
          CONDORCET,
          APPROVAL,
          MAJORITY,
          WEIGHTED_MATRIX,
          DATUM_MATRIX -> {
        List<String> result = result();
        Supplier<Tally> tally = tally();
        yield fields.build(() -> new Vote.Choice(question, method, tally.get(), result));
      }
    };
  }

  /** One option or a list of them. */
  private List<String> result() {
    Optional<Node> node = fields.optional("result");
    if (node.isPresent() && node.get() instanceof Scalar) {
      return Values.text(node.get(), "result", faults).map(List::of).orElse(List.of());
    }
    return fields.optionalTexts("result");
  }

  /** Reads all figures at once, so that every fault is told; the counting may refuse them later. */
  private Supplier<Tally> tally() {
    return switch (method) {
      case MULTIVOTING -> multivote();
      case RANKED_POINTS -> rankedPoints();
      case BORDA -> borda();
      case CONDORCET -> condorcet();
      case APPROVAL -> approval();
      case MAJORITY -> majority();
      case WEIGHTED_MATRIX -> weighted();
      default -> datum();
    };
  }

  private Supplier<Tally> multivote() {
    int each = fields.whole("votes-each");
    int most = fields.optionalWhole("on-one").orElse(each);
    if (fields.optional("totals").isPresent()) {
      return totals(() -> Limits.of(new Allotment(each, most)));
    }
    List<String> options = fields.texts("options");
    List<Map<String, Integer>> ballots = fields.list("ballots", this::counts);
    lead(options);
    return () -> new Multivote(options, new Allotment(each, most), ballots);
  }

  private Supplier<Tally> rankedPoints() {
    int picks = fields.whole("picks");
    if (fields.optional("totals").isPresent()) {
      return totals(() -> Limits.ofRankedPoints(picks));
    }
    List<String> options = fields.texts("options");
    List<List<String>> ballots =
        fields.list("ballots", (n, f) -> Optional.of(Values.texts(n, "ballot", f)));
    lead(options);
    return () -> new RankedPoints(options, picks, ballots);
  }

  private Supplier<Tally> borda() {
    if (fields.optional("totals").isPresent()) {
      int options = names("totals").size();
      return totals(() -> Limits.ofBorda(Math.max(2, options)));
    }
    List<String> options = fields.texts("options");
    List<RankedBallot> ballots = fields.list("ballots", VoteReader::ranked);
    lead(options);
    return () -> new Borda(options, ballots);
  }

  private Supplier<Tally> condorcet() {
    List<String> options = fields.texts("options");
    if (fields.optional("over").isPresent()) {
      List<List<Integer>> over =
          fields.list("over", (n, f) -> Optional.of(Values.wholes(n, "row", f)));
      return () -> new Pairwise(options, over);
    }
    List<RankedBallot> ballots = fields.list("ballots", VoteReader::ranked);
    lead(options);
    return () -> Pairwise.of(options, ballots);
  }

  private Supplier<Tally> approval() {
    if (fields.optional("totals").isPresent()) {
      int options = names("totals").size();
      return totals(() -> Limits.ofApproval(Math.max(2, options)));
    }
    List<String> options = fields.texts("options");
    List<List<String>> ballots =
        fields.list("ballots", (n, f) -> Optional.of(Values.texts(n, "ballot", f)));
    lead(options);
    return () -> new Approval(options, ballots.stream().map(VoteReader::once).toList());
  }

  private static Set<String> once(List<String> ballot) {
    Set<String> options = new LinkedHashSet<>();
    for (String option : ballot) {
      if (!options.add(option)) {
        throw new InvalidValueException("ballots", option, "it stands on a ballot twice");
      }
    }
    return options;
  }

  private Supplier<Tally> majority() {
    Map<String, Integer> totals = fields.required("totals").map(this::numbers).orElse(Map.of());
    int abstentions = fields.optionalWhole("abstentions").orElse(0);
    int cast = totals.values().stream().mapToInt(Integer::intValue).sum();
    Supplier<MajorityRule> rule = rule(cast + abstentions);
    return () -> {
      List<Optional<String>> ballots = new ArrayList<>();
      totals.forEach((option, votes) -> ballots.addAll(copies(votes, Optional.of(option))));
      ballots.addAll(copies(abstentions, Optional.empty()));
      return new Majority(List.copyOf(totals.keySet()), rule.get(), ballots);
    };
  }

  private static <T> List<T> copies(int times, T value) {
    if (times < 0 || times > 1000) {
      throw new InvalidValueException("totals", times, "a whole number from 0 to 1000 is right");
    }
    return Collections.nCopies(times, value);
  }

  private Supplier<MajorityRule> rule(int voted) {
    int entitled = fields.optionalWhole("entitled").orElse(Math.max(1, voted));
    int quorum = fields.optionalWhole("quorum").orElse(0);
    Base base = fields.optionalWord(Base.class, "more-than-half-of").orElse(Base.CAST);
    return () -> new MajorityRule(base.base, entitled, quorum);
  }

  private Supplier<Tally> weighted() {
    Map<String, Integer> weights = fields.required("criteria").map(this::numbers).orElse(Map.of());
    Map<String, List<Integer>> marks = rows("marks");
    return () ->
        new WeightedMatrix(
            List.copyOf(marks.keySet()),
            weights.entrySet().stream().map(e -> new Criterion(e.getKey(), e.getValue())).toList(),
            List.copyOf(marks.values()));
  }

  private Supplier<Tally> datum() {
    String datum = fields.text("datum");
    List<String> criteria = fields.texts("criteria");
    Map<String, List<Integer>> signs = rows("signs");
    return () ->
        new DatumMatrix(datum, List.copyOf(signs.keySet()), criteria, List.copyOf(signs.values()));
  }

  private Supplier<Tally> totals(Supplier<Limits> limits) {
    int voters = fields.whole("voters");
    Map<String, Integer> totals = fields.required("totals").map(this::numbers).orElse(Map.of());
    if (fields.optional("ballots").isPresent()) {
      faults.add(
          fields.node().at("ballots"),
          "ballots",
          "there are totals already; strike one of the two");
    }
    List<String> options =
        fields.optional("options").isPresent()
            ? fields.texts("options")
            : List.copyOf(totals.keySet());
    if (!new HashSet<>(options).equals(totals.keySet())) {
      faults.add(fields.node().at("totals"), "totals", "each option has one, and nothing else");
    }
    return () ->
        new Totals(
            options,
            options.stream().map(o -> totals.getOrDefault(o, 0)).toList(),
            voters,
            limits.get());
  }

  private Supplier<ProposalVote> proposal() {
    return switch (method) {
      case SHOW_OF_HANDS -> hands();
      case FIST_TO_FIVE -> fingers();
      default -> consent();
    };
  }

  private Supplier<ProposalVote> hands() {
    int yes = fields.whole("yes");
    int no = fields.whole("no");
    int abstentions = fields.optionalWhole("abstentions").orElse(0);
    Supplier<MajorityRule> rule = rule(yes + no + abstentions);
    return () -> new Motion(yes, no, abstentions, rule.get());
  }

  private Supplier<ProposalVote> fingers() {
    if (fields.optional("counts").isEmpty()) {
      List<Integer> fingers = fields.wholes("fingers");
      lead(List.of());
      return () -> new FistToFive(fingers);
    }
    List<Integer> counts = fields.wholes("counts");
    fields.checkLength("counts", 6, "[0, 0, 1, 2, 4, 2] for 0 to 5 fingers");
    return () -> {
      List<Integer> fingers = new ArrayList<>();
      for (int shown = 0; shown < counts.size(); shown++) {
        fingers.addAll(copies(counts.get(shown), shown));
      }
      return new FistToFive(fingers);
    };
  }

  private Supplier<ProposalVote> consent() {
    int people = fields.whole("people");
    List<String> reservations = fields.optionalTexts("reservations");
    List<String> objections = fields.optionalTexts("objections");
    return () -> {
      List<Voice> voices = new ArrayList<>();
      objections.forEach(reason -> voices.add(new Voice.Objection(reason)));
      reservations.forEach(text -> voices.add(new Voice.Reservation(text)));
      if (people < voices.size()) {
        throw new InvalidValueException(
            "people", people, voices.size() + " spoke up already; count again");
      }
      voices.addAll(copies(people - voices.size(), new Voice.NoObjection()));
      return new Consent(voices);
    };
  }

  private Optional<Map<String, Integer>> counts(Node node, Faults all) {
    return Optional.of(numbers(node));
  }

  /** Whole numbers by name. */
  private Map<String, Integer> numbers(Node node) {
    Map<String, Integer> numbers = new LinkedHashMap<>();
    for (Member member : members(node)) {
      Values.whole(member.value(), member.key(), faults)
          .ifPresent(number -> numbers.put(member.key(), number));
    }
    return numbers;
  }

  private List<Member> members(Node node) {
    if (node instanceof Mapping mapping) {
      return mapping.members();
    }
    faults.add(node, "numbers", "names with numbers are right, such as {Repair kits: 2, Seeds: 1}");
    return List.of();
  }

  private List<String> names(String key) {
    Optional<Node> node = fields.optional(key);
    return node.isPresent() && node.get() instanceof Mapping mapping
        ? mapping.members().stream().map(Member::key).toList()
        : List.of();
  }

  private Map<String, List<Integer>> rows(String key) {
    Map<String, List<Integer>> rows = new LinkedHashMap<>();
    Optional<Node> node = fields.required(key);
    if (node.isPresent() && !(node.get() instanceof Mapping)) {
      faults.add(node.get(), key, "rows by option are right, such as {Repair kits: [1, 0]}");
    } else if (node.isPresent()) {
      for (Member member : members(node.get())) {
        rows.put(member.key(), Values.wholes(member.value(), member.key(), faults));
        fields.alias("row of " + member.key(), member.value());
        fields.alias("mark of " + member.key(), member.value());
      }
    }
    return rows;
  }

  /** An order of options, the best first; a list within it holds options that are level. */
  private static Optional<RankedBallot> ranked(Node node, Faults faults) {
    List<List<String>> tiers = new ArrayList<>();
    for (Node place : Values.nodes(node, "ballot", faults)) {
      tiers.add(
          place instanceof Sequence
              ? Values.texts(place, "place", faults)
              : Values.text(place, "place", faults).map(List::of).orElse(List.of()));
    }
    return Values.build(node, faults, () -> new RankedBallot(tiers));
  }

  /** Lets what the counting says of a ballot lead to where the ballot stands. */
  private void lead(List<String> options) {
    for (String key : List.of("ballots", "fingers")) {
      if (fields.optional(key).isPresent() && fields.optional(key).get() instanceof Sequence list) {
        for (int i = 0; i < list.nodes().size(); i++) {
          String name = "ballot " + (i + 1);
          Node ballot = list.nodes().get(i);
          fields.alias(name, ballot);
          options.forEach(option -> fields.alias(name + ", " + option, ballot));
        }
        fields.alias("number of ballots", list);
      }
    }
    fields.optional("options").ifPresent(node -> fields.alias("number of options", node));
  }
}
