package org.arcwright.standin;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.catalog.Tool;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Composition;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.Composition.NothingFits;

/**
 * Composes agendas that a failing tool does not stop: each exercise that leans on it has a stand-in
 * without it. Composes the best agenda, leaves out what has no stand-in in it, and composes again
 * until nothing is bare; all else of the problem stays as it is. What leans on none of the tools is
 * never left out, so that this ends, at the latest with an agenda that does without them.
 */
public final class Withstanding {
  private final Catalog catalog;
  private final Brief brief;
  private final Set<String> tools;
  private final InstantSource clock;
  private final Budget budget;
  private final Instant begin;
  private final Set<String> wished = new HashSet<>();
  private final NavigableMap<String, String> out = new TreeMap<>();
  private long labels;

  private Withstanding(
      Catalog catalog, Brief brief, Set<String> tools, Budget budget, InstantSource clock) {
    this.catalog = catalog;
    this.brief = brief;
    this.tools = tools;
    this.clock = clock;
    this.budget = budget;
    this.begin = clock.instant();
    wished.addAll(brief.wishes().include());
    brief.wishes().pins().forEach(pin -> wished.add(pin.exercise()));
  }

  /**
   * What came of it.
   *
   * @param composition the agenda in which nothing is bare, or the one in which fewest are; where
   *     there is none, what the brief itself leads to
   * @param verdict on that agenda
   */
  public record Found(Composition composition, ToolVerdict verdict) {
    /** Whether there is an agenda in which every exercise has a stand-in. */
    public boolean reached() {
      return composition instanceof Composed && verdict.reached();
    }
  }

  /** An agenda, and what in it has no stand-in, by place. */
  private record Attempt(Composed composed, int stops, NavigableMap<Integer, String> bare) {}

  /**
   * Composes. At most one agenda for each exercise that leans on the tools, and usually two or
   * three, within one budget for all.
   *
   * @param tools ids of those that may fail, one at a time
   * @throws InvalidValueException if the catalog has no such tool, or the brief cannot be composed;
   *     see {@link Composer#compose}
   */
  public static Found compose(
      Catalog catalog, Brief brief, Set<String> tools, Budget budget, InstantSource clock) {
    for (String tool : tools) {
      if (!catalog.tools().containsKey(tool)) {
        throw new InvalidValueException("withstand", tool, "name a tool of the catalog");
      }
    }
    return new Withstanding(catalog, brief, tools, budget, clock).compose();
  }

  private Found compose() {
    Composition answer = compose(out);
    if (!(answer instanceof Composed first)) {
      List<String> asked = List.copyOf(tools);
      return new Found(answer, new ToolVerdict(asked, 0, List.of(), 0, 0, List.of(), true));
    }
    Attempt best = attempt(first);
    Attempt last = best;
    boolean lasted = true;
    while (lasted && !last.bare().isEmpty() && leaveOut(last)) {
      Composition next = compose(out);
      if (next instanceof Composed composed) {
        last = attempt(composed);
        best = last.bare().size() < best.bare().size() ? last : best;
      } else {
        lasted = next instanceof NothingFits;
        break;
      }
    }
    boolean reached = best.bare().isEmpty();
    ToolVerdict verdict =
        new ToolVerdict(
            List.copyOf(tools),
            best.stops(),
            List.copyOf(best.bare().keySet()),
            reached ? out.size() : 0,
            Math.max(0, best.composed().proof().cost() - first.proof().bound()),
            reached ? List.of() : reasons(),
            lasted);
    return new Found(best.composed(), verdict);
  }

  /** The best agenda without some exercises. */
  private Composition compose(Map<String, String> without) {
    Duration left = budget.time().minus(Duration.between(begin, clock.instant()));
    Budget rest =
        new Budget(
            Math.max(1, budget.labels() - labels),
            left.compareTo(Duration.ZERO) > 0 ? left : Duration.ofNanos(1));
    Composition answer = Composer.of(catalog, clock).composeWithout(without, brief, rest);
    if (answer instanceof Composed composed) {
      labels += composed.proof().labels();
    }
    return answer;
  }

  /** Why no agenda does without the tools. */
  private List<String> reasons() {
    String cause =
        "leans on the " + tools.stream().map(this::title).collect(Collectors.joining(" or the "));
    Map<String, String> leaning =
        catalog.exercises().values().stream()
            .filter(each -> each.in(brief.mode()).tools().stream().anyMatch(tools::contains))
            .collect(Collectors.toMap(Exercise::id, each -> cause));
    return compose(leaning) instanceof NothingFits nothing ? nothing.reasons() : List.of();
  }

  /** Looks at an agenda as its own brief has it, in which nothing is left out. */
  private Attempt attempt(Composed composed) {
    StandIns found = StandInFinder.of(catalog).find(composed.agenda(), brief);
    int stops = 0;
    NavigableMap<Integer, String> bare = new TreeMap<>();
    for (ToolLoss loss : found.tools()) {
      if (tools.contains(loss.tool())) {
        stops += loss.swaps().size();
        for (Swap swap : loss.swaps()) {
          if (swap.standIn().isEmpty()) {
            bare.put(swap.place(), title(loss.tool()));
          }
        }
      }
    }
    return new Attempt(composed, stops, bare);
  }

  private String title(String tool) {
    Tool known = catalog.tools().get(tool);
    return known == null ? tool : known.title();
  }

  /** Leaves out what is bare and not wished for; false if that is nothing. */
  private boolean leaveOut(Attempt attempt) {
    Agenda agenda = attempt.composed().agenda();
    boolean some = false;
    for (Map.Entry<Integer, String> bare : attempt.bare().entrySet()) {
      String id = ((Activity) agenda.items().get(bare.getKey())).exercise();
      String why = "nothing stands in for it without what may fail: " + bare.getValue();
      some |= !wished.contains(id) && out.put(id, why) == null;
    }
    return some;
  }
}
