package motebook.screen;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;
import motebook.screen.state.Line;

/**
 * The line that was being typed, kept in a small file beside the book so that it outlives the
 * program; readable by its owner alone.
 */
final class Draft {
  private final Path file;

  private Draft(Path file) {
    this.file = file;
  }

  static Draft beside(Path book) {
    return new Draft(book.resolveSibling(book.getFileName() + ".draft"));
  }

  /** The line that was left; empty if there is none or it cannot be read. */
  synchronized String read() {
    try {
      boolean sensible = Files.isRegularFile(file) && Files.size(file) <= 4L * Line.LONGEST;
      return sensible ? Files.readString(file) : "";
    } catch (IOException unreadable) {
      return "";
    }
  }

  /**
   * Keeps a line in the place of the last one; a blank one is forgotten.
   *
   * @throws IOException if it cannot be written
   */
  synchronized void keep(String text) throws IOException {
    if (text.isBlank()) {
      Files.deleteIfExists(file);
      return;
    }
    Path fresh = file.resolveSibling(file.getFileName() + ".new");
    Files.deleteIfExists(fresh);
    create(fresh);
    Files.writeString(fresh, text, StandardCharsets.UTF_8, StandardOpenOption.WRITE);
    Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }

  private static void create(Path fresh) throws IOException {
    boolean posix = Files.getFileStore(fresh.getParent()).supportsFileAttributeView("posix");
    if (posix) {
      Files.createFile(
          fresh,
          PosixFilePermissions.asFileAttribute(
              Set.copyOf(PosixFilePermissions.fromString("rw-------"))));
    } else {
      Files.createFile(fresh);
    }
  }
}
