package motebook.journal;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Files that are only half there, each with the number of the program that writes it in its name:
 * what a killed program left behind is told from what another one is writing.
 */
final class Leavings {
  private static final String ENDING = ".part";

  private Leavings() {}

  /** Begins a file that only its owner may read; those that nobody writes any more go. */
  static Path begin(Path folder, String what) throws IOException {
    clear(folder, what);
    return Files.createTempFile(folder, what + "-" + ProcessHandle.current().pid() + "-", ENDING);
  }

  /** Removes what programs left behind that no longer run, and what stands beside it. */
  static void clear(Path folder, String what) {
    Pattern name = Pattern.compile(what + "-(\\d{1,18})-\\d+\\.part(-wal|-shm|-journal)?");
    try (DirectoryStream<Path> parts =
        Files.newDirectoryStream(folder, what + "-*" + ENDING + "*")) {
      for (Path part : parts) {
        Matcher owner = name.matcher(String.valueOf(part.getFileName()));
        if (owner.matches() && ProcessHandle.of(Long.parseLong(owner.group(1))).isEmpty()) {
          Files.deleteIfExists(part);
        }
      }
    } catch (IOException | DirectoryIteratorException e) {
      // what cannot be cleared away now is met again by the next program
    }
  }
}
