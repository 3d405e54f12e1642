package org.arcwright.format;

import java.time.Duration;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Minutes;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Per;
import org.arcwright.catalog.SizeRange;
import org.arcwright.catalog.Source;
import org.arcwright.catalog.Speaker;
import org.arcwright.catalog.Step;
import org.arcwright.catalog.Suitability;
import org.arcwright.catalog.Word;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;
import org.arcwright.format.tree.Values;

/** Reads an exercise. */
final class ExerciseReader {
  private static final Keys KEYS =
      Keys.of(
          "id: two-objects",
          "title: Two objects from your desk",
          "kind: icebreaker",
          "purpose: Everybody is heard once.",
          "people: {min: 4, max: 12}",
          "breakout: {min: 3, max: 5}",
          "energy: 3",
          "openness: 1",
          "moves",
          "needs",
          "yields: [arrival]",
          "opening: Welcome. ...",
          "steps",
          "modes",
          "materials",
          "cautions",
          "opt-out",
          "watch: [Who has not spoken yet?]",
          "access: [Captions are on.]",
          "carry-over: Names and faces.",
          "tips",
          "source: {mark: common-practice}");
  private static final Keys STEP =
      Keys.of(
          "text: Explain the task.",
          "who: facilitator",
          "format: plenary",
          "minutes: [1, 2, 3]",
          "per",
          "rounds: 3");
  private static final Keys SIZE = Keys.of("min: 4", "max: 12");
  private static final Keys MODES =
      Keys.of(
          "remote: {fit: 3, tools: [call], how: ...}",
          "in-person: {fit: 3, tools: [], how: ...}",
          "hybrid: {fit: 2, tools: [call], how: ...}");
  private static final Keys MODE =
      Keys.of("fit: 3", "tools: [call]", "how: Notes on a shared board.", "cautions");
  private static final Keys SOURCE =
      Keys.of("mark: common-practice", "cite: Author (year). Title.");

  /** How sure a source is. */
  enum Mark implements Word {
    PUBLISHED("published"),
    COMMON_PRACTICE("common-practice"),
    MEMORY("memory");

    private final String word;

    Mark(String word) {
      this.word = word;
    }

    @Override
    public String word() {
      return word;
    }
  }

  private final Vocabulary vocabulary;
  private final Faults faults;

  private ExerciseReader(Vocabulary vocabulary, Faults faults) {
    this.vocabulary = vocabulary;
    this.faults = faults;
  }

  static Optional<Exercise> read(Node node, Vocabulary vocabulary, Faults faults) {
    return new ExerciseReader(vocabulary, faults).exercise(node);
  }

  private Optional<Exercise> exercise(Node node) {
    Fields fields = Fields.of(node, "exercise", KEYS, faults);
    String id = fields.text("id");
    String title = fields.text("title");
    Kind kind = fields.word(Kind.class, "kind");
    String purpose = fields.text("purpose");
    Optional<SizeRange> people = fields.required("people").flatMap(n -> size(n, "people"));
    Optional<SizeRange> breakout = fields.optional("breakout").flatMap(n -> size(n, "breakout"));
    int energy = fields.whole("energy");
    int openness = fields.whole("openness");
    boolean moves = fields.flag("moves");
    List<String> needs = fields.optionalTexts("needs");
    List<String> yields = fields.texts("yields");
    vocabulary.checkProducts(fields, "needs", faults);
    vocabulary.checkProducts(fields, "yields", faults);
    String opening = fields.text("opening");
    List<Step> steps = fields.list("steps", this::step);
    Optional<Map<Mode, Suitability>> modes = fields.required("modes").flatMap(this::modes);
    List<String> cautions = fields.optionalTexts("cautions");
    Optional<String> optOut = fields.optionalText("opt-out");
    List<String> access = fields.texts("access");
    List<String> materials = fields.optionalTexts("materials");
    List<String> watch = fields.texts("watch");
    List<String> tips = fields.optionalTexts("tips");
    String carryOver = fields.text("carry-over");
    Optional<Source> source = fields.required("source").flatMap(this::source);
    return fields.build(
        () ->
            new Exercise(
                id,
                title,
                kind,
                purpose,
                people.orElseThrow(),
                breakout,
                energy,
                openness,
                moves,
                Checks.ids("needs", needs),
                Checks.ids("yields", yields),
                opening,
                steps,
                modes.orElseThrow(),
                new Exercise.Care(cautions, optOut, access),
                new Exercise.Notes(materials, watch, tips, carryOver),
                source.orElseThrow()));
  }

  private Optional<SizeRange> size(Node node, String what) {
    Fields fields = Fields.of(node, what, SIZE, faults);
    int min = fields.whole("min");
    int max = fields.whole("max");
    return fields.build(() -> new SizeRange(min, max));
  }

  private Optional<Step> step(Node node, Faults all) {
    Fields fields = Fields.of(node, "step", STEP, all);
    String text = fields.text("text");
    Speaker speaker = fields.word(Speaker.class, "who");
    Format format = fields.word(Format.class, "format");
    List<Duration> minutes = fields.list("minutes", (n, f) -> Times.minutes(n, "minutes", f));
    fields.checkLength("minutes", 3, "[1, 2, 3]");
    Per per = fields.optionalWord(Per.class, "per").orElse(Per.SESSION);
    int rounds =
        per == Per.ROUND ? fields.whole("rounds") : fields.optionalWhole("rounds").orElse(1);
    return fields.build(
        () ->
            new Step(
                text,
                speaker,
                format,
                new Minutes(minutes.get(0), minutes.get(1), minutes.get(2)),
                per,
                rounds));
  }

  private Optional<Map<Mode, Suitability>> modes(Node node) {
    Fields fields = Fields.of(node, "modes", MODES, faults);
    Map<Mode, Suitability> modes = new EnumMap<>(Mode.class);
    for (Mode mode : Mode.values()) {
      fields
          .required(mode.word())
          .flatMap(n -> suitability(n, mode))
          .ifPresent(suitability -> modes.put(mode, suitability));
    }
    return fields.build(() -> modes);
  }

  private Optional<Suitability> suitability(Node node, Mode mode) {
    Fields fields = Fields.of(node, mode.word(), MODE, faults);
    int fit = fields.whole("fit");
    List<String> tools = fields.texts("tools");
    vocabulary.checkTools(fields, "tools", faults);
    String how = fields.text("how");
    List<String> cautions = fields.optionalTexts("cautions");
    return fields.build(() -> Suitability.of(fit, how, tools, cautions));
  }

  private Optional<Source> source(Node node) {
    Fields fields = Fields.of(node, "source", SOURCE, faults);
    Optional<Mark> mark =
        fields.required("mark").flatMap(n -> Values.word(n, "mark", Mark.class, faults));
    if (mark.isEmpty()) {
      return Optional.empty();
    }
    if (mark.get() == Mark.COMMON_PRACTICE) {
      fields
          .optional("cite")
          .ifPresent(cite -> faults.add(cite, "cite", "common practice has none; strike it"));
      return fields.build(Source.CommonPractice::new);
    }
    String cite = fields.text("cite");
    boolean published = mark.get() == Mark.PUBLISHED;
    return fields.build(() -> published ? new Source.Published(cite) : new Source.Memory(cite));
  }
}
