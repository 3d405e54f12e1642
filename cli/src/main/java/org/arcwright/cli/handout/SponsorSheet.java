package org.arcwright.cli.handout;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.brief.Brief;
import org.arcwright.brief.Defaults;
import org.arcwright.brief.Oddities;
import org.arcwright.brief.Oddity;
import org.arcwright.brief.Rhythm;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Goal;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Tool;
import org.arcwright.cli.page.Block;
import org.arcwright.cli.page.Block.Cell;
import org.arcwright.cli.page.Block.Note;
import org.arcwright.cli.page.Block.Part;
import org.arcwright.cli.page.Block.Point;
import org.arcwright.cli.page.Block.Room;
import org.arcwright.cli.page.Block.Steps;
import org.arcwright.cli.page.Block.Table;
import org.arcwright.cli.page.Block.Text;
import org.arcwright.cli.page.Sheet;
import org.arcwright.cli.words.Language;
import org.arcwright.cli.words.Said;

/**
 * What to ask whoever asked for the workshop: what it is for, who decides what, what would make it
 * a failure, and whatever the brief leaves open, each with the brief's line that the answer
 * changes.
 */
public final class SponsorSheet {
  private static final int LINES = 2;

  private static final Pattern ISO_DAY = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");

  /** A working day of this length wants a meal, so a brief without one is asked about it. */
  private static final int MEAL_HOURS = 4;

  private final Workshop workshop;
  private final Language language;
  private final Brief brief;

  private SponsorSheet(Workshop workshop) {
    this.workshop = workshop;
    this.language = workshop.language();
    this.brief = workshop.brief();
  }

  /** The sheet. */
  public static Sheet of(Workshop workshop) {
    SponsorSheet sponsor = new SponsorSheet(workshop);
    Language language = workshop.language();
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Text(language.say("sponsor.lead")));
    blocks.add(sponsor.part("aim", sponsor.aim()));
    blocks.add(sponsor.part("failure", sponsor.failure()));
    blocks.add(sponsor.part("decide", List.of(sponsor.decisions())));
    blocks.add(sponsor.part("people", sponsor.people()));
    List<Block> gaps = sponsor.gaps();
    if (!gaps.isEmpty()) {
      gaps.add(0, new Text(language.say("sponsor.gaps.lead")));
      blocks.add(sponsor.part("gaps", gaps));
    }
    List<Block> odd = sponsor.oddities();
    if (!odd.isEmpty()) {
      blocks.add(sponsor.part("odd", odd));
    }
    blocks.add(sponsor.part("practical", sponsor.practical()));
    blocks.add(sponsor.part("after", List.of(sponsor.after())));
    return new Sheet(
        workshop.brief().title(), language.say("sponsor.kicker"), workshop.facts(), blocks);
  }

  private Part part(String id, List<Block> blocks) {
    return new Part(id, language.say("sponsor.part." + id), false, blocks);
  }

  /** A question with the brief's line that its answer changes. */
  private Room ask(String line, String key, Object... values) {
    return new Room(
        language.say(key, values), line.isEmpty() ? "" : language.say("sponsor.line", line), LINES);
  }

  private List<Block> aim() {
    List<Block> asked = new ArrayList<>();
    Set<String> products = new LinkedHashSet<>();
    workshop
        .goal()
        .ifPresent(
            goal -> {
              String title = language.said(Said.GOAL, goal.title());
              asked.add(
                  ask("goal", "sponsor.aim.goal", title, language.said(Said.GOAL, goal.purpose())));
              products.addAll(goal.given());
              products.addAll(goal.yields());
              asked.add(ask("goal", "sponsor.aim.left", products(goal.yields())));
            });
    asked.add(ask("", "sponsor.aim.good"));
    for (String product : products) {
      String key = "sponsor.product." + product;
      if (language.knows(key)) {
        asked.add(new Room(language.say(key), LINES));
      }
    }
    return asked;
  }

  private String products(Collection<String> ids) {
    return language.list(ids.stream().map(workshop::product).toList());
  }

  private List<Block> failure() {
    return List.of(
        ask("", "sponsor.failure.must-not"),
        ask("wishes: leave-out", "sponsor.failure.before"),
        ask("cap", "sponsor.failure.enough"));
  }

  private Table decisions() {
    List<List<Cell>> rows = new ArrayList<>();
    for (Activity activity : workshop.agenda().activities()) {
      if (activity.kind().filter(kind -> kind == Kind.DECISION).isPresent()) {
        String at = workshop.hours().at(activity.start());
        rows.add(row(language.say("sponsor.decide.at", at, activity.title())));
      }
    }
    if (rows.isEmpty()) {
      rows.add(row(language.say("sponsor.decide.none")));
    }
    for (String key : List.of("binding", "course", "told")) {
      rows.add(row(language.say("sponsor.decide." + key)));
    }
    return new Table(
        language.say("sponsor.part.decide"),
        List.of(
            language.say("sponsor.decide.what"),
            language.say("sponsor.decide.who"),
            language.say("sponsor.decide.how")),
        rows);
  }

  private static List<Cell> row(String what) {
    return List.of(Cell.of(what), Cell.empty(), Cell.empty());
  }

  private List<Block> people() {
    List<Block> asked = new ArrayList<>();
    asked.add(ask("people: count", "sponsor.people.who", brief.group().count()));
    asked.add(ask("people: openness", "sponsor.people.power"));
    asked.add(ask("", "sponsor.people.access"));
    asked.add(ask("", "sponsor.people.hurt"));
    List<String> cautions = new ArrayList<>();
    workshop.goal().map(Goal::cautions).ifPresent(cautions::addAll);
    cautions.add(language.say("sponsor.people.care"));
    asked.add(
        new Note(language.say("label", language.say("care.title")), String.join(" ", cautions)));
    return asked;
  }

  /** A question for each thing that stands in the brief as it would if the brief were silent. */
  private List<Block> gaps() {
    List<Block> asked = new ArrayList<>();
    if (brief.group().acquaintance() == Defaults.ACQUAINTANCE) {
      asked.add(ask("people: acquainted", "sponsor.gap.acquainted", brief.group().count()));
    }
    if (brief.group().openness() == Defaults.openness(brief.group().acquaintance())) {
      asked.add(ask("people: openness", "sponsor.gap.openness", brief.group().openness()));
    }
    if (brief.start().isEmpty()) {
      asked.add(ask("start, zone", "sponsor.gap.start"));
    }
    if (brief.zones().isEmpty() && brief.mode() != Mode.IN_PERSON) {
      asked.add(ask("zones", "sponsor.gap.zones"));
    }
    if (brief.tools().isEmpty()) {
      asked.add(ask("tools", "sponsor.gap.tools", language.list(usualTools())));
    }
    if (brief.meals().isEmpty() && brief.cap().toHours() >= MEAL_HOURS) {
      asked.add(ask("meal", "sponsor.gap.meal"));
    }
    Rhythm rhythm = brief.rhythm();
    if (rhythm.equals(Defaults.rhythm(brief.mode()))) {
      String longest = language.time(rhythm.longest());
      asked.add(ask("rhythm", "sponsor.gap.rhythm", longest, language.time(rhythm.pause())));
    }
    if (brief.bufferPercent() == Defaults.bufferPercent(brief.mode())) {
      asked.add(
          ask("buffer", "sponsor.gap.buffer", language.say("percent", brief.bufferPercent())));
    }
    Set<String> given = workshop.goal().map(Goal::given).orElse(Set.of());
    if (brief.given().isEmpty()) {
      asked.add(
          given.isEmpty()
              ? ask("given", "sponsor.gap.given.nothing")
              : ask("given", "sponsor.gap.given", products(given)));
    }
    if (brief.ownItems().isEmpty()) {
      asked.add(ask("own-items", "sponsor.gap.own-items"));
    }
    if (brief.wishes().usedLastTime().isEmpty()) {
      asked.add(ask("wishes: used-last-time", "sponsor.gap.used"));
    }
    Wishes wishes = brief.wishes();
    if (wishes.include().isEmpty() && wishes.leaveOut().isEmpty() && wishes.pins().isEmpty()) {
      asked.add(ask("wishes: include, leave-out, pin", "sponsor.gap.wishes"));
    }
    return asked;
  }

  private List<String> usualTools() {
    return workshop.catalog().tools().values().stream()
        .filter(tool -> tool.modes().contains(brief.mode()))
        .map(Tool::title)
        .map(title -> language.said(Said.TOOL, title))
        .toList();
  }

  private List<Block> oddities() {
    List<Block> asked = new ArrayList<>();
    for (Oddity oddity : Oddities.of(brief, workshop.catalog())) {
      String value = oddity.value();
      Optional<LocalDate> day =
          ISO_DAY.matcher(value).matches() ? Optional.of(LocalDate.parse(value)) : Optional.empty();
      String why = language.say("odd." + oddity.name(), oddity.details().toArray());
      String said = language.say("sponsor.odd", day.map(language::day).orElse(value), why);
      asked.add(
          new Room(language.capital(said), language.say("sponsor.line", oddity.field()), LINES));
    }
    return asked;
  }

  private List<Block> practical() {
    return List.of(
        ask("", "sponsor.practical.invite"),
        ask("", "sponsor.practical.producer"),
        ask("", "sponsor.practical.report"),
        ask("", "sponsor.practical.stop"));
  }

  private Steps after() {
    return new Steps(
        List.of(
            Point.of(language.say("sponsor.after.write")),
            Point.of(language.say("sponsor.after.compose")),
            Point.of(language.say("sponsor.after.send"))));
  }
}
