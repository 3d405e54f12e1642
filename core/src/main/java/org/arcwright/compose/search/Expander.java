package org.arcwright.compose.search;

/**
 * Extends a label by everything that may follow it. Of peers only the cheapest that nobody counts
 * goes on, and those cheaper than it that are tracked or shared: the rest is dominated by it.
 */
final class Expander {
  /** Takes each new label; false drops it again. */
  @FunctionalInterface
  interface Sink {
    boolean offer(int label);
  }

  private final Model model;
  private final Completion completion;
  private final Sharing sharing;
  private final Labels labels;
  private final Work work;
  private final Tracked tracked;

  /** Whether no exercise may come twice at all, tracked or not. */
  private final boolean elementary;

  /** Labels whose estimate reaches this are not made. */
  long ceiling = Model.INFINITE;

  Expander(
      Model model,
      Completion completion,
      Sharing sharing,
      Labels labels,
      Work work,
      Tracked tracked,
      boolean elementary) {
    this.model = model;
    this.completion = completion;
    this.sharing = sharing;
    this.labels = labels;
    this.work = work;
    this.tracked = tracked;
    this.elementary = elementary;
  }

  /** Makes the label before the first exercise. */
  int start() {
    int label = labels.add(-1, Labels.START, 0, 0, 0, completion.root());
    labels.products[label] = 0;
    labels.visited[label] = 0;
    labels.shared[label] = sharing.start();
    labels.formats[label] = -1;
    labels.wakes[label] = 0;
    labels.exercised[label] = 0;
    return label;
  }

  void expand(int label, Sink sink) {
    if (labels.actions[label] == Labels.START) {
      exercises(model.stages[0], label, 0, 0, 0, sink);
      return;
    }
    Stage stage = model.stages[labels.phase(label)];
    int count = labels.count(label);
    int cells = labels.cells(label);
    if (stage.allowsAfter(count)) {
      exercises(stage, label, count, cells, 0, sink);
    }
    if (stage.complete(count, cells) && (stage.due & ~labels.products[label]) == 0) {
      long share = model.pack(stage.shareCost[cells]);
      if (stage.number + 1 < model.stages.length) {
        exercises(model.stages[stage.number + 1], label, 0, 0, share, sink);
      } else {
        finish(label, share, sink);
      }
    }
    if (labels.stretch(label) > 0 && model.pinAt[labels.time(label)] < 0) {
      pauses(stage, label, sink);
    }
  }

  private void exercises(
      Stage stage, int label, int countBefore, int cellsBefore, long extra, Sink sink) {
    int t = labels.time(label);
    int s = labels.stretch(label);
    int meals = labels.meals(label);
    int last = labels.formats[label];
    int count = stage.countAfter(countBefore);
    long paid = labels.prices[label] + extra;
    long visited = labels.visited[label] & tracked.ahead(stage.number);
    long back = completion.back(stage.number, labels.shared[label], visited) + credit(label);
    long monotony = s == 0 ? model.monotonyAcrossBreak : model.monotony;
    int mask = stage.gather(labels.products[label]);
    long[] cheapest = completion.moves(stage, t);
    work.add(1 + cheapest.length / 8);
    int turned = 0;
    boolean reached = false;
    for (int k = 0; k < cheapest.length; k++) {
      int length = stage.moveLength[k];
      int cells = cellsBefore + length;
      if (cheapest[k] >= Model.INFINITE || (stage.moveNeed[k] & ~mask) != 0) {
        continue;
      }
      if (s + length > model.longestStretch || cells > stage.maxCells || t + length > model.cells) {
        return;
      }
      int format = stage.moveFormat[k];
      int grown = mask | stage.moveGain[k];
      if (length != turned) {
        turned = length;
        reached = completion.turnTo(t + length, stage.number, meals, count, cells, s + length);
      }
      if (!reached || !completion.turnTo(format, grown)) {
        continue;
      }
      long before = paid + (format == last ? monotony : 0);
      long rest = completion.after() - back;
      if (before + cheapest[k] + rest >= ceiling) {
        continue;
      }
      long state = Labels.state(stage.number, meals, count, cells, t + length, s + length);
      for (Peers peers : stage.movePeers[k]) {
        if (before + model.pack(peers.costs[0]) + rest >= ceiling) {
          break;
        }
        if ((peers.needs & ~labels.products[label]) == 0
            && model.mayStart(peers, t)
            && model.neighbours.mayFollow(labels.wakes[label], peers.place)) {
          peers(stage, peers, label, state, before, rest, sink);
        }
      }
    }
  }

  private void peers(
      Stage stage, Peers peers, int label, long state, long before, long rest, Sink sink) {
    int t = labels.time(label);
    long energy = model.energyCost(peers, t);
    int i = 0;
    while (i < peers.members.length) {
      long price = before + model.pack(peers.costs[i] + energy);
      if (price + rest >= ceiling) {
        return;
      }
      int end = i + 1;
      while (end < peers.members.length && peers.costs[end] == peers.costs[i]) {
        end++;
      }
      if (alike(stage, peers, i, end, label, state, price, sink)) {
        return;
      }
      i = end;
    }
  }

  /** Goes through members of one price; true if the rest of the peers is dominated. */
  private boolean alike(
      Stage stage, Peers peers, int from, int to, int label, long state, long price, Sink sink) {
    int t = labels.time(label);
    int chosen = -1;
    long leastTie = Long.MAX_VALUE;
    for (int i = from; i < to; i++) {
      int candidate = peers.members[i];
      if (!counted(candidate) && !used(label, candidate)) {
        long tie = model.tie(candidate, stage.number, t, peers.length);
        if (tie < leastTie) {
          leastTie = tie;
          chosen = candidate;
        }
      }
    }
    for (int i = from; i < to; i++) {
      int candidate = peers.members[i];
      if (counted(candidate) && !used(label, candidate)) {
        long tie = model.tie(candidate, stage.number, t, peers.length);
        if (tie <= leastTie) {
          add(stage, peers, candidate, label, state, price + tie, sink);
        }
      }
    }
    if (chosen >= 0) {
      add(stage, peers, chosen, label, state, price + leastTie, sink);
    }
    return chosen >= 0;
  }

  /** Whether labels know of it: then it does not stand for peers that they may still take. */
  private boolean counted(int candidate) {
    return sharing.counts(candidate) || (!elementary && tracked.bit(candidate) != 0);
  }

  private boolean used(int label, int candidate) {
    return elementary
        ? labels.onPath(label, candidate)
        : (labels.visited[label] & tracked.bit(candidate)) != 0;
  }

  private void add(
      Stage stage, Peers peers, int candidate, int parent, long state, long price, Sink sink) {
    long counts = sharing.after(labels.shared[parent], candidate);
    if (sharing.over(counts)) {
      return;
    }
    long settled = sharing.settled(counts, stage.number);
    long visited = (labels.visited[parent] | tracked.bit(candidate)) & tracked.ahead(stage.number);
    long back = completion.back(stage.number, settled, visited) + credit(parent);
    long estimate = price + completion.after() - back;
    if (estimate >= ceiling) {
      return;
    }
    int label = labels.add(parent, candidate, peers.length, state, price, estimate);
    labels.shared[label] = settled;
    labels.products[label] = (labels.products[parent] | peers.yields) & stage.relevant;
    labels.visited[label] = visited;
    labels.formats[label] = (short) peers.format;
    labels.wakes[label] = peers.wake;
    labels.exercised[label] = (short) (labels.exercised[parent] + peers.length);
    offer(label, sink);
  }

  private void finish(int label, long share, Sink sink) {
    int t = labels.time(label);
    int s = labels.stretch(label);
    int end = t + model.buffer(labels.exercised[label]);
    if (s == 0 || t <= model.lastPin || end > model.cells) {
      return;
    }
    if (labels.meals(label) < model.mealFrom.length) {
      return;
    }
    long rhythm = s < t ? model.rhythm(s) : 0;
    long price = labels.prices[label] + share + rhythm + model.idle(model.cells - end);
    if (price < ceiling) {
      int last = labels.add(label, Labels.END, 0, labels.states[label], price, price);
      inherit(last, label);
      offer(last, sink);
    }
  }

  private void pauses(Stage stage, int label, Sink sink) {
    int t = labels.time(label);
    int meals = labels.meals(label);
    int pause = model.breakCells;
    if (pause > 0 && model.free(t, t + pause)) {
      long price = model.pause + model.rhythm(labels.stretch(label));
      rest(stage, label, Labels.BREAK, pause, meals, price, sink);
    }
    if (model.mealMayStart(meals, t)) {
      rest(stage, label, Labels.MEAL, model.mealCells[meals], meals + 1, 0, sink);
    }
  }

  private void rest(
      Stage stage, int parent, int action, int length, int meals, long extra, Sink sink) {
    int t = labels.time(parent);
    int count = labels.count(parent);
    int cells = labels.cells(parent);
    long price = labels.prices[parent] + extra + model.breakTie(t, length);
    int mask = stage.gather(labels.products[parent]);
    if (!completion.turnTo(t + length, stage.number, meals, count, cells, 0)
        || !completion.turnTo(labels.formats[parent], mask)) {
      return;
    }
    long rest =
        completion.after()
            - completion.back(stage.number, labels.shared[parent], labels.visited[parent])
            - credit(parent)
            - (action == Labels.BREAK ? model.toll : 0);
    if (price + rest < ceiling) {
      long state = Labels.state(stage.number, meals, count, cells, t + length, 0);
      int label = labels.add(parent, action, length, state, price, price + rest);
      inherit(label, parent);
      labels.wakes[label] = model.neighbours.afterBreak(labels.wakes[parent]);
      offer(label, sink);
    }
  }

  /** The toll of the breaks that led to a label, which the bound has charged at the end. */
  private long credit(int label) {
    return model.breaks(labels.time(label), labels.meals(label), labels.exercised[label])
        * model.toll;
  }

  private void inherit(int label, int parent) {
    labels.products[label] = labels.products[parent];
    labels.visited[label] = labels.visited[parent];
    labels.shared[label] = labels.shared[parent];
    labels.formats[label] = labels.formats[parent];
    labels.wakes[label] = labels.wakes[parent];
    labels.exercised[label] = labels.exercised[parent];
  }

  private void offer(int label, Sink sink) {
    work.add(1);
    if (!sink.offer(label)) {
      labels.removeLast();
    }
  }
}
