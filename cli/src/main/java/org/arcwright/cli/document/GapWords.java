package org.arcwright.cli.document;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.arcwright.catalog.Catalog;
import org.arcwright.catalog.Tool;
import org.arcwright.gaps.Gaps;
import org.arcwright.gaps.ToolSet;

/** Small phrases about gaps. */
final class GapWords {
  private GapWords() {}

  /** How many briefs have how many agendas. */
  static String summary(Gaps gaps) {
    List<String> parts = new ArrayList<>();
    for (int agendas = 0; agendas < gaps.most(); agendas++) {
      parts.add(Words.grouped(gaps.having(agendas)) + " with " + number(agendas));
    }
    parts.add(Words.grouped(gaps.having(gaps.most())) + " with " + gaps.most() + " or more");
    String open =
        gaps.open() == 0
            ? ""
            : " In " + gaps.open() + " the search was not done; there may be more.";
    return Words.grouped(gaps.grid().size())
        + (gaps.grid().size() == 1 ? " brief: " : " briefs: ")
        + Words.list(parts)
        + ". Agendas are different if no two share more than half of their exercises."
        + open;
  }

  private static String number(int agendas) {
    return agendas == 0 ? "no agenda" : agendas == 1 ? "one" : String.valueOf(agendas);
  }

  /** Where people are and with what: {@code remote with call only}. */
  static String place(ToolSet set, Catalog catalog) {
    if (set.tools().isEmpty()) {
      return Words.mode(set.mode()) + " with the usual tools";
    }
    Map<String, Tool> known = catalog.tools();
    return set.tools().stream()
        .sorted()
        .map(id -> known.containsKey(id) ? known.get(id).title() : id)
        .collect(Collectors.joining(", ", Words.mode(set.mode()) + " with ", " only"));
  }

  /** {@code 20, 25 and 30 people}. */
  static String people(List<Integer> people) {
    List<String> numbers = people.stream().distinct().sorted().map(String::valueOf).toList();
    return Words.list(numbers) + (numbers.equals(List.of("1")) ? " person" : " people");
  }

  /** {@code 60, 90 and 120 min}, ascending. */
  static String lengths(List<Duration> lengths) {
    return Words.list(lengths.stream().map(length -> String.valueOf(length.toMinutes())).toList())
        + " min";
  }
}
