package org.arcwright.format;

import java.time.Duration;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Word;
import org.arcwright.compose.Composition;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.LeftOut;
import org.arcwright.compose.Options;
import org.arcwright.compose.Options.Option;
import org.arcwright.compose.Profile;
import org.arcwright.compose.Proof;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.search.OptionList.End;
import org.arcwright.compose.search.OptionRule;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;

/** Reads options. */
final class OptionsReader {
  private static final Keys KEYS =
      Keys.of(
          "rule",
          "end: \"enough\"",
          "beyond",
          "options: []",
          "answer",
          "leftOut: []",
          "instance",
          "format: \"arcwright-options\"",
          "version: 1");
  private static final Keys RULE = Keys.of("options: 3", "share: 50", "within: 25");
  private static final Keys OPTION = Keys.of("agenda", "proof", "prices: []", "profile");
  private static final Keys PROFILE =
      Keys.of(
          "work: 160",
          "breaks: 2",
          "resting: 20",
          "energyFit: 91",
          "formats: {}",
          "talking: 84",
          "alone: 21",
          "openness: 1",
          "tools: []");
  private static final Keys FORMATS = Keys.of("solo", "pairs", "small-groups", "plenary");

  /** An end as files have it. */
  enum EndWord implements Word {
    ENOUGH("enough"),
    NONE_LEFT("none-left"),
    TOO_DEAR("too-dear"),
    STOPPED("stopped");

    private final String word;

    EndWord(String word) {
      this.word = word;
    }

    @Override
    public String word() {
      return word;
    }
  }

  private OptionsReader() {}

  static Optional<Options> read(Node node, Faults faults) {
    Fields fields = Fields.of(node, "options", KEYS, faults);
    Header.OPTIONS.demand(fields, faults);
    Optional<OptionRule> rule = fields.required("rule").flatMap(n -> rule(n, faults));
    Optional<Node> why = fields.optional("answer");
    if (why.isPresent()) {
      Optional<Composition> answer = CompositionReader.read(why.get(), faults);
      return fields.build(() -> new Options.NotOne(rule.orElseThrow(), answer.orElseThrow()));
    }
    EndWord end = fields.word(EndWord.class, "end");
    Optional<Proof> beyond = fields.optional("beyond").flatMap(n -> ProofForm.read(n, faults));
    List<LeftOut> leftOut = fields.list("leftOut", CompositionReader::leftOut);
    Optional<Instance> instance =
        fields.required("instance").flatMap(n -> InstanceReader.read(n, faults));
    List<Option> options = fields.list("options", (n, all) -> option(n, leftOut, instance, all));
    return fields.build(
        () -> new Options.Found(rule.orElseThrow(), options, End.valueOf(end.name()), beyond));
  }

  private static Optional<OptionRule> rule(Node node, Faults faults) {
    Fields fields = Fields.of(node, "rule", RULE, faults);
    int options = fields.whole("options");
    int share = fields.whole("share");
    int within = fields.whole("within");
    return fields.build(() -> new OptionRule(options, share, within));
  }

  private static Optional<Option> option(
      Node node, List<LeftOut> leftOut, Optional<Instance> instance, Faults faults) {
    Fields fields = Fields.of(node, "option", OPTION, faults);
    Optional<Composed> composed = CompositionReader.composed(fields, leftOut, instance, faults);
    Optional<Profile> profile = fields.required("profile").flatMap(n -> profile(n, faults));
    return fields.build(() -> new Option(composed.orElseThrow(), profile.orElseThrow()));
  }

  private static Optional<Profile> profile(Node node, Faults faults) {
    Fields fields = Fields.of(node, "profile", PROFILE, faults);
    int work = fields.whole("work");
    int breaks = fields.whole("breaks");
    int resting = fields.whole("resting");
    int energyFit = fields.whole("energyFit");
    Map<Format, Integer> formats = new EnumMap<>(Format.class);
    fields.required("formats").ifPresent(n -> formats(n, formats, faults));
    int talking = fields.whole("talking");
    int alone = fields.whole("alone");
    int openness = fields.whole("openness");
    List<String> tools = fields.texts("tools");
    return fields.build(
        () ->
            new Profile(
                Duration.ofMinutes(work),
                breaks,
                Duration.ofMinutes(resting),
                energyFit,
                formats,
                Duration.ofMinutes(talking),
                Duration.ofMinutes(alone),
                openness,
                new TreeSet<>(tools)));
  }

  private static void formats(Node node, Map<Format, Integer> formats, Faults faults) {
    Fields fields = Fields.of(node, "formats", FORMATS, faults);
    for (Format format : Format.values()) {
      fields.optionalWhole(format.word()).ifPresent(count -> formats.put(format, count));
    }
  }
}
