package motebook.screen;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.terminal.virtual.DefaultVirtualTerminal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import motebook.journal.Book;
import motebook.model.Work;
import motebook.screen.state.Look;
import motebook.screen.state.Message;
import motebook.screen.state.Size;
import motebook.screen.terminal.Palette;
import motebook.screen.terminal.Window;

/**
 * From a key to the finished frame at 200×60, on a book of 200,000 sessions, on one that holds but
 * the same days that are looked at, and on an empty one: prints the 99th percentiles and ratios.
 * Everything a key asks of the book is waited for.
 */
public final class FrameBenchmark {
  private static final Size SIZE = new Size(200, 60);
  private static final int SESSIONS = 200_000;
  private static final int A_DAY = 14;
  private static final int A_FORTNIGHT = 14 * A_DAY;
  private static final int WARM = 1000;
  private static final int MEASURED = 1000;
  private static final String[] KEYS = {
    "Up",
    "Down",
    "Left",
    "Right",
    "Escape",
    "n",
    "Escape",
    "4",
    "0",
    "m",
    "Ctrl-U",
    "Escape",
    "r",
    "Escape",
    "?",
    "Page-Down",
    "Escape",
    "Left",
    "Right"
  };

  private FrameBenchmark() {}

  /** Runs it; the first argument may be another number of sessions. */
  public static void main(String[] arguments) throws IOException {
    int sessions = arguments.length > 0 ? Integer.parseInt(arguments[0]) : SESSIONS;
    Path folder = Files.createTempDirectory("frames");
    long empty = percentile(folder.resolve("empty.db"), 0);
    long few = percentile(folder.resolve("few.db"), A_FORTNIGHT);
    long many = percentile(folder.resolve("full.db"), sessions);
    System.out.printf(
        Locale.ROOT,
        "key to frame at 200x60, p99: %.2f ms with %d sessions, %.2f ms with the last fortnight of"
            + " them: %.2f x; %.2f ms with none, on days without work: %.2f x%n",
        many / 1e6,
        sessions,
        few / 1e6,
        (double) many / few,
        empty / 1e6,
        (double) many / empty);
  }

  private static long percentile(Path file, int sessions) throws IOException {
    try (Pilot pilot = new Pilot(file, SIZE, Look.UNICODE)) {
      fill(pilot.book(), sessions);
      pilot.open();
      DefaultVirtualTerminal terminal =
          new DefaultVirtualTerminal(new TerminalSize(SIZE.columns(), SIZE.rows()));
      try (Window window = Window.on(terminal, Palette.MANY)) {
        times(pilot, window, WARM);
        long[] times = times(pilot, window, MEASURED);
        Arrays.sort(times);
        return times[times.length * 99 / 100];
      }
    }
  }

  private static long[] times(Pilot pilot, Window window, int count) {
    long[] times = new long[count];
    for (int index = 0; index < count; index++) {
      Message key = new Message.Pressed(Pilot.Keys.named(KEYS[index % KEYS.length]));
      long from = System.nanoTime();
      pilot.tell(key);
      window.draw(pilot.cells());
      times[index] = System.nanoTime() - from;
    }
    return times;
  }

  private static void fill(Book book, int sessions) {
    List<Work> works = new ArrayList<>(sessions);
    LocalDate last = Pilot.NOON.toLocalDate();
    for (int index = 0; index < sessions; index++) {
      int ofDay = index % A_DAY;
      works.add(work(last.minusDays(index / A_DAY), ofDay));
    }
    if (!works.isEmpty()) {
      book.logAll(works, "Filled the book");
    }
  }

  private static Work work(LocalDate date, int ofDay) {
    return new Work(
        "me",
        "shop",
        date,
        LocalTime.of(0, 0).plusMinutes(50L * ofDay),
        10 + 3 * ofDay,
        ofDay % 2 == 0 ? "orbital-sanding" : "table-saw",
        Optional.of(ofDay % 3 == 0 ? "oak" : "mdf"),
        ofDay % 2 == 0 ? List.of("tool-vacuum") : List.of("collector"),
        Optional.empty(),
        ofDay % 5 == 0 ? "a note " + ofDay : "");
  }
}
