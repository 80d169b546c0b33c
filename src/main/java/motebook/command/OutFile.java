package motebook.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import motebook.model.Refusal;

/** Writes a text into a file that a person names, whole or not at all. */
final class OutFile {
  private OutFile() {}

  /**
   * Writes a text in the place of an earlier one of the same sort.
   *
   * @param begins what every text of the sort begins with
   * @throws Refusal if something else is in that file, or it cannot be written
   */
  static void replace(Path file, String text, String begins) {
    try {
      refuseOther(file, begins);
      try (Unfinished half = Unfinished.file(file)) {
        Files.writeString(half.path(), text);
        half.finish();
      }
    } catch (IOException e) {
      throw new Refusal("The file " + file + " cannot be written: " + e.getMessage());
    }
  }

  private static void refuseOther(Path file, String begins) throws IOException {
    if (Files.isDirectory(file)) {
      throw new Refusal(file + " is a folder; name a file.");
    }
    if (Files.exists(file) && !Files.readString(file).startsWith(begins)) {
      throw new Refusal(
          "The file " + file + " holds something else already; name another, or move it away.");
    }
  }
}
