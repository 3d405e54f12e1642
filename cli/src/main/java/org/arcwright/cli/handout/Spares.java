package org.arcwright.cli.handout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.arcwright.standin.StandIn;
import org.arcwright.standin.StandIns;
import org.arcwright.standin.Swap;
import org.arcwright.standin.ToolLoss;
import org.arcwright.standin.Turnout;

/** What only stand-ins lean on: without it at hand they would not help. */
final class Spares {
  private Spares() {}

  /** Every stand-in once, in the order in which the stand-in sheet names them. */
  static List<StandIn> named(StandIns standIns) {
    Map<String, StandIn> named = new LinkedHashMap<>();
    for (ToolLoss loss : standIns.tools()) {
      loss.swaps().stream().map(Swap::standIn).forEach(standIn -> add(named, standIn));
    }
    standIns.fewer().stream().map(Turnout::standIn).forEach(standIn -> add(named, standIn));
    standIns.alone().stream().map(Swap::standIn).forEach(standIn -> add(named, standIn));
    return List.copyOf(named.values());
  }

  private static void add(Map<String, StandIn> named, Optional<StandIn> standIn) {
    standIn.ifPresent(found -> named.putIfAbsent(found.exercise(), found));
  }

  /** Ids of the tools that the agenda itself does without, each with the stand-ins that use it. */
  static Map<String, List<StandIn>> tools(Workshop workshop, StandIns standIns) {
    Set<String> planned = new LinkedHashSet<>(workshop.tools());
    Map<String, List<StandIn>> tools = new LinkedHashMap<>();
    for (StandIn standIn : named(standIns)) {
      for (String tool : standIn.tools()) {
        if (!planned.contains(tool)) {
          tools.computeIfAbsent(tool, id -> new ArrayList<>()).add(standIn);
        }
      }
    }
    return tools;
  }
}
