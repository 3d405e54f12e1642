package org.arcwright.cli.handout;

import biweekly.Biweekly;
import biweekly.component.VEvent;
import biweekly.property.DateOrDateTimeProperty;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** What a calendar said when it was last written, so that a SEQUENCE grows with each change. */
final class Earlier {
  private final Map<String, VEvent> events = new HashMap<>();

  /**
   * @param calendar the earlier file, if there is one; one that is no calendar says nothing
   */
  Earlier(Optional<String> calendar) {
    calendar.map(text -> Biweekly.parse(text).first()).stream()
        .flatMap(read -> read.getEvents().stream())
        .filter(event -> event.getUid() != null)
        .forEach(event -> events.put(event.getUid().getValue(), event));
  }

  /** Numbers the event: as before if it is what it was, else one more. */
  void number(VEvent event) {
    VEvent before = events.get(event.getUid().getValue());
    int sequence =
        before == null || before.getSequence() == null ? 0 : before.getSequence().getValue();
    event.setSequence(before == null || same(before, event) ? sequence : sequence + 1);
  }

  private static boolean same(VEvent one, VEvent other) {
    return one.getSummary() != null
        && one.getSummary().getValue().equals(other.getSummary().getValue())
        && same(one.getDateStart(), other.getDateStart())
        && same(one.getDateEnd(), other.getDateEnd());
  }

  private static boolean same(DateOrDateTimeProperty one, DateOrDateTimeProperty other) {
    return one != null && one.getValue().getTime() == other.getValue().getTime();
  }
}
