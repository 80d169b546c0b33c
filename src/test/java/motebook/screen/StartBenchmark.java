package motebook.screen;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * What the first frame costs against an empty Java program: the real program in a terminal that
 * {@code script} opens for it, from its start until a text has been written. The two take turns, so
 * that both meet the same machine. Prints ratios of medians.
 */
final class StartBenchmark {
  private static final int TURNS = 15;
  private static final long PATIENCE = TimeUnit.SECONDS.toNanos(20);

  private final String program;
  private final Path book;

  private StartBenchmark(String program, Path book) {
    this.program = program;
    this.book = book;
  }

  /** Does nothing; what a start of Java costs. */
  static final class Empty {
    private Empty() {}

    public static void main(String[] arguments) {}
  }

  /**
   * Prints the ratios.
   *
   * @param arguments the program, and a book with work on the day
   */
  public static void main(String[] arguments) throws IOException, InterruptedException {
    StartBenchmark starts = new StartBenchmark(arguments[0], Path.of(arguments[1]));
    starts.print("first frame", "help");
    starts.print("first frame with the day in it", "8-hour means");
  }

  private void print(String what, String text) throws IOException, InterruptedException {
    double[] empty = new double[TURNS];
    double[] shown = new double[TURNS];
    for (int i = 0; i < TURNS; i++) {
      empty[i] = empty();
      shown[i] = shown(text);
    }
    System.out.printf(
        "%s against an empty Java program: %.2f x (%.0f ms against %.0f ms)%n",
        what, median(shown) / median(empty), median(shown), median(empty));
  }

  private static double median(double... millis) {
    double[] sorted = millis.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }

  private static double since(long start) {
    return (System.nanoTime() - start) / 1e6;
  }

  private static double empty() throws IOException, InterruptedException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    String here = Path.of("target", "test-classes").toString();
    List<String> command =
        List.of(
            java,
            "-XX:+UseSerialGC",
            "-XX:TieredStopAtLevel=1",
            "-cp",
            here,
            Empty.class.getName());
    long start = System.nanoTime();
    new ProcessBuilder(command).inheritIO().start().waitFor();
    return since(start);
  }

  private double shown(String text) throws IOException, InterruptedException {
    ProcessBuilder builder =
        new ProcessBuilder("script", "-qfc", "exec " + program, "/dev/null")
            .redirectErrorStream(true);
    builder.environment().put("TERM", "xterm-256color");
    builder.environment().put("MOTEBOOK_BOOK", book.toString());
    long start = System.nanoTime();
    Process terminal = builder.start();
    try (InputStream out = terminal.getInputStream()) {
      StringBuilder written = new StringBuilder();
      byte[] buffer = new byte[1 << 16];
      while (written.indexOf(text) < 0) {
        int read = out.read(buffer);
        if (read < 0 || System.nanoTime() - start > PATIENCE) {
          throw new IllegalStateException("the terminal never showed: " + text);
        }
        written.append(new String(buffer, 0, read, StandardCharsets.UTF_8));
      }
      double millis = since(start);
      terminal.getOutputStream().write('q');
      terminal.getOutputStream().flush();
      terminal.waitFor(20, TimeUnit.SECONDS);
      return millis;
    } finally {
      terminal.destroy();
    }
  }
}
