package motebook.command;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import motebook.model.Refusal;

/** Writes a file as a whole or not at all, and over nothing but an earlier one of its kind. */
final class SheetFile {
  /** Fills a file. */
  @FunctionalInterface
  interface Filling {
    void fill(OutputStream out) throws Exception;
  }

  private SheetFile() {}

  /**
   * Writes a file.
   *
   * @param begins what a file of its kind begins with
   * @throws Refusal if something else stands there, or it cannot be written
   */
  static void write(Path file, String begins, Filling filling) {
    try {
      refuseOther(file, begins);
      try (Unfinished half = Unfinished.file(file)) {
        fill(half.path(), filling);
        half.finish();
      }
    } catch (IOException e) {
      throw new Refusal("The file " + file + " cannot be written: " + reason(e));
    } catch (UncheckedIOException e) {
      throw new Refusal("The file " + file + " cannot be written: " + reason(e.getCause()));
    }
  }

  private static String reason(IOException e) {
    return e instanceof NoSuchFileException
        ? "there is no such folder."
        : String.valueOf(e.getMessage());
  }

  private static void fill(Path half, Filling filling) throws IOException {
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(half))) {
      filling.fill(out);
    } catch (IOException | RuntimeException e) {
      throw e;
    } catch (Exception e) {
      throw new IOException(e.getMessage(), e);
    }
  }

  private static void refuseOther(Path file, String begins) throws IOException {
    if (!Files.exists(file)) {
      return;
    }
    byte[] wanted = begins.getBytes(StandardCharsets.UTF_8);
    if (Files.isRegularFile(file)) {
      try (InputStream in = Files.newInputStream(file)) {
        if (Arrays.equals(in.readNBytes(wanted.length), wanted)) {
          return;
        }
      }
    }
    throw new Refusal(
        file
            + " is there already and is no earlier one of its kind; name another file, nothing was"
            + " written.");
  }
}
