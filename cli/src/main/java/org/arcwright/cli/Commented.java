package org.arcwright.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.arcwright.catalog.Exercise;
import org.arcwright.format.CatalogFormat;
import org.arcwright.format.Schema;

/** An exercise's file with a comment above each field that says what it is for. */
final class Commented {
  private static final int WIDTH = 96;
  private static final Pattern KEY = Pattern.compile("([a-z-]+):.*");

  /** Places in the schema of what stands within a field. */
  private static final Map<String, List<String>> INNER =
      Map.of(
          "steps",
          List.of(
              "$defs.step.properties.who",
              "$defs.step.properties.format",
              "$defs.step.properties.minutes",
              "$defs.step.properties.per"),
          "modes",
          List.of(
              "$defs.mode.properties.fit",
              "$defs.mode.properties.tools",
              "$defs.mode.properties.how"));

  /** What may be left out, and how it looks. */
  private static final Map<String, String> OPTIONAL = new LinkedHashMap<>();

  static {
    OPTIONAL.put("moves", "true");
    OPTIONAL.put("needs", "[question]");
    OPTIONAL.put("materials", "[A sheet for each person]");
    OPTIONAL.put("cautions", "[Walking is not good for everybody; offer a seat of equal worth.]");
    OPTIONAL.put("opt-out", "You may pass, or just listen; nobody will ask why.");
    OPTIONAL.put("tips", "[Best before a break.]");
    OPTIONAL.put("retired", "true");
  }

  private Commented() {}

  static String write(Exercise exercise) {
    List<String> lines = new ArrayList<>();
    lines.addAll(
        comment(
            "One exercise of a catalog. Lines such as this one are for you; they change nothing."));
    List<String> keys = new ArrayList<>();
    for (String line : CatalogFormat.write(exercise).split("\n", -1)) {
      Matcher key = KEY.matcher(line);
      if (key.matches()) {
        keys.add(key.group(1));
        lines.add("");
        explanations(key.group(1)).forEach(text -> lines.addAll(comment(text)));
      }
      lines.add(line);
    }
    while (lines.get(lines.size() - 1).isEmpty()) {
      lines.remove(lines.size() - 1);
    }
    lines.add("");
    lines.addAll(comment("What may stand here, too, without the sign in front:"));
    OPTIONAL.forEach(
        (key, sample) -> {
          if (!keys.contains(key)) {
            lines.add("#");
            lines.addAll(comment(explanation(key)));
            lines.add("# " + key + ": " + sample);
          }
        });
    return String.join("\n", lines) + "\n";
  }

  /** What the field is for, and what the fields within it are for. */
  private static List<String> explanations(String key) {
    List<String> texts = new ArrayList<>(List.of(explanation(key)));
    for (String inner : INNER.getOrDefault(key, List.of())) {
      String name = inner.substring(inner.lastIndexOf('.') + 1);
      texts.add("- " + name + ": " + Schema.EXERCISE.explanation(inner).orElse(""));
    }
    return texts;
  }

  private static String explanation(String key) {
    return Schema.EXERCISE.explanation("properties." + key).orElse("");
  }

  private static List<String> comment(String text) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder("#");
    for (String word : text.split(" ", -1)) {
      if (line.length() + 1 + word.length() > WIDTH) {
        lines.add(line.toString());
        line.setLength(1);
      }
      line.append(' ').append(word);
    }
    lines.add(line.toString());
    return lines;
  }
}
