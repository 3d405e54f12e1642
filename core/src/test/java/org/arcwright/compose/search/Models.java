package org.arcwright.compose.search;

import java.util.List;
import java.util.Set;
import org.arcwright.compose.instance.Instance;
import org.arcwright.compose.instance.Instance.Bounds;
import org.arcwright.compose.instance.Instance.Candidate;
import org.arcwright.compose.instance.Instance.Phase;
import org.arcwright.compose.oracle.Draft;

/** Small models for tests of the search's parts. */
final class Models {
  /** Many times the steps that a tiny instance takes: a search that would never end fails. */
  static final Limit SOON = Limit.labels(50_000);

  /** The same for a likely workshop. */
  static final Limit AMPLE = Limit.labels(10_000_000);

  private Models() {}

  static Model of(Instance instance) {
    return ModelBuilder.build(instance, work())
        .orElseThrow(() -> new IllegalArgumentException("nothing can fit"));
  }

  static Work work() {
    return new Work(Limit.NONE);
  }

  /** An hour on a grid of ten minutes, with these phases, and no price on anything. */
  static Draft hour(Phase... phases) {
    return new Draft(10, 60).phases(List.of(phases));
  }

  /** A phase of one kind, of that name, of up to so many exercises and an hour. */
  static Phase phase(String kind, int most) {
    return new Phase(kind, Set.of(kind), new Bounds(1, most), new Bounds(0, 60), 0, List.of());
  }

  /** A candidate of ten minutes. */
  static Candidate candidate(String id, String kind, int cost) {
    return candidate(id, kind, cost, 10);
  }

  /** A candidate of one length. */
  static Candidate candidate(String id, String kind, int cost, int minutes) {
    return new Candidate(
        id, kind, List.of(minutes), List.of(0), 30, "any", List.of(), List.of(), cost);
  }
}
