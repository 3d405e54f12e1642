package org.arcwright.format;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.arcwright.compose.instance.Instance;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;

/** Reads an instance, field for field as the composition problem names them. */
final class InstanceReader {
  private static final Keys KEYS =
      Keys.of(
          "grid: 5",
          "cap: 180",
          "curve: [30, 30, 32]",
          "stretch: {\"min\": 30, \"max\": 60}",
          "breakMinutes: 10",
          "meals",
          "bufferPercent: 15",
          "products: []",
          "initial",
          "phases",
          "candidates",
          "include",
          "pins",
          "rules",
          "weights",
          "format: \"arcwright-instance\"",
          "version: 1");
  private static final Keys STRETCH = Keys.of("min: 30", "max: 60");
  private static final Keys MEAL = Keys.of("from: 120", "to: 150", "minutes: 45");
  private static final Keys PHASE =
      Keys.of(
          "name: \"open\"",
          "kinds: [\"ICEBREAKER\"]",
          "count: [1, 2]",
          "minutes: [5, 25]",
          "target: 15",
          "yields: []");
  private static final Keys CANDIDATE =
      Keys.of(
          "id: \"two-objects\"",
          "kind: \"ICEBREAKER\"",
          "lengths: [10, 15]",
          "lengthCosts: [0, 5]",
          "energy: 40",
          "format: \"PAIRS\"",
          "needs: []",
          "yields: []",
          "cost: 0");
  private static final Keys PIN = Keys.of("id: \"guest-talk\"", "at: 60");
  private static final Keys RULES = Keys.of("apart", "atMost");
  private static final Keys APART =
      Keys.of(
          "name: \"never two alone in a row\"",
          "first: [\"two-objects\"]",
          "then: [\"two-objects\"]",
          "acrossBreaks: false");
  private static final Keys AT_MOST =
      Keys.of("name: \"at most two alone\"", "of: [\"two-objects\"]", "most: 2");
  private static final Keys WEIGHTS =
      Keys.of("energy", "share", "monotony", "monotonyAcrossBreak", "rhythm", "pause", "idle");

  private InstanceReader() {}

  static Optional<Instance> read(Node node, Faults faults) {
    Fields fields = Fields.of(node, "instance", KEYS, faults);
    Header.INSTANCE.allow(fields, faults);
    int grid = fields.whole("grid");
    int cap = fields.whole("cap");
    List<Integer> curve = fields.wholes("curve");
    Optional<Instance.Stretch> stretch =
        fields.required("stretch").flatMap(n -> stretch(n, faults));
    int breakMinutes = fields.whole("breakMinutes");
    List<Instance.Meal> meals = fields.optionalList("meals", InstanceReader::meal);
    int bufferPercent = fields.whole("bufferPercent");
    List<String> products = fields.texts("products");
    List<String> initial = fields.optionalTexts("initial");
    List<Instance.Phase> phases = fields.list("phases", InstanceReader::phase);
    List<Instance.Candidate> candidates = fields.list("candidates", InstanceReader::candidate);
    List<String> include = fields.optionalTexts("include");
    List<Instance.Pin> pins = fields.optionalList("pins", InstanceReader::pin);
    Optional<Instance.Rules> rules =
        fields
            .optional("rules")
            .map(n -> rules(n, faults))
            .orElse(Optional.of(Instance.Rules.NONE));
    Optional<Instance.Weights> weights =
        fields
            .optional("weights")
            .map(n -> weights(n, faults))
            .orElse(Optional.of(Instance.Weights.NONE));
    return fields.build(
        () ->
            new Instance(
                grid,
                cap,
                curve,
                stretch.orElseThrow(),
                breakMinutes,
                meals,
                bufferPercent,
                products,
                initial,
                phases,
                candidates,
                include,
                pins,
                rules.orElseThrow(),
                weights.orElseThrow()));
  }

  private static Optional<Instance.Stretch> stretch(Node node, Faults faults) {
    Fields fields = Fields.of(node, "stretch", STRETCH, faults);
    int min = fields.whole("min");
    int max = fields.whole("max");
    return fields.build(() -> new Instance.Stretch(min, max));
  }

  static Optional<Instance.Meal> meal(Node node, Faults faults) {
    Fields fields = Fields.of(node, "meal", MEAL, faults);
    int from = fields.whole("from");
    int to = fields.whole("to");
    int minutes = fields.whole("minutes");
    return fields.build(() -> new Instance.Meal(from, to, minutes));
  }

  private static Optional<Instance.Phase> phase(Node node, Faults faults) {
    Fields fields = Fields.of(node, "phase", PHASE, faults);
    String name = fields.text("name");
    List<String> kinds = fields.texts("kinds");
    List<Integer> count = bounds(fields, "count");
    List<Integer> minutes = bounds(fields, "minutes");
    int target = fields.whole("target");
    List<String> yields = fields.texts("yields");
    return fields.build(
        () ->
            new Instance.Phase(
                name,
                Set.copyOf(kinds),
                new Instance.Bounds(count.get(0), count.get(1)),
                new Instance.Bounds(minutes.get(0), minutes.get(1)),
                target,
                yields));
  }

  private static List<Integer> bounds(Fields fields, String key) {
    List<Integer> bounds = fields.wholes(key);
    fields.checkLength(key, 2, "[1, 2]");
    return bounds;
  }

  private static Optional<Instance.Candidate> candidate(Node node, Faults faults) {
    Fields fields = Fields.of(node, "candidate", CANDIDATE, faults);
    String id = fields.text("id");
    String kind = fields.text("kind");
    List<Integer> lengths = fields.wholes("lengths");
    List<Integer> lengthCosts = fields.wholes("lengthCosts");
    int energy = fields.whole("energy");
    String format = fields.text("format");
    List<String> needs = fields.texts("needs");
    List<String> yields = fields.texts("yields");
    int cost = fields.whole("cost");
    return fields.build(
        () ->
            new Instance.Candidate(
                id, kind, lengths, lengthCosts, energy, format, needs, yields, cost));
  }

  private static Optional<Instance.Pin> pin(Node node, Faults faults) {
    Fields fields = Fields.of(node, "pin", PIN, faults);
    String id = fields.text("id");
    int at = fields.whole("at");
    return fields.build(() -> new Instance.Pin(id, at));
  }

  private static Optional<Instance.Rules> rules(Node node, Faults faults) {
    Fields fields = Fields.of(node, "rules", RULES, faults);
    List<Instance.Apart> apart = fields.optionalList("apart", InstanceReader::apart);
    List<Instance.AtMost> atMost = fields.optionalList("atMost", InstanceReader::atMost);
    return fields.build(() -> new Instance.Rules(apart, atMost));
  }

  private static Optional<Instance.Apart> apart(Node node, Faults faults) {
    Fields fields = Fields.of(node, "rule", APART, faults);
    String name = fields.text("name");
    Set<String> first = Set.copyOf(fields.texts("first"));
    Set<String> then = Set.copyOf(fields.texts("then"));
    boolean acrossBreaks = fields.flag("acrossBreaks");
    return fields.build(() -> new Instance.Apart(name, first, then, acrossBreaks));
  }

  private static Optional<Instance.AtMost> atMost(Node node, Faults faults) {
    Fields fields = Fields.of(node, "rule", AT_MOST, faults);
    String name = fields.text("name");
    Set<String> of = Set.copyOf(fields.texts("of"));
    int most = fields.whole("most");
    return fields.build(() -> new Instance.AtMost(name, of, most));
  }

  private static Optional<Instance.Weights> weights(Node node, Faults faults) {
    Fields fields = Fields.of(node, "weights", WEIGHTS, faults);
    int energy = fields.optionalWhole("energy").orElse(0);
    int share = fields.optionalWhole("share").orElse(0);
    int monotony = fields.optionalWhole("monotony").orElse(0);
    int monotonyAcrossBreak = fields.optionalWhole("monotonyAcrossBreak").orElse(0);
    int rhythm = fields.optionalWhole("rhythm").orElse(0);
    int pause = fields.optionalWhole("pause").orElse(0);
    int idle = fields.optionalWhole("idle").orElse(0);
    return fields.build(
        () ->
            new Instance.Weights(
                energy, share, monotony, monotonyAcrossBreak, rhythm, pause, idle));
  }
}
