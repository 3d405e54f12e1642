package org.arcwright.cli.document;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.arcwright.catalog.Catalog;
import org.arcwright.gaps.Cell;
import org.arcwright.gaps.Count;
import org.arcwright.gaps.Gaps;
import org.arcwright.gaps.Grid;
import org.arcwright.gaps.ToolSet;

/**
 * The counts of a grid as a heat map in SVG: the fewer agendas, the darker the field, and in each
 * field its number, so that nothing hangs on a shade. Fields of one number of people stand
 * together, shortest workshop first.
 */
public final class GapsPicture {
  private static final int FIELD = 16;
  private static final int GAP = 8;
  private static final int LINE = 20;
  private static final int LETTER = 7;
  private static final int MARGIN = 16;

  private final Gaps gaps;
  private final Grid grid;
  private final Catalog catalog;
  private final Map<Cell, Count> counts = new HashMap<>();
  private final StringBuilder out = new StringBuilder();
  private final int names;
  private final int group;

  private GapsPicture(Gaps gaps, Catalog catalog) {
    this.gaps = gaps;
    this.grid = gaps.grid();
    this.catalog = catalog;
    gaps.counts().forEach(count -> counts.put(count.cell(), count));
    int longest = grid.goals().stream().map(this::title).mapToInt(String::length).max().orElse(0);
    this.names = MARGIN + longest * LETTER;
    this.group = grid.lengths().size() * FIELD + GAP;
  }

  /** The picture; ends with a line break. */
  public static String write(Gaps gaps, Catalog catalog) {
    return Words.untied(new GapsPicture(gaps, catalog).write());
  }

  private String write() {
    int block = (grid.goals().size() + 2) * FIELD + 2 * LINE;
    int top = MARGIN + 4 * LINE;
    int wide = Math.max(names + grid.people().size() * group + MARGIN, 720);
    int high = top + grid.tools().size() * block + MARGIN;
    out.append(
        ("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" width=\"%d\" height=\"%d\""
                + " role=\"img\" aria-labelledby=\"title text\" font-family=\"sans-serif\""
                + " font-size=\"12\">\n")
            .formatted(wide, high, wide, high));
    element("title id=\"title\"", "Where the shelf is thin");
    element("desc id=\"text\"", alternative());
    out.append("<rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>\n");
    text(
        MARGIN,
        MARGIN + LINE / 2,
        "font-size=\"16\" font-weight=\"bold\"",
        "Where the shelf is thin");
    key(MARGIN + LINE + LINE / 2);
    int y = top;
    for (ToolSet set : grid.tools()) {
      block(set, y);
      y += block;
    }
    return out.append("</svg>\n").toString();
  }

  /** All that the picture says, in words. */
  private String alternative() {
    List<String> empty = new ArrayList<>();
    for (ToolSet set : grid.tools()) {
      for (String goal : grid.goals()) {
        List<String> where = new ArrayList<>();
        for (int people : grid.people()) {
          List<String> minutes =
              grid.lengths().stream()
                  .filter(length -> agendas(new Cell(goal, set, people, length)) == 0)
                  .map(length -> String.valueOf(length.toMinutes()))
                  .toList();
          if (!minutes.isEmpty()) {
            where.add(ShelfWords.people(people) + " in " + Words.list(minutes) + " min");
          }
        }
        if (!where.isEmpty()) {
          empty.add(
              "%s, %s: %s."
                  .formatted(title(goal), GapWords.place(set, catalog), String.join("; ", where)));
        }
      }
    }
    return GapWords.summary(gaps)
        + (empty.isEmpty()
            ? " No field is empty."
            : " No agenda at all: " + String.join(" ", empty));
  }

  private int agendas(Cell cell) {
    Count count = counts.get(cell);
    return count == null || gaps.isOpen(count) ? -1 : Math.min(count.agendas(), gaps.most());
  }

  private void key(int y) {
    int x = MARGIN;
    for (int agendas = 0; agendas <= gaps.most(); agendas++) {
      field(x, y, agendas);
      String words =
          agendas == 0
              ? "no agenda"
              : agendas == gaps.most() ? agendas + " or more" : String.valueOf(agendas);
      text(x + FIELD + 4, y + 12, "", words);
      x += FIELD + 12 + words.length() * LETTER + GAP;
    }
    text(
        MARGIN,
        y + LINE + 14,
        "",
        "Different agendas for each goal, by number of people; side by side: "
            + GapWords.lengths(grid.lengths())
            + ".");
  }

  private void block(ToolSet set, int top) {
    text(MARGIN, top + LINE, "font-weight=\"bold\"", Words.sentence(GapWords.place(set, catalog)));
    int y = top + 2 * LINE;
    text(MARGIN, y - 4, "", "people");
    for (int i = 0; i < grid.people().size(); i++) {
      text(names + i * group, y - 4, "", String.valueOf(grid.people().get(i)));
    }
    for (String goal : grid.goals()) {
      text(MARGIN, y + 12, "", title(goal));
      int x = names;
      for (int people : grid.people()) {
        for (Duration length : grid.lengths()) {
          field(x, y, agendas(new Cell(goal, set, people, length)));
          x += FIELD;
        }
        x += GAP;
      }
      y += FIELD;
    }
  }

  /** A field with its number; a question mark and a broken border where nobody knows. */
  private void field(int x, int y, int agendas) {
    int light = agendas < 0 ? 255 : 255 * agendas / gaps.most();
    String fill =
        "#" + Integer.toHexString(0x1000000 | light << 16 | light << 8 | light).substring(1);
    out.append(
        "<rect x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\" fill=\"%s\" stroke=\"#949494\"%s/>\n"
            .formatted(
                x, y, FIELD - 1, FIELD - 1, fill, agendas < 0 ? " stroke-dasharray=\"2\"" : ""));
    text(
        x + FIELD / 2,
        y + 12,
        "text-anchor=\"middle\"" + (light < 118 ? " fill=\"#fff\"" : ""),
        agendas < 0 ? "?" : String.valueOf(agendas));
  }

  private String title(String goal) {
    return catalog.goal(goal).map(known -> known.title()).orElse(goal);
  }

  private void text(int x, int y, String how, String text) {
    element("text x=\"" + x + "\" y=\"" + y + "\"" + (how.isEmpty() ? "" : " " + how), text);
  }

  private void element(String open, String text) {
    String name = open.contains(" ") ? open.substring(0, open.indexOf(' ')) : open;
    out.append('<').append(open).append('>').append(escaped(text));
    out.append("</").append(name).append(">\n");
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
