package org.arcwright.cli.document;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.arcwright.agenda.AgendaItem.Activity;
import org.arcwright.catalog.Format;
import org.arcwright.compose.Options.Found;
import org.arcwright.compose.Options.Option;
import org.arcwright.compose.Profile;

/** What options can be compared by: a row for each figure, a cell for each option. */
final class OptionsTable {
  private final Found found;
  private final List<Answer> answers;

  /**
   * A row.
   *
   * @param label what it is about
   * @param cells one for each option
   */
  record Row(String label, List<String> cells) {}

  OptionsTable(Found found, List<Answer> answers) {
    this.found = found;
    this.answers = answers;
  }

  List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    rows.add(row("points", this::points));
    rows.add(row("shared with 1", this::shared));
    rows.add(row("work", option -> Words.time(option.profile().work())));
    rows.add(row("breaks", option -> breaks(option.profile())));
    rows.add(row("energy fit", option -> option.profile().energyFit() + " %"));
    rows.add(row("exercises", option -> formats(option.profile().formats())));
    rows.add(row("time talking", option -> Words.time(option.profile().talking())));
    rows.add(row("working alone", option -> Words.time(option.profile().alone())));
    rows.add(row("asks openness", option -> ShelfWords.openness(option.profile().openness())));
    rows.add(
        row(
            "tools needed",
            option -> ShelfWords.tools(option.profile().tools(), answers.get(0).catalog())));
    return rows;
  }

  private interface Cell {
    String of(Option option);
  }

  private Row row(String label, Cell cell) {
    return new Row(label, found.options().stream().map(cell::of).toList());
  }

  private String points(Option option) {
    long cost = option.composed().proof().cost();
    long best = found.best().proof().cost();
    String more = best == 0 || cost == best ? "" : " (+" + (100 * (cost - best) / best) + " %)";
    return Words.grouped(cost) + more;
  }

  private String shared(Option option) {
    Set<String> first = ids(found.options().get(0));
    if (option.equals(found.options().get(0))) {
      return "all";
    }
    Set<String> both = new HashSet<>(ids(option));
    both.retainAll(first);
    return both.size() + " of " + first.size();
  }

  private static Set<String> ids(Option option) {
    return option.composed().agenda().activities().stream()
        .map(Activity::exercise)
        .collect(Collectors.toSet());
  }

  private static String breaks(Profile profile) {
    return profile.breaks() == 0 ? "none" : profile.breaks() + ", " + Words.time(profile.resting());
  }

  private static String formats(Map<Format, Integer> formats) {
    List<String> parts = new ArrayList<>();
    formats.forEach(
        (format, count) ->
            parts.add(
                count
                    + (format == Format.PAIRS || format == Format.SMALL_GROUPS ? " in " : " ")
                    + Words.format(format)));
    return String.join(", ", parts);
  }
}
