package org.arcwright.examples;

import java.time.Duration;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Mode;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Composition;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.Composition.NothingFits;
import org.arcwright.library.BuiltIn;

/** Composes an agenda from within a program. */
public final class Embedded {
  private Embedded() {}

  /** Prints when each exercise starts, or why nothing fits. */
  public static void main(String[] args) {
    Brief brief =
        Brief.builder("What next?", "choose-a-direction", Mode.REMOTE, 9, Duration.ofMinutes(210))
            .build();
    Composition answer = Composer.of(BuiltIn.catalog()).compose(brief, Budget.USUAL);
    if (answer instanceof Composed composed) {
      for (Activity activity : composed.agenda().activities()) {
        System.out.println(activity.start().toMinutes() + " min: " + activity.title());
      }
      System.out.println(composed.proof().best() ? "Proven best." : "Best so far.");
    } else if (answer instanceof NothingFits nothing) {
      nothing.reasons().forEach(System.out::println);
    }
  }
}
