package org.arcwright.format;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.Agenda.PhaseTitle;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.agenda.AgendaItem.Pause;
import org.arcwright.agenda.Figures;
import org.arcwright.brief.Brief;
import org.arcwright.brief.Defaults;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Word;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;
import org.arcwright.format.tree.Node.Mapping;
import org.arcwright.format.tree.Node.Sequence;
import org.arcwright.standin.ToolVerdict;

/** Reads an agenda, and fills in what may be left out. */
final class AgendaReader {
  private static final Keys KEYS =
      Keys.of(
          "format: \"arcwright-agenda\"",
          "version: 1",
          "title: \"Winter planning\"",
          "goal: \"choose-a-direction\"",
          "mode: \"remote\"",
          "people: 12",
          "cap",
          "start: \"2026-12-03 09:30\"",
          "zone: \"Europe/Vienna\"",
          "phases",
          "items",
          "buffer",
          "curve",
          "figures",
          "brief",
          "proof",
          "withstands");
  private static final Keys PHASE = Keys.of("name: \"open\"", "title: \"Arrive\"");
  private static final Keys ACTIVITY =
      Keys.of(
          "exercise: \"weather-report\"",
          "title: \"Weather report\"",
          "kind",
          "phase: \"open\"",
          "start",
          "length: 10",
          "format",
          "energy");
  private static final Keys PAUSE = Keys.of("break: \"ordinary\"", "start", "length: 10");

  /** What a break is for. */
  enum BreakKind implements Word {
    ORDINARY("ordinary"),
    MEAL("meal");

    private final String word;

    BreakKind(String word) {
      this.word = word;
    }

    @Override
    public String word() {
      return word;
    }
  }

  private final Faults faults;
  private Duration end = Duration.ZERO;

  private AgendaReader(Faults faults) {
    this.faults = faults;
  }

  static Optional<Agenda> read(Node node, Faults faults) {
    return new AgendaReader(faults).agenda(node);
  }

  /** With the brief that it carries. */
  static Optional<AgendaFile> readFile(Node node, Catalog catalog, Faults faults) {
    Optional<Agenda> agenda = read(node, faults);
    Optional<Brief> brief =
        node.lookUp("brief").flatMap(n -> BriefReader.read(n, Optional.of(catalog), faults));
    Optional<ToolVerdict> withstands =
        node.lookUp("withstands").flatMap(n -> ToolVerdictForm.read(n, faults));
    return agenda.map(a -> new AgendaFile(a, brief, withstands));
  }

  private Optional<Agenda> agenda(Node node) {
    Fields fields = Fields.of(node, "agenda", KEYS, faults);
    Header.AGENDA.demand(fields, faults);
    String title = fields.text("title");
    String goal = fields.text("goal");
    Mode mode = fields.word(Mode.class, "mode");
    int people = fields.whole("people");
    Optional<ZonedDateTime> start = new BriefTimes(fields, faults).start();
    List<AgendaItem> items = fields.list("items", (n, all) -> item(n));
    List<PhaseTitle> phases = phases(fields, items);
    Duration buffer = time(fields, "buffer").orElse(Duration.ZERO);
    Duration cap = time(fields, "cap").orElse(end.plus(buffer));
    List<Integer> curve = fields.optionalList("curve", Levels::read);
    Figures figures =
        fields
            .optional("figures")
            .flatMap(n -> FiguresForm.read(n, faults))
            .orElseGet(() -> Figures.of(items, curve, cap));
    return fields.build(
        () ->
            new Agenda(
                title, goal, mode, people, cap, start, phases, items, buffer, curve, figures));
  }

  private Optional<Duration> time(Fields fields, String key) {
    return fields.optional(key).flatMap(n -> Times.minutes(n, key, faults));
  }

  private Optional<AgendaItem> item(Node node) {
    boolean pause = node instanceof Mapping mapping && mapping.find("break").isPresent();
    Optional<AgendaItem> item = pause ? pause(node) : activity(node).map(activity -> activity);
    item.ifPresent(i -> end = i.end());
    return item;
  }

  private Optional<AgendaItem> pause(Node node) {
    Fields fields = Fields.of(node, "break", PAUSE, faults);
    BreakKind kind = fields.word(BreakKind.class, "break");
    Duration start = time(fields, "start").orElse(end);
    Optional<Duration> length = length(fields);
    return fields.build(() -> new Pause(start, length.orElseThrow(), kind == BreakKind.MEAL));
  }

  /** An exercise or own item by itself. */
  static Optional<Activity> activity(Node node, Faults faults) {
    return new AgendaReader(faults).activity(node);
  }

  private Optional<Activity> activity(Node node) {
    Fields fields = Fields.of(node, "item", ACTIVITY, faults);
    String exercise = fields.text("exercise");
    String title = fields.text("title");
    Optional<Kind> kind = fields.optionalWord(Kind.class, "kind");
    String phase = fields.text("phase");
    Duration start = time(fields, "start").orElse(end);
    Optional<Duration> length = length(fields);
    Format format = fields.optionalWord(Format.class, "format").orElse(Defaults.OWN_ITEM_FORMAT);
    int energy =
        fields
            .optional("energy")
            .flatMap(n -> Levels.read(n, faults))
            .orElse(10 * Defaults.OWN_ITEM_ENERGY);
    return fields.build(
        () ->
            new Activity(
                exercise, title, kind, phase, start, length.orElseThrow(), format, energy));
  }

  private Optional<Duration> length(Fields fields) {
    fields.alias("minutes", fields.optional("length").orElse(fields.node()));
    return fields.required("length").flatMap(n -> Times.minutes(n, "length", faults));
  }

  private List<PhaseTitle> phases(Fields fields, List<AgendaItem> items) {
    Set<String> named = new LinkedHashSet<>();
    for (AgendaItem item : items) {
      if (item instanceof Activity activity) {
        named.add(activity.phase());
      }
    }
    if (fields.optional("phases").isEmpty()) {
      return named.stream().map(name -> new PhaseTitle(name, name)).toList();
    }
    List<PhaseTitle> phases = fields.list("phases", AgendaReader::phase);
    List<String> known = phases.stream().map(PhaseTitle::name).toList();
    for (Node item : nodes(fields.node().at("items"))) {
      if (item instanceof Mapping mapping) {
        mapping.find("phase").ifPresent(m -> Known.check(m.value(), "phase", known, faults));
      }
    }
    return phases;
  }

  private static List<Node> nodes(Node node) {
    return node instanceof Sequence sequence ? sequence.nodes() : new ArrayList<>();
  }

  private static Optional<PhaseTitle> phase(Node node, Faults faults) {
    Fields fields = Fields.of(node, "phase", PHASE, faults);
    String name = fields.text("name");
    String title = fields.text("title");
    return fields.build(() -> new PhaseTitle(name, title));
  }
}
