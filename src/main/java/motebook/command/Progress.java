package motebook.command;

import java.io.PrintWriter;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;

/**
 * Shows on standard error how far something long has come: a bar, once a second has gone, and only
 * where a person's terminal reads it. It is gone from the terminal when the work ends.
 *
 * <pre>
 * try (Progress progress = Progress.over(desk.world(), "Reading sessions", count)) {
 *   … progress.step(1);
 * }
 * </pre>
 */
final class Progress implements AutoCloseable {
  private static final long PATIENCE = TimeUnit.SECONDS.toNanos(1);
  private static final long BETWEEN = TimeUnit.MILLISECONDS.toNanos(100);
  private static final int BAR = 40;

  /** What the bar is drawn with. */
  private record Marks(String done, String left) {
    static Marks in(World world) {
      String ascii = world.environment().get("MOTEBOOK_ASCII");
      return !"1".equals(ascii) ? new Marks("█", "░") : new Marks("#", ".");
    }
  }

  private final PrintWriter err;
  private final boolean seen;
  private final Marks marks;
  private final String what;
  private final long total;
  private final LongSupplier nanos;
  private final Thread onCtrlC = new Thread(this::wipe, "take the bar away");
  private long done;
  private long next;
  private int drawn;

  private Progress(World world, String what, long total, LongSupplier nanos) {
    err = world.err();
    seen = world.errIsTerminal();
    marks = Marks.in(world);
    this.what = what;
    this.total = Math.max(1, total);
    this.nanos = nanos;
    next = nanos.getAsLong() + PATIENCE;
  }

  /**
   * Begins to count.
   *
   * @param what what is being done, a few words
   * @param total how many steps there will be
   */
  static Progress over(World world, String what, long total) {
    return over(world, what, total, System::nanoTime);
  }

  static Progress over(World world, String what, long total, LongSupplier nanos) {
    return new Progress(world, what, total, nanos);
  }

  /** Tells that so many more steps are done. */
  void step(long more) {
    done += more;
    if (seen) {
      long now = nanos.getAsLong();
      if (now - next >= 0) {
        next = now + BETWEEN;
        draw();
      }
    }
  }

  private void draw() {
    double share = Math.min(1, (double) done / total);
    int full = (int) (share * BAR);
    String line =
        "%s  %s%s %3d %%"
            .formatted(
                what,
                marks.done().repeat(full),
                marks.left().repeat(BAR - full),
                (int) (share * 100));
    show(line);
  }

  private synchronized void show(String line) {
    if (drawn == 0) {
      Runtime.getRuntime().addShutdownHook(onCtrlC);
    }
    err.print("\r" + line);
    err.flush();
    drawn = line.length();
  }

  private synchronized void wipe() {
    err.print("\r" + " ".repeat(drawn) + "\r");
    err.flush();
  }

  /** Takes the bar away. */
  @Override
  public void close() {
    if (drawn > 0) {
      Runtime.getRuntime().removeShutdownHook(onCtrlC);
      wipe();
      drawn = 0;
    }
  }
}
