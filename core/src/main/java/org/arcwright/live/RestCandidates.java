package org.arcwright.live;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntUnaryOperator;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.brief.OwnItem;
import org.arcwright.catalog.Kind;
import org.arcwright.compose.instance.Instance.Candidate;

/** Turns what runs, what is planned and what might be added into candidates of an instance. */
final class RestCandidates {
  /** The work since the last rest, as one item before all others. No id has a blank in it. */
  static final String SO_FAR = "so far";

  static final int ANY_ENERGY = 30;

  private final Rest rest;
  private final Map<String, Set<String>> unmet = new HashMap<>();
  private final Set<String> promised;

  RestCandidates(Rest rest) {
    this.rest = rest;
    Set<String> existing = new HashSet<>(rest.base.instance().initial());
    for (Activity activity : rest.agenda.activities()) {
      Set<String> missing = new HashSet<>(needs(activity.exercise()));
      missing.removeAll(existing);
      unmet.put(activity.exercise(), missing);
      existing.addAll(rest.yieldsOf(activity.exercise()));
    }
    promised = existing;
  }

  private List<String> needs(String id) {
    return rest.candidate(id).map(Candidate::needs).orElse(List.of());
  }

  /** The kind of what is planned in a phase and stays there. */
  String plannedIn(String phase) {
    return "planned " + phase;
  }

  /** Whether it is an own item that may stand in any phase. */
  boolean isLoose(Activity activity) {
    return rest.base.brief().ownItems().stream()
        .filter(own -> own.id().equals(activity.exercise()))
        .anyMatch(own -> own.phase().isEmpty() && rest.candidate(own.id()).isPresent());
  }

  /** People have been at work; what ran last tells in which format. */
  Candidate soFar() {
    String format = "";
    for (Stand.Past past : rest.stand.past()) {
      if (!past.isBreak()) {
        format = rest.activity(past.item(), past.start(), past.planned()).format().word();
      }
    }
    return new Candidate(
        SO_FAR,
        SO_FAR,
        List.of(rest.worked),
        List.of(0),
        ANY_ENERGY,
        format,
        List.of(),
        List.of(),
        0);
  }

  /** What runs, from now on: nothing is asked of it any more, for it has begun. */
  Candidate running(Rest.Running running, Recipe.Sizes sizes) {
    Activity activity = running.activity();
    int least = running.earliest() - rest.from;
    int usual = running.natural() - rest.from;
    int most = rest.base.instance().stretch().max() - rest.worked;
    int to = isLonger(sizes, activity) ? running.latest() - rest.from : usual;
    int first =
        sizes instanceof Recipe.Sizes.Shorter ? least : Math.min(usual, Math.max(least, most));
    List<Integer> lengths = new ArrayList<>();
    for (int length = first; length <= Math.max(first, Math.min(to, most)); length += rest.grid) {
      lengths.add(length);
    }
    int planned = rest.planned(activity);
    IntUnaryOperator cost =
        isLonger(sizes, activity)
            ? length -> missed(activity, usual, length, to)
            : length -> length >= usual ? 0 : ReplanPrices.cut(planned, usual - length);
    return new Candidate(
        activity.exercise(),
        plannedIn(rest.base.goal().arc().get(rest.phase).name()),
        lengths,
        lengths.stream().map(cost::applyAsInt).toList(),
        activity.energy(),
        activity.format().word(),
        List.of(),
        List.copyOf(rest.yieldsOf(activity.exercise())),
        0);
  }

  /** What is planned, tied to its phase. */
  Candidate planned(Activity activity, Recipe.Sizes sizes, String kind) {
    int planned = rest.planned(activity);
    List<Integer> all = rest.lengths(activity);
    List<Integer> lengths =
        all.stream().filter(length -> fits(activity, sizes, length, planned)).toList();
    int most = lengths.get(lengths.size() - 1);
    List<Integer> costs =
        lengths.stream().map(length -> cost(activity, sizes, planned, length, most)).toList();
    List<String> needs = new ArrayList<>(needs(activity.exercise()));
    needs.removeAll(unmet.getOrDefault(activity.exercise(), Set.of()));
    return new Candidate(
        activity.exercise(),
        kind,
        lengths,
        costs,
        activity.energy(),
        activity.format().word(),
        needs,
        List.copyOf(rest.yieldsOf(activity.exercise())),
        0);
  }

  private static boolean fits(Activity activity, Recipe.Sizes sizes, int length, int planned) {
    return length == planned
        || sizes instanceof Recipe.Sizes.Any
        || (sizes instanceof Recipe.Sizes.Shorter && length < planned)
        || (isLonger(sizes, activity) && length > planned);
  }

  private int cost(Activity activity, Recipe.Sizes sizes, int planned, int length, int most) {
    return isLonger(sizes, activity)
        ? missed(activity, planned, length, most)
        : ReplanPrices.resized(planned, length);
  }

  private static boolean isLonger(Recipe.Sizes sizes, Activity activity) {
    return sizes instanceof Recipe.Sizes.Longer longer
        && longer.exercise().equals(activity.exercise());
  }

  /** What is not gained by giving it {@code length} instead of {@code most} minutes. */
  private int missed(Activity activity, int planned, int length, int most) {
    return gain(activity, planned, most) - gain(activity, planned, length);
  }

  private int gain(Activity activity, int planned, int length) {
    int usual =
        rest.candidate(activity.exercise())
            .map(each -> each.lengths().get(Math.max(0, each.lengthCosts().indexOf(0))))
            .orElse(planned);
    int relieved = Math.max(0, Math.min(length, usual) - planned);
    boolean discussed =
        activity.kind().filter(k -> k == Kind.CONVERGENT || k == Kind.DECISION).isPresent();
    int rate = discussed ? ReplanPrices.DISCUSSION : ReplanPrices.MORE_TIME;
    return ReplanPrices.RELIEF * relieved + rate * (length - planned - relieved);
  }

  /** Exercises that are neither over nor planned, of at most so many minutes. */
  List<Candidate> others(int most) {
    Set<String> taken = new HashSet<>(rest.done);
    rest.running.ifPresent(running -> taken.add(running.activity().exercise()));
    rest.planned().forEach(activity -> taken.add(activity.exercise()));
    rest.base.brief().ownItems().stream().map(OwnItem::id).forEach(taken::add);
    List<Candidate> others = new ArrayList<>();
    for (Candidate each : rest.base.instance().candidates()) {
      if (!taken.contains(each.id()) && each.lengths().get(0) <= most) {
        long count = each.lengths().stream().filter(length -> length <= most).count();
        others.add(
            new Candidate(
                each.id(),
                each.kind(),
                each.lengths().subList(0, (int) count),
                each.lengthCosts().subList(0, (int) count),
                each.energy(),
                each.format(),
                each.needs(),
                List.copyOf(rest.yieldsOf(each.id())),
                each.cost() + ReplanPrices.NEW));
      }
    }
    return others;
  }

  /** The kind that the brief's instance gives a planned exercise; empty if it has none. */
  String kindOf(Activity activity) {
    return rest.candidate(activity.exercise()).map(Candidate::kind).orElse("");
  }

  /** Work products that the agenda as it was planned leaves, or that were there before. */
  Set<String> promised() {
    return promised;
  }
}
