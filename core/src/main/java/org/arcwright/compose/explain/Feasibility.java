package org.arcwright.compose.explain;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.arcwright.agenda.Agenda;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.InvalidValueException;
import org.arcwright.compose.check.Checker;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Bounds;
import org.arcwright.compose.instance.Instance.Phase;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.reduce.AgendaBuilder;
import org.arcwright.compose.reduce.Reducer;
import org.arcwright.compose.reduce.Reduction;
import org.arcwright.compose.search.AnyAgenda;
import org.arcwright.compose.search.Limit;
import org.arcwright.compose.search.Listener;
import org.arcwright.compose.search.Search;
import org.arcwright.compose.search.Solution;

/**
 * Whether any agenda keeps to a brief, however dear: the instance is searched with all its prices
 * at zero, which lets many more agendas dominate each other, and only until a first one is found.
 * Asked about the same brief again, it remembers; asked about another one, it first looks whether
 * an agenda found before keeps to that one, too, which takes no search.
 */
final class Feasibility {
  /** One question may use so much of what is left, so that a hard one leaves something over. */
  private static final int PARTS = 4;

  private final Catalog catalog;
  private final Effort effort;
  private final Map<Case, Answer> known = new HashMap<>();
  private final Map<Case, Answer> knownLoose = new HashMap<>();
  private final Deque<List<Item>> found = new ArrayDeque<>();

  /** So many agendas are tried before a search. */
  private static final int MOST_FOUND = 32;

  /** Steps after which a question is not answered soon. */
  private static final long SOON = 1_500_000;

  /** How a question was answered. */
  enum Status {
    FITS,
    FITS_NOT,
    UNKNOWN
  }

  /**
   * What became of a question.
   *
   * @param status whether something fits
   * @param items that fit; empty if there are none, or none are known
   */
  record Answer(Status status, List<Item> items) {
    static final Answer UNKNOWN = new Answer(Status.UNKNOWN, List.of());
  }

  Feasibility(Catalog catalog, Effort effort) {
    this.catalog = catalog;
    this.effort = effort;
  }

  /** Whether an agenda keeps to the brief. */
  Answer of(Case brief) {
    return ask(brief, false, known);
  }

  /**
   * Whether an agenda would keep to the brief if phases could be as short and as long as it takes.
   * If none does, none keeps to the brief with any shorter cap either: without the phases' shares,
   * which grow with the cap, more time never does harm.
   */
  Status withoutShares(Case brief) {
    return ask(brief, true, knownLoose).status();
  }

  /** The agenda that was found for a brief. */
  Optional<Agenda> agenda(Case brief) {
    List<Item> items = of(brief).items();
    return items.isEmpty()
        ? Optional.empty()
        : Optional.of(AgendaBuilder.build(reduce(brief, () -> false), items));
  }

  private Answer ask(Case brief, boolean loose, Map<Case, Answer> memory) {
    Answer before = memory.get(brief);
    if (before != null) {
      return before;
    }
    Answer answer = search(brief, loose);
    memory.put(brief, answer);
    return answer;
  }

  private Answer search(Case brief, boolean loose) {
    if (effort.spent()) {
      return Answer.UNKNOWN;
    }
    Limit limit = effort.limit(PARTS);
    try {
      Reduction reduction = reduce(brief, () -> limit.reached(0));
      return reduction.complete()
          ? search(free(reduction.instance(), loose), limit)
          : Answer.UNKNOWN;
    } catch (InvalidValueException tooLarge) {
      return Answer.UNKNOWN;
    }
  }

  private Reduction reduce(Case brief, BooleanSupplier stop) {
    return Reducer.reduce(brief.brief(), brief.in(catalog), stop);
  }

  private Answer search(Instance instance, Limit limit) {
    for (List<Item> items : found) {
      if (Checker.check(only(items, instance), items).feasible()) {
        return new Answer(Status.FITS, items);
      }
    }
    Answer answer = searchAnew(instance, limit);
    if (answer.status() == Status.FITS) {
      found.addFirst(answer.items());
      if (found.size() > MOST_FOUND) {
        found.removeLast();
      }
    }
    return answer;
  }

  /** The instance with no other candidates than those of the items; all else as it is. */
  private static Instance only(List<Item> items, Instance instance) {
    Set<String> ids = new HashSet<>(instance.include());
    for (Item item : items) {
      if (item instanceof Item.Activity activity) {
        ids.add(activity.id());
      }
    }
    return instance.withCandidates(
        instance.candidates().stream().filter(c -> ids.contains(c.id())).toList());
  }

  private Answer searchAnew(Instance instance, Limit limit) {
    AnyAgenda.Found any = AnyAgenda.of(instance, steps -> steps >= SOON || limit.reached(steps));
    effort.add(any.steps());
    return switch (any.status()) {
      case OPTIMAL, FEASIBLE -> new Answer(Status.FITS, any.items());
      case INFEASIBLE -> new Answer(Status.FITS_NOT, List.of());
      case STOPPED -> searchAtLength(instance, limit);
    };
  }

  private Answer searchAtLength(Instance instance, Limit limit) {
    First first = new First();
    Solution solution =
        Search.solve(instance, labels -> first.found || limit.reached(labels), first);
    effort.add(solution.labels());
    return switch (solution.status()) {
      case OPTIMAL, FEASIBLE -> new Answer(Status.FITS, solution.items());
      case INFEASIBLE -> new Answer(Status.FITS_NOT, List.of());
      case STOPPED -> Answer.UNKNOWN;
    };
  }

  /** Ends the search with the first agenda. */
  private static final class First implements Listener {
    private boolean found;

    @Override
    public void incumbent(long cost, List<Item> items) {
      found = true;
    }
  }

  private static Instance free(Instance instance, boolean loose) {
    Instance searched =
        loose
            ? instance.withPhases(
                instance.phases().stream().map(p -> loose(p, instance.cap())).toList())
            : instance;
    return searched.freeOfCharge();
  }

  private static Phase loose(Phase phase, int cap) {
    return new Phase(
        phase.name(), phase.kinds(), phase.count(), new Bounds(0, cap), 0, phase.yields());
  }
}
