package planner;

import java.time.Duration;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Mode;
import org.arcwright.compose.Budget;
import org.arcwright.compose.CachingComposer;
import org.arcwright.compose.Composer;
import org.arcwright.compose.Composition;
import org.arcwright.compose.Composition.Composed;
import org.arcwright.compose.Composition.NothingFits;
import org.arcwright.compose.explain.Clash;
import org.arcwright.compose.explain.Explainer;
import org.arcwright.format.CompositionFormat;
import org.arcwright.library.BuiltIn;

/** Composes one brief that fits and one that does not, as a program outside this project would. */
public final class Planner {
  private Planner() {}

  /** Prints an agenda, whether its JSON is read back, and the first way out of the other brief. */
  public static void main(String[] args) {
    Catalog catalog = BuiltIn.catalog();
    CachingComposer composer = CachingComposer.of(Composer.of(catalog), 10_000);

    Composition answer = composer.compose(brief(90), Budget.USUAL);
    if (answer instanceof Composed composed) {
      for (Activity activity : composed.agenda().activities()) {
        System.out.println(activity.start().toMinutes() + " " + activity.exercise());
      }
      String json = CompositionFormat.write(answer);
      System.out.println("read back: " + CompositionFormat.read("a.json", json).equals(answer));
    }

    Brief hurried = brief(20);
    if (composer.compose(hurried, Budget.USUAL) instanceof NothingFits nothing) {
      Clash clash = Explainer.of(catalog).whyNothingFits(hurried, nothing, Budget.USUAL);
      System.out.println("way out: " + clash.waysOut().get(0).loosenings().get(0).text());
    }
  }

  private static Brief brief(int minutes) {
    return Brief.builder("Ideas", "generate-ideas", Mode.REMOTE, 7, Duration.ofMinutes(minutes))
        .build();
  }
}
