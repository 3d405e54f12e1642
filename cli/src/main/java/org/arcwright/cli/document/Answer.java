package org.arcwright.cli.document;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.Agenda.PhaseTitle;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.agenda.AgendaItem.Pause;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Product;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.explain.WhyThis;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Candidate;

/** A composed agenda beside the brief and the catalog it was made from. */
public final class Answer {
  private final Brief brief;
  private final Catalog catalog;
  private final Composed composed;
  private final Optional<Sureness> sureness;
  private final Optional<WhyThis> why;
  private final Map<String, Candidate> candidates = new HashMap<>();

  /**
   * @param composed what the composer made of the brief and the catalog
   */
  public Answer(Brief brief, Catalog catalog, Composed composed) {
    this(brief, catalog, composed, Optional.empty());
  }

  /**
   * @param composed what the composer made of the brief and the catalog
   * @param sureness how sure it is to end on time, if that was asked for
   */
  public Answer(Brief brief, Catalog catalog, Composed composed, Optional<Sureness> sureness) {
    this(brief, catalog, composed, sureness, Optional.empty());
  }

  /**
   * @param composed what the composer made of the brief and the catalog
   * @param sureness how sure it is to end on time, if that was asked for
   * @param why each exercise is in its place, if that was asked for
   */
  public Answer(
      Brief brief,
      Catalog catalog,
      Composed composed,
      Optional<Sureness> sureness,
      Optional<WhyThis> why) {
    this.sureness = sureness;
    this.why = why;
    this.brief = brief;
    this.catalog = catalog;
    this.composed = composed;
    for (Candidate candidate : composed.instance().candidates()) {
      candidates.put(candidate.id(), candidate);
    }
  }

  /** What was asked. */
  public Brief brief() {
    return brief;
  }

  /** Where it was composed from. */
  public Catalog catalog() {
    return catalog;
  }

  /** How sure it is to end on time, if that was asked for. */
  public Optional<Sureness> sureness() {
    return sureness;
  }

  /** Why each exercise is in its place, if that was asked for. */
  public Optional<WhyThis> why() {
    return why;
  }

  /** What the composer made. */
  public Composed composed() {
    return composed;
  }

  Agenda agenda() {
    return composed.agenda();
  }

  Instance instance() {
    return composed.instance();
  }

  Goal goal() {
    return catalog
        .goal(brief.goal())
        .orElseThrow(() -> new IllegalStateException("composed without goal " + brief.goal()));
  }

  Clock clock() {
    return new Clock(agenda().start());
  }

  /** The exercise of an activity; none for an own item. */
  Optional<Exercise> exercise(Activity activity) {
    return catalog.exercise(activity.exercise());
  }

  /** What the search knew of an activity. */
  Candidate candidate(Activity activity) {
    Candidate candidate = candidates.get(activity.exercise());
    if (candidate == null) {
      throw new IllegalStateException("composed without candidate " + activity.exercise());
    }
    return candidate;
  }

  /** A work product in words, such as {@code the idea pool}. */
  String product(String id) {
    Product product = catalog.products().get(id);
    return "the " + (product == null ? id : product.title());
  }

  /** A phase in words for participants. */
  String phaseTitle(String name) {
    for (PhaseTitle phase : agenda().phases()) {
      if (phase.name().equals(name)) {
        return phase.title();
      }
    }
    return name;
  }

  List<Pause> pauses() {
    List<Pause> pauses = new ArrayList<>();
    for (AgendaItem item : agenda().items()) {
      if (item instanceof Pause pause) {
        pauses.add(pause);
      }
    }
    return pauses;
  }

  /** Minutes of all exercises and own items. */
  int exerciseMinutes() {
    return agenda().activities().stream().mapToInt(activity -> minutes(activity.length())).sum();
  }

  /** Minutes of all breaks and meals. */
  int pauseMinutes() {
    return pauses().stream().mapToInt(pause -> minutes(pause.length())).sum();
  }

  /** Minutes that neither exercises nor breaks nor the buffer use. */
  int idleMinutes() {
    return instance().cap() - minutes(agenda().end()) - minutes(agenda().buffer());
  }

  /** Target energy in tenths at a minute. */
  int curveAt(int minute) {
    List<Integer> curve = agenda().curve();
    int cell = minute * curve.size() / instance().cap();
    return curve.get(Math.min(cell, curve.size() - 1));
  }

  static int minutes(Duration duration) {
    return (int) duration.toMinutes();
  }
}
