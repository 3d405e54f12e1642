package org.arcwright.format;

import java.time.Duration;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import org.arcwright.brief.Brief;
import org.arcwright.brief.BriefBuilder;
import org.arcwright.brief.Defaults;
import org.arcwright.brief.EnergyCurve;
import org.arcwright.brief.Group;
import org.arcwright.brief.Group.Acquaintance;
import org.arcwright.brief.Meal;
import org.arcwright.brief.OwnItem;
import org.arcwright.brief.Rhythm;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Mode;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;
import org.arcwright.format.tree.Node.Scalar;
import org.arcwright.format.tree.Node.ScalarType;
import org.arcwright.format.tree.Node.Sequence;
import org.arcwright.format.tree.Values;

/** Reads a brief, and holds its words against a catalog if there is one. */
final class BriefReader {
  private static final Keys KEYS =
      Keys.of(
          "title: Winter planning",
          "goal: choose-a-direction",
          "people: 12",
          "mode: remote",
          "cap: 3h",
          "start: 2026-12-03 09:30",
          "zone: Europe/Vienna",
          "zones",
          "tools",
          "rhythm",
          "meal",
          "meals",
          "curve",
          "buffer",
          "given",
          "wishes",
          "own-items",
          "format: arcwright-brief",
          "version: 1");
  private static final Keys PEOPLE = Keys.of("count: 12", "acquainted", "openness");

  private final Optional<Catalog> catalog;
  private final Faults faults;

  private BriefReader(Optional<Catalog> catalog, Faults faults) {
    this.catalog = catalog;
    this.faults = faults;
  }

  static Optional<Brief> read(Node node, Optional<Catalog> catalog, Faults faults) {
    return new BriefReader(catalog, faults).brief(node);
  }

  private Optional<Brief> brief(Node node) {
    Fields fields = Fields.of(node, "brief", KEYS, faults);
    Header.BRIEF.allow(fields, faults);
    String title = fields.text("title");
    String goal = fields.text("goal");
    Optional<Group> group = fields.required("people").flatMap(this::group);
    Mode mode = fields.word(Mode.class, "mode");
    Optional<Duration> cap = fields.required("cap").flatMap(n -> Times.duration(n, "cap", faults));
    BriefTimes times = new BriefTimes(fields, faults);
    Optional<ZonedDateTime> start = times.start();
    List<ZoneId> zones = fields.optionalList("zones", BriefTimes::zone);
    List<String> tools = fields.optionalTexts("tools");
    Optional<Rhythm> rhythm = fields.optional("rhythm").flatMap(n -> times.rhythm(n, mode));
    List<Meal> meals = times.meals();
    Optional<EnergyCurve> curve = fields.optional("curve").flatMap(this::curve);
    Optional<Integer> buffer = fields.optional("buffer").flatMap(this::percent);
    List<String> given = fields.optionalTexts("given");
    Optional<Wishes> wishes =
        fields.optional("wishes").flatMap(n -> WishesReader.wishes(n, faults));
    List<OwnItem> ownItems = fields.optionalList("own-items", WishesReader::ownItem);
    catalog.ifPresent(c -> check(fields, c, goal));
    return fields.build(
        () -> {
          Group people = group.orElseThrow();
          BriefBuilder builder =
              Brief.builder(title, goal, mode, people.count(), cap.orElseThrow())
                  .acquaintance(people.acquaintance())
                  .openness(people.openness())
                  .zones(zones)
                  .tools(Checks.ids("tools", tools))
                  .given(Checks.ids("given", given))
                  .wishes(wishes.orElse(Wishes.NONE));
          start.ifPresent(builder::start);
          rhythm.ifPresent(builder::rhythm);
          meals.forEach(builder::meal);
          curve.ifPresent(builder::curve);
          buffer.ifPresent(builder::bufferPercent);
          ownItems.forEach(builder::ownItem);
          return builder.build();
        });
  }

  private Optional<Group> group(Node node) {
    if (node instanceof Scalar) {
      return Values.whole(node, "people", faults)
          .flatMap(count -> Values.build(node, faults, () -> group(count, Defaults.ACQUAINTANCE)));
    }
    Fields fields = Fields.of(node, "people", PEOPLE, faults);
    int count = fields.whole("count");
    Acquaintance acquainted =
        fields.optionalWord(Acquaintance.class, "acquainted").orElse(Defaults.ACQUAINTANCE);
    int openness = fields.optionalWhole("openness").orElse(Defaults.openness(acquainted));
    fields.alias("people", node.at("count"));
    return fields.build(() -> new Group(count, acquainted, openness));
  }

  private static Group group(int count, Acquaintance acquainted) {
    return new Group(count, acquainted, Defaults.openness(acquainted));
  }

  private Optional<EnergyCurve> curve(Node node) {
    if (node instanceof Scalar) {
      return Values.word(node, "curve", EnergyCurve.Shape.class, faults)
          .map(EnergyCurve.Shape::curve);
    }
    int before = faults.count();
    List<EnergyCurve.Point> points = Values.list(node, "curve", faults, BriefReader::point);
    return faults.count() > before
        ? Optional.empty()
        : Values.build(node, faults, () -> new EnergyCurve(points));
  }

  private static Optional<EnergyCurve.Point> point(Node node, Faults faults) {
    if (!(node instanceof Sequence pair) || pair.nodes().size() != 2) {
      faults.add(node, "point of the curve", "write per cent and energy, such as [40, 3.6]");
      return Optional.empty();
    }
    Optional<Integer> percent = Values.whole(pair.nodes().get(0), "per cent", faults);
    Optional<Integer> tenths = Levels.read(pair.nodes().get(1), faults);
    return percent.flatMap(
        p -> tenths.flatMap(t -> Values.build(node, faults, () -> new EnergyCurve.Point(p, t))));
  }

  private Optional<Integer> percent(Node node) {
    if (node instanceof Scalar scalar
        && scalar.type() == ScalarType.TEXT
        && scalar.text().matches("\\d{1,3}%")) {
      return Optional.of(Integer.parseInt(scalar.text().replace("%", "")));
    }
    faults.add(node, "buffer", "write it in per cent of the working time, such as 15%");
    return Optional.empty();
  }

  private void check(Fields fields, Catalog known, String goalId) {
    fields.optional("goal").ifPresent(n -> Known.check(n, "goal", known.goals().keySet(), faults));
    Vocabulary.of(known).checkTools(fields, "tools", faults);
    Vocabulary.of(known).checkProducts(fields, "given", faults);
    Optional<Goal> goal = known.goal(goalId);
    fields.optional("wishes").ifPresent(n -> WishesReader.checkWishes(n, known, faults));
    fields.optional("own-items").ifPresent(n -> WishesReader.checkOwnItems(n, known, goal, faults));
  }
}
