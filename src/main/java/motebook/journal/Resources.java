package motebook.journal;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Reads the statements that are packed with the program. */
final class Resources {
  private Resources() {}

  /**
   * The whole text of a packed file.
   *
   * @throws UncheckedIOException if the program was packed without it
   */
  static String text(String name) {
    try (InputStream in = Resources.class.getClassLoader().getResourceAsStream(name)) {
      if (in == null) {
        throw new FileNotFoundException(name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
