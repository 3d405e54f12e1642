package org.arcwright.format;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.arcwright.brief.Defaults;
import org.arcwright.brief.Moment;
import org.arcwright.brief.OwnItem;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Phase;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;
import org.arcwright.format.tree.Node.Mapping;
import org.arcwright.format.tree.Node.Scalar;
import org.arcwright.format.tree.Node.Sequence;

/** Reads what a brief wants in or out, and the sponsor's own items. */
final class WishesReader {
  private static final Keys WISHES = Keys.of("include", "leave-out", "used-last-time", "pin");
  private static final Keys PIN = Keys.of("exercise: dot-voting", "at: 60m");
  private static final Keys OWN_ITEM =
      Keys.of(
          "id: guest-talk",
          "title: A guest's view",
          "minutes: 20",
          "phase",
          "at",
          "energy",
          "format");

  private WishesReader() {}

  static Optional<Wishes> wishes(Node node, Faults faults) {
    Fields fields = Fields.of(node, "wishes", WISHES, faults);
    List<String> include = fields.optionalTexts("include");
    List<String> leaveOut = fields.optionalTexts("leave-out");
    List<String> usedLastTime = fields.optionalTexts("used-last-time");
    List<Wishes.Pin> pins = fields.optionalList("pin", WishesReader::pin);
    return fields.build(
        () ->
            new Wishes(
                Checks.ids("include", include),
                Checks.ids("leave-out", leaveOut),
                pins,
                Checks.ids("used-last-time", usedLastTime)));
  }

  private static Optional<Wishes.Pin> pin(Node node, Faults faults) {
    Fields fields = Fields.of(node, "pin", PIN, faults);
    String exercise = fields.text("exercise");
    Optional<Moment> at = fields.required("at").flatMap(n -> BriefTimes.moment(n, faults));
    return fields.build(() -> new Wishes.Pin(exercise, at.orElseThrow()));
  }

  static Optional<OwnItem> ownItem(Node node, Faults faults) {
    Fields fields = Fields.of(node, "own item", OWN_ITEM, faults);
    String id = fields.text("id");
    String title = fields.text("title");
    Optional<Duration> length =
        fields.required("minutes").flatMap(n -> Times.minutes(n, "minutes", faults));
    Optional<String> phase = fields.optionalText("phase");
    Optional<Moment> at = fields.optional("at").flatMap(n -> BriefTimes.moment(n, faults));
    int energy = fields.optionalWhole("energy").orElse(Defaults.OWN_ITEM_ENERGY);
    Format format = fields.optionalWord(Format.class, "format").orElse(Defaults.OWN_ITEM_FORMAT);
    return fields.build(
        () -> new OwnItem(id, title, length.orElseThrow(), phase, at, energy, format));
  }

  /** Exercises that the catalog does not have are faults. */
  static void checkWishes(Node wishes, Catalog catalog, Faults faults) {
    if (wishes instanceof Mapping mapping) {
      for (String key : List.of("include", "leave-out", "used-last-time")) {
        mapping
            .find(key)
            .ifPresent(
                m -> Known.check(m.value(), "exercise", catalog.exercises().keySet(), faults));
      }
      for (Node pin : elements(mapping.at("pin"))) {
        Known.check(pin.at("exercise"), "exercise", catalog.exercises().keySet(), faults);
      }
    }
  }

  /** Ids that an exercise has, and phases that the goal does not have, are faults. */
  static void checkOwnItems(Node items, Catalog catalog, Optional<Goal> goal, Faults faults) {
    for (Node item : elements(items)) {
      if (item.at("id") instanceof Scalar id && catalog.exercise(id.text()).isPresent()) {
        faults.add(id, "id", "an exercise of the catalog has it; choose another");
      }
      if (goal.isPresent() && item.at("phase") instanceof Scalar phase) {
        List<String> names = goal.get().arc().stream().map(Phase::name).toList();
        Known.check(phase, "phase", names, faults);
      }
    }
  }

  private static List<Node> elements(Node node) {
    return node instanceof Sequence sequence ? sequence.nodes() : List.of();
  }
}
