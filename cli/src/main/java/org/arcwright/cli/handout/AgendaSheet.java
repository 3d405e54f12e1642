package org.arcwright.cli.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.agenda.AgendaItem.Pause;
import org.arcwright.catalog.Exercise;
import org.arcwright.cli.page.Block;
import org.arcwright.cli.page.Block.Cell;
import org.arcwright.cli.page.Block.Part;
import org.arcwright.cli.page.Block.Picture;
import org.arcwright.cli.page.Block.Point;
import org.arcwright.cli.page.Block.Points;
import org.arcwright.cli.page.Block.Table;
import org.arcwright.cli.page.Sheet;
import org.arcwright.cli.picture.ArcPicture;
import org.arcwright.cli.picture.ArcPicture.Size;
import org.arcwright.cli.words.Hours;
import org.arcwright.cli.words.Language;

/** An agenda to look at and to send: its picture, its rows, what to heed, what to have at hand. */
public final class AgendaSheet {
  private AgendaSheet() {}

  /**
   * The sheet.
   *
   * @param why sentences on why it is built so; may be empty
   */
  public static Sheet of(Workshop workshop, List<String> why) {
    Agenda agenda = workshop.agenda();
    Language language = workshop.language();
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Picture(
            ArcPicture.draw(agenda, language, "arc-", Size.LARGE, agenda.cap()), List.of()));
    blocks.addAll(body(workshop));
    if (!why.isEmpty()) {
      blocks.add(Part.of("why", language.say("agenda.why"), points(why)));
    }
    return new Sheet(agenda.title(), language.say("agenda.kicker"), workshop.facts(), blocks);
  }

  /** All below the picture. */
  static List<Block> body(Workshop workshop) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(table(workshop));
    List<Point> care = Care.points(workshop);
    if (!care.isEmpty()) {
      blocks.add(Part.of("care", workshop.language().say("care.title"), new Points(care)));
    }
    List<String> tools = workshop.tools().stream().map(workshop::tool).toList();
    if (!tools.isEmpty()) {
      blocks.add(
          Part.of(
              "at-hand",
              workshop.language().say("agenda.at-hand"),
              new Block.Text(workshop.language().capital(workshop.language().list(tools)) + ".")));
    }
    return blocks;
  }

  private static Points points(List<String> sentences) {
    return new Points(sentences.stream().map(Point::of).toList());
  }

  private static Table table(Workshop workshop) {
    Agenda agenda = workshop.agenda();
    Language language = workshop.language();
    Hours hours = workshop.hours();
    List<List<Cell>> rows = new ArrayList<>();
    String phase = "";
    int number = 0;
    for (AgendaItem item : agenda.items()) {
      Cell time = Cell.of(hours.span(item.start(), item.end()), language.time(item.length()));
      if (item instanceof Activity activity) {
        if (!activity.phase().equals(phase)) {
          phase = activity.phase();
          rows.add(List.of(Cell.of(workshop.phase(phase))));
        }
        Optional<Exercise> exercise = workshop.exercise(activity);
        String title = language.say("agenda.numbered", ++number, activity.title());
        rows.add(
            List.of(
                time,
                Cell.of(title, exercise.map(Exercise::purpose).orElse("")),
                Cell.of(
                    language.kind(activity.kind()), language.name("format", activity.format()))));
      } else if (item instanceof Pause pause) {
        String word = language.capital(language.pause(pause.meal()));
        rows.add(List.of(time, Cell.of(word), Cell.of("")));
      }
    }
    if (!agenda.buffer().isZero()) {
      rows.add(
          List.of(
              Cell.of(
                  hours.span(agenda.end(), agenda.end().plus(agenda.buffer())),
                  language.time(agenda.buffer())),
              Cell.of(language.say("agenda.free")),
              Cell.of("")));
    }
    return new Table(
        language.say("agenda.table", agenda.title()),
        List.of(
            language.say("agenda.time"), language.say("agenda.what"), language.say("agenda.how")),
        rows);
  }
}
