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
    refuseOther(file, begins);
    try (Unfinished half = Unfinished.file(file)) {
      Files.writeString(half.path(), text);
      half.finish();
    } catch (IOException e) {
      throw unwritable(file, e);
    }
  }

  /**
   * Lets a file pass that is not there yet or holds an earlier text of the sort.
   *
   * @throws Refusal if something else is in it
   */
  static void refuseOther(Path file, String begins) {
    if (Files.isDirectory(file)) {
      throw new Refusal(file + " is a folder; name a file.");
    }
    if (Files.exists(file) && !held(file).startsWith(begins)) {
      throw new Refusal(
          "The file " + file + " holds something else already; name another, or move it away.");
    }
  }

  private static String held(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw unwritable(file, e);
    }
  }

  private static Refusal unwritable(Path file, IOException e) {
    return new Refusal("The file " + file + " cannot be written: " + e.getMessage());
  }
}
