package org.arcwright.cli.page;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.arcwright.cli.page.Block.Cell;
import org.arcwright.cli.page.Block.Facts;
import org.arcwright.cli.page.Block.Note;
import org.arcwright.cli.page.Block.Part;
import org.arcwright.cli.page.Block.Picture;
import org.arcwright.cli.page.Block.Point;
import org.arcwright.cli.page.Block.Points;
import org.arcwright.cli.page.Block.Room;
import org.arcwright.cli.page.Block.Steps;
import org.arcwright.cli.page.Block.Table;
import org.arcwright.cli.page.Block.Text;
import org.arcwright.cli.page.Block.Words;
import org.arcwright.cli.words.Quotes;

/** Writes sheets in Markdown: CommonMark with tables. Texts are escaped. */
public final class Markdown {
  private static final String SPECIAL = "\\`*_[]<>|#~";

  private final StringBuilder out = new StringBuilder();

  private Markdown() {}

  /** The sheet as a text. */
  public static String of(Sheet sheet) {
    Markdown markdown = new Markdown();
    String kicker = sheet.kicker().isEmpty() ? "" : escaped(sheet.kicker()) + ": ";
    markdown.line("# " + kicker + escaped(sheet.title()));
    if (!sheet.facts().isEmpty()) {
      markdown.gap();
      markdown.line(String.join(" · ", sheet.facts().stream().map(Markdown::escaped).toList()));
    }
    markdown.blocks(sheet.blocks(), 2);
    return markdown.out.toString();
  }

  /** A text in which nothing is markup, with the quotation marks of print. */
  public static String escaped(String typed) {
    String text = Quotes.printed(typed);
    StringBuilder escaped = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (SPECIAL.indexOf(c) >= 0) {
        escaped.append('\\');
      }
      escaped.append(c < ' ' || c == '\u00a0' ? ' ' : c);
    }
    return escaped.toString();
  }

  private void blocks(List<Block> blocks, int level) {
    for (Block block : blocks) {
      if (!(block instanceof Picture picture) || !picture.said().isEmpty()) {
        gap();
        write(block, level);
      }
    }
  }

  private void write(Block block, int level) {
    if (block instanceof Part part) {
      line("#".repeat(level) + " " + escaped(part.title()));
      blocks(part.blocks(), Math.min(6, level + 1));
    } else if (block instanceof Text text) {
      line(start(escaped(text.text())));
    } else if (block instanceof Note note) {
      line("**" + escaped(note.label()) + "** " + escaped(note.text()));
    } else if (block instanceof Words words) {
      line(
          "> " + String.join("\n>\n> ", words.paragraphs().stream().map(Markdown::words).toList()));
    } else if (block instanceof Points points) {
      points.points().forEach(point -> line("- " + point(point)));
    } else if (block instanceof Steps steps) {
      int number = 0;
      for (Point point : steps.points()) {
        line(++number + ". " + point(point));
      }
    } else if (block instanceof Facts facts) {
      facts.points().forEach(point -> line("- " + point(point)));
    } else if (block instanceof Table table) {
      table(table);
    } else if (block instanceof Picture picture) {
      picture.said().forEach(said -> line("- " + escaped(said)));
    } else if (block instanceof Room room) {
      room(room);
    }
  }

  private void table(Table table) {
    line("| " + String.join(" | ", table.heads().stream().map(Markdown::escaped).toList()) + " |");
    line("|" + " --- |".repeat(table.heads().size()));
    for (List<Cell> row : table.rows()) {
      List<String> cells = new ArrayList<>();
      if (row.size() == 1 && table.heads().size() > 1) {
        cells.add("**" + escaped(row.get(0).text()) + "**");
        cells.addAll(Collections.nCopies(table.heads().size() - 1, ""));
      } else {
        row.forEach(cell -> cells.add(cell(cell)));
      }
      line("| " + String.join(" | ", cells) + " |");
    }
  }

  private static String cell(Cell cell) {
    String text = escaped(cell.text());
    String shown = cell.strong() && !text.isEmpty() ? "**" + text + "**" : text;
    return cell.more().isEmpty() ? shown : shown + "<br>" + escaped(cell.more());
  }

  private static String point(Point point) {
    String label = escaped(point.label());
    if (!point.link().isEmpty()) {
      label = "[" + label + "](" + point.link() + ")" + (point.text().isEmpty() ? "" : ":");
    } else if (!label.isEmpty()) {
      label = "**" + label + "**";
    }
    return label.isEmpty()
        ? start(escaped(point.text()))
        : point.text().isEmpty() ? label : label + " " + escaped(point.text());
  }

  private void room(Room room) {
    if (!room.label().isEmpty()) {
      String more = room.more().isEmpty() ? "" : " (" + escaped(room.more()) + ")";
      line(escaped(room.label()) + more);
      gap();
    }
    line(String.join("\n\n", Collections.nCopies(room.lines(), "\\_".repeat(40))));
  }

  private static String words(String paragraph) {
    return start(String.join("  \n> ", paragraph.lines().map(Markdown::escaped).toList()));
  }

  /** A text that would start a list, a heading or a rule is kept from it. */
  private static String start(String escaped) {
    return escaped.matches("(?s)^(\\d{1,9}[.)]|[-+=]).*")
        ? escaped.replaceFirst("([.)]|[-+=])", "\\\\$1")
        : escaped;
  }

  private void line(String text) {
    out.append(text).append('\n');
  }

  private void gap() {
    out.append('\n');
  }
}
