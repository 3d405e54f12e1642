package org.arcwright.format.tree;

import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import tools.jackson.core.JacksonException;
import tools.jackson.core.TokenStreamLocation;

/** Says in plain words what a parser found malformed, at the place where a person would mend it. */
final class SyntaxFault {
  /**
   * A parser's complaint in plain words.
   *
   * @param sign found in the parser's message
   * @param atContext whether the place to mend is where the construct begins
   * @param what is wrong
   * @param remedy what would be right
   */
  private record Plain(String sign, boolean atContext, String what, String remedy) {}

  private static final String VALUE =
      "texts stand in double quotes; else write a number, true, false or null";

  private static final Plain QUOTE =
      new Plain(
          "found unexpected end of stream",
          true,
          "quote left open",
          "close it with the same quote");

  private static final List<Plain> YAML =
      List.of(
          new Plain("(TAB)", false, "tab", "indent with spaces"),
          new Plain(
              "mapping values are not allowed",
              false,
              "colon out of place",
              "put a text with a colon in quotes, or mend the indentation"),
          QUOTE,
          new Plain("expected ',' or ']'", true, "list left open", "close it with ]"),
          new Plain("expected ',' or '}'", true, "brace left open", "close it with }"),
          new Plain(
              "'<stream end>'",
              false,
              "end of file too early",
              "close every bracket, brace and quote"),
          new Plain(
              "cannot start any token",
              false,
              "text that begins with a sign of YAML's own",
              "put the text in quotes"),
          new Plain(
              "could not find expected ':'", true, "line without a colon", "write key: value"),
          new Plain(
              "expected <block end>",
              false,
              "line out of place",
              "entries of one list or group start in one column"),
          new Plain(
              "sequence entries are not allowed",
              false,
              "hyphen out of place",
              "start the list on a line of its own, or put the text in quotes"),
          new Plain(
              "chomping or indentation indicators",
              false,
              "text right behind | or >",
              "start it on the next line, or put it in quotes"),
          new Plain(
              "unknown escape character",
              false,
              "backslash",
              "in double quotes write two of them, or use single quotes"),
          new Plain(
              "expected the node content",
              false,
              "bracket out of place",
              "strike it, or put the text in quotes"),
          new Plain(
              "Expected a property name",
              false,
              "key that is no plain text",
              "a key is one word, such as title"));

  private static final List<Plain> JSON =
      List.of(
          new Plain(
              "was expecting double-quote to start property name",
              false,
              "key expected",
              "keys stand in double quotes; after the last entry comes no comma"),
          new Plain("was expecting a colon", false, "colon expected", "write \"key\": value"),
          new Plain("was expecting comma", false, "comma expected", "write one before this"),
          new Plain(
              "was expecting closing quote",
              false,
              "quote left open",
              "close it with a double quote"),
          new Plain(
              "Unexpected end-of-input",
              false,
              "end of file too early",
              "close every bracket, brace and quote"),
          new Plain(
              "Unexpected close marker", false, "wrong bracket", "close what was opened last"),
          new Plain("Leading zero", false, "zero before a number", "strike it"),
          new Plain(
              "Illegal unquoted character",
              false,
              "line break or tab in a text",
              "write \\n or \\t"),
          new Plain("Unrecognized character escape", false, "backslash", "write two of them"),
          new Plain(
              "maybe a (non-standard) comment", false, "comment", "JSON knows none; strike it"),
          new Plain(
              "Number value length",
              false,
              "number too large before this",
              "a smaller one is right"),
          new Plain(
              "in numeric value", false, "number left unfinished", "write it as 1, -1 or 1.5"),
          new Plain("hex-digit", false, "backslash", "\\u takes four digits or letters a to f"),
          new Plain("expected a valid value", false, "value expected", VALUE),
          new Plain("was expecting (JSON String", false, "value expected", VALUE));

  private SyntaxFault() {}

  static void add(
      JacksonException e, TokenStreamLocation place, String text, Syntax syntax, Faults faults) {
    if (e.getCause() instanceof MarkedYamlEngineException marked) {
      int seen = marked.getProblemMark().map(Mark::getLine).orElse(0) + 1;
      Optional<OpenQuote> open = OpenQuote.before(seen, text);
      if (open.isPresent()) {
        add(QUOTE, open.get().line(), open.get().column(), text, faults);
        return;
      }
      Plain plain = plain(YAML, String.valueOf(marked.getProblem()), syntax);
      Optional<Mark> begin = plain.atContext ? marked.getContextMark() : Optional.empty();
      Optional<Mark> mark = begin.or(marked::getProblemMark);
      add(
          plain,
          mark.map(Mark::getLine).orElse(0) + 1,
          mark.map(Mark::getColumn).orElse(0) + 1,
          text,
          faults);
      return;
    }
    Plain plain = plain(syntax == Syntax.YAML ? YAML : JSON, e.getOriginalMessage(), syntax);
    add(plain, Math.max(1, place.getLineNr()), Math.max(1, place.getColumnNr()), text, faults);
  }

  private static Plain plain(List<Plain> known, String message, Syntax syntax) {
    return known.stream()
        .filter(plain -> message.contains(plain.sign))
        .findFirst()
        .orElse(new Plain("", false, "malformed " + syntax, "mend it here or just before"));
  }

  private static void add(Plain plain, int line, int column, String text, Faults faults) {
    faults.add(line, column, plain.what, excerpt(text, line, column), plain.remedy);
  }

  /** What stands there, up to the end of the line. */
  private static String excerpt(String text, int line, int column) {
    return text.lines()
        .skip(line - 1L)
        .findFirst()
        .filter(found -> column <= found.length())
        .map(found -> found.substring(column - 1))
        .orElse("");
  }
}
