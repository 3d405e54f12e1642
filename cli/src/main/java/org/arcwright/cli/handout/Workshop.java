package org.arcwright.cli.handout;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Product;
import org.arcwright.catalog.Split;
import org.arcwright.catalog.Tool;
import org.arcwright.cli.words.Hours;
import org.arcwright.cli.words.Language;
import org.arcwright.cli.words.Said;

/**
 * All that handouts are drawn from.
 *
 * @param agenda the plan
 * @param brief what it was made for
 * @param catalog where its exercises stand
 * @param language in which handouts are written
 */
public record Workshop(Agenda agenda, Brief brief, Catalog catalog, Language language) {
  /** When things are. */
  public Hours hours() {
    return new Hours(agenda.start(), language);
  }

  /** What tells this workshop's events in a calendar from those of others, whenever it is. */
  String whose() {
    return brief.title() + "\n" + brief.goal();
  }

  /** The exercise of an activity; none for an own item. */
  public Optional<Exercise> exercise(Activity activity) {
    return catalog.exercise(activity.exercise());
  }

  /** The goal, if the catalog still has it. */
  public Optional<Goal> goal() {
    return catalog.goal(agenda.goal());
  }

  /** The title of the goal; none if the catalog has it no longer. */
  Optional<String> goalTitle() {
    return goal().map(goal -> language.said(Said.GOAL, goal.title()));
  }

  /** A phase in words for participants. */
  public String phase(String name) {
    return agenda.phases().stream()
        .filter(phase -> phase.name().equals(name))
        .map(Agenda.PhaseTitle::title)
        .map(title -> language.said(Said.PHASE, title))
        .findFirst()
        .orElse(name);
  }

  /** A work product in words, with its article where it has one. */
  public String product(String id) {
    Product product = catalog.products().get(id);
    return product == null ? id : language.said(Said.PRODUCT, product.title());
  }

  /** A tool in words. */
  public String tool(String id) {
    Tool tool = catalog.tools().get(id);
    return tool == null ? id : language.said(Said.TOOL, tool.title());
  }

  /** Ids of the tools that the exercises cannot do without, in the order in which they are used. */
  public List<String> tools() {
    Set<String> tools = new LinkedHashSet<>();
    for (Activity activity : agenda.activities()) {
      exercise(activity).ifPresent(exercise -> tools.addAll(exercise.in(agenda.mode()).tools()));
    }
    return List.copyOf(tools);
  }

  /** Whether some exercise is worked on a board on the screen. */
  boolean leansOnBoard() {
    return !using("board").isEmpty();
  }

  /** What the plan of the areas is called: not every agenda has a board. */
  String boardPlan() {
    return language.say(leansOnBoard() ? "board.kicker" : "board.kicker.other");
  }

  /** The exercises that cannot do without a tool, in order. */
  public List<Activity> using(String tool) {
    return agenda.activities().stream()
        .filter(
            activity ->
                exercise(activity)
                    .filter(known -> known.in(agenda.mode()).tools().contains(tool))
                    .isPresent())
        .toList();
  }

  /** The most groups or pairs that use a tool at the same time; 0 if none does. */
  public int groupsAtOnce(String tool) {
    return using(tool).stream()
        .flatMap(activity -> exercise(activity).flatMap(this::groups).stream())
        .mapToInt(Split::groups)
        .max()
        .orElse(0);
  }

  /** The small groups, or else the pairs, that so many people make in an exercise. */
  public Optional<Split> groups(Exercise exercise) {
    boolean pairs = exercise.steps().stream().anyMatch(step -> step.format() == Format.PAIRS);
    return exercise
        .breakout()
        .map(size -> size.split(agenda.people()))
        .or(() -> pairs ? Optional.of(Split.pairs(agenda.people())) : Optional.empty());
  }

  /** Groups in words, such as {@code 3 groups of 2 and one of 3}. */
  public String split(Split split) {
    return split.larger() == 0
        ? language.say("groups.even", split.groups(), split.smaller())
        : language.say(
            "groups.uneven",
            split.groups() - split.larger(),
            split.smaller(),
            split.larger(),
            split.smaller() + 1);
  }

  /** The goal, then the setting. */
  public List<String> facts() {
    List<String> facts = new ArrayList<>();
    goalTitle().ifPresent(facts::add);
    facts.addAll(setting());
    return facts;
  }

  /** Place, people, day and hours, each in a few words. */
  public List<String> setting() {
    Hours hours = hours();
    List<String> facts = new ArrayList<>();
    facts.add(language.name("mode", agenda.mode()));
    facts.add(language.say("people", agenda.people()));
    hours.date().ifPresent(facts::add);
    String span = hours.span(Duration.ZERO, agenda.cap());
    facts.add(
        hours
            .zone()
            .map(zone -> language.say("hours.zone", span, zone))
            .orElseGet(() -> language.time(agenda.cap())));
    return facts;
  }
}
