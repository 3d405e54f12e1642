package org.arcwright.format;

import java.time.Duration;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
import org.arcwright.format.tree.Fields.Slot;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;
import org.arcwright.format.tree.Node.Mapping;
import org.arcwright.format.tree.Values;

/** Reads an exercise. */
final class ExerciseReader {
  static final Keys KEYS =
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
          "source: {mark: common-practice}",
          Retirement.KEY);
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

  /** What takes the place of a value that is wrong, so that the rest is looked at, too. */
  private static final class StandIn {
    static final String ID = "x";
    static final String TEXT = "...";
    static final SizeRange SIZE = new SizeRange(2, 2);
    static final SizeRange ANY_SIZE = new SizeRange(1, 1000);
    static final List<Duration> MINUTES = Collections.nCopies(3, Duration.ofMinutes(1));
    static final Step STEP =
        new Step(
            TEXT,
            Speaker.FACILITATOR,
            Format.PLENARY,
            new Minutes(MINUTES.get(0), MINUTES.get(1), MINUTES.get(2)),
            Per.SESSION,
            1);
    static final Map<Mode, Suitability> MODES = new EnumMap<>(Mode.class);

    static {
      for (Mode mode : Mode.values()) {
        MODES.put(mode, new Suitability(1, TEXT, Set.of(), List.of(TEXT)));
      }
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

  /** Where no size is said, the place of the first step in small groups, which lacks it. */
  private static Optional<Node> inGroups(Fields fields) {
    if (fields.optional("breakout").isPresent()) {
      return Optional.empty();
    }
    for (int i = 0; fields.node().lookUp("steps[" + i + "]").isPresent(); i++) {
      String step = "steps[" + i + "]";
      Optional<Node> format = fields.node().lookUp(step + ".format");
      if (format.isPresent() && format.get().shown().equals(Format.SMALL_GROUPS.word())) {
        Node here = format.get();
        return Optional.of(new Mapping(here.line(), here.column(), List.of()));
      }
    }
    return Optional.empty();
  }

  private Optional<Exercise> exercise(Node node) {
    Fields fields = Fields.of(node, "exercise", KEYS, faults);
    Slot<String> id = fields.slot("id", fields.text("id"), StandIn.ID);
    Slot<String> title = fields.slot("title", fields.text("title"), StandIn.TEXT);
    Kind kind = fields.word(Kind.class, "kind");
    Slot<String> purpose = fields.slot("purpose", fields.text("purpose"), StandIn.TEXT);
    Optional<SizeRange> all = size(fields.required("people"), "people");
    Optional<SizeRange> small = size(fields.optional("breakout"), "breakout");
    SizeRange fitting = small.orElse(StandIn.SIZE);
    Slot<SizeRange> people = fields.slot("people", all.orElse(fitting), fitting);
    Slot<Optional<SizeRange>> breakout =
        fields.slot("breakout", small, Optional.of(StandIn.ANY_SIZE));
    Slot<Integer> energy = fields.slot("energy", fields.whole("energy"), 1);
    Slot<Integer> openness = fields.slot("openness", fields.whole("openness"), 0);
    Slot<Boolean> moves = fields.slot("moves", fields.flag("moves"), false);
    Slot<List<String>> needs = fields.slot("needs", fields.optionalTexts("needs"), List.of());
    Slot<List<String>> yields = fields.slot("yields", fields.texts("yields"), List.of(StandIn.ID));
    vocabulary.checkProducts(fields, "needs", faults);
    vocabulary.checkProducts(fields, "yields", faults);
    Slot<String> opening = fields.slot("opening", fields.text("opening"), StandIn.TEXT);
    inGroups(fields).ifPresent(step -> fields.alias("breakout", step));
    Slot<List<Step>> steps =
        fields.slot("steps", fields.list("steps", this::step), List.of(StandIn.STEP));
    Map<Mode, Suitability> modes = fields.required("modes").map(this::modes).orElse(StandIn.MODES);
    Slot<List<String>> cautions = cautions(fields);
    Optional<String> wayOut = fields.optionalText("opt-out");
    Slot<Optional<String>> optOut =
        fields.slot(
            "opt-out",
            fields.soundOr("opt-out", wayOut, Optional.of(StandIn.TEXT)),
            Optional.of(StandIn.TEXT));
    Slot<List<String>> access = fields.slot("access", fields.texts("access"), List.of());
    Slot<List<String>> materials =
        fields.slot("materials", fields.optionalTexts("materials"), List.of());
    Slot<List<String>> watch = fields.slot("watch", fields.texts("watch"), List.of());
    Slot<List<String>> tips = fields.slot("tips", fields.optionalTexts("tips"), List.of());
    Slot<String> carryOver = fields.slot("carry-over", fields.text("carry-over"), StandIn.TEXT);
    Source source =
        fields.required("source").flatMap(this::source).orElse(new Source.CommonPractice());
    Retirement.refuse(fields, faults);
    return fields.build(
        () ->
            new Exercise(
                id.get(),
                title.get(),
                kind,
                purpose.get(),
                people.get(),
                breakout.get(),
                energy.get(),
                openness.get(),
                moves.get(),
                Checks.ids("needs", needs.get()),
                Checks.ids("yields", yields.get()),
                opening.get(),
                steps.get(),
                modes,
                new Exercise.Care(cautions.get(), optOut.get(), access.get()),
                new Exercise.Notes(materials.get(), watch.get(), tips.get(), carryOver.get()),
                source));
  }

  private Optional<SizeRange> size(Optional<Node> node, String what) {
    if (node.isEmpty()) {
      return Optional.empty();
    }
    Fields fields = Fields.of(node.get(), what, SIZE, faults);
    int min = fields.whole("min");
    int max = fields.whole("max");
    return fields.build(() -> new SizeRange(min, max));
  }

  private Optional<Step> step(Node node, Faults all) {
    Fields fields = Fields.of(node, "step", STEP, all);
    Slot<String> text = fields.slot("text", fields.text("text"), StandIn.TEXT);
    Speaker speaker = fields.word(Speaker.class, "who");
    Format format = fields.word(Format.class, "format");
    List<Duration> times = fields.list("minutes", (n, f) -> Times.minutes(n, "minutes", f));
    fields.checkLength("minutes", 3, "[1, 2, 3]");
    Slot<List<Duration>> minutes =
        fields.slot("minutes", times.size() == 3 ? times : StandIn.MINUTES, StandIn.MINUTES);
    Per counted = fields.optionalWord(Per.class, "per").orElse(Per.SESSION);
    int often =
        counted == Per.ROUND ? fields.whole("rounds") : fields.optionalWhole("rounds").orElse(1);
    Slot<Per> per = fields.slot("per", fields.soundOr("format", counted, Per.SESSION), Per.SESSION);
    Slot<Integer> rounds = fields.slot("rounds", fields.soundOr("per", often, 1), 1);
    return fields.build(
        () ->
            new Step(
                text.get(),
                speaker,
                format,
                new Minutes(minutes.get().get(0), minutes.get().get(1), minutes.get().get(2)),
                per.get(),
                rounds.get()));
  }

  private Map<Mode, Suitability> modes(Node node) {
    Fields fields = Fields.of(node, "modes", MODES, faults);
    Map<Mode, Suitability> modes = new EnumMap<>(StandIn.MODES);
    for (Mode mode : Mode.values()) {
      fields
          .required(mode.word())
          .flatMap(n -> suitability(n, mode))
          .ifPresent(suitability -> modes.put(mode, suitability));
    }
    return modes;
  }

  private Optional<Suitability> suitability(Node node, Mode mode) {
    Fields fields = Fields.of(node, mode.word(), MODE, faults);
    Slot<Integer> fit = fields.slot("fit", fields.whole("fit"), 1);
    Slot<List<String>> tools = fields.slot("tools", fields.texts("tools"), List.of());
    vocabulary.checkTools(fields, "tools", faults);
    Slot<String> how = fields.slot("how", fields.text("how"), StandIn.TEXT);
    Slot<List<String>> cautions = cautions(fields);
    return fields.build(() -> Suitability.of(fit.get(), how.get(), tools.get(), cautions.get()));
  }

  private static Slot<List<String>> cautions(Fields fields) {
    List<String> cautions = fields.optionalTexts("cautions");
    List<String> standIn = List.of(StandIn.TEXT);
    return fields.slot("cautions", fields.soundOr("cautions", cautions, standIn), standIn);
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
