package org.arcwright.brief;

import java.time.Duration;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.arcwright.brief.Group.Acquaintance;
import org.arcwright.catalog.Mode;

/**
 * Builds a {@link Brief}; what is not set comes from {@link Defaults} for the mode, or from the
 * brief that it began with.
 */
public final class BriefBuilder {
  private final String title;
  private final String goal;
  private final Mode mode;
  private int people;
  private Duration cap;
  private Acquaintance acquaintance = Defaults.ACQUAINTANCE;
  private OptionalInt openness = OptionalInt.empty();
  private Optional<ZonedDateTime> start = Optional.empty();
  private List<ZoneId> zones = List.of();
  private Set<String> tools = Set.of();
  private Optional<Rhythm> rhythm = Optional.empty();
  private final List<Meal> meals = new ArrayList<>();
  private Optional<EnergyCurve> curve = Optional.empty();
  private OptionalInt bufferPercent = OptionalInt.empty();
  private Set<String> given = Set.of();
  private Wishes wishes = Wishes.NONE;
  private final List<OwnItem> ownItems = new ArrayList<>();

  BriefBuilder(String title, String goal, Mode mode, int people, Duration cap) {
    this.title = title;
    this.goal = goal;
    this.mode = mode;
    this.people = people;
    this.cap = cap;
  }

  BriefBuilder(Brief brief) {
    this(brief.title(), brief.goal(), brief.mode(), brief.group().count(), brief.cap());
    acquaintance = brief.group().acquaintance();
    openness = OptionalInt.of(brief.group().openness());
    start = brief.start();
    zones = brief.zones();
    tools = brief.tools();
    rhythm = Optional.of(brief.rhythm());
    meals.addAll(brief.meals());
    curve = Optional.of(brief.curve());
    bufferPercent = OptionalInt.of(brief.bufferPercent());
    given = brief.given();
    wishes = brief.wishes();
    ownItems.addAll(brief.ownItems());
  }

  /** How many take part. */
  public BriefBuilder people(int value) {
    people = value;
    return this;
  }

  /** From the first start to the last end, breaks and buffer included. */
  public BriefBuilder cap(Duration value) {
    cap = value;
    return this;
  }

  /** How well people know each other. */
  public BriefBuilder acquaintance(Acquaintance value) {
    acquaintance = value;
    return this;
  }

  /** How personal an exercise may get: 0 to 3. */
  public BriefBuilder openness(int value) {
    openness = OptionalInt.of(value);
    return this;
  }

  /** When it starts, and in which zone. */
  public BriefBuilder start(ZonedDateTime value) {
    start = Optional.of(value);
    return this;
  }

  /** Further zones in which people take part. */
  public BriefBuilder zones(Collection<ZoneId> values) {
    zones = List.copyOf(values);
    return this;
  }

  /** Ids of the tools at hand. */
  public BriefBuilder tools(Collection<String> values) {
    tools = new LinkedHashSet<>(values);
    return this;
  }

  /** Stretches and breaks. */
  public BriefBuilder rhythm(Rhythm value) {
    rhythm = Optional.of(value);
    return this;
  }

  /** Adds a meal, after those added before. */
  public BriefBuilder meal(Meal value) {
    meals.add(value);
    return this;
  }

  /** Target energy over time. */
  public BriefBuilder curve(EnergyCurve value) {
    curve = Optional.of(value);
    return this;
  }

  /** Closing buffer in per cent of the exercise minutes. */
  public BriefBuilder bufferPercent(int value) {
    bufferPercent = OptionalInt.of(value);
    return this;
  }

  /** Work products that exist beforehand. */
  public BriefBuilder given(Collection<String> values) {
    given = new LinkedHashSet<>(values);
    return this;
  }

  /** What must be in or out. */
  public BriefBuilder wishes(Wishes value) {
    wishes = value;
    return this;
  }

  /** Adds one of the sponsor's own items. */
  public BriefBuilder ownItem(OwnItem value) {
    ownItems.add(value);
    return this;
  }

  /** Builds the brief, refusing what no workshop can be. */
  public Brief build() {
    return new Brief(
        title,
        goal,
        new Group(people, acquaintance, openness.orElse(Defaults.openness(acquaintance))),
        mode,
        cap,
        start,
        zones,
        tools,
        rhythm.orElse(Defaults.rhythm(mode)),
        meals,
        curve.orElse(Defaults.curve(meals)),
        bufferPercent.orElse(Defaults.bufferPercent(mode)),
        given,
        wishes,
        ownItems);
  }
}
