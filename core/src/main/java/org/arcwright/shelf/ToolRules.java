package org.arcwright.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Step;
import org.arcwright.catalog.Suitability;
import org.arcwright.catalog.Tool;
import org.arcwright.format.CatalogFile;
import org.arcwright.format.Problem;

/**
 * Whether each mode names the tools that it cannot do without, and none that is of no use there.
 */
public final class ToolRules {
  /** Tools on which many meet, but no few by themselves. */
  private static final Set<String> FOR_ALL =
      Set.of("call", "board", "poll", "document", "screen", "music");

  /** Words that tell of a tool on the screen. */
  private record Telling(String tool, Pattern words) {
    static Telling of(String tool, String words) {
      return new Telling(
          tool, Pattern.compile("\\b(?:" + words + ")\\b", Pattern.CASE_INSENSITIVE));
    }
  }

  /** Common practice, no source; made by reading the built-in shelf. */
  private static final List<Telling> TELLING =
      List.of(
          Telling.of("breakouts", "breakouts?(?: rooms?)?|small rooms?"),
          Telling.of("board", "(?:shared|digital|online|virtual) (?:white)?board|whiteboard"),
          Telling.of("poll", "polls?"),
          Telling.of("chat", "chat"),
          Telling.of("document", "shared (?:document|page|sheet)"));

  /** What may be done with a tool, or is done without it, demands none. */
  private static final Pattern NO_DEMAND =
      Pattern.compile(
          "\\b(?:if|where|when|who|whoever|no|not|without|instead of|in place of|rather than)\\b",
          Pattern.CASE_INSENSITIVE);

  private final CatalogFile file;
  private final Exercise exercise;
  private final Map<String, Tool> known;
  private final List<Problem> found = new ArrayList<>();

  private ToolRules(CatalogFile file, Exercise exercise, Map<String, Tool> known) {
    this.file = file;
    this.exercise = exercise;
    this.known = known;
  }

  /** Whether pairs or small groups who are far apart have no tool to meet with. */
  public static boolean lacksRooms(List<Step> steps, Set<String> tools) {
    return FOR_ALL.containsAll(tools)
        && steps.stream()
            .map(Step::format)
            .anyMatch(format -> format == Format.PAIRS || format == Format.SMALL_GROUPS);
  }

  /** What is wrong with the tools of the exercise in the file. */
  static List<Problem> check(CatalogFile file, Exercise exercise, Map<String, Tool> known) {
    ToolRules rules = new ToolRules(file, exercise, known);
    for (Map.Entry<Mode, Suitability> entry : exercise.modes().entrySet()) {
      String path = "modes." + entry.getKey().word();
      if (entry.getValue().fit() > 0 && file.isSound(path)) {
        rules.check(entry.getKey(), entry.getValue(), path);
      }
    }
    return rules.found;
  }

  private void check(Mode mode, Suitability here, String path) {
    if (here.tools().isEmpty() && mode != Mode.IN_PERSON) {
      add(path + ".tools", "none", "people far apart need at least a call; name what they meet in");
      return;
    }
    usual(mode, here, path);
    if (mode != Mode.IN_PERSON) {
      untold(here, path);
    }
    if (mode == Mode.REMOTE
        && file.isSound("steps")
        && lacksRooms(exercise.steps(), here.tools())) {
      add(
          path + ".tools",
          String.join(", ", here.tools()),
          "pairs and small groups far apart need rooms of their own; name breakouts, or chat if"
              + " they write to each other");
    }
  }

  private void usual(Mode mode, Suitability here, String path) {
    int i = 0;
    for (String id : here.tools()) {
      Tool tool = known.get(id);
      if (tool != null && !tool.modes().contains(mode)) {
        add(
            path + ".tools[" + i + "]",
            id,
            "\""
                + tool.title()
                + "\" is usual "
                + String.join(" or ", tool.modes().stream().sorted().map(Mode::word).toList())
                + ", not "
                + mode.word()
                + "; name what takes its place");
      }
      i++;
    }
  }

  private void untold(Suitability here, String path) {
    for (Telling telling : TELLING) {
      String tool = telling.tool();
      if (!here.tools().contains(tool) && known.containsKey(tool)) {
        demanded(telling.words(), here.adaptation())
            .map(words -> untold(path, words, tool))
            .ifPresent(found::add);
      }
    }
  }

  private Problem untold(String path, String words, String tool) {
    return file.problem(
        path + ".how",
        "how",
        words,
        "tools does not name " + tool + "; add it there, or say \"where there is\" one");
  }

  /** The first such words in a sentence that makes no condition before them. */
  private static Optional<String> demanded(Pattern telling, String text) {
    for (String sentence : text.split("(?<=[.;:!?])\\s+", -1)) {
      Matcher matcher = telling.matcher(sentence);
      if (matcher.find() && !NO_DEMAND.matcher(sentence).find()) {
        return Optional.of(matcher.group());
      }
    }
    return Optional.empty();
  }

  private void add(String path, String value, String remedy) {
    found.add(file.problem(path, "tools", value, remedy));
  }
}
