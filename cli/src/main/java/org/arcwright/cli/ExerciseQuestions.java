package org.arcwright.cli;

import java.util.Arrays;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Nearest;
import org.arcwright.catalog.Per;
import org.arcwright.catalog.SizeRange;
import org.arcwright.catalog.Source;
import org.arcwright.catalog.Step;
import org.arcwright.catalog.Suitability;
import org.arcwright.catalog.Tool;
import org.arcwright.cli.Interview.Wrong;
import org.arcwright.format.Schema;
import org.arcwright.shelf.CarefulWords;
import org.arcwright.shelf.Citations;
import org.arcwright.shelf.GroupSizes;
import org.arcwright.shelf.ToolRules;
import org.arcwright.shelf.WordUse;

/** Asks a trainer for all that an exercise needs. */
final class ExerciseQuestions {
  private static final Map<Kind, Integer> USUAL_ENERGY =
      new EnumMap<>(
          Map.of(
              Kind.ICEBREAKER, 3,
              Kind.DIVERGENT, 3,
              Kind.CONVERGENT, 2,
              Kind.DECISION, 2,
              Kind.REFLECTION, 2));
  private static final Map<Kind, String> USUAL_YIELDS =
      new EnumMap<>(
          Map.of(
              Kind.ICEBREAKER, "arrival",
              Kind.DIVERGENT, "idea-pool, items",
              Kind.CONVERGENT, "shortlist",
              Kind.DECISION, "decision",
              Kind.REFLECTION, "takeaways"));
  private static final int LINE = 400;
  private static final int PERSONAL = 2;

  private final Interview interview;
  private final Catalog catalog;
  private final WordUse words;

  ExerciseQuestions(Interview interview, Catalog catalog) {
    this.interview = interview;
    this.catalog = catalog;
    this.words = new WordUse(catalog.exercises().values(), catalog.goals().values());
  }

  /**
   * Asks everything.
   *
   * @param taken whether a file of that id is there already
   */
  Exercise ask(Predicate<String> taken) {
    String title = interview.ask("Title", help("title"), "", this::title);
    String id = interview.ask("Id", help("id"), Ids.of(title), answer -> id(answer, taken));
    Kind kind = interview.word("Kind", help("kind"), Kind.class, Optional.empty());
    String purpose =
        interview.ask("Purpose", help("purpose"), "", a -> Checks.text("purpose", a, 120));
    SizeRange people =
        interview.ask("People, fewest and most", help("people"), "4-30", this::sizes);
    int energy =
        interview.whole(
            "Energy, 1 calm to 5 lively",
            help("energy"),
            USUAL_ENERGY.getOrDefault(kind, 3),
            n -> Checks.range("energy", n, 1, 5));
    int openness =
        interview.whole(
            "Openness, 0 nothing personal to 3 deeply personal",
            help("openness"),
            0,
            n -> Checks.range("openness", n, 0, 3));
    boolean moves = interview.yes("Does it move bodies?", help("moves"), false);
    Set<String> needs =
        interview.ask(
            "Needs, with commas between",
            help("needs") + known(catalog.products().keySet()),
            Interview.NONE,
            answer -> needs(answer, id));
    Set<String> yields =
        interview.ask(
            "Leaves, with commas between",
            help("yields") + known(catalog.products().keySet()),
            usualYields(kind),
            this::yields);
    String opening =
        interview.ask(
            "What do you say to start it?", help("opening"), "", a -> Checks.text("", a, 2000));
    List<Step> steps = new StepQuestions(interview, opening, people).ask();
    boolean moving = moves || moves(opening, steps);
    Optional<SizeRange> breakout = breakout(steps, people);
    Map<Mode, Suitability> modes = modes(steps);
    Exercise.Care care = care(moving || openness >= PERSONAL, opening, steps);
    List<String> watch = interview.lines("Watch for", help("watch"), true, this::line);
    List<String> materials =
        interview.lines("Prepare, beyond the tools", help("materials"), false, this::line);
    String carryOver =
        interview.ask("What carries over?", help("carry-over"), "", a -> Checks.text("", a, 300));
    return new Exercise(
        id,
        title,
        kind,
        purpose,
        people,
        breakout,
        energy,
        openness,
        moving,
        needs,
        yields,
        opening,
        steps,
        modes,
        care,
        new Exercise.Notes(materials, watch, List.of(), carryOver),
        source());
  }

  private static String help(String key) {
    return Schema.EXERCISE.explanation("properties." + key).orElse("");
  }

  private static String known(Collection<String> words) {
    return " There are " + String.join(", ", words) + ".";
  }

  private String line(String answer) {
    return Checks.text("", answer, LINE);
  }

  private String title(String answer) {
    String title = Checks.text("title", answer, 60);
    for (Exercise other : catalog.exercises().values()) {
      if (other.title().equalsIgnoreCase(title)) {
        throw new Wrong(title + ": " + other.id() + " has it already; choose another");
      }
    }
    return title;
  }

  private String id(String answer, Predicate<String> taken) {
    String id = Checks.id("id", answer);
    if (taken.test(id)) {
      throw new Wrong(id + ": there is such a file already; choose another id");
    }
    if (catalog.exercise(id).isPresent()
        && !interview.yes(
            "  The catalog has an exercise of this id. Shall yours take its place?", "", false)) {
      throw new Wrong("Choose another id then.");
    }
    return id;
  }

  private SizeRange sizes(String answer) {
    String[] parts = answer.split("\\s*(?:-|\u2013|\\.\\.|to|,|\\s)\\s*", -1);
    boolean numbers =
        parts.length <= 2 && Arrays.stream(parts).allMatch(part -> part.matches("\\d{1,4}"));
    if (!numbers) {
      throw new Wrong(answer + ": write the fewest and the most, such as 4-30");
    }
    return new SizeRange(Integer.parseInt(parts[0]), Integer.parseInt(parts[parts.length - 1]));
  }

  private Set<String> needs(String answer, String id) {
    Set<String> needs = products(answer);
    for (String need : needs) {
      if (!words.comesFromElsewhere(need, id)) {
        throw new Wrong(need + ": no exercise leaves it, so yours could never be used");
      }
    }
    return needs;
  }

  private Set<String> yields(String answer) {
    Set<String> yields = products(answer);
    if (yields.isEmpty()) {
      throw new Wrong("Name at least one thing that it leaves behind; ? lists them.");
    }
    for (String yield : yields) {
      if (!words.isWanted(yield)) {
        throw new Wrong(yield + ": no exercise needs it and no goal asks for it; choose another");
      }
    }
    return yields;
  }

  private String usualYields(Kind kind) {
    String usual = USUAL_YIELDS.getOrDefault(kind, "");
    return catalog.products().keySet().containsAll(List.of(usual.split(", ", -1))) ? usual : "";
  }

  private Set<String> products(String answer) {
    return ids(answer, "work product", catalog.products().keySet());
  }

  private static Set<String> ids(String answer, String what, Collection<String> known) {
    if (answer.equals(Interview.NONE)) {
      return Set.of();
    }
    Set<String> ids = new LinkedHashSet<>();
    for (String id : answer.split("[,\\s]+", -1)) {
      if (!known.contains(id)) {
        throw new Wrong(
            id
                + ": there is no such "
                + what
                + Nearest.to(id, known).map(near -> "; perhaps " + near).orElse("; ? lists them"));
      }
      ids.add(id);
    }
    return ids;
  }

  private Optional<SizeRange> breakout(List<Step> steps, SizeRange people) {
    boolean inGroups =
        steps.stream()
            .anyMatch(step -> step.format() == Format.SMALL_GROUPS || step.per() == Per.GROUP);
    if (!inGroups) {
      return Optional.empty();
    }
    int least = Math.min(3, people.min());
    return Optional.of(
        interview.ask(
            "People in a small group",
            help("breakout"),
            least + "-" + Math.max(5, 2 * least - 1),
            answer -> {
              SizeRange group = sizes(answer);
              Optional<String> problem = GroupSizes.problem(people, group);
              if (problem.isPresent()) {
                throw new Wrong(group + ": " + problem.get());
              }
              return group;
            }));
  }

  private Map<Mode, Suitability> modes(List<Step> steps) {
    Map<Mode, Suitability> modes = new EnumMap<>(Mode.class);
    String mode = "$defs.mode.properties.";
    for (Mode where : Mode.values()) {
      boolean last = modes.size() == 2;
      boolean nowhere = modes.values().stream().allMatch(s -> s.fit() == 0);
      int fit =
          interview.whole(
              where.word() + ": how well does it fit, 0 not at all to 3 at its best?",
              Schema.EXERCISE.explanation(mode + "fit").orElse(""),
              2,
              n -> {
                if (last && nowhere && n == 0) {
                  throw new Wrong("0: it must be possible somewhere");
                }
                return Checks.range("fit", n, 0, 3);
              });
      Set<String> tools =
          fit == 0
              ? Set.of()
              : interview.ask(
                  where.word() + ": tools it cannot do without, with commas between",
                  Schema.EXERCISE.explanation(mode + "tools").orElse("") + known(usual(where)),
                  usualTools(where, steps),
                  answer -> tools(answer, where, steps));
      String how =
          interview.ask(
              where.word() + (fit == 0 ? ": why not?" : ": how is it done?"),
              Schema.EXERCISE.explanation(mode + "how").orElse(""),
              "",
              this::line);
      modes.put(where, new Suitability(fit, how, tools));
    }
    return modes;
  }

  private List<String> usual(Mode mode) {
    return catalog.tools().values().stream()
        .filter(tool -> tool.modes().contains(mode))
        .map(Tool::id)
        .toList();
  }

  private String usualTools(Mode mode, List<Step> steps) {
    List<String> known = usual(mode);
    if (mode == Mode.IN_PERSON || !known.contains("call")) {
      return Interview.NONE;
    }
    boolean rooms = ToolRules.lacksRooms(steps, Set.of("call")) && known.contains("breakouts");
    return rooms ? "call, breakouts" : "call";
  }

  private Set<String> tools(String answer, Mode mode, List<Step> steps) {
    Set<String> tools = ids(answer, "tool where people meet " + mode.word(), usual(mode));
    if (tools.isEmpty() && mode != Mode.IN_PERSON) {
      throw new Wrong("People far apart need at least a call; ? lists the tools.");
    }
    if (mode == Mode.REMOTE && ToolRules.lacksRooms(steps, tools)) {
      throw new Wrong(
          answer + ": pairs and small groups far apart need rooms; add breakouts, or chat");
    }
    return tools;
  }

  /** What words betray is asked once more. */
  private boolean moves(String opening, List<Step> steps) {
    return telling(CarefulWords::ofBodies, opening, steps)
        .map(
            telling ->
                interview.yes(
                    "It says \"" + telling + "\". Does it move bodies after all?",
                    help("moves"),
                    true))
        .orElse(false);
  }

  private Exercise.Care care(boolean due, String opening, List<Step> steps) {
    Optional<String> telling =
        telling(CarefulWords::ofBodies, opening, steps)
            .or(() -> telling(CarefulWords::ofDisclosure, opening, steps));
    if (!due && telling.isPresent()) {
      interview.say("\"" + telling.get() + "\" may hurt somebody; name at least one caution.");
    }
    boolean required = due || telling.isPresent();
    List<String> cautions = interview.lines("Cautions", help("cautions"), required, this::line);
    Optional<String> optOut =
        cautions.isEmpty()
            ? Optional.empty()
            : Optional.of(
                interview.ask("How may a person opt out?", help("opt-out"), "", this::line));
    List<String> access =
        interview.lines("So that all can take part", help("access"), true, this::line);
    return new Exercise.Care(cautions, optOut, access);
  }

  /** The first words that ask for care. */
  private static Optional<String> telling(
      Function<String, Optional<String>> careful, String opening, List<Step> steps) {
    return Stream.concat(steps.stream().map(Step::text), Stream.of(opening))
        .flatMap(text -> careful.apply(text).stream())
        .findFirst();
  }

  private Source source() {
    String mark =
        interview.ask(
            "Source (published, common-practice, memory)",
            help("source"),
            "common-practice",
            answer -> {
              if (!List.of("published", "common-practice", "memory").contains(answer)) {
                throw new Wrong(answer + ": published, common-practice or memory is right");
              }
              return answer;
            });
    if (mark.equals("common-practice")) {
      return new Source.CommonPractice();
    }
    boolean published = mark.equals("published");
    String cite =
        interview.ask(
            "Author (year). Title.",
            Schema.EXERCISE.explanation("properties.source.properties.cite").orElse(""),
            "",
            answer -> {
              if (published && !Citations.isDated(answer)) {
                throw new Wrong(answer + ": say who, which year and what");
              }
              return line(answer);
            });
    return published ? new Source.Published(cite) : new Source.Memory(cite);
  }
}
