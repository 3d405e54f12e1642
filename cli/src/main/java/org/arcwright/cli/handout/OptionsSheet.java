package org.arcwright.cli.handout;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.arcwright.agenda.Agenda;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.brief.Brief;
import org.arcwright.catalog.Catalog;
import org.arcwright.cli.page.Block;
import org.arcwright.cli.page.Block.Cell;
import org.arcwright.cli.page.Block.Part;
import org.arcwright.cli.page.Block.Picture;
import org.arcwright.cli.page.Block.Point;
import org.arcwright.cli.page.Block.Points;
import org.arcwright.cli.page.Block.Table;
import org.arcwright.cli.page.Block.Text;
import org.arcwright.cli.page.Sheet;
import org.arcwright.cli.picture.ArcPicture;
import org.arcwright.cli.picture.ArcPicture.Size;
import org.arcwright.cli.words.Language;
import org.arcwright.compose.Options.Found;
import org.arcwright.compose.Options.Option;
import org.arcwright.compose.Profile;

/**
 * Options side by side: pictures on one time scale, their figures, what each has alone, and each in
 * full at one click.
 */
public final class OptionsSheet {
  private final Found found;
  private final List<Workshop> workshops;
  private final Language language;

  private OptionsSheet(Brief brief, Catalog catalog, Found found, Language language) {
    this.found = found;
    this.language = language;
    this.workshops =
        found.options().stream()
            .map(option -> new Workshop(option.composed().agenda(), brief, catalog, language))
            .toList();
  }

  /** The sheet. */
  public static Sheet of(Brief brief, Catalog catalog, Found found, Language language) {
    return new OptionsSheet(brief, catalog, found, language).sheet();
  }

  private Sheet sheet() {
    List<Block> blocks = new ArrayList<>();
    for (int i = 0; i < workshops.size(); i++) {
      blocks.add(inSmall(i));
    }
    if (workshops.size() > 1) {
      blocks.add(
          Part.of(
              "side-by-side",
              language.say("options.table"),
              new Text(language.say("options.differ")),
              table()));
    }
    for (int i = 0; i < workshops.size(); i++) {
      blocks.add(
          new Part(
              "option-" + (i + 1) + "-whole",
              language.say("options.whole", i + 1),
              true,
              AgendaSheet.body(workshops.get(i))));
    }
    Workshop first = workshops.get(0);
    return new Sheet(first.agenda().title(), language.say("options.kicker"), first.facts(), blocks);
  }

  private Part inSmall(int number) {
    Agenda agenda = workshops.get(number).agenda();
    String id = "option-" + (number + 1);
    return Part.of(
        id,
        language.say("options.one", number + 1),
        new Picture(
            ArcPicture.draw(
                agenda, language, id + "-", number == 0 ? Size.FIRST : Size.SMALL, agenda.cap()),
            titles(agenda)),
        new Text(only(number)),
        new Points(
            List.of(new Point(language.say("options.jump", number + 1), "", "#" + id + "-whole"))));
  }

  private List<String> titles(Agenda agenda) {
    List<String> titles = new ArrayList<>();
    for (Activity activity : agenda.activities()) {
      titles.add(language.say("agenda.numbered", titles.size() + 1, activity.title()));
    }
    return titles;
  }

  /** The exercises that no other option has. */
  private String only(int number) {
    Set<String> elsewhere = new HashSet<>();
    for (int i = 0; i < workshops.size(); i++) {
      if (i != number) {
        elsewhere.addAll(ids(workshops.get(i).agenda()));
      }
    }
    List<String> only =
        workshops.get(number).agenda().activities().stream()
            .filter(activity -> !elsewhere.contains(activity.exercise()))
            .map(activity -> language.say("quoted", activity.title()))
            .toList();
    return only.isEmpty()
        ? language.say("options.same")
        : language.say("options.only", language.list(only));
  }

  private interface Figure {
    String of(Option option);
  }

  private Table table() {
    List<String> heads = new ArrayList<>();
    heads.add(language.say("options.figure"));
    for (int i = 1; i <= workshops.size(); i++) {
      heads.add(language.say("options.one", i));
    }
    List<List<Cell>> rows = new ArrayList<>();
    rows.add(row("options.rank", this::rank));
    rows.add(row("options.shared", this::shared));
    rows.add(row("options.work", option -> language.time(option.profile().work())));
    rows.add(row("options.breaks", option -> breaks(option.profile())));
    rows.add(
        row("options.energy", option -> language.say("percent", option.profile().energyFit())));
    rows.add(row("options.formats", option -> formats(option.profile())));
    rows.add(row("options.talking", option -> language.time(option.profile().talking())));
    rows.add(row("options.alone", option -> language.time(option.profile().alone())));
    rows.add(
        row(
            "options.openness",
            option -> language.say("options.openness.of", option.profile().openness())));
    rows.add(row("options.tools", option -> tools(option.profile())));
    return new Table(language.say("options.table"), heads, rows);
  }

  private List<Cell> row(String key, Figure figure) {
    List<Cell> row = new ArrayList<>();
    row.add(Cell.of(language.say(key)));
    String first = figure.of(found.options().get(0));
    for (Option option : found.options()) {
      String text = figure.of(option);
      row.add(new Cell(text, "", !text.equals(first)));
    }
    return row;
  }

  private String rank(Option option) {
    long best = found.best().proof().cost();
    long behind = option.composed().proof().cost() - best;
    if (option.equals(found.options().get(0))) {
      return language.say("options.rank.best");
    }
    if (behind == 0 || best == 0) {
      return language.say("options.rank.equal");
    }
    return 100 * behind < best
        ? language.say("options.rank.hardly")
        : language.say("options.rank.behind", 100 * behind / best);
  }

  private String shared(Option option) {
    Set<String> first = ids(workshops.get(0).agenda());
    Set<String> both = new HashSet<>(ids(option.composed().agenda()));
    both.retainAll(first);
    return option.equals(found.options().get(0))
        ? language.say("options.shared.all")
        : language.say("options.shared.of", both.size(), first.size());
  }

  private static Set<String> ids(Agenda agenda) {
    return agenda.activities().stream().map(Activity::exercise).collect(Collectors.toSet());
  }

  private String breaks(Profile profile) {
    return profile.breaks() == 0
        ? language.say("options.breaks.none")
        : language.say("options.breaks.some", profile.breaks(), language.time(profile.resting()));
  }

  private String formats(Profile profile) {
    List<String> parts = new ArrayList<>();
    profile
        .formats()
        .forEach(
            (format, count) ->
                parts.add(
                    language.say("options.format.count", count, language.name("format", format))));
    return language.list(parts);
  }

  private String tools(Profile profile) {
    return language.list(profile.tools().stream().map(workshops.get(0)::tool).toList());
  }
}
