package org.arcwright.cli.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.brief.Group.Acquaintance;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Mode;
import org.arcwright.catalog.Split;
import org.arcwright.cli.page.Block;
import org.arcwright.cli.page.Block.Cell;
import org.arcwright.cli.page.Block.Part;
import org.arcwright.cli.page.Block.Table;
import org.arcwright.cli.page.Block.Text;
import org.arcwright.cli.page.Sheet;
import org.arcwright.cli.words.Language;
import org.arcwright.standin.StandIns;

/** What has to be there, with quantities worked out for this many people. */
public final class MaterialsList {
  /** What is written with a pen of one's own. */
  private static final Set<String> WRITTEN_ON =
      Set.of("paper", "notes", "wall", "flipchart", "cards");

  /** For each person and exercise: common practice, no source. */
  private static final int SHEETS_EACH = 2;

  private static final int NOTES_EACH = 8;
  private static final int NOTES_IN_A_BLOCK = 100;
  private static final int CARDS_EACH = 2;

  /** The usual most in dot voting, as the catalog tells it. */
  private static final int DOTS_EACH = 5;

  private static final int FLIPCHART_SHEETS = 3;
  private static final int WALL_METRES = 2;

  private final Workshop workshop;
  private final StandIns standIns;
  private final Language language;
  private final int people;
  private final boolean room;

  private MaterialsList(Workshop workshop, StandIns standIns) {
    this.workshop = workshop;
    this.standIns = standIns;
    this.language = workshop.language();
    this.people = workshop.agenda().people();
    this.room = workshop.agenda().mode() != Mode.REMOTE;
  }

  /** The sheet. */
  public static Sheet of(Workshop workshop, StandIns standIns) {
    MaterialsList list = new MaterialsList(workshop, standIns);
    Language language = workshop.language();
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Text(language.say("materials.lead", list.people)));
    blocks.add(list.things());
    List<List<Cell>> ready = list.ready();
    if (!ready.isEmpty()) {
      blocks.add(
          Part.of(
              "ready",
              language.say("materials.ready"),
              new Table(
                  language.say("materials.ready"),
                  List.of(language.say("materials.what"), language.say("materials.for")),
                  ready)));
    }
    List<List<Cell>> spares = list.spares();
    if (!spares.isEmpty()) {
      blocks.add(
          Part.of(
              "spares",
              language.say("materials.spares"),
              new Table(
                  language.say("materials.spares"),
                  List.of(
                      language.say("materials.what"),
                      language.say("materials.many"),
                      language.say("materials.for")),
                  spares)));
    }
    return new Sheet(
        workshop.agenda().title(), language.say("materials.kicker"), workshop.facts(), blocks);
  }

  private Table things() {
    List<List<Cell>> rows = new ArrayList<>();
    for (String id : workshop.tools()) {
      int count = count(id, workshop.using(id).size(), workshop.groupsAtOnce(id));
      rows.add(row(id, count, titles(id)));
    }
    if (room && workshop.tools().stream().anyMatch(WRITTEN_ON::contains)) {
      rows.add(extra("pens", people + Math.max(2, people / 10)));
    }
    if (room && workshop.brief().group().acquaintance() == Acquaintance.STRANGERS) {
      rows.add(extra("names", people + 2));
    }
    if (room) {
      rows.add(extra("agendas", people));
    }
    rows.add(extra("run-sheets", 2));
    return new Table(
        language.say("materials.kicker"),
        List.of(
            language.say("materials.what"),
            language.say("materials.many"),
            language.say("materials.for")),
        rows);
  }

  private List<Cell> row(String tool, int count, String what) {
    String key = "materials.of." + tool;
    return List.of(
        Cell.of(language.capital(workshop.tool(tool))),
        Cell.of(language.say(language.knows(key) ? key : "materials.of.other", count)),
        Cell.of(what));
  }

  /** What no exercise of the agenda needs, but one that stands in does. */
  private List<List<Cell>> spares() {
    List<List<Cell>> rows = new ArrayList<>();
    Spares.tools(workshop, standIns)
        .forEach(
            (tool, users) -> {
              int groups =
                  users.stream()
                      .flatMap(user -> workshop.catalog().exercise(user.exercise()).stream())
                      .flatMap(exercise -> workshop.groups(exercise).stream())
                      .mapToInt(Split::groups)
                      .max()
                      .orElse(0);
              List<String> titles =
                  users.stream().map(user -> language.say("quoted", user.title())).toList();
              rows.add(row(tool, count(tool, users.size(), groups), language.list(titles)));
            });
    return rows;
  }

  private List<Cell> extra(String key, int count) {
    return List.of(
        Cell.of(language.say("materials.extra." + key)),
        Cell.of(language.say("number", count)),
        Cell.of(language.say("materials.extra.for." + key)));
  }

  private int count(String tool, int exercises, int groups) {
    return switch (tool) {
      case "call" -> people + 2;
      case "breakouts", "tables" -> Math.max(1, groups);
      case "paper" -> SHEETS_EACH * people * exercises;
      case "notes" -> (NOTES_EACH * people * exercises + NOTES_IN_A_BLOCK - 1) / NOTES_IN_A_BLOCK;
      case "cards" -> CARDS_EACH * people * exercises;
      case "dots" -> DOTS_EACH * people * exercises;
      case "wall" -> WALL_METRES * exercises;
      case "floor" -> people;
      case "flipchart" -> FLIPCHART_SHEETS * exercises;
      default -> 1;
    };
  }

  private String titles(String tool) {
    List<Activity> using = workshop.using(tool);
    return using.size() > 1 && using.size() == workshop.agenda().activities().size()
        ? language.say("materials.all")
        : language.list(
            using.stream().map(activity -> language.say("quoted", activity.title())).toList());
  }

  /** What the exercises want to be ready, each with its number if it can be worked out. */
  private List<List<Cell>> ready() {
    List<List<Cell>> rows = new ArrayList<>();
    for (Activity activity : workshop.agenda().activities()) {
      Optional<Exercise> exercise = workshop.exercise(activity);
      for (String line : exercise.map(e -> e.notes().materials()).orElse(List.of())) {
        rows.add(
            List.of(
                Cell.of(line, many(line, exercise.get())),
                Cell.of(activity.title(), workshop.hours().at(activity.start()))));
      }
    }
    return rows;
  }

  private String many(String line, Exercise exercise) {
    int groups = workshop.groups(exercise).map(Split::groups).orElse(0);
    return Quantity.in(line)
        .map(
            quantity -> {
              int units =
                  switch (quantity.unit()) {
                    case PERSON -> people;
                    case PAIR -> Split.pairs(people).groups();
                    case GROUP -> groups;
                  };
              if (units == 0) {
                return "";
              }
              String key = "materials.each." + quantity.unit().word();
              return quantity.each() == 0
                  ? language.say(key, units)
                  : language.say("materials.together", quantity.each() * units);
            })
        .orElse("");
  }
}
