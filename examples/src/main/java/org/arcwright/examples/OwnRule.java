package org.arcwright.examples;

import java.time.Duration;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Rule;
import org.arcwright.compose.Budget;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.library.BuiltIn;

/** Composes with rules of one's own: how a firm always does it, whatever a brief asks for. */
public final class OwnRule {
  /** People who have been silent together want to talk. */
  static final Rule NEVER_TWO_SILENT =
      Rule.neverInARow(
          "never two silent exercises in a row",
          (exercise, people) -> exercise.format(people) == Format.SOLO);

  /** More than that is tiring at screens. */
  static final Rule FEW_PLENARIES =
      Rule.atMost(
          "at most two exercises in plenary",
          2,
          (exercise, people) -> exercise.format(people) == Format.PLENARY);

  private OwnRule() {}

  /** The built-in catalog with the rules, which all agendas from it then keep. */
  static Catalog catalog() {
    return BuiltIn.catalog().withRules(NEVER_TWO_SILENT, FEW_PLENARIES);
  }

  /** Prints each exercise's format and title, without the rules and with them. */
  public static void main(String[] args) {
    print("Without rules", BuiltIn.catalog());
    print("With rules", catalog());
  }

  private static void print(String title, Catalog catalog) {
    Brief brief =
        Brief.builder("What next?", "choose-a-direction", Mode.REMOTE, 9, Duration.ofMinutes(210))
            .build();
    if (Composer.of(catalog).compose(brief, Budget.USUAL) instanceof Composed composed) {
      System.out.println(title + " (cost " + composed.proof().cost() + "):");
      for (Activity activity : composed.agenda().activities()) {
        System.out.println("  " + activity.format().word() + ": " + activity.title());
      }
    } else {
      System.out.println(title + ": nothing fits.");
    }
  }
}
