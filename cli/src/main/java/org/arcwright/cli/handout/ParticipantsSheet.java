package org.arcwright.cli.handout;

import java.time.ZoneId;
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
import org.arcwright.cli.page.Block.Table;
import org.arcwright.cli.page.Block.Text;
import org.arcwright.cli.page.Sheet;
import org.arcwright.cli.words.Hours;
import org.arcwright.cli.words.Language;

/** What those who take part read: when is what, in their own time, without words of the trade. */
public final class ParticipantsSheet {
  private ParticipantsSheet() {}

  /**
   * The sheet.
   *
   * @param zones further zones in which people are; times stand in each
   */
  public static Sheet of(Workshop workshop, List<ZoneId> zones) {
    Agenda agenda = workshop.agenda();
    Language language = workshop.language();
    List<Hours> all = new ArrayList<>(List.of(workshop.hours()));
    if (agenda.start().isPresent()) {
      zones.forEach(zone -> all.add(workshop.hours().in(zone)));
    }
    List<String> heads = new ArrayList<>();
    if (all.size() == 1) {
      heads.add(language.say("agenda.time"));
    } else {
      all.forEach(hours -> heads.add(head(hours, workshop.hours(), language)));
    }
    heads.add(language.say("agenda.what"));
    List<List<Cell>> rows = new ArrayList<>();
    for (AgendaItem item : agenda.items()) {
      List<Cell> row = new ArrayList<>();
      all.forEach(hours -> row.add(Cell.of(hours.span(item.start(), item.end()))));
      if (item instanceof Activity activity) {
        String purpose = workshop.exercise(activity).map(Exercise::purpose).orElse("");
        row.add(Cell.of(activity.title(), purpose));
      } else if (item instanceof Pause pause) {
        row.add(Cell.of(language.capital(language.pause(pause.meal()))));
      }
      rows.add(row);
    }
    if (!agenda.buffer().isZero()) {
      List<Cell> row = new ArrayList<>();
      all.forEach(
          hours -> row.add(Cell.of(hours.span(agenda.end(), agenda.end().plus(agenda.buffer())))));
      row.add(Cell.of(language.say("people.free")));
      rows.add(row);
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Text(language.say("people.lead")));
    all.forEach(hours -> change(hours, agenda, language).ifPresent(blocks::add));
    blocks.add(new Table(language.say("agenda.table", agenda.title()), heads, rows));
    return new Sheet(agenda.title(), language.say("people.kicker"), workshop.setting(), blocks);
  }

  /** Whoever sees a time left out or told twice is told why. */
  private static Optional<Block> change(Hours hours, Agenda agenda, Language language) {
    return hours
        .change(agenda.cap())
        .map(
            change ->
                new Text(
                    language.say(
                        change.isGap() ? "people.clocks.forward" : "people.clocks.back",
                        city(hours),
                        language.clock(change.getDateTimeBefore().toLocalTime()),
                        language.time(change.getDuration().abs()))));
  }

  /** The city, and the day if it is another one there. */
  private static String head(Hours hours, Hours own, Language language) {
    return hours.day().equals(own.day())
        ? city(hours)
        : hours
            .date()
            .map(day -> language.say("people.elsewhere", city(hours), day))
            .orElseGet(() -> city(hours));
  }

  /** Such as {@code Buenos Aires}. */
  private static String city(Hours hours) {
    String zone = hours.zone().orElse("");
    return zone.substring(zone.lastIndexOf('/') + 1).replace('_', ' ');
  }
}
