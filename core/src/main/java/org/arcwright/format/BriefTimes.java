package org.arcwright.format;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.arcwright.brief.Defaults;
import org.arcwright.brief.Meal;
import org.arcwright.brief.Moment;
import org.arcwright.brief.Rhythm;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Nearest;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;
import org.arcwright.format.tree.Node.Scalar;
import org.arcwright.format.tree.Node.ScalarType;
import org.arcwright.format.tree.Node.Sequence;
import org.arcwright.format.tree.Values;

/** Reads the times in a brief: its start, its rhythm, its meals. */
final class BriefTimes {
  private static final Keys RHYTHM = Keys.of("stretch: 30m..60m", "break: 10m");
  private static final Keys MEAL = Keys.of("at: 12:00..12:45", "minutes: 45");
  private static final String MOMENT =
      "write a time of day such as 10:30, or a time after the start such as 60m";

  private final Fields fields;
  private final Faults faults;
  private final Optional<ZonedDateTime> start;
  private final boolean startWritten;

  BriefTimes(Fields fields, Faults faults) {
    this.fields = fields;
    this.faults = faults;
    this.startWritten = fields.optional("start").isPresent();
    this.start = readStart();
  }

  Optional<ZonedDateTime> start() {
    return start;
  }

  private Optional<ZonedDateTime> readStart() {
    Optional<Node> written = fields.optional("start");
    if (written.isEmpty()) {
      fields
          .optional("zone")
          .ifPresent(
              n -> faults.add(n, "zone", "it goes with a start; add one or strike the zone"));
      return Optional.empty();
    }
    Optional<ZoneId> zone = fields.required("zone").flatMap(n -> zone(n, faults));
    Node node = written.get();
    Optional<LocalDateTime> local = Optional.empty();
    try {
      local =
          Values.text(node, "start", faults)
              .map(text -> LocalDateTime.parse(text.strip().replaceFirst(" +", "T")));
    } catch (DateTimeException e) {
      faults.add(node, "start", "write date and time as 2026-12-03 09:30");
    }
    if (local.isEmpty() || zone.isEmpty()) {
      return Optional.empty();
    }
    ZonedDateTime time = local.get().atZone(zone.get());
    if (!time.toLocalDateTime().equals(local.get())) {
      faults.add(node, "start", "the clocks skip this hour there; choose another");
      return Optional.empty();
    }
    return Optional.of(time);
  }

  /** A zone by its name. */
  static Optional<ZoneId> zone(Node node, Faults faults) {
    Optional<String> text = Values.text(node, "zone", faults);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(ZoneId.of(text.get()));
    } catch (DateTimeException e) {
      faults.add(
          node,
          "unknown zone",
          nearestZone(text.get())
              .map(near -> "perhaps " + near)
              .orElse("write continent and city, such as Europe/Vienna"));
      return Optional.empty();
    }
  }

  /** The zone of that city, or the city with nearly that name on the same continent. */
  private static Optional<String> nearestZone(String text) {
    Set<String> zones = new TreeSet<>(ZoneId.getAvailableZoneIds());
    for (String zone : zones) {
      if (zone.substring(zone.lastIndexOf('/') + 1).equalsIgnoreCase(text)) {
        return Optional.of(zone);
      }
    }
    String continent = text.substring(0, text.lastIndexOf('/') + 1);
    Set<String> cities = new TreeSet<>();
    for (String zone : zones) {
      if (zone.startsWith(continent)) {
        cities.add(zone.substring(continent.length()));
      }
    }
    return cities.isEmpty()
        ? Nearest.to(text, zones)
        : Nearest.to(text.substring(continent.length()), cities).map(city -> continent + city);
  }

  Optional<Rhythm> rhythm(Node node, Mode mode) {
    Rhythm usual = Defaults.rhythm(mode);
    Fields own = Fields.of(node, "rhythm", RHYTHM, faults);
    Optional<Range> stretch =
        own.optional("stretch").flatMap(n -> durations(n, "stretch", "30m..60m"));
    Optional<Duration> pause = own.optional("break").flatMap(this::pause);
    return own.build(
        () ->
            new Rhythm(
                stretch.map(Range::from).orElse(usual.shortest()),
                stretch.map(Range::to).orElse(usual.longest()),
                pause.orElse(usual.pause())));
  }

  private Optional<Duration> pause(Node node) {
    if (node instanceof Scalar scalar && scalar.text().equals("none")) {
      return Optional.of(Duration.ZERO);
    }
    return Times.duration(node, "break", faults);
  }

  /** From one time after the start to another. */
  private record Range(Duration from, Duration to) {}

  private Optional<Range> durations(Node node, String what, String example) {
    String[] ends = ends(node);
    if (ends.length == 2) {
      Optional<Duration> from = Times.parse(ends[0]);
      Optional<Duration> to = Times.parse(ends[1]);
      if (from.isPresent() && to.isPresent()) {
        return Optional.of(new Range(from.get(), to.get()));
      }
    }
    faults.add(node, what, "write shortest and longest, such as " + example);
    return Optional.empty();
  }

  private static String[] ends(Node node) {
    return node instanceof Scalar scalar && scalar.type() == ScalarType.TEXT
        ? scalar.text().split("\\s*\\.\\.\\s*", -1)
        : new String[0];
  }

  /** The meals: one under {@code meal}, or several under {@code meals}. */
  List<Meal> meals() {
    Optional<Node> single = fields.optional("meal");
    if (single.isEmpty()) {
      return fields.optionalList("meals", this::meal);
    }
    Node node = single.get();
    fields
        .optional("meals")
        .ifPresent(
            n ->
                faults.add(
                    n, "meals", "there is a meal already; list it here and strike it there"));
    fields.alias("meals", new Sequence(node.line(), node.column(), List.of(node)));
    return meal(node, faults).map(List::of).orElse(List.of());
  }

  /** One meal. */
  Optional<Meal> meal(Node node, Faults all) {
    Fields own = Fields.of(node, "meal", MEAL, all);
    Optional<Range> at = own.required("at").flatMap(this::window);
    Optional<Duration> length =
        own.required("minutes").flatMap(n -> Times.minutes(n, "minutes", all));
    // Where the start is faulty, a time of day leads nowhere, which is no fault of the meal's.
    return at.flatMap(
        window -> own.build(() -> new Meal(window.from(), window.to(), length.orElseThrow())));
  }

  private Optional<Range> window(Node node) {
    String[] ends = ends(node);
    Optional<Moment> from = ends.length == 0 ? Optional.empty() : parse(ends[0]);
    Optional<Moment> to = ends.length == 0 ? Optional.empty() : parse(ends[ends.length - 1]);
    if (ends.length > 2 || from.isEmpty() || to.isEmpty()) {
      faults.add(node, "at", "write when it may start, such as 12:00..12:45 or 2h..2h30m");
      return Optional.empty();
    }
    boolean clock = from.get() instanceof Moment.Clock || to.get() instanceof Moment.Clock;
    if (clock && !startWritten) {
      faults.add(node, "at", "a time of day needs a start; add start and zone to the brief");
    }
    Optional<Duration> earliest = offset(from.get());
    Optional<Duration> latest = offset(to.get());
    return earliest.flatMap(e -> latest.map(l -> new Range(e, l)));
  }

  private Optional<Duration> offset(Moment moment) {
    if (moment instanceof Moment.After after) {
      return Optional.of(after.duration());
    }
    return start.map(moment::after);
  }

  /** A time within the workshop. */
  static Optional<Moment> moment(Node node, Faults faults) {
    Optional<Moment> moment =
        node instanceof Scalar scalar && scalar.type() == ScalarType.TEXT
            ? parse(scalar.text())
            : Optional.empty();
    if (moment.isEmpty()) {
      faults.add(node, "at", MOMENT);
    }
    return moment;
  }

  private static Optional<Moment> parse(String text) {
    Optional<LocalTime> clock = Times.clock(text);
    return clock.isPresent()
        ? clock.map(Moment.Clock::new)
        : Times.parse(text).map(Moment.After::new);
  }
}
