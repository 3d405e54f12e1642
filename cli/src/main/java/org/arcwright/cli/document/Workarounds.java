package org.arcwright.cli.document;

import java.util.Map;

/** How to go on where a tool fails and no other exercise stands in. Common practice, no source. */
final class Workarounds {
  private static final Map<String, String> BY_TOOL =
      Map.ofEntries(
          Map.entry(
              "call",
              "Open another call and write its link to everybody, with the time at which you go on;"
                  + " or ring people together by phone. Before the day, send all a second link and a"
                  + " number to dial."),
          Map.entry(
              "breakouts",
              "Stay together. Let everybody think alone with the task in writing, then hear two or"
                  + " three voices for each question; or let pairs ring each other up and come back"
                  + " at a set time."),
          Map.entry(
              "board",
              "Show one person's screen. Everybody writes into the chat or says it, and the producer"
                  + " writes it down and moves it about where all can see."),
          Map.entry(
              "poll",
              "Vote by hands or by a number in the chat, all at once on \"now\", and count."),
          Map.entry(
              "chat",
              "Go round by voice in the order of the list, and let one person write it down."),
          Map.entry(
              "document", "Let one person write and show it; all others dictate, one at a time."),
          Map.entry(
              "screen", "Send round what you would have shown, and say at which page you are."),
          Map.entry("music", "Do without it. Say the time that is left instead."),
          Map.entry("paper", "Let people write on phones or laptops and read out."),
          Map.entry("notes", "Tear sheets of paper into four, and lay them out on a table."),
          Map.entry("wall", "Lay everything out on tables or on a row of chairs."),
          Map.entry("flipchart", "Write on sheets on a table, with people standing round it."),
          Map.entry("floor", "Stay seated. Show where you would stand with one to five fingers."),
          Map.entry("tables", "Put chairs into circles, with something firm to write on in each."),
          Map.entry("dots", "Draw the dots with a pen."),
          Map.entry("cards", "Fold sheets of paper in half, twice."),
          Map.entry("projector", "Pass prints round, or send it to people's phones."));

  private static final String ANY =
      "Say aloud what it would have shown, collect by voice, and let one person write it down.";

  private Workarounds() {}

  /** For a tool by its id; what helps with any tool, for one of somebody's own. */
  static String without(String tool) {
    return BY_TOOL.getOrDefault(tool, ANY);
  }
}
