package org.arcwright.standin;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.arcwright.agenda.Agenda;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Split;
import org.arcwright.compose.reduce.AgendaReader;
import org.arcwright.compose.reduce.Reducer;
import org.arcwright.compose.reduce.Reduction;
import org.arcwright.standin.Chain.Link;

/**
 * Finds what takes the place of an agenda's exercises when a tool or a person fails. Immutable, so
 * any number of threads may share one.
 */
public final class StandInFinder {
  private final Catalog catalog;

  private StandInFinder(Catalog catalog) {
    this.catalog = catalog;
  }

  /** A finder that takes stand-ins from that catalog. */
  public static StandInFinder of(Catalog catalog) {
    return new StandInFinder(catalog);
  }

  /**
   * Finds the best stand-ins for each cause by itself: as many as there can be together, and among
   * these the least points, counted for each as if it alone were used. See {@link StandIns} for
   * what holds of them.
   *
   * @param agenda which may be written by hand
   * @param brief what it was composed for
   * @throws org.arcwright.catalog.InvalidValueException if the brief names what the catalog does
   *     not have, or times that cannot be planned
   */
  public StandIns find(Agenda agenda, Brief brief) {
    Plan plan = new Plan(agenda, brief, catalog);
    Mode mode = brief.mode();
    List<ToolLoss> tools = new ArrayList<>();
    for (String tool : leantOn(plan.chain, mode)) {
      tools.add(
          new ToolLoss(tool, plan.swaps(exercise -> !exercise.in(mode).tools().contains(tool))));
    }
    tools.sort(
        Comparator.comparingInt((ToolLoss loss) -> -loss.swaps().size())
            .thenComparing(ToolLoss::tool));
    return new StandIns(
        agenda,
        tools,
        fewer(plan, agenda, brief),
        plan.swaps(exercise -> Alone.canLead(exercise, mode)),
        plan.chain.links().stream()
            .filter(link -> link.activity().kind().equals(Optional.of(Kind.DECISION)))
            .map(Link::place)
            .toList());
  }

  private static Set<String> leantOn(Chain chain, Mode mode) {
    Set<String> tools = new TreeSet<>();
    for (Link link : chain.links()) {
      link.exercise().ifPresent(exercise -> tools.addAll(exercise.in(mode).tools()));
    }
    return tools;
  }

  /** From one fewer than planned down to half, rounded up. */
  private List<Turnout> fewer(Plan plan, Agenda agenda, Brief brief) {
    int planned = brief.group().count();
    int least = (planned + 1) / 2;
    Map<Integer, List<Integer>> impossible = new HashMap<>();
    Map<Integer, Candidates> sized = new HashMap<>();
    for (Link link : plan.chain.links()) {
      List<Integer> without =
          link.exercise().map(exercise -> impossible(exercise, planned, least)).orElse(List.of());
      impossible.put(link.place(), without);
      without.stream()
          .limit(1)
          .forEach(count -> sized.computeIfAbsent(count, n -> candidates(agenda, brief, n)));
    }
    Map<Integer, List<Option>> options = new HashMap<>();
    for (Link link : plan.chain.links()) {
      List<Integer> without = impossible.getOrDefault(link.place(), List.of());
      if (!without.isEmpty()) {
        Candidates candidates = sized.getOrDefault(without.get(0), plan.candidates);
        options.put(
            link.place(),
            candidates.at(link, exercise -> without.stream().allMatch(exercise::serves)));
      }
    }
    Map<Integer, Option> best = Assignment.best(plan.chain, options);
    return plan.chain.links().stream()
        .filter(link -> link.exercise().isPresent())
        .map(
            link ->
                turnout(
                    link,
                    impossible.getOrDefault(link.place(), List.of()),
                    least,
                    Optional.ofNullable(best.get(link.place()))
                        .map(option -> option.standIn(brief.mode()))))
        .toList();
  }

  private static List<Integer> impossible(Exercise exercise, int planned, int least) {
    return IntStream.iterate(planned - 1, count -> count >= least, count -> count - 1)
        .filter(count -> !exercise.serves(count))
        .boxed()
        .toList();
  }

  private Candidates candidates(Agenda agenda, Brief brief, int people) {
    Brief smaller = brief.toBuilder().people(people).build();
    return new Candidates(Reducer.reduce(smaller, catalog, () -> false), agenda);
  }

  private static Turnout turnout(
      Link link, List<Integer> impossible, int least, Optional<StandIn> standIn) {
    Optional<Exercise> possible = link.exercise().filter(exercise -> exercise.serves(least));
    Optional<Split> groups = possible.flatMap(Exercise::breakout).map(size -> size.split(least));
    Optional<Duration> usual = possible.map(exercise -> exercise.minutes(least).typical());
    return new Turnout(link.place(), impossible, least, groups, usual, standIn);
  }

  /** One agenda, read against its brief. */
  private static final class Plan {
    final Chain chain;
    final Candidates candidates;
    private final Mode mode;

    Plan(Agenda agenda, Brief brief, Catalog catalog) {
      Reduction reduction = Reducer.reduce(brief, catalog, () -> false);
      this.chain = Chain.of(reduction, agenda.items(), AgendaReader.items(reduction, agenda));
      this.candidates = new Candidates(reduction, agenda);
      this.mode = brief.mode();
    }

    /** What stands in for those of the agenda's exercises that are no longer usable. */
    List<Swap> swaps(Predicate<Exercise> usable) {
      Map<Integer, List<Option>> options = new HashMap<>();
      List<Integer> failing = new ArrayList<>();
      for (Link link : chain.links()) {
        if (link.exercise().filter(exercise -> !usable.test(exercise)).isPresent()) {
          failing.add(link.place());
          options.put(link.place(), candidates.at(link, usable));
        }
      }
      Map<Integer, Option> best = Assignment.best(chain, options);
      return failing.stream()
          .map(
              place ->
                  new Swap(
                      place,
                      Optional.ofNullable(best.get(place)).map(option -> option.standIn(mode))))
          .toList();
    }
  }
}
