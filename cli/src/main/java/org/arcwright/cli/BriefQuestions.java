package org.arcwright.cli;

import java.time.Duration;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.arcwright.brief.Brief;
import org.arcwright.brief.Defaults;
import org.arcwright.brief.Group.Acquaintance;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Tool;
import org.arcwright.cli.Interview.Wrong;
import org.arcwright.format.BriefFormat;
import org.arcwright.format.BriefReading;
import org.arcwright.format.Problem;
import org.arcwright.format.Schema;

/**
 * Asks for a brief. Each answer is put into the file that the answers so far make, and read as any
 * brief is, so that no rule stands here again.
 */
final class BriefQuestions {
  private static final Duration LONG = Duration.ofHours(5);
  private static final String OPEN = "open";

  private final Interview interview;
  private final Catalog catalog;

  /** The file so far: what must stand there holds something sound until it is asked for. */
  private final Map<String, String> lines = new LinkedHashMap<>();

  BriefQuestions(Interview interview, Catalog catalog) {
    this.interview = interview;
    this.catalog = catalog;
    lines.put("title", "New");
    lines.put("goal", catalog.goals().keySet().iterator().next());
    lines.put("people", "8");
    lines.put("mode", "remote");
    lines.put("cap", "3h");
  }

  Brief ask() {
    put("title", interview.ask("Title", help("title"), "", a -> sound("title", quoted(a))));
    put("goal", goal());
    people();
    Mode mode =
        interview.word("Where are they?", help("mode"), Mode.class, Optional.of(Mode.REMOTE));
    put("mode", mode.word());
    String length = "Time at hand, breaks and all included";
    put("cap", interview.ask(length, help("cap"), "3h", a -> sound("cap", quoted(a))));
    start();
    if (brief().cap().compareTo(LONG) >= 0) {
      meal();
    }
    tools(mode);
    wishes();
    ownItems();
    return brief();
  }

  private String goal() {
    List<Goal> goals = List.copyOf(catalog.goals().values());
    interview.say("What is it for?");
    for (int i = 0; i < goals.size(); i++) {
      interview.say(String.format("  %2d  %s", i + 1, goals.get(i).title()));
    }
    String purposes =
        goals.stream()
            .map(goal -> goal.title() + ": " + goal.purpose())
            .collect(Collectors.joining("\n  "));
    return interview.ask(
        "Goal, by its number",
        purposes,
        "",
        answer -> {
          if (!answer.matches("\\d{1,3}")) {
            return sound("goal", quoted(answer));
          }
          int number = Integer.parseInt(answer);
          if (number < 1 || number > goals.size()) {
            throw new Wrong(answer + ": there are 1 to " + goals.size());
          }
          return goals.get(number - 1).id();
        });
  }

  private void people() {
    String count = interview.ask("How many people?", help("people"), "8", a -> count(a));
    String inner = "properties.people.anyOf.1.properties.";
    Acquaintance acquainted =
        interview.word(
            "How well do they know each other?",
            explained(inner + "acquainted"),
            Acquaintance.class,
            Optional.of(Defaults.ACQUAINTANCE));
    int openness =
        interview.whole(
            "How personal may it get, 0 not at all to 3 deeply?",
            explained(inner + "openness"),
            Defaults.openness(acquainted),
            n -> Checks.range("openness", n, 0, 3));
    String people = "{count: %s, acquainted: %s, openness: %d}";
    put("people", people.formatted(count, acquainted.word(), openness));
  }

  private String count(String answer) {
    sound("people", scalar(answer));
    return answer;
  }

  private void start() {
    String start =
        interview.ask(
            "When does it start, such as 2026-12-03 09:30?",
            help("start"),
            OPEN,
            answer ->
                answer.equals(OPEN)
                    ? answer
                    : sound("start", quoted(answer), Map.of("zone", "Etc/UTC")));
    if (start.equals(OPEN)) {
      return;
    }
    String zone =
        interview.ask(
            "In which time zone?",
            help("zone"),
            ZoneId.systemDefault().getId(),
            answer -> sound("zone", quoted(answer), Map.of("start", start)));
    put("start", start);
    put("zone", zone);
  }

  private void meal() {
    String at =
        interview.ask(
            "A meal: when may it start, such as 12:00..12:45 or 3h..3h30m?",
            explained("$defs.meal.properties.at"),
            Interview.NONE,
            answer -> {
              if (!answer.equals(Interview.NONE)) {
                sound("meals", "[{at: %s, minutes: 45}]".formatted(quoted(answer)));
              }
              return answer;
            });
    if (!at.equals(Interview.NONE)) {
      String meals =
          interview.ask(
              "How many minutes for it?",
              explained("$defs.meal.properties.minutes"),
              "60",
              a -> sound("meals", "[{at: %s, minutes: %s}]".formatted(quoted(at), scalar(a))));
      put("meals", meals);
    }
  }

  private void tools(Mode mode) {
    String usual =
        catalog.tools().values().stream()
            .filter(tool -> tool.modes().contains(mode))
            .map(Tool::id)
            .collect(Collectors.joining(", "));
    String tools =
        interview.ask(
            "Tools at hand, with commas between",
            help("tools") + " There are " + String.join(", ", catalog.tools().keySet()) + ".",
            usual,
            answer -> answer.equals(usual) ? usual : sound("tools", list(answer)));
    if (!tools.equals(usual)) {
      put("tools", tools);
    }
  }

  private void wishes() {
    List<String> wishes = new ArrayList<>();
    wish("Exercises that must be in, with commas between", "include", wishes);
    wish("Exercises to leave out", "leave-out", wishes);
    wish("Exercises this group had last time", "used-last-time", wishes);
    if (!wishes.isEmpty()) {
      put("wishes", "{" + String.join(", ", wishes) + "}");
    }
  }

  private void wish(String question, String key, List<String> wishes) {
    String wish =
        interview.ask(
            question,
            explained("properties.wishes.properties." + key)
                + " Name them by id; arcwright catalog list shows all.",
            Interview.NONE,
            answer -> {
              if (answer.equals(Interview.NONE)) {
                return "";
              }
              List<String> all = new ArrayList<>(wishes);
              all.add(key + ": " + list(answer));
              sound("wishes", "{" + String.join(", ", all) + "}");
              return all.get(all.size() - 1);
            });
    if (!wish.isEmpty()) {
      wishes.add(wish);
    }
  }

  private void ownItems() {
    List<String> items = new ArrayList<>();
    String question = "Something of your own, such as a guest's talk?";
    while (interview.yes(question, help("own-items"), false)) {
      String title = interview.ask("  Its title", "", "", a -> Checks.text("title", a, 120));
      String id = Ids.of(title).isEmpty() ? "own-item-" + (items.size() + 1) : Ids.of(title);
      String start = "{id: %s, title: %s, ".formatted(id, quoted(title));
      String timed =
          interview.ask(
              "  Minutes",
              "",
              "20",
              a -> start + item(items, start, "minutes: %s".formatted(scalar(a))));
      String item =
          interview.ask(
              "  When, such as 10:30 or 60m after the start?",
              "",
              "any time",
              a ->
                  a.equals("any time")
                      ? timed
                      : timed + item(items, timed, ", at: %s".formatted(quoted(a))));
      items.add(item + "}");
      put("own-items", "[" + String.join(", ", items) + "]");
      question = "Another?";
    }
  }

  /** The end of an item, if the file is sound with it. */
  private String item(List<String> before, String start, String end) {
    List<String> all = new ArrayList<>(before);
    all.add(start + end + "}");
    sound("own-items", "[" + String.join(", ", all) + "]");
    return end;
  }

  private void put(String key, String value) {
    lines.put(key, value);
  }

  private Brief brief() {
    return BriefFormat.check("brief.yaml", text(Map.of()), catalog).brief().orElseThrow();
  }

  private String sound(String key, String value) {
    return sound(key, value, Map.of());
  }

  /**
   * The value, if the file is sound with it.
   *
   * @throws Wrong with what would be right
   */
  private String sound(String key, String value, Map<String, String> beside) {
    Map<String, String> changed = new LinkedHashMap<>(beside);
    changed.put(key, value);
    BriefReading reading = BriefFormat.check("brief.yaml", text(changed), catalog);
    if (reading.problems().isEmpty()) {
      return value;
    }
    Problem problem = reading.problems().get(0);
    throw new Wrong((problem.value().isEmpty() ? key : problem.value()) + ": " + problem.remedy());
  }

  private String text(Map<String, String> changed) {
    Map<String, String> all = new LinkedHashMap<>(lines);
    all.putAll(changed);
    StringBuilder text = new StringBuilder();
    all.forEach((key, value) -> text.append(key).append(": ").append(value).append('\n'));
    return text.toString();
  }

  private static String list(String answer) {
    List<String> words = List.of(answer.strip().split("\\s*,\\s*|\\s+", -1));
    return words.stream().map(BriefQuestions::quoted).collect(Collectors.joining(", ", "[", "]"));
  }

  /** A whole number as it is, anything else as a text. */
  private static String scalar(String answer) {
    return answer.matches("\\d{1,9}") ? answer : quoted(answer);
  }

  private static String quoted(String text) {
    return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
  }

  private static String help(String key) {
    return explained("properties." + key);
  }

  private static String explained(String place) {
    return Schema.BRIEF.explanation(place).orElse("");
  }
}
