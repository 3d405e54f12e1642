package org.arcwright.cli.document;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.arcwright.catalog.Catalog;
import org.arcwright.cli.picture.Svg;
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
  private static final int TOP = MARGIN + 4 * LINE;
  private static final String TITLE = "Where the shelf is thin";

  private final Gaps gaps;
  private final Grid grid;
  private final Catalog catalog;
  private final Map<Cell, Count> counts = new HashMap<>();
  private final Svg svg;
  private final int names;
  private final int group;
  private final int block;

  private GapsPicture(Gaps gaps, Catalog catalog) {
    this.gaps = gaps;
    this.grid = gaps.grid();
    this.catalog = catalog;
    gaps.counts().forEach(count -> counts.put(count.cell(), count));
    int longest = grid.goals().stream().map(this::title).mapToInt(String::length).max().orElse(0);
    this.names = MARGIN + longest * LETTER;
    this.group = grid.lengths().size() * FIELD + GAP;
    this.block = (grid.goals().size() + 2) * FIELD + 2 * LINE;
    int wide = Math.max(names + grid.people().size() * group + MARGIN, 720);
    int high = TOP + grid.tools().size() * block + MARGIN;
    this.svg =
        new Svg(
            wide,
            high,
            "width=\"" + wide + "\" height=\"" + high + "\" font-size=\"12\"",
            TITLE,
            alternative());
  }

  /** The picture; ends with a line break. */
  public static String write(Gaps gaps, Catalog catalog) {
    return Words.untied(new GapsPicture(gaps, catalog).write());
  }

  private String write() {
    svg.text(MARGIN, MARGIN + LINE / 2, "font-size=\"16\" font-weight=\"bold\"", TITLE);
    key(MARGIN + LINE + LINE / 2);
    int y = TOP;
    for (ToolSet set : grid.tools()) {
      block(set, y);
      y += block;
    }
    return svg.end();
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
      svg.text(x + FIELD + 4, y + 12, "", words);
      x += FIELD + 12 + words.length() * LETTER + GAP;
    }
    svg.text(
        MARGIN,
        y + LINE + 14,
        "",
        "Different agendas for each goal, by number of people; side by side: "
            + GapWords.lengths(grid.lengths())
            + ".");
  }

  private void block(ToolSet set, int top) {
    svg.text(
        MARGIN, top + LINE, "font-weight=\"bold\"", Words.sentence(GapWords.place(set, catalog)));
    int y = top + 2 * LINE;
    svg.text(MARGIN, y - 4, "", "people");
    for (int i = 0; i < grid.people().size(); i++) {
      svg.text(names + i * group, y - 4, "", String.valueOf(grid.people().get(i)));
    }
    for (String goal : grid.goals()) {
      svg.text(MARGIN, y + 12, "", title(goal));
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
    svg.add(
        "<rect x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\" fill=\"%s\" stroke=\"#949494\"%s/>",
        x, y, FIELD - 1, FIELD - 1, fill, agendas < 0 ? " stroke-dasharray=\"2\"" : "");
    svg.text(
        x + FIELD / 2,
        y + 12,
        "text-anchor=\"middle\"" + (light < 118 ? " fill=\"#fff\"" : ""),
        agendas < 0 ? "?" : String.valueOf(agendas));
  }

  private String title(String goal) {
    return catalog.goal(goal).map(known -> known.title()).orElse(goal);
  }
}
