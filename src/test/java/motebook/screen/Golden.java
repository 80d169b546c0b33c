package motebook.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Screens that a person has looked at and accepted, kept as plain text. */
final class Golden {
  private static final Path FOLDER = Path.of("src/test/resources/golden");

  private Golden() {}

  /** Compares with the accepted screen; {@code -Dgolden.accept=true} accepts it as it is now. */
  static void check(String name, String screen) throws IOException {
    Path file = FOLDER.resolve(name + ".txt");
    if (Boolean.getBoolean("golden.accept")) {
      Files.createDirectories(file.getParent());
      Files.writeString(file, screen);
    }
    assertThat(file).as("accept it with -Dgolden.accept=true after looking at it").exists();
    assertThat(screen).as(name).isEqualTo(Files.readString(file));
  }
}
