package org.arcwright.compose.explain;

import java.time.InstantSource;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.agenda.AgendaItem.Pause;
import org.arcwright.brief.Brief;
import org.arcwright.brief.OwnItem;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Phase;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Composition;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.Composition.NothingFits;
import org.arcwright.compose.Price;
import org.arcwright.compose.explain.WhyThis.HandedOn;
import org.arcwright.compose.explain.WhyThis.Instead;
import org.arcwright.compose.explain.WhyThis.Place;
import org.arcwright.compose.explain.WhyThis.Reason;
import org.arcwright.compose.explain.WhyThis.TakenOver;
import org.arcwright.compose.reduce.AgendaBuilder;
import org.arcwright.compose.reduce.AgendaReader;
import org.arcwright.compose.reduce.Reducer;
import org.arcwright.compose.reduce.Reduction;

/** Puts together what speaks for each exercise of an agenda. */
final class Reasons {
  private final Brief brief;
  private final Catalog catalog;
  private final Agenda agenda;
  private final Effort effort;
  private final InstantSource clock;

  Reasons(Brief brief, Catalog catalog, Agenda agenda, Effort effort, InstantSource clock) {
    this.brief = brief;
    this.catalog = catalog;
    this.agenda = agenda;
    this.effort = effort;
    this.clock = clock;
  }

  WhyThis all() {
    List<AgendaItem> items = agenda.items();
    List<Instead> insteads = insteads();
    List<Reason> reasons = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      if (items.get(i) instanceof Activity activity) {
        reasons.add(
            new Reason(
                activity,
                takesOver(i, activity),
                handsOn(i, activity),
                place(i, activity),
                insteads.get(i)));
      }
    }
    return new WhyThis(agenda, reasons);
  }

  private Set<String> needs(AgendaItem item) {
    return exercise(item).map(Exercise::needs).orElse(Set.of());
  }

  private boolean leaves(AgendaItem item, String product) {
    return exercise(item).filter(e -> e.yields().contains(product)).isPresent();
  }

  private Optional<Exercise> exercise(AgendaItem item) {
    return item instanceof Activity activity
        ? catalog.exercise(activity.exercise())
        : Optional.empty();
  }

  private List<TakenOver> takesOver(int number, Activity activity) {
    List<TakenOver> taken = new ArrayList<>();
    for (String product : exercise(activity).map(Exercise::needs).orElse(Set.of())) {
      Optional<String> from = Optional.empty();
      for (int i = number - 1; i >= 0 && from.isEmpty(); i--) {
        if (leaves(agenda.items().get(i), product)) {
          from = Optional.of(((Activity) agenda.items().get(i)).exercise());
        }
      }
      taken.add(new TakenOver(product, from));
    }
    return taken;
  }

  private List<HandedOn> handsOn(int number, Activity activity) {
    List<HandedOn> handed = new ArrayList<>();
    for (String product : exercise(activity).map(Exercise::yields).orElse(Set.of())) {
      List<String> to = new ArrayList<>();
      boolean again = false;
      boolean againInPhase = false;
      for (AgendaItem later : agenda.items().subList(number + 1, agenda.items().size())) {
        if (!again && needs(later).contains(product)) {
          to.add(((Activity) later).exercise());
        }
        if (leaves(later, product)) {
          again = true;
          againInPhase |= ((Activity) later).phase().equals(activity.phase());
        }
      }
      boolean owed = !againInPhase && owes(activity.phase(), product);
      if (owed || !to.isEmpty()) {
        handed.add(new HandedOn(product, to, owed));
      }
    }
    return handed;
  }

  private boolean owes(String phase, String product) {
    return catalog.goal(brief.goal()).orElseThrow().arc().stream()
        .filter(known -> known.name().equals(phase))
        .map(Phase::yields)
        .anyMatch(yields -> yields.contains(product));
  }

  private Place place(int number, Activity activity) {
    List<AgendaItem> items = agenda.items();
    return new Place(
        wished(activity),
        number > 0 && items.get(number - 1) instanceof Pause,
        number + 1 < items.size() && items.get(number + 1) instanceof Pause,
        asked(activity.exercise()));
  }

  /** Average of the curve over the minutes of an activity, rounded. */
  private int wished(Activity activity) {
    List<Integer> curve = agenda.curve();
    long cap = agenda.cap().toMinutes();
    long sum = 0;
    for (long m = activity.start().toMinutes(); m < activity.end().toMinutes(); m++) {
      sum += curve.get((int) Math.min(curve.size() - 1, m * curve.size() / cap));
    }
    return (int) Math.round((double) sum / activity.length().toMinutes());
  }

  private Optional<Wish> asked(String id) {
    for (OwnItem item : brief.ownItems()) {
      if (item.id().equals(id)) {
        return Optional.of(new Wish.Own(item));
      }
    }
    for (Wishes.Pin pin : brief.wishes().pins()) {
      if (pin.exercise().equals(id)) {
        return Optional.of(new Wish.Pinned(pin));
      }
    }
    return brief.wishes().include().contains(id)
        ? Optional.of(new Wish.Include(id))
        : Optional.empty();
  }

  /** First what takes no search, then the rest, which share what is left of the budget. */
  private List<Instead> insteads() {
    List<Instead> insteads = new ArrayList<>();
    Reduction reduction = Reducer.reduce(brief, catalog, effort::spent);
    NextBest next =
        new NextBest(reduction.instance(), AgendaReader.items(reduction, agenda), effort);
    Set<Integer> open = new LinkedHashSet<>();
    for (int i = 0; i < agenda.items().size(); i++) {
      insteads.add(new Instead.Asked());
      if (agenda.items().get(i) instanceof Activity activity
          && asked(activity.exercise()).isEmpty()) {
        NextBest.Found found = next.of(i);
        boolean known = found.complete() && reduction.complete();
        if (known && found.id().isPresent()) {
          insteads.set(i, swap(reduction, found.id().get(), found));
        } else {
          insteads.set(i, new Instead.Unknown());
          if (known) {
            open.add(i);
          }
        }
      }
    }
    int left = open.size();
    for (int i : open) {
      insteads.set(i, anew(((Activity) agenda.items().get(i)).exercise(), left--));
    }
    return insteads;
  }

  private static Instead swap(Reduction reduction, String id, NextBest.Found found) {
    List<Price> prices =
        reduction.costParts().apply(id).stream()
            .map(part -> new Price(id, part.why(), part.points()))
            .toList();
    return new Instead.Swap(id, AgendaBuilder.build(reduction, found.items()), prices);
  }

  private Instead anew(String exercise, int parts) {
    if (effort.spent()) {
      return new Instead.Unknown();
    }
    Composition answer =
        Composer.of(catalog, clock)
            .compose(
                Draft.of(brief).leaveOut(exercise).brief(), effort.part(parts), effort.cancel());
    if (answer instanceof Composed composed) {
      effort.add(composed.proof().labels());
      return new Instead.Anew(composed.agenda(), composed.proof(), composed.prices());
    }
    return answer instanceof NothingFits ? new Instead.Nothing() : new Instead.Unknown();
  }
}
