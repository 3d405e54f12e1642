package org.arcwright.format;

import java.time.Duration;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.arcwright.agenda.Figures;
import org.arcwright.agenda.Figures.Cost;
import org.arcwright.catalog.Kind;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;

/** Reads and writes an agenda's figures. */
final class FiguresForm {
  private static final Keys KEYS =
      Keys.of("minutesByKind: {}", "energyFit: 90", "longestStretch: 50", "cost");
  private static final Keys KINDS =
      Keys.of("icebreaker", "divergent", "convergent", "decision", "reflection");
  private static final Keys COST =
      Keys.of(
          "exercises: 0",
          "lengths: 0",
          "energy: 0",
          "share: 0",
          "monotony: 0",
          "rhythm: 0",
          "pauses: 0",
          "idle: 0");

  private FiguresForm() {}

  static Optional<Figures> read(Node node, Faults faults) {
    Fields fields = Fields.of(node, "figures", KEYS, faults);
    Map<Kind, Duration> minutes = new EnumMap<>(Kind.class);
    fields.required("minutesByKind").ifPresent(n -> readMinutes(n, minutes, faults));
    int energyFit = fields.whole("energyFit");
    Optional<Duration> longest =
        fields.required("longestStretch").flatMap(n -> Times.minutes(n, "longestStretch", faults));
    Optional<Cost> cost =
        fields.optional("cost").map(n -> cost(n, faults)).orElse(Optional.of(Cost.NONE));
    return fields.build(
        () -> new Figures(minutes, energyFit, longest.orElseThrow(), cost.orElseThrow()));
  }

  private static void readMinutes(Node node, Map<Kind, Duration> minutes, Faults faults) {
    Fields fields = Fields.of(node, "minutesByKind", KINDS, faults);
    for (Kind kind : Kind.values()) {
      fields
          .optional(kind.word())
          .flatMap(n -> Times.minutes(n, kind.word(), faults))
          .ifPresent(duration -> minutes.put(kind, duration));
    }
  }

  static Optional<Cost> cost(Node node, Faults faults) {
    Fields fields = Fields.of(node, "cost", COST, faults);
    long exercises = fields.longWhole("exercises");
    long lengths = fields.longWhole("lengths");
    long energy = fields.longWhole("energy");
    long share = fields.longWhole("share");
    long monotony = fields.longWhole("monotony");
    long rhythm = fields.longWhole("rhythm");
    long pauses = fields.longWhole("pauses");
    long idle = fields.longWhole("idle");
    return fields.build(
        () -> new Cost(exercises, lengths, energy, share, monotony, rhythm, pauses, idle));
  }

  static Node tree(Figures figures) {
    Branch minutes = new Branch();
    figures
        .minutesByKind()
        .forEach((kind, duration) -> minutes.put(kind.word(), Times.minutes(duration)));
    return new Branch()
        .put("minutesByKind", minutes.end())
        .put("energyFit", figures.energyFit())
        .put("longestStretch", Times.minutes(figures.longestStretch()))
        .put("cost", tree(figures.cost()))
        .end();
  }

  static Node tree(Cost cost) {
    return new Branch()
        .put("exercises", cost.exercises())
        .put("lengths", cost.lengths())
        .put("energy", cost.energy())
        .put("share", cost.share())
        .put("monotony", cost.monotony())
        .put("rhythm", cost.rhythm())
        .put("pauses", cost.pauses())
        .put("idle", cost.idle())
        .end();
  }
}
