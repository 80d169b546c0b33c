package motebook.screen;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.lang.ProcessBuilder.Redirect;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * The screens without anybody before them: the first day is drawn, then the week is asked for and
 * left. The build lets it run once, so that the classes this takes can be kept ready to map.
 */
public final class Rehearsal {
  private static final int PATIENCE_S = 60;
  private static final String DRAWN = "8-hour means";
  private static final String KEYS = "wq";

  private Rehearsal() {}

  /**
   * Goes once through it on a book that has sessions.
   *
   * @throws IllegalStateException if that went wrong
   */
  public static void of(Path file, Clock clock, Options options) throws IOException {
    startProgram();
    Screen.onTerminal(options);
    Frames frames = new Frames();
    try (ComingBook book = ComingBook.opening(file, clock)) {
      Parting.words(book.get());
      if (Screen.between(new Keys(frames), frames, book, clock, options) != 0) {
        throw new IllegalStateException("The screens did not come to their end.");
      }
    }
  }

  // A real terminal is set by another program, and to start one takes classes too.
  private static void startProgram() throws IOException {
    try {
      Process program =
          new ProcessBuilder("true").redirectInput(Redirect.from(new File("/dev/null"))).start();
      program.getInputStream().readAllBytes();
      program.waitFor();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Keeps what is drawn and tells when the day is there. */
  private static final class Frames extends ByteArrayOutputStream {
    private final CountDownLatch day = new CountDownLatch(1);

    @Override
    public void flush() {
      if (toString(StandardCharsets.UTF_8).contains(DRAWN)) {
        day.countDown();
      }
    }

    boolean drawn() {
      return day.getCount() == 0;
    }

    void await() {
      try {
        if (!day.await(PATIENCE_S, TimeUnit.SECONDS)) {
          throw new IllegalStateException("The day was never drawn.");
        }
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }
  }

  /** Presses nothing before the day is drawn. */
  private static final class Keys extends InputStream {
    private final Frames frames;
    private int next;

    Keys(Frames frames) {
      this.frames = frames;
    }

    @Override
    public int available() {
      return frames.drawn() ? KEYS.length() - next : 0;
    }

    @Override
    public int read() {
      frames.await();
      return next < KEYS.length() ? KEYS.charAt(next++) : -1;
    }

    @Override
    public int read(byte[] into, int from, int length) {
      int key = read();
      if (key >= 0) {
        into[from] = (byte) key;
      }
      return key < 0 ? -1 : 1;
    }
  }
}
