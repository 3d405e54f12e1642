package org.arcwright.compose.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.LongStream;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Bounds;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Instance.Phase;
import org.arcwright.compose.instance.Instance.Weights;
import org.arcwright.compose.oracle.Draft;
import org.arcwright.compose.oracle.Enumeration.Best;
import org.arcwright.compose.oracle.Instances;
import org.arcwright.compose.search.Solution.Status;

/** Tiny instances in which a relaxation gives nothing away, so that its price must be the best. */
final class Relaxable {
  private static final int SEEDS = 200;
  private static final int MANY = 8;

  private Relaxable() {}

  /**
   * No exercise can come twice anyway: each phase takes one exercise, of a kind of its own. And
   * without a buffer it does not matter at the end how many breaks there were.
   */
  static List<Instance> once() {
    return LongStream.range(0, SEEDS)
        .mapToObj(Relaxable::once)
        .filter(instance -> ModelBuilder.build(instance, Models.work()).isPresent())
        .toList();
  }

  private static Instance once(long seed) {
    Instance instance = Instances.tiny(seed);
    int phases = instance.phases().size();
    return Draft.of(instance)
        .bufferPercent(0)
        .candidates(candidates(instance, (c, i) -> List.of(ofKind(c, "kind-" + i % phases))))
        .phases(phases(instance, (p, i) -> phase(p, Set.of("kind-" + i), new Bounds(1, 1))))
        .build();
  }

  /**
   * Each exercise may come as often as there is time for, as another of the same, and something
   * fits. Of exercises in a phase the bound counts no more than one over the fewest; so does the
   * instance.
   */
  static List<Instance> often() {
    return LongStream.range(0, SEEDS)
        .mapToObj(Relaxable::often)
        .filter(instance -> Search.solve(instance, Models.AMPLE).status() == Status.OPTIMAL)
        .toList();
  }

  private static Instance often(long seed) {
    Instance instance = Instances.tiny(seed);
    return Draft.of(instance)
        .bufferPercent(0)
        .include()
        .pins()
        .candidates(candidates(instance, (c, i) -> copies(c)))
        .phases(phases(instance, (p, i) -> phase(p, p.kinds(), countable(p.count()))))
        .build();
  }

  /** The same, with nothing that an outline forgets: formats and products. */
  static Instance plain(Instance instance) {
    Weights w = instance.weights();
    return Draft.of(instance)
        .include()
        .initial(List.of())
        .weights(new Weights(w.energy(), w.share(), 0, 0, w.rhythm(), w.pause(), w.idle()))
        .candidates(candidates(instance, (c, i) -> List.of(withoutProducts(c))))
        .phases(phases(instance, (p, i) -> withoutProducts(p)))
        .build();
  }

  /** The best agenda's price, as a model packs it. */
  static long price(Model model, Optional<Best> best) {
    return best.map(b -> model.pack(b.cost()) + b.tie()).orElse(Model.INFINITE);
  }

  private interface Change<T, R> {
    R of(T old, int number);
  }

  private static List<Candidate> candidates(
      Instance instance, Change<Candidate, List<Candidate>> change) {
    List<Candidate> all = new ArrayList<>();
    for (int i = 0; i < instance.candidates().size(); i++) {
      all.addAll(change.of(instance.candidates().get(i), i));
    }
    return all;
  }

  private static List<Phase> phases(Instance instance, Change<Phase, Phase> change) {
    List<Phase> all = new ArrayList<>();
    for (int i = 0; i < instance.phases().size(); i++) {
      all.add(change.of(instance.phases().get(i), i));
    }
    return all;
  }

  private static Bounds countable(Bounds count) {
    return count.max() > count.min() + 1 ? new Bounds(count.min(), MANY) : count;
  }

  private static Phase phase(Phase p, Set<String> kinds, Bounds count) {
    return new Phase(p.name(), kinds, count, p.minutes(), p.target(), p.yields());
  }

  private static Phase withoutProducts(Phase p) {
    return new Phase(p.name(), p.kinds(), p.count(), p.minutes(), p.target(), List.of());
  }

  private static List<Candidate> copies(Candidate c) {
    List<Candidate> copies = new ArrayList<>();
    for (int i = 0; i < MANY; i++) {
      copies.add(changed(c, c.id() + "-" + i, c.kind(), c.needs(), c.yields()));
    }
    return copies;
  }

  private static Candidate ofKind(Candidate c, String kind) {
    return changed(c, c.id(), kind, c.needs(), c.yields());
  }

  private static Candidate withoutProducts(Candidate c) {
    return changed(c, c.id(), c.kind(), List.of(), List.of());
  }

  private static Candidate changed(
      Candidate c, String id, String kind, List<String> needs, List<String> yields) {
    return new Candidate(
        id, kind, c.lengths(), c.lengthCosts(), c.energy(), c.format(), needs, yields, c.cost());
  }
}
