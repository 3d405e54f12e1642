package org.arcwright.cli.handout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.catalog.Exercise;
import org.arcwright.catalog.Format;
import org.arcwright.catalog.Kind;
import org.arcwright.catalog.Split;
import org.arcwright.cli.page.Block;
import org.arcwright.cli.page.Block.Cell;
import org.arcwright.cli.page.Block.Picture;
import org.arcwright.cli.page.Block.Table;
import org.arcwright.cli.page.Block.Text;
import org.arcwright.cli.page.Sheet;
import org.arcwright.cli.picture.BoardPicture;
import org.arcwright.cli.words.Language;

/**
 * What is written and moved on: its areas in the order in which they are used, what each holds for
 * this many people, until when it stays covered, and what is carried over from one to another.
 */
public final class BoardPlan {
  private static final String PAGES = "document";

  /** What has areas, the roomiest first: an exercise's area is on the first that it needs. */
  private static final List<String> SURFACES =
      List.of("board", "wall", "flipchart", PAGES, "notes", "paper");

  /** What is handed out rather than covered. */
  private static final Set<String> HANDED = Set.of("notes", "paper");

  /** What has sheets or pages rather than fields side by side. */
  private static final Map<String, String> FORMS =
      Map.of("flipchart", "sheet", "notes", "sheet", "paper", "sheet", PAGES, "page");

  /** Where what people write alone stays theirs; elsewhere it goes into one field for all. */
  private static final Set<Kind> OF_ONES_OWN =
      Set.of(Kind.ICEBREAKER, Kind.DIVERGENT, Kind.REFLECTION);

  private static final String FIELD = "field";

  /** While ideas are sought: common practice, no source. */
  private static final int NOTES_EACH = 5;

  private final Workshop workshop;
  private final Language language;
  private final List<Area> areas = new ArrayList<>();
  private final List<BoardPicture.Arrow> arrows = new ArrayList<>();

  /**
   * An area.
   *
   * @param number of its exercise in the agenda
   * @param surface id of the tool on which it is
   * @param takes what it takes over, in words
   * @param holds what is built in it, in words
   * @param ready what its exercise wants to be ready
   */
  private record Area(
      Activity activity,
      int number,
      String surface,
      List<String> takes,
      List<String> holds,
      List<String> ready) {}

  private BoardPlan(Workshop workshop) {
    this.workshop = workshop;
    this.language = workshop.language();
    fill();
  }

  /** The sheet; none if nothing is written anywhere. */
  public static Optional<Sheet> of(Workshop workshop) {
    BoardPlan plan = new BoardPlan(workshop);
    return plan.areas.isEmpty() ? Optional.empty() : Optional.of(plan.sheet());
  }

  private Sheet sheet() {
    List<BoardPicture.Area> drawn = new ArrayList<>();
    for (Area area : areas) {
      drawn.add(new BoardPicture.Area(title(area), cover(area), covered(area), shown(area)));
    }
    String svg =
        BoardPicture.draw(
            "board-",
            language.say("board.title", workshop.agenda().title()),
            String.join(" ", said()),
            drawn,
            arrows);
    List<Block> blocks =
        List.of(
            new Text(language.say(workshop.leansOnBoard() ? "board.lead" : "board.lead.other")),
            new Picture(svg, List.of()),
            table());
    return new Sheet(workshop.agenda().title(), workshop.boardPlan(), workshop.facts(), blocks);
  }

  /** Where the latest exercise that leaves a work product has its area. */
  private void fill() {
    Map<String, Integer> areaOf = new HashMap<>();
    Map<String, String> titleOf = new HashMap<>();
    int number = 0;
    for (Activity activity : workshop.agenda().activities()) {
      number++;
      Optional<Exercise> known = workshop.exercise(activity);
      if (known.isEmpty()) {
        continue;
      }
      Exercise exercise = known.get();
      Set<String> tools = exercise.in(workshop.agenda().mode()).tools();
      Optional<String> surface = SURFACES.stream().filter(tools::contains).findFirst();
      int index = areas.size();
      if (surface.isPresent()) {
        List<String> takes = new ArrayList<>();
        for (String need : exercise.needs()) {
          takes.add(takes(need, index, areaOf, titleOf));
        }
        areas.add(
            new Area(
                activity,
                number,
                surface.get(),
                takes,
                holds(exercise, FORMS.getOrDefault(surface.get(), FIELD)),
                exercise.notes().materials()));
      }
      for (String product : exercise.yields()) {
        titleOf.put(product, activity.title());
        areaOf.remove(product);
        if (surface.isPresent()) {
          areaOf.put(product, index);
        }
      }
    }
  }

  private String takes(
      String need, int index, Map<String, Integer> areaOf, Map<String, String> titleOf) {
    String product = workshop.product(need);
    Integer from = areaOf.get(need);
    if (from != null) {
      arrows.add(new BoardPicture.Arrow(from, index, product));
      return language.say("board.from", product, areas.get(from).number());
    }
    String title = titleOf.get(need);
    return title == null
        ? language.say("board.brought", product)
        : language.say("board.from-elsewhere", product, title);
  }

  private List<String> holds(Exercise exercise, String form) {
    int people = workshop.agenda().people();
    List<String> holds = new ArrayList<>();
    boolean alone =
        OF_ONES_OWN.contains(exercise.kind())
            && exercise.steps().stream().anyMatch(step -> step.format() == Format.SOLO);
    Optional<Split> groups = workshop.groups(exercise);
    if (groups.isPresent()) {
      holds.add(language.say("board.groups." + form, workshop.split(groups.get())));
    } else if (alone) {
      holds.add(language.say("board.each." + form, people));
    } else {
      holds.add(language.say("board.all." + form, people));
    }
    if (exercise.kind() == Kind.DIVERGENT && form.equals(FIELD)) {
      holds.add(language.say("board.notes", NOTES_EACH * people));
    }
    return holds;
  }

  private String title(Area area) {
    return language.say("agenda.numbered", area.number(), area.activity().title());
  }

  private String place(Area area) {
    return language.say("board.on", workshop.tool(area.surface()));
  }

  private boolean covered(Area area) {
    return !area.activity().start().isZero()
        && !HANDED.contains(area.surface())
        && !area.surface().equals(PAGES);
  }

  private String cover(Area area) {
    String at = workshop.hours().at(area.activity().start());
    if (HANDED.contains(area.surface())) {
      return language.say("board.handed", at);
    }
    if (area.surface().equals(PAGES)) {
      return language.say("board.shown", at);
    }
    return covered(area) ? language.say("board.covered", at) : language.say("board.open");
  }

  /** Two lines for the picture: where it is, then what is built in it. */
  private List<String> shown(Area area) {
    return List.of(place(area), String.join("; ", area.holds()));
  }

  private List<String> said() {
    List<String> sentences = new ArrayList<>();
    sentences.add(language.say("board.reading"));
    for (Area area : areas) {
      sentences.add(language.say("board.says", title(area), place(area), cover(area)));
    }
    for (BoardPicture.Arrow arrow : arrows) {
      sentences.add(
          language.say(
              "board.arrow",
              arrow.what(),
              areas.get(arrow.from()).number(),
              areas.get(arrow.to()).number()));
    }
    return sentences;
  }

  private Table table() {
    List<List<Cell>> rows = new ArrayList<>();
    for (Area area : areas) {
      rows.add(
          List.of(
              Cell.of(title(area), place(area)),
              Cell.of(String.join("; ", area.holds()), language.sentences(area.ready())),
              Cell.of(language.list(area.takes())),
              Cell.of(cover(area))));
    }
    return new Table(
        workshop.boardPlan(),
        List.of(
            language.say("board.area"),
            language.say("board.holds"),
            language.say("board.takes"),
            language.say("board.cover")),
        rows);
  }
}
