package org.arcwright.cli;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jline.terminal.Attributes;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal.Signal;
import org.jline.terminal.TerminalBuilder;
import org.jline.utils.AttributedString;
import org.jline.utils.Display;
import org.jline.utils.InfoCmp.Capability;
import org.jline.utils.NonBlockingReader;

/** A whole screen that is drawn anew, and keys that are read one by one. */
final class LiveConsole implements AutoCloseable {
  /** No key came in time. */
  static final int NONE = -2;

  /** There will be no more keys: the terminal is gone, or somebody pressed Ctrl-C. */
  static final int OVER = -1;

  /** So long after an escape comes what belongs to the same key. */
  private static final long SAME_KEY = 30;

  private static final int NARROWEST = 40;

  private final org.jline.terminal.Terminal terminal;
  private final Attributes before;
  private final Display display;
  private final NonBlockingReader keys;
  private final AtomicBoolean interrupted = new AtomicBoolean();

  private LiveConsole(org.jline.terminal.Terminal terminal) {
    this.terminal = terminal;
    this.before = terminal.enterRawMode();
    this.display = new Display(terminal, true);
    this.keys = terminal.reader();
    terminal.handle(Signal.INT, signal -> interrupted.set(true));
    terminal.puts(Capability.enter_ca_mode);
    terminal.flush();
  }

  /**
   * Takes the process's terminal.
   *
   * @throws Refusal if there is none that can be drawn upon
   */
  static LiveConsole open() {
    try {
      return new LiveConsole(TerminalBuilder.builder().system(true).dumb(false).build());
    } catch (IOException | IllegalStateException e) {
      throw new Refusal(
          "live needs a terminal that it can draw upon; elsewhere use replan with --done", e);
    }
  }

  /** Columns of the screen. */
  int width() {
    return Math.max(NARROWEST, terminal.getWidth());
  }

  /** Rows of the screen. */
  int height() {
    return Math.max(1, terminal.getHeight());
  }

  /** Draws these lines; what does not fit below is cut off. */
  void draw(List<String> lines, boolean writing) {
    Size size = terminal.getSize();
    int rows = Math.max(1, size.getRows());
    int columns = Math.max(NARROWEST, size.getColumns());
    display.resize(rows, columns);
    List<AttributedString> shown =
        lines.stream()
            .map(AttributedString::fromAnsi)
            .map(line -> line.columnSubSequence(0, columns))
            .limit(rows)
            .toList();
    int end = shown.isEmpty() ? 0 : shown.get(shown.size() - 1).columnLength();
    int last = Math.max(0, shown.size() - 1);
    terminal.puts(writing ? Capability.cursor_visible : Capability.cursor_invisible);
    display.update(shown, size.cursorPos(last, Math.min(end, columns - 1)));
    terminal.flush();
  }

  /** The next key, {@link #NONE} if none comes within so many milliseconds, or {@link #OVER}. */
  int key(long wait) throws IOException {
    int key = keys.read(wait);
    if (interrupted.get()) {
      return OVER;
    }
    if (key == LiveDesk.ESCAPE && keys.peek(SAME_KEY) > 0) {
      while (keys.peek(SAME_KEY) > 0) {
        keys.read();
      }
      return NONE;
    }
    return key;
  }

  @Override
  public void close() throws IOException {
    terminal.puts(Capability.exit_ca_mode);
    terminal.puts(Capability.cursor_visible);
    terminal.flush();
    terminal.setAttributes(before);
    terminal.close();
  }
}
