package org.arcwright.live;

import java.time.Duration;
import java.util.Optional;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.brief.Brief;
import org.arcwright.brief.Defaults;
import org.arcwright.brief.OwnItem;
import org.arcwright.catalog.Exercise;
import org.arcwright.compose.reduce.Reduction;

/** Makes items of ids that an agenda does not have. */
final class Titles {
  private Titles() {}

  /** From the catalog, else from the brief's own items; what nobody knows keeps its id as title. */
  static Activity activity(
      Reduction base, String id, String phase, Duration start, Duration length) {
    Brief brief = base.brief();
    Optional<Exercise> exercise = base.catalog().exercise(id);
    if (exercise.isPresent()) {
      return new Activity(
          id,
          exercise.get().title(),
          Optional.of(exercise.get().kind()),
          phase,
          start,
          length,
          exercise.get().format(brief.group().count()),
          10 * exercise.get().energy());
    }
    Optional<OwnItem> own = brief.ownItems().stream().filter(o -> o.id().equals(id)).findFirst();
    return new Activity(
        id,
        own.map(OwnItem::title).orElse(id),
        Optional.empty(),
        phase,
        start,
        length,
        own.map(OwnItem::format).orElse(Defaults.OWN_ITEM_FORMAT),
        10 * own.map(OwnItem::energy).orElse(Defaults.OWN_ITEM_ENERGY));
  }
}
