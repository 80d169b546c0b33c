package motebook.screen;

import java.io.IOException;
import motebook.screen.terminal.Window;

/**
 * Leaves the terminal as it was and keeps the unfinished line, however the screens end: by the
 * person, by a fault, or by a signal that ends the program.
 */
final class Rescue implements AutoCloseable {
  private final Window window;
  private final Loop loop;
  private final Draft draft;
  private final Thread hook = new Thread(this::stopped, "rescue");

  Rescue(Window window, Loop loop, Draft draft) {
    this.window = window;
    this.loop = loop;
    this.draft = draft;
    Runtime.getRuntime().addShutdownHook(hook);
  }

  private void stopped() {
    boolean kept = keptLine();
    window.close();
    System.err.println(
        "Motebook was told to stop. What was logged is in the book."
            + (kept ? " A line that was being typed is kept for the next time." : ""));
  }

  /** Keeps the line; whether there was one and it is kept now. */
  boolean keptLine() {
    String line = loop.state().line().text();
    try {
      draft.keep(line);
      return !line.isBlank();
    } catch (IOException unwritable) {
      return false;
    }
  }

  @Override
  public void close() {
    keptLine();
    window.close();
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException alreadyStopping) {
      // The hook runs already and does the same.
    }
  }
}
