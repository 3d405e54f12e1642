package org.arcwright.brief;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.arcwright.brief.Group.Acquaintance;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Mode;
import org.junit.jupiter.api.Test;

/** A brief that begins with another. */
class BriefBuilderTest {
  /** Nothing in it is as usual. */
  private static final Brief ODD =
      Brief.builder("An odd day", "find-the-risks", Mode.HYBRID, 17, minutes(400))
          .acquaintance(Acquaintance.STRANGERS)
          .openness(3)
          .start(ZonedDateTime.of(2027, 3, 2, 8, 30, 0, 0, ZoneId.of("Europe/Vienna")))
          .zones(List.of(ZoneId.of("Asia/Kolkata")))
          .tools(List.of("music"))
          .rhythm(new Rhythm(minutes(25), minutes(70), minutes(13)))
          .meal(new Meal(minutes(170), minutes(210), minutes(50)))
          .curve(new EnergyCurve(List.of(new EnergyCurve.Point(0, 17))))
          .bufferPercent(23)
          .given(List.of("risks"))
          .wishes(new Wishes(Set.of("premortem"), Set.of("dots"), List.of(), Set.of("check-in")))
          .ownItem(
              new OwnItem(
                  "talk",
                  "A talk",
                  minutes(20),
                  Optional.empty(),
                  Optional.empty(),
                  2,
                  Format.SOLO))
          .build();

  @Test
  void says_the_same_until_something_is_set() {
    assertThat(ODD.toBuilder().build()).isEqualTo(ODD);
  }

  @Test
  void changes_what_is_set_and_nothing_else() {
    Brief longer = ODD.toBuilder().cap(minutes(460)).people(18).build();

    assertThat(longer.cap()).isEqualTo(minutes(460));
    assertThat(longer.group()).isEqualTo(new Group(18, Acquaintance.STRANGERS, 3));
    assertThat(longer.toBuilder().cap(ODD.cap()).people(17).build()).isEqualTo(ODD);
  }

  private static Duration minutes(long minutes) {
    return Duration.ofMinutes(minutes);
  }
}
