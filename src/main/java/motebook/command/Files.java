package motebook.command;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import motebook.model.Refusal;

/** Reads what a person names on the command line. */
final class Files {
  private static final Path STANDARD_INPUT = Path.of("-");

  private Files() {}

  /**
   * The lines of a UTF-8 text.
   *
   * @param file the file, {@code -} for standard input
   * @throws Refusal if it is not there, cannot be read, or is not UTF-8
   */
  static List<String> lines(Path file, InputStream in) {
    try {
      return file.equals(STANDARD_INPUT)
          ? new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList()
          : java.nio.file.Files.readAllLines(file);
    } catch (NoSuchFileException e) {
      throw new Refusal("There is no file " + file + ".");
    } catch (CharacterCodingException e) {
      throw new Refusal("The file " + file + " is not UTF-8 text; save it as UTF-8.");
    } catch (IOException e) {
      throw new Refusal("The file " + file + " cannot be read: " + e.getMessage());
    }
  }
}
