package org.arcwright.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Exercise;
import org.arcwright.format.BriefFormat;
import org.arcwright.format.CatalogFormat;
import org.arcwright.format.Schema;

/** A file with a comment above each field that says what it is for. */
final class Commented {
  private static final int WIDTH = 96;
  private static final Pattern KEY = Pattern.compile("([a-z-]+):.*");

  private static final Commented EXERCISE =
      new Commented(
          Schema.EXERCISE,
          "One exercise of a catalog.",
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
                  "$defs.mode.properties.how")),
          "moves: true",
          "needs: [question]",
          "materials: [A sheet for each person]",
          "cautions: [Walking is not good for everybody; offer a seat of equal worth.]",
          "opt-out: You may pass, or just listen; nobody will ask why.",
          "tips: [Best before a break.]",
          "retired: true");

  private static final Commented BRIEF =
      new Commented(
          Schema.BRIEF,
          "One workshop's brief.",
          Map.of(
              "people",
              List.of(
                  "properties.people.anyOf.1.properties.acquainted",
                  "properties.people.anyOf.1.properties.openness"),
              "rhythm",
              List.of(
                  "properties.rhythm.properties.stretch", "properties.rhythm.properties.break")),
          "start: 2026-12-03 09:30",
          "zone: Europe/Vienna",
          "zones: [Asia/Kolkata, Europe/Lisbon]",
          "tools: [call, breakouts, board]",
          "meals: [{at: 1h30m..2h, minutes: 45}]",
          "given: [shared-picture]",
          "wishes: {include: [dot-voting], leave-out: [premortem], used-last-time: [weather-report]}",
          "own-items: [{id: guest-talk, title: A guest's view, minutes: 20, at: 45m}]");

  private final Schema schema;
  private final String head;
  private final Map<String, List<String>> inner;
  private final Map<String, String> optional = new LinkedHashMap<>();

  /**
   * @param inner places in the schema of what stands within a field
   * @param samples what may be left out, and how it looks
   */
  private Commented(
      Schema schema, String head, Map<String, List<String>> inner, String... samples) {
    this.schema = schema;
    this.head = head;
    this.inner = inner;
    for (String sample : samples) {
      optional.put(sample.substring(0, sample.indexOf(':')), sample);
    }
  }

  static String write(Exercise exercise) {
    return EXERCISE.write(CatalogFormat.write(exercise));
  }

  static String write(Brief brief) {
    return BRIEF.write(BriefFormat.write(brief));
  }

  private String write(String yaml) {
    List<String> lines = new ArrayList<>();
    lines.addAll(comment(head + " Lines such as this one are for you; they change nothing."));
    List<String> keys = new ArrayList<>();
    for (String line : yaml.split("\n", -1)) {
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
    optional.forEach(
        (key, sample) -> {
          if (!keys.contains(key)) {
            lines.add("#");
            lines.addAll(comment(explanation(key)));
            lines.add("# " + sample);
          }
        });
    return String.join("\n", lines) + "\n";
  }

  /** What the field is for, and what the fields within it are for. */
  private List<String> explanations(String key) {
    List<String> texts = new ArrayList<>(List.of(explanation(key)));
    for (String place : inner.getOrDefault(key, List.of())) {
      String name = place.substring(place.lastIndexOf('.') + 1);
      texts.add("- " + name + ": " + schema.explanation(place).orElse(""));
    }
    return texts;
  }

  private String explanation(String key) {
    return schema.explanation("properties." + key).orElse("");
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
