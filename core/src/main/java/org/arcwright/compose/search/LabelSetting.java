package org.arcwright.compose.search;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.arcwright.compose.instance.Item;
import org.arcwright.compose.search.Solution.Status;

/**
 * Exact label setting in the order of least estimate (A*, Hart, Nilsson and Raphael 1968) with
 * dominance, repeated while the cheapest path uses an untracked exercise twice: decremental
 * state-space relaxation (Righini and Salani 2008; Boland, Dethridge and Dumitrescu 2006). Each
 * round's cheapest price is a lower bound; a path without repeats is a cheapest agenda.
 */
final class LabelSetting {
  private final Model model;
  private final Sharing sharing;
  private final Work work;
  private final Listener listener;
  private final Labels labels = new Labels();
  private final Tracked tracked;

  private Completion completion;
  private List<Item> items = List.of();
  private long price = Model.INFINITE;
  private long lower;

  LabelSetting(
      Model model, Guide guide, Sharing sharing, Tracked tracked, Work work, Listener listener) {
    this.model = model;
    this.sharing = sharing;
    this.work = work;
    this.listener = listener;
    this.tracked = tracked;
    this.completion = new Completion(guide, sharing);
    raise(completion.root());
  }

  /** Goes on with another guide. */
  void follow(Guide guide) {
    completion = new Completion(guide, sharing);
    raise(completion.root());
  }

  /** Starts from an agenda that is known, and told already. */
  void start(Scout.Found found) {
    price = model.pack(found.cost()) + found.tie();
    items = found.items();
  }

  /** Looks for nothing but what costs less. */
  void below(long ceiling) {
    price = Math.min(price, ceiling);
  }

  /**
   * Packed price of the best items so far, or the ceiling; {@link Model#INFINITE} if there are
   * neither.
   */
  long price() {
    return price;
  }

  /**
   * Looks for a first agenda, or for a cheaper one.
   *
   * @param width see {@link Dive}
   */
  void dive(int width) {
    labels.clear();
    int end = Dive.run(labels, expander(true), width, price);
    if (end >= 0) {
      accept(end);
    }
  }

  private Expander expander(boolean elementary) {
    return new Expander(model, completion, sharing, labels, work, tracked, elementary);
  }

  /** Runs to the proof; true if {@link #items} are proven cheapest or nothing fits. */
  boolean prove() {
    return prove(Model.INFINITE);
  }

  /**
   * Runs to the proof, or to a ceiling; true if {@link #items} are proven cheapest or nothing fits.
   *
   * @param under this is looked for
   */
  boolean prove(long under) {
    Queue queue = new Queue(labels);
    Dominance dominance = new Dominance(model, labels, sharing);
    while (true) {
      labels.clear();
      queue.clear();
      dominance.clear();
      int end = round(queue, dominance, Math.min(price, under));
      if (end < 0) {
        long ceiling = Math.min(price, under);
        raise(ceiling >= Model.INFINITE ? lower : ceiling);
        return ceiling == price;
      }
      raise(labels.prices[end]);
      Set<Integer> repeated = repeated(end);
      if (repeated.isEmpty()) {
        accept(end);
        return true;
      }
      for (int candidate : repeated) {
        if (!tracked.add(candidate)) {
          return false;
        }
      }
    }
  }

  /** What was found; infeasible if nothing was and that is proven. */
  Solution solution(boolean proven) {
    if (items.isEmpty()) {
      Status status = proven ? Status.INFEASIBLE : Status.STOPPED;
      return new Solution(status, 0, 0, model.cost(lower), List.of(), work.done());
    }
    return new Solution(
        proven ? Status.OPTIMAL : Status.FEASIBLE,
        model.cost(price),
        model.tie(price),
        model.cost(proven ? price : lower),
        items,
        work.done());
  }

  /** The cheapest END label of the relaxation, or -1 if none is cheaper than what is known. */
  private int round(Queue queue, Dominance dominance, long ceiling) {
    Expander expander = expander(false);
    expander.ceiling = ceiling;
    Expander.Sink sink =
        label -> {
          if (labels.actions[label] == Labels.END || dominance.keep(label)) {
            queue.add(label);
            return true;
          }
          return false;
        };
    queue.add(expander.start());
    while (!queue.isEmpty()) {
      int label = queue.poll();
      if (labels.dropped[label]) {
        continue;
      }
      raise(labels.estimates[label]);
      if (labels.actions[label] == Labels.END) {
        return label;
      }
      expander.expand(label, sink);
    }
    return -1;
  }

  private void accept(int end) {
    price = labels.prices[end];
    items = items(end);
    listener.incumbent(model.cost(price), items);
  }

  private void raise(long estimate) {
    long known = Math.min(estimate, price);
    if (known > lower) {
      boolean dearer = model.cost(known) > model.cost(lower);
      lower = known;
      if (dearer) {
        listener.bound(model.cost(lower));
      }
    }
  }

  private Set<Integer> repeated(int end) {
    Set<Integer> seen = new HashSet<>();
    Set<Integer> repeated = new HashSet<>();
    for (int at = end; at >= 0; at = labels.parents[at]) {
      int action = labels.actions[at];
      if (action >= 0 && !seen.add(action)) {
        repeated.add(action);
      }
    }
    return repeated;
  }

  private List<Item> items(int end) {
    List<Item> list = new ArrayList<>();
    for (int at = labels.parents[end];
        labels.actions[at] != Labels.START;
        at = labels.parents[at]) {
      int start = labels.time(labels.parents[at]) * model.grid;
      int length = labels.lengths[at] * model.grid;
      int action = labels.actions[at];
      list.add(
          0,
          action >= 0
              ? new Item.Activity(model.ids[action], labels.phase(at), start, length)
              : new Item.Pause(start, length));
    }
    return list;
  }
}
