package motebook.screen;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.function.Supplier;
import motebook.journal.Book;
import motebook.journal.BookTrouble;
import motebook.reference.Finishes;
import motebook.reference.Masks;
import motebook.reference.Reference;
import motebook.screen.plain.Plain;
import motebook.screen.state.Size;
import motebook.screen.state.State;
import motebook.screen.terminal.Window;

/** The door for the hands: the screens in a text terminal. */
public final class Screen {
  private static final String KEPT = " A line that was being typed is kept for the next time.";

  private Screen() {}

  /**
   * Shows the screens on a book until the person leaves; the terminal is then as it was before,
   * whatever happened. The first frame stands there before the book is open.
   *
   * @param file the book's file
   * @return 0 after leaving, 1 if it could not go on; why was then told on standard error
   * @throws motebook.journal.BookTrouble if the file cannot be used as a book
   */
  public static int run(Path file, Clock clock, Options options) {
    if (!options.plain() && !options.terminal()) {
      System.err.println(
          "The screens need a terminal; motebook --help lists the commands that do not.");
      return 1;
    }
    try (ComingBook book = ComingBook.opening(file, clock)) {
      int code =
          options.plain()
              ? plainly(book.get(), clock, options)
              : drawn(book, clock, options, onTerminal(options));
      if (code == 0) {
        Parting.words(book.get()).ifPresent(System.out::println);
      }
      return code;
    }
  }

  /**
   * Shows the screens between two streams instead of on a terminal.
   *
   * @param keys what is pressed, as a terminal sends it
   * @param frames where the frames are written, as a terminal takes them
   */
  static int between(
      InputStream keys, OutputStream frames, ComingBook book, Clock clock, Options options) {
    return drawn(book, clock, options, () -> Window.between(keys, frames, options.palette()));
  }

  /** How a window on the real terminal is opened; nothing is opened yet. */
  static Opening onTerminal(Options options) {
    return () -> Window.open(options.palette());
  }

  /** Opens a window. */
  @FunctionalInterface
  interface Opening {
    Window open() throws IOException;
  }

  /** Reads on a thread of its own what the first day will ask for while its book is opened. */
  private static void readTables() {
    Thread ahead = new Thread(Screen::tables, "tables");
    ahead.setDaemon(true);
    ahead.start();
  }

  private static void tables() {
    try {
      Reference.shipped();
      Masks.shipped();
      Finishes.shipped();
    } catch (RuntimeException | Error told) {
      // Whoever needs the table meets the same trouble and tells it.
    }
  }

  private static int plainly(Book book, Clock clock, Options options) {
    Draft draft = Draft.beside(book.file());
    Clerk clerk = new Clerk(book, clock, draft, options.program(book.file()));
    try {
      new Plain(
              opening(book.file(), clock, options, draft),
              clerk::perform,
              () -> now(clock),
              new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8)),
              new PrintWriter(System.out, true, StandardCharsets.UTF_8))
          .run();
      return 0;
    } catch (IOException e) {
      System.err.println("What is typed cannot be read: " + e.getMessage() + ".");
      return 1;
    }
  }

  private static LocalDateTime now(Clock clock) {
    return LocalDateTime.now(clock).truncatedTo(ChronoUnit.MINUTES);
  }

  private static int drawn(ComingBook book, Clock clock, Options options, Opening opening) {
    Draft draft = Draft.beside(book.file());
    try (Window window = opening.open();
        Rescue rescue = new Rescue(window, draft)) {
      Loop loop = new Loop(clock, opening(book.file(), clock, options, draft));
      rescue.keep(() -> loop.state().line().text());
      Supplier<Clerk> clerk =
          () -> new Clerk(book.get(), clock, draft, options.program(book.file()));
      try (Worker worker = new Worker(clerk, loop::tell, loop::done, loop::crash)) {
        return run(loop, window, worker, rescue);
      }
    } catch (IOException e) {
      System.err.println("The terminal cannot be used: " + e.getMessage() + ".");
      return 1;
    }
  }

  private static State opening(Path book, Clock clock, Options options, Draft draft) {
    LocalDateTime now = now(clock);
    LocalDate day = options.day().orElse(now.toLocalDate());
    return State.opening(Size.USUAL, options.look(), now, day, draft.read())
        .calledBy(options.program(book));
  }

  private static int run(Loop loop, Window window, Worker worker, Rescue rescue) {
    try {
      loop.start(window, worker);
      readTables();
      window.listen(loop::tell, loop::crash);
      loop.run(window, worker);
      return 0;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return 1;
    } catch (RuntimeException | Error crash) {
      return told(crash, window, rescue);
    } finally {
      // The terminal is given back before the worker is waited for.
      rescue.close();
    }
  }

  private static int told(Throwable crash, Window window, Rescue rescue) {
    window.close();
    Throwable cause = crash instanceof Loop.Crash ? crash.getCause() : crash;
    if (cause instanceof BookTrouble trouble) {
      throw trouble;
    }
    StackTraceElement[] where = cause.getStackTrace();
    System.err.println(
        "Motebook had to stop because of a fault of its own ("
            + cause.getClass().getSimpleName()
            + (where.length > 0
                ? " in " + where[0].getFileName() + ":" + where[0].getLineNumber()
                : "")
            + "). What was logged is in the book."
            + (rescue.keptLine() ? KEPT : ""));
    return 1;
  }
}
