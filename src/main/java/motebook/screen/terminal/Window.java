package motebook.screen.terminal;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.TextColor;
import com.googlecode.lanterna.terminal.Terminal;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.function.Consumer;
import motebook.screen.draw.Cells;
import motebook.screen.draw.Role;
import motebook.screen.draw.Width;
import motebook.screen.state.Message;
import motebook.screen.state.Size;

/** A terminal that is drawn on and listened to; closing it leaves it as it was before. */
public final class Window implements AutoCloseable {
  private final Terminal terminal;
  private final Palette palette;
  private Optional<Cells> drawn = Optional.empty();
  private boolean open = true;

  private Window(Terminal terminal, Palette palette) {
    this.terminal = terminal;
    this.palette = palette;
  }

  /**
   * The terminal that the program was started in.
   *
   * @throws IOException if there is none
   */
  public static Window open(Palette palette) throws IOException {
    return on(new RealTerminal(), palette);
  }

  /** The same on two streams instead of a terminal: 80 columns, 24 rows. */
  public static Window between(InputStream keys, OutputStream frames, Palette palette)
      throws IOException {
    return on(new StreamTerminal(keys, frames), palette);
  }

  /** Takes a terminal over. */
  public static Window on(Terminal terminal, Palette palette) throws IOException {
    Window window = new Window(terminal, palette);
    terminal.enterPrivateMode();
    terminal.clearScreen();
    return window;
  }

  /** The size of the terminal. */
  public Size size() {
    try {
      return size(terminal.getTerminalSize());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Size size(TerminalSize size) {
    return new Size(Math.max(1, size.getColumns()), Math.max(1, size.getRows()));
  }

  /** Tells of every key and change of size from now on, from threads of its own. */
  public void listen(Consumer<Message> listener, Consumer<Throwable> crash) {
    terminal.addResizeListener((any, size) -> listener.accept(new Message.Resized(size(size))));
    Thread keys = new Thread(() -> heed(listener, crash), "keys");
    keys.setDaemon(true);
    keys.start();
  }

  // What was drawn before may be of another size by now, and nobody was told.
  private void heed(Consumer<Message> listener, Consumer<Throwable> crash) {
    try {
      Size now = size();
      if (!isDrawnAt(now)) {
        listener.accept(new Message.Resized(now));
      }
    } catch (UncheckedIOException gone) {
      // The keyboard tells of it.
    }
    new Keyboard(terminal).read(listener, crash);
  }

  private synchronized boolean isDrawnAt(Size size) {
    return drawn
        .filter(last -> last.columns() == size.columns() && last.rows() == size.rows())
        .isPresent();
  }

  /** Draws what has changed since the last time; a closed window stays as it is. */
  public synchronized void draw(Cells cells) {
    if (!open) {
      return;
    }
    try {
      begin(cells);
      for (int row = 0; row < cells.rows(); row++) {
        row(cells, row);
      }
      caret(cells);
      terminal.flush();
      drawn = Optional.of(cells);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void begin(Cells cells) throws IOException {
    if (!isDrawnAt(new Size(cells.columns(), cells.rows()))) {
      drawn = Optional.empty();
      terminal.resetColorAndSGR();
      terminal.clearScreen();
    }
    terminal.setCursorVisible(false);
  }

  private void row(Cells cells, int row) throws IOException {
    int first = 0;
    while (first < cells.columns() && unchanged(cells, first, row)) {
      first++;
    }
    int end = cells.columns();
    while (end > first && unchanged(cells, end - 1, row)) {
      end--;
    }
    while (first > 0 && first < end && cells.grapheme(first, row).equals(Cells.TAIL)) {
      first--;
    }
    for (int column = first; column < end; ) {
      column = run(cells, column, end, row);
    }
  }

  private boolean unchanged(Cells cells, int column, int row) {
    if (drawn.isEmpty()) {
      return false;
    }
    Cells last = drawn.get();
    return last.grapheme(column, row).equals(cells.grapheme(column, row))
        && last.role(column, row) == cells.role(column, row);
  }

  // A run ends at another role and behind whatever might not be as wide as it is thought to be.
  private int run(Cells cells, int from, int end, int row) throws IOException {
    Role role = cells.role(from, row);
    StringBuilder text = new StringBuilder();
    int column = from;
    boolean sure = true;
    while (column < end && sure && cells.role(column, row) == role) {
      String grapheme = cells.grapheme(column, row);
      sure = grapheme.length() == 1 && Width.of(grapheme) == 1;
      text.append(grapheme);
      column++;
      while (column < end && cells.grapheme(column, row).equals(Cells.TAIL)) {
        column++;
      }
    }
    write(from, row, text.toString(), palette.style(role));
    return column;
  }

  private void write(int column, int row, String text, Palette.Style style) throws IOException {
    terminal.setCursorPosition(column, row);
    terminal.resetColorAndSGR();
    for (SGR mark : style.marks()) {
      terminal.enableSGR(mark);
    }
    if (style.colour() != TextColor.ANSI.DEFAULT) {
      terminal.setForegroundColor(style.colour());
    }
    terminal.putString(text);
  }

  private void caret(Cells cells) throws IOException {
    terminal.resetColorAndSGR();
    if (cells.caret().isPresent()) {
      Cells.Caret caret = cells.caret().get();
      terminal.setCursorPosition(caret.column(), caret.row());
      terminal.setCursorVisible(true);
    }
  }

  /** Leaves the terminal as it was; whatever fails, the rest is still done. */
  @Override
  public synchronized void close() {
    if (!open) {
      return;
    }
    open = false;
    try {
      terminal.exitPrivateMode();
    } catch (IOException | IllegalStateException gone) {
      // The terminal was closed from outside: there is nothing left to restore on it.
    }
    try {
      terminal.close();
    } catch (IOException | IllegalStateException gone) {
      // As above.
    }
  }
}
