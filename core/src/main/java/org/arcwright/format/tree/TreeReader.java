package org.arcwright.format.tree;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.arcwright.format.tree.Node.Mapping;
import org.arcwright.format.tree.Node.Member;
import org.arcwright.format.tree.Node.Scalar;
import org.arcwright.format.tree.Node.ScalarType;
import org.arcwright.format.tree.Node.Sequence;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.dataformat.yaml.YAMLFactory;
import tools.jackson.dataformat.yaml.YAMLParser;

/**
 * Reads one document into a tree. Of YAML it takes what people write by hand: no aliases and no
 * tags, so that no small file grows large in memory.
 */
public final class TreeReader {
  /** No form of ours nests deeper than eight. */
  private static final int DEEPEST = 32;

  private final JsonParser parser;
  private final Faults faults;

  private TreeReader(JsonParser parser, Faults faults) {
    this.parser = parser;
    this.faults = faults;
  }

  /**
   * The document, or nothing and a fault. Keys that stand twice are a fault, too, and the first one
   * counts. Linear in the length of the text.
   */
  public static Optional<Node> read(Syntax syntax, String text, Faults faults) {
    try (JsonParser parser = parser(syntax, text)) {
      return new TreeReader(parser, faults).document(text, syntax);
    }
  }

  private static JsonParser parser(Syntax syntax, String text) {
    return switch (syntax) {
      case YAML ->
          new YAMLFactory().createParser(ObjectReadContext.empty(), new WholeCharacters(text));
      case JSON -> new JsonFactory().createParser(ObjectReadContext.empty(), text);
    };
  }

  private Optional<Node> document(String text, Syntax syntax) {
    try {
      JsonToken first = parser.nextToken();
      Node root = first == null ? null : node(first, 0);
      if (root == null || root.isNothing()) {
        faults.add(1, 1, "empty file", "", "write something into it");
        return Optional.empty();
      }
      if (more(syntax)) {
        throw refuse("text after the end", "one file holds one document; strike the rest");
      }
      return Optional.of(root);
    } catch (JacksonException e) {
      TokenStreamLocation place = e.getLocation();
      SyntaxFault.add(e, place == null ? parser.currentLocation() : place, text, syntax, faults);
      return Optional.empty();
    } catch (Refused e) {
      return Optional.empty();
    }
  }

  /** Whether anything follows; what JSON cannot read there is more, too. */
  private boolean more(Syntax syntax) {
    try {
      return parser.nextToken() != null;
    } catch (JacksonException e) {
      if (syntax == Syntax.YAML) {
        throw e;
      }
      return true;
    }
  }

  private Node node(JsonToken token, int depth) {
    TokenStreamLocation place = parser.currentTokenLocation();
    int line = place.getLineNr();
    int column = place.getColumnNr();
    if (depth > DEEPEST) {
      throw refuse("nesting too deep", "at most " + DEEPEST + " levels are read");
    }
    if (parser instanceof YAMLParser yaml) {
      refuseShorthand(yaml);
    }
    return switch (token) {
      case START_OBJECT -> new Mapping(line, column, members(depth));
      case START_ARRAY -> new Sequence(line, column, nodes(depth));
      default -> new Scalar(line, column, type(token), parser.getString());
    };
  }

  private List<Node> nodes(int depth) {
    List<Node> nodes = new ArrayList<>(4);
    for (JsonToken token = next(); token != JsonToken.END_ARRAY; token = next()) {
      nodes.add(node(token, depth + 1));
    }
    return nodes;
  }

  private List<Member> members(int depth) {
    List<Member> members = new ArrayList<>();
    Map<String, Integer> lines = new HashMap<>();
    while (next() != JsonToken.END_OBJECT) {
      TokenStreamLocation place = parser.currentTokenLocation();
      String key = parser.currentName();
      Integer before = lines.putIfAbsent(key, place.getLineNr());
      Node value = node(next(), depth + 1);
      if (before == null) {
        members.add(new Member(place.getLineNr(), place.getColumnNr(), key, value));
      } else {
        faults.add(
            place.getLineNr(),
            place.getColumnNr(),
            "key twice",
            key,
            "it stands in line " + before + " already; keep one of the two");
      }
    }
    return members;
  }

  private JsonToken next() {
    JsonToken token = parser.nextToken();
    if (token == null) {
      throw new IllegalStateException("the parser ended inside a value");
    }
    return token;
  }

  private static ScalarType type(JsonToken token) {
    return switch (token) {
      case VALUE_STRING -> ScalarType.TEXT;
      case VALUE_NUMBER_INT -> ScalarType.WHOLE;
      case VALUE_NUMBER_FLOAT -> ScalarType.DECIMAL;
      case VALUE_TRUE, VALUE_FALSE -> ScalarType.FLAG;
      default -> ScalarType.NOTHING;
    };
  }

  private void refuseShorthand(YAMLParser yaml) {
    if (yaml.isCurrentAlias()) {
      throw refuse("alias", "*" + yaml.getString(), "write the value out here");
    }
    String tag = yaml.getTypeId();
    if (tag != null) {
      String standard = "tag:yaml.org,2002:";
      String shown = tag.startsWith(standard) ? "!!" + tag.substring(standard.length()) : "!" + tag;
      throw refuse("tag", shown, "strike it; the value alone is enough");
    }
  }

  private Refused refuse(String what, String remedy) {
    return refuse(what, "", remedy);
  }

  private Refused refuse(String what, String value, String remedy) {
    TokenStreamLocation place = parser.currentTokenLocation();
    faults.add(place.getLineNr(), place.getColumnNr(), what, value, remedy);
    return new Refused();
  }

  /** Ends the reading after a fault beyond which nothing can be read. */
  private static final class Refused extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Refused() {
      super(null, null, false, false);
    }
  }
}
