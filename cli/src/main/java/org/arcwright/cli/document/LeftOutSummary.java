package org.arcwright.cli.document;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Exercise;
import org.arcwright.compose.LeftOut;

/** Says which exercises the brief leaves out. */
final class LeftOutSummary {
  private LeftOutSummary() {}

  /** One sentence, and all of them below it if that is wanted. */
  static List<String> lines(List<LeftOut> leftOut, Catalog catalog, int width, boolean all) {
    List<String> lines = new ArrayList<>(Wrap.lines(line(leftOut), width));
    if (all) {
      for (LeftOut entry : leftOut) {
        String title =
            catalog.exercise(entry.exercise()).map(Exercise::title).orElse(entry.exercise());
        lines.addAll(
            Wrap.hanging("- ", entry.exercise() + " (" + title + "): " + entry.reason(), width));
      }
    }
    return lines;
  }

  /** A cause begins as one exercise would: several need what one needs. */
  private static String said(String cause, int count) {
    return count > 1 ? cause.replaceFirst("^(need|lean)s ", "$1 ") : cause;
  }

  /** How many are left out for which reasons, most first, in one sentence. */
  private static String line(List<LeftOut> leftOut) {
    if (leftOut.isEmpty()) {
      return "No exercise of the catalog was left out.";
    }
    Map<String, Integer> counts = new TreeMap<>();
    leftOut.forEach(entry -> counts.merge(entry.cause(), 1, Integer::sum));
    List<Map.Entry<String, Integer>> most = new ArrayList<>(counts.entrySet());
    most.sort(Map.Entry.<String, Integer>comparingByValue(Comparator.reverseOrder()));
    List<String> parts = new ArrayList<>();
    most.forEach(
        entry -> parts.add(entry.getValue() + " " + said(entry.getKey(), entry.getValue())));
    return "Left out: "
        + Words.count(leftOut.size(), "exercise", "exercises")
        + " ("
        + String.join(", ", parts)
        + "). --left-out lists them.";
  }
}
