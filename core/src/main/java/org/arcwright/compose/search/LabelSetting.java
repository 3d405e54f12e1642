package org.arcwright.compose.search;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.arcwright.compose.instance.Item;

/**
 * Exact label setting in the order of least estimate (A*, Hart, Nilsson and Raphael 1968) with
 * dominance, repeated while the cheapest path uses an untracked exercise twice: decremental
 * state-space relaxation (Righini and Salani 2008; Boland, Dethridge and Dumitrescu 2006). Each
 * round's cheapest price is a lower bound; a path without repeats is a cheapest agenda.
 */
final class LabelSetting {
  private final Model model;
  private final Prices prices;
  private final Work work;
  private final Bound bound;
  private final Listener listener;
  private final Labels labels = new Labels();

  private List<Item> items = List.of();
  private long price = Model.INFINITE;
  private long lower;

  LabelSetting(Model model, Prices prices, Bound bound, Work work, Listener listener) {
    this.model = model;
    this.prices = prices;
    this.bound = bound;
    this.work = work;
    this.listener = listener;
    raise(bound.root());
  }

  /** Best items so far; empty if none are known. */
  List<Item> items() {
    return items;
  }

  /** Their packed price; {@link Model#INFINITE} if there are none. */
  long price() {
    return price;
  }

  /** No agenda's packed price is under this. */
  long lower() {
    return lower;
  }

  /** Looks for a first agenda. */
  void dive() {
    Tracked none = new Tracked(model.ids.length);
    Expander expander = new Expander(model, prices, bound, labels, work, none, true);
    int end = Dive.run(labels, expander);
    if (end >= 0) {
      accept(end);
    }
    labels.clear();
  }

  /** Runs to the proof; true if {@link #items} are proven cheapest or nothing fits. */
  boolean prove() {
    Tracked tracked = new Tracked(model.ids.length);
    Queue queue = new Queue(labels);
    Dominance dominance = new Dominance(model, labels);
    while (true) {
      labels.clear();
      queue.clear();
      dominance.clear();
      int end = round(tracked, queue, dominance);
      if (end < 0) {
        raise(items.isEmpty() ? lower : price);
        return true;
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

  /** The cheapest END label of the relaxation, or -1 if none is cheaper than what is known. */
  private int round(Tracked tracked, Queue queue, Dominance dominance) {
    Expander expander = new Expander(model, prices, bound, labels, work, tracked, false);
    expander.ceiling = price;
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
    if (estimate > lower) {
      boolean dearer = model.cost(estimate) > model.cost(lower);
      lower = estimate;
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
