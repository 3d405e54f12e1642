package org.arcwright.cli.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.arcwright.catalog.Catalog;
import org.arcwright.compose.Composition;
import org.arcwright.compose.Composition.NothingFits;
import org.arcwright.compose.Composition.Stopped;
import org.arcwright.compose.explain.Clash;

/** Says why there is no agenda. */
public final class NoAgenda {
  private NoAgenda() {}

  /**
   * Writes it as text.
   *
   * @param composition anything but composed
   * @param clash what clashes, where nothing fits and it was looked for
   * @param width of a line in characters
   * @param allLeftOut whether to list every exercise that the brief leaves out
   */
  public static String write(
      Composition composition,
      Optional<Clash> clash,
      Catalog catalog,
      int width,
      boolean allLeftOut) {
    List<String> lines = new ArrayList<>();
    if (composition instanceof NothingFits nothing) {
      lines.add("No agenda fits this brief.");
      for (String reason : nothing.reasons()) {
        lines.addAll(Wrap.hanging("- ", reason, width));
      }
      clash.ifPresent(found -> lines.addAll(ClashPage.lines(found, width)));
      lines.add("");
      lines.addAll(LeftOutSummary.lines(nothing.leftOut(), catalog, width, allLeftOut));
    } else if (composition instanceof Stopped stopped) {
      String text =
          "The budget ended after "
              + Words.grouped(stopped.labels())
              + " search steps, before an agenda was found or ruled out. Give it more time with"
              + " --budget.";
      lines.addAll(Wrap.lines(text, width));
    }
    return Words.untied(String.join("\n", lines)) + "\n";
  }
}
