package motebook.command;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.channels.Channels;
import java.nio.channels.SeekableByteChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import motebook.model.Refusal;
import motebook.model.Text;

/**
 * Writes a file as a whole or not at all, and over nothing but one that this program wrote: each
 * has a mark of ours inside.
 */
final class SheetFile {
  /** Fills a file. */
  @FunctionalInterface
  interface Filling {
    void fill(OutputStream out) throws Exception;
  }

  private static final int LOOKED_AT = 1000;

  /** Stands at the beginning of every book, which nothing that goes out may take the place of. */
  private static final String BOOK = "SQLite format 3\0";

  private SheetFile() {}

  /**
   * Writes a file.
   *
   * @param mark what stands in the first or the last bytes of each file of its kind that this
   *     program wrote
   * @param force whether another file may give way too
   * @throws Refusal if something else stands there
   * @throws Unwritable if it cannot be written
   */
  static void write(Path file, String mark, boolean force, Filling filling) {
    try {
      Path target = Files.exists(file) ? file.toRealPath() : file;
      refuseOther(target, mark, force);
      try (Unfinished half = Unfinished.file(target)) {
        fill(half.path(), filling);
        half.finish();
      }
    } catch (IOException e) {
      throw unwritable(file, e);
    } catch (UncheckedIOException e) {
      throw unwritable(file, e.getCause());
    }
  }

  private static Unwritable unwritable(Path file, IOException e) {
    return new Unwritable(
        "The file " + Text.clean(file.toString()) + " cannot be written: " + reason(e) + ".");
  }

  /** In words, with nothing of the machine's own. */
  static String reason(IOException e) {
    if (e instanceof NoSuchFileException) {
      return "there is no such folder";
    }
    if (e instanceof AccessDeniedException) {
      return "you may not write there";
    }
    boolean told = e instanceof FileSystemException f && f.getReason() != null;
    return Text.clean(
        told ? ((FileSystemException) e).getReason() : String.valueOf(e.getMessage()));
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

  private static void refuseOther(Path file, String mark, boolean force) throws IOException {
    if (!Files.exists(file)) {
      return;
    }
    if (Files.isDirectory(file)) {
      throw new Refusal(Text.clean(file.toString()) + " is a folder: name a file in it.");
    }
    boolean book = Files.isRegularFile(file) && holds(file, BOOK);
    if (Files.isRegularFile(file) && !book && (force || holds(file, mark))) {
      return;
    }
    throw new Refusal(
        Text.clean(file.toString())
            + " is there already and was not written by this program as a file of this kind; name"
            + " another file"
            + (Files.isRegularFile(file) && !book ? ", or give --force to replace it." : ".")
            + " Nothing was written.");
  }

  private static boolean holds(Path file, String mark) throws IOException {
    byte[] wanted = mark.getBytes(StandardCharsets.UTF_8);
    try (SeekableByteChannel in = Files.newByteChannel(file)) {
      String first = text(in, 0);
      return first.contains(text(wanted))
          || text(in, Math.max(0, in.size() - LOOKED_AT)).contains(text(wanted));
    }
  }

  private static String text(SeekableByteChannel in, long from) throws IOException {
    return text(Channels.newInputStream(in.position(from)).readNBytes(LOOKED_AT));
  }

  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }
}
