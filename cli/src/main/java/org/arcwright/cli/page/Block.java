package org.arcwright.cli.page;

import java.util.List;
import java.util.Locale;

/** A piece of a sheet. All texts are plain: whatever they hold, it is shown as it stands. */
public sealed interface Block {
  /** The name of what shows it in templates. */
  default String form() {
    return getClass().getSimpleName().toLowerCase(Locale.ROOT);
  }

  /**
   * Blocks under a heading.
   *
   * @param id for links within the page: lower-case letters, digits and hyphens
   * @param title the heading
   * @param folded whether only the heading is seen until somebody opens it; on paper all is seen
   * @param blocks what stands under it
   */
  record Part(String id, String title, boolean folded, List<Block> blocks) implements Block {
    /** Copies the list. */
    public Part {
      blocks = List.copyOf(blocks);
    }

    /** A part that is seen. */
    public static Part of(String id, String title, Block... blocks) {
      return new Part(id, title, false, List.of(blocks));
    }
  }

  /** A paragraph. */
  record Text(String text) implements Block {}

  /** A paragraph that must not be missed, with a word that says what it is. */
  record Note(String label, String text) implements Block {}

  /** Words to be said or sent as they are, paragraph by paragraph. */
  record Words(List<String> paragraphs) implements Block {
    /** Copies the list. */
    public Words {
      paragraphs = List.copyOf(paragraphs);
    }
  }

  /** Points in any order. */
  record Points(List<Point> points) implements Block {
    /** Copies the list. */
    public Points {
      points = List.copyOf(points);
    }
  }

  /** Points in their order, numbered. */
  record Steps(List<Point> points) implements Block {
    /** Copies the list. */
    public Steps {
      points = List.copyOf(points);
    }
  }

  /** Pairs of a label and what it is. */
  record Facts(List<Point> points) implements Block {
    /** Copies the list. */
    public Facts {
      points = List.copyOf(points);
    }
  }

  /**
   * A table.
   *
   * @param caption what it shows, for those who hear it
   * @param heads a heading for each column
   * @param rows each with a cell for each column, or with one that spans all: a heading
   */
  record Table(String caption, List<String> heads, List<List<Cell>> rows) implements Block {
    /** Copies the lists. */
    public Table {
      heads = List.copyOf(heads);
      rows = rows.stream().map(List::copyOf).toList();
    }
  }

  /**
   * A picture.
   *
   * @param svg it, with a title and a description of its own
   * @param said what says the same in Markdown; empty if the sheet says it anyway
   */
  record Picture(String svg, List<String> said) implements Block {
    /** Copies the list. */
    public Picture {
      said = List.copyOf(said);
    }
  }

  /**
   * Room to write.
   *
   * @param label what to write there; may be empty
   * @param more what it says beside, smaller; may be empty
   * @param lines how many
   */
  record Room(String label, String more, int lines) implements Block {
    /** Room with a label alone. */
    public Room(String label, int lines) {
      this(label, "", lines);
    }
  }

  /**
   * One point.
   *
   * @param label what it is about, set off from the text; may be empty
   * @param text may be empty if there is a label
   * @param link where the label leads: a file beside the page or {@code #} and a part's id; empty
   *     for nowhere
   */
  record Point(String label, String text, String link) {
    /** A point that leads nowhere. */
    public static Point of(String label, String text) {
      return new Point(label, text, "");
    }

    /** A point that is a text alone. */
    public static Point of(String text) {
      return new Point("", text, "");
    }
  }

  /**
   * A cell of a table.
   *
   * @param text what it says
   * @param more what it says below, smaller; may be empty
   * @param strong whether it is set off from its neighbours
   * @param toFill whether somebody writes into it
   */
  record Cell(String text, String more, boolean strong, boolean toFill) {
    /** A cell that is to be read. */
    public Cell(String text, String more, boolean strong) {
      this(text, more, strong, false);
    }

    /** A cell with a text alone. */
    public static Cell of(String text) {
      return new Cell(text, "", false);
    }

    /** An empty cell in which there is room to write. */
    public static Cell empty() {
      return new Cell("", "", false, true);
    }

    /** A cell with a second text below. */
    public static Cell of(String text, String more) {
      return new Cell(text, more, false);
    }
  }
}
