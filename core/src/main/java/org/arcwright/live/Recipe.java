package org.arcwright.live;

import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.AgendaItem.Activity;

/**
 * What a way to go on keeps of the plan, and what it allows beside.
 *
 * @param kept planned exercises that take place, in their order
 * @param sizes how long they may take
 * @param extra room for one exercise that was not planned
 * @param keptFree minutes kept free at the close
 */
record Recipe(List<Activity> kept, Sizes sizes, Optional<Extra> extra, int keptFree) {
  /** How long planned exercises may take. */
  sealed interface Sizes {
    /** As long as planned. */
    record Planned() implements Sizes {}

    /** As long as planned or shorter, as far as each still works. */
    record Shorter() implements Sizes {}

    /** Whatever each allows. */
    record Any() implements Sizes {}

    /** As long as planned, but one may be longer. */
    record Longer(String exercise) implements Sizes {}
  }

  /**
   * Room for an exercise.
   *
   * @param phase number of the phase in which it stands
   * @param most minutes at the most
   */
  record Extra(int phase, int most) {}

  static final Sizes PLANNED = new Sizes.Planned();
  static final Sizes SHORTER = new Sizes.Shorter();
  static final Sizes ANY = new Sizes.Any();

  /** Only planned exercises. */
  static Recipe of(List<Activity> kept, Sizes sizes, int keptFree) {
    return new Recipe(kept, sizes, Optional.empty(), keptFree);
  }

  Recipe with(Extra room) {
    return new Recipe(kept, sizes, Optional.of(room), keptFree);
  }
}
