package motebook.screen;

import java.io.IOException;
import java.util.Optional;
import java.util.function.Supplier;
import motebook.screen.terminal.Window;

/**
 * Leaves the terminal as it was and keeps the unfinished line, however the screens end: by the
 * person, by a fault, or by a signal that ends the program.
 */
final class Rescue implements AutoCloseable {
  private final Window window;
  private final Draft draft;
  private final Thread hook = new Thread(this::stopped, "rescue");
  private volatile Optional<Supplier<String>> line = Optional.empty();

  Rescue(Window window, Draft draft) {
    this.window = window;
    this.draft = draft;
    Runtime.getRuntime().addShutdownHook(hook);
  }

  /** From now on there is a line to be kept; before, the one of the last time is left alone. */
  void keep(Supplier<String> typed) {
    line = Optional.of(typed);
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
    return line.map(Supplier::get).map(this::isKept).orElse(false);
  }

  private boolean isKept(String typed) {
    try {
      draft.keep(typed);
      return !typed.isBlank();
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
