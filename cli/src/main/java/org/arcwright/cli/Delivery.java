package org.arcwright.cli;

import java.util.Optional;
import org.arcwright.cli.document.Marks;
import org.arcwright.cli.document.Style;

/** Brings a document to where it is wanted. */
final class Delivery {
  private Delivery() {}

  /** A document that looks as the place allows where it goes. */
  interface Document {
    String text(Marks marks, Style style, int width);
  }

  /** Writes it to the file and says so; without a file it goes to standard output. */
  static void of(Terminal terminal, Optional<WholeFile> file, Document document) {
    if (file.isEmpty()) {
      String text = document.text(terminal.marks(), terminal.style(), terminal.width());
      terminal.out().print(text);
      return;
    }
    file.get().write(document.text(Marks.UNICODE, Style.PLAIN, Terminal.PAGE));
    terminal.err().println("Written to " + file.get().path() + ".");
  }
}
