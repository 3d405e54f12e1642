package org.arcwright.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.arcwright.catalog.Per;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Node;
import org.arcwright.format.tree.Node.Mapping;
import org.arcwright.format.tree.Node.Member;
import org.arcwright.format.tree.Node.Scalar;
import org.arcwright.format.tree.Node.ScalarType;
import org.arcwright.format.tree.Node.Sequence;

/**
 * A step in one line: {@code [4-5-6 min x 3 rounds, nobody, small-groups] Everybody writes.}
 * Instead of rounds stands {@code per person} or {@code per group}, or nothing. Dashes and times
 * signs that a spreadsheet prettified are read, too.
 */
final class StepLine {
  private static final Pattern LINE =
      Pattern.compile(
          "\\[\\s*(?<time>[^,\\]]*?)\\s*min\\s*(?<count>[^,\\]]*?)\\s*,\\s*(?<who>[^,\\]]*?)\\s*"
              + ",\\s*(?<format>[^,\\]]*?)\\s*]\\s*(?<text>.*)",
          Pattern.DOTALL);
  private static final Pattern ROUNDS = Pattern.compile("[x\u00D7]\\s*(\\S+)(\\s*rounds?)?");
  private static final Pattern EACH = Pattern.compile("per\\s+(\\S+)");

  private static final String SAMPLE =
      "[1-2-3 min per person, each, plenary] Everybody says a word.";

  private StepLine() {}

  static String write(Node step) {
    String minutes =
        ((Sequence) step.at("minutes"))
            .nodes().stream().map(StepLine::text).collect(Collectors.joining("-"));
    return "["
        + minutes
        + " min"
        + count((Mapping) step)
        + ", "
        + text(step.at("who"))
        + ", "
        + text(step.at("format"))
        + "] "
        + text(step.at("text"));
  }

  private static String count(Mapping step) {
    Optional<Member> rounds = step.find("rounds");
    if (rounds.isPresent()) {
      return " x " + text(rounds.get().value()) + " rounds";
    }
    return step.find("per").map(per -> " per " + text(per.value())).orElse("");
  }

  private static String text(Node node) {
    return ((Scalar) node).text();
  }

  /** The step; another one in place of a line that is a fault. */
  static Node read(String text, int line, int column, Faults faults) {
    Matcher parts = LINE.matcher(text);
    String count = parts.matches() ? parts.group("count") : "";
    Matcher rounds = ROUNDS.matcher(count);
    Matcher each = EACH.matcher(count);
    if (!parts.matches() || !(count.isEmpty() || rounds.matches() || each.matches())) {
      faults.add(line, column, "steps", text, "a line each, such as " + SAMPLE);
      return read(SAMPLE, line, column, faults);
    }
    List<Member> step = new ArrayList<>();
    for (String key : List.of("text", "who", "format")) {
      step.add(member(key, new Scalar(line, column, ScalarType.TEXT, parts.group(key))));
    }
    List<Node> minutes = new ArrayList<>();
    for (String part : parts.group("time").split("\\s*[-\u2013]\\s*", -1)) {
      minutes.add(CellForm.scalar(part, line, column));
    }
    step.add(member("minutes", new Sequence(line, column, minutes)));
    if (rounds.matches()) {
      step.add(member("per", new Scalar(line, column, ScalarType.TEXT, Per.ROUND.word())));
      step.add(member("rounds", CellForm.scalar(rounds.group(1), line, column)));
    } else if (each.matches()) {
      step.add(member("per", new Scalar(line, column, ScalarType.TEXT, each.group(1))));
    }
    return new Mapping(line, column, step);
  }

  private static Member member(String key, Node value) {
    return new Member(value.line(), value.column(), key, value);
  }
}
