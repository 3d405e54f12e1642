package org.arcwright.cli.handout;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.catalog.Exercise;
import org.arcwright.cli.page.Block;
import org.arcwright.cli.page.Block.Cell;
import org.arcwright.cli.page.Block.Part;
import org.arcwright.cli.page.Block.Point;
import org.arcwright.cli.page.Block.Points;
import org.arcwright.cli.page.Block.Room;
import org.arcwright.cli.page.Block.Steps;
import org.arcwright.cli.page.Block.Table;
import org.arcwright.cli.page.Block.Text;
import org.arcwright.cli.page.Block.Words;
import org.arcwright.cli.page.Sheet;
import org.arcwright.cli.words.Language;
import org.arcwright.standin.StandIn;
import org.arcwright.standin.StandIns;
import org.arcwright.standin.Swap;
import org.arcwright.standin.ToolLoss;
import org.arcwright.standin.Turnout;

/**
 * What to do when a tool fails, when fewer people come, or when somebody is not there; with each
 * stand-in in full, so that it can be led from paper.
 */
public final class StandInSheet {
  private final Workshop workshop;
  private final StandIns standIns;
  private final Language language;

  private StandInSheet(Workshop workshop, StandIns standIns) {
    this.workshop = workshop;
    this.standIns = standIns;
    this.language = workshop.language();
  }

  /** The sheet. */
  public static Sheet of(Workshop workshop, StandIns standIns) {
    return new StandInSheet(workshop, standIns).sheet();
  }

  private Sheet sheet() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Text(language.say("standins.lead")));
    for (ToolLoss loss : standIns.tools()) {
      String title = language.say("standins.fails", workshop.tool(loss.tool()));
      Block what =
          loss.covered() == 0
              ? new Room(language.say("standins.second-way"), 2)
              : swaps(title, loss.swaps());
      blocks.add(Part.of("tool-" + loss.tool(), title, what));
    }
    if (!standIns.leaningOnNothing().isEmpty()) {
      List<String> safe =
          standIns.leaningOnNothing().stream().map(place -> quoted(activity(place))).toList();
      blocks.add(new Text(language.say("standins.safe", language.list(safe))));
    }
    String fewer = language.say("standins.fewer");
    blocks.add(Part.of("fewer", fewer, fewer(fewer)));
    String alone = language.say("standins.alone");
    Block lead =
        standIns.alone().isEmpty()
            ? new Text(language.say("standins.alone.fine"))
            : swaps(alone, standIns.alone());
    blocks.add(Part.of("alone", alone, lead, new Text(language.say("standins.alone.how"))));
    if (!standIns.decisions().isEmpty()) {
      List<String> decisions =
          standIns.decisions().stream().map(place -> quoted(activity(place))).toList();
      blocks.add(
          Part.of(
              "sponsor",
              language.say("standins.sponsor"),
              new Text(language.say("standins.sponsor.how", language.list(decisions)))));
    }
    List<Block> pages = new ArrayList<>();
    Spares.named(standIns).forEach(standIn -> page(standIn).ifPresent(pages::add));
    if (!pages.isEmpty()) {
      blocks.add(new Part("in-full", language.say("standins.in-full"), false, pages));
    }
    return new Sheet(
        workshop.agenda().title(), language.say("standins.kicker"), workshop.facts(), blocks);
  }

  private Activity activity(int place) {
    return (Activity) workshop.agenda().items().get(place);
  }

  private String quoted(Activity activity) {
    return language.say("quoted", activity.title());
  }

  private Table swaps(String caption, List<Swap> swaps) {
    List<List<Cell>> rows = new ArrayList<>();
    for (Swap swap : swaps) {
      rows.add(row(activity(swap.place()), "", swap.standIn()));
    }
    return table(caption, rows);
  }

  private Table table(String caption, List<List<Cell>> rows) {
    return new Table(
        caption,
        List.of(
            language.say("standins.instead"),
            language.say("standins.do"),
            language.say("standins.ready")),
        rows);
  }

  private List<Cell> row(Activity activity, String when, Optional<StandIn> standIn) {
    String at = workshop.hours().span(activity.start(), activity.end());
    Cell instead = Cell.of(activity.title(), when.isEmpty() ? at : at + ", " + when);
    if (standIn.isEmpty()) {
      return List.of(instead, Cell.of(language.say("standins.none")), Cell.of(""));
    }
    StandIn found = standIn.get();
    List<String> tools = found.tools().stream().map(workshop::tool).toList();
    return List.of(
        instead,
        Cell.of(found.title(), length(found)),
        Cell.of(language.capital(language.list(tools))));
  }

  private String length(StandIn found) {
    String length = language.time(found.length());
    Duration change = found.change();
    if (change.isZero()) {
      return language.say("standins.same", length);
    }
    return change.isNegative()
        ? language.say("standins.shorter", length, language.time(change.negated()))
        : language.say("standins.longer", length, language.time(change));
  }

  private Block fewer(String caption) {
    List<List<Cell>> rows = new ArrayList<>();
    for (Turnout turnout : standIns.fewer()) {
      if (!turnout.always()) {
        List<String> counts =
            turnout.impossible().stream().map(count -> language.say("number", count)).toList();
        String when = language.say("standins.fewer.when", language.any(counts));
        rows.add(row(activity(turnout.place()), when, turnout.standIn()));
      }
    }
    int least = standIns.fewer().stream().mapToInt(Turnout::least).min().orElse(1);
    return rows.isEmpty()
        ? new Text(language.say("standins.fewer.fine", least))
        : table(caption, rows);
  }

  /** A stand-in as it is led with so many people in the time that it has. */
  private Optional<Part> page(StandIn standIn) {
    return workshop.catalog().exercise(standIn.exercise()).map(known -> page(standIn, known));
  }

  private Part page(StandIn standIn, Exercise exercise) {
    List<Point> steps =
        RunSheet.steps(workshop, exercise, standIn.length()).stream()
            .map(step -> Point.of(step.label(), step.text()))
            .toList();
    List<Point> notes = new ArrayList<>();
    workshop
        .groups(exercise)
        .ifPresent(split -> notes.add(Point.of(language.say("run.groups"), workshop.split(split))));
    if (!standIn.materials().isEmpty()) {
      notes.add(Point.of(language.say("run.ready"), language.sentences(standIn.materials())));
    }
    notes.add(
        Point.of(language.say("run.here"), exercise.in(workshop.agenda().mode()).adaptation()));
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Text(exercise.purpose()));
    blocks.add(new Points(notes));
    blocks.addAll(Care.notes(workshop, exercise));
    blocks.add(new Words(List.of(exercise.opening())));
    blocks.add(new Steps(steps));
    String title = language.say("standins.page", standIn.title(), language.time(standIn.length()));
    return new Part("stand-in-" + standIn.exercise(), title, false, blocks);
  }
}
