package org.arcwright.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Node;
import org.arcwright.format.tree.Node.Scalar;
import org.arcwright.format.tree.Node.ScalarType;
import org.arcwright.format.tree.Node.Sequence;

/** How a table's cells write a value. */
enum CellForm {
  /** A text as it is. */
  TEXT {
    @Override
    String write(Node node) {
      return ((Scalar) node).text();
    }

    @Override
    Node read(String cell, int line, int column, Faults faults) {
      String text = cell.replace("\r\n", "\n");
      return new Scalar(line, column, text.isBlank() ? ScalarType.NOTHING : ScalarType.TEXT, text);
    }
  },
  /** A whole number. */
  WHOLE {
    @Override
    String write(Node node) {
      return ((Scalar) node).text();
    }

    @Override
    Node read(String cell, int line, int column, Faults faults) {
      return scalar(cell.strip(), line, column);
    }
  },
  /** Yes or no. */
  FLAG {
    @Override
    String write(Node node) {
      return ((Scalar) node).text().equals("true") ? "yes" : "no";
    }

    @Override
    Node read(String cell, int line, int column, Faults faults) {
      String word = cell.strip().toLowerCase(Locale.ROOT);
      ScalarType type = ScalarType.FLAG;
      switch (word) {
        case "yes", "true" -> word = "true";
        case "no", "false", "" -> word = "false";
        default -> {
          faults.add(line, column, "moves", cell, "yes or no is right");
          type = ScalarType.NOTHING;
        }
      }
      return new Scalar(line, column, type, word);
    }
  },
  /** Ids, with commas between them. */
  IDS {
    @Override
    String write(Node node) {
      return texts(node).stream().collect(Collectors.joining(", "));
    }

    @Override
    Node read(String cell, int line, int column, Faults faults) {
      return list(List.of(cell.split("[,;\r\n]", -1)), line, column);
    }
  },
  /** Texts, a line each. */
  LINES {
    @Override
    String write(Node node) {
      return texts(node).stream().map(CellForm::inOneLine).collect(Collectors.joining("\n"));
    }

    @Override
    Node read(String cell, int line, int column, Faults faults) {
      return list(lines(cell).stream().map(CellForm::outOfOneLine).toList(), line, column);
    }
  },
  /** Steps, a line each. */
  STEPS {
    @Override
    String write(Node node) {
      return ((Sequence) node)
          .nodes().stream()
              .map(step -> StepLine.write(step))
              .map(CellForm::inOneLine)
              .collect(Collectors.joining("\n"));
    }

    @Override
    Node read(String cell, int line, int column, Faults faults) {
      List<Node> steps = new ArrayList<>();
      for (String step : lines(cell)) {
        steps.add(StepLine.read(outOfOneLine(step), line, column, faults));
      }
      return new Sequence(line, column, steps);
    }
  };

  private static final Pattern ESCAPED = Pattern.compile("\\\\([nr\\\\])");

  /** The cell for a value. */
  abstract String write(Node node);

  /** The value of a cell; a list of nothing for an empty one, where lists stand. */
  abstract Node read(String cell, int line, int column, Faults faults);

  /** A number if it is one, nothing if it is empty, else a text. */
  static Scalar scalar(String text, int line, int column) {
    ScalarType type =
        text.isEmpty()
            ? ScalarType.NOTHING
            : text.matches("-?\\d+")
                ? ScalarType.WHOLE
                : text.matches("-?\\d+\\.\\d+") ? ScalarType.DECIMAL : ScalarType.TEXT;
    return new Scalar(line, column, type, text);
  }

  private static Node list(List<String> texts, int line, int column) {
    List<Node> nodes = new ArrayList<>();
    for (String text : texts) {
      if (!text.isBlank()) {
        nodes.add(new Scalar(line, column, ScalarType.TEXT, text.strip()));
      }
    }
    return new Sequence(line, column, nodes);
  }

  private static List<String> texts(Node node) {
    return ((Sequence) node).nodes().stream().map(child -> ((Scalar) child).text()).toList();
  }

  private static List<String> lines(String cell) {
    List<String> lines = new ArrayList<>();
    for (String line : cell.split("\r\n|[\r\n]", -1)) {
      if (!line.isBlank()) {
        lines.add(line.strip());
      }
    }
    return lines;
  }

  private static String inOneLine(String text) {
    return text.replace("\\", "\\\\").replace("\n", "\\n").replace("\r", "\\r");
  }

  private static String outOfOneLine(String line) {
    return ESCAPED
        .matcher(line)
        .replaceAll(
            escaped ->
                switch (escaped.group(1)) {
                  case "n" -> "\n";
                  case "r" -> "\r";
                  default -> "\\\\";
                });
  }
}
