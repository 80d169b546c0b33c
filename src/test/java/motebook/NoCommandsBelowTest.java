package motebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What can be done next is a value below the writers: no string there is a command. */
class NoCommandsBelowTest {
  private static final Pattern COMMAND = Pattern.compile("\"[^\"\\n]*\\bmotebook [a-z][^\"\\n]*\"");

  @ParameterizedTest
  @ValueSource(strings = {"model", "reference", "science", "journal", "entry", "desk"})
  void no_string_in_a_room_below_the_writers_holds_a_command(String room) throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src/main/java/motebook", room))) {
      List<Path> sources = files.filter(file -> file.toString().endsWith(".java")).toList();
      assertThat(sources).isNotEmpty();
      for (Path file : sources) {
        assertThat(COMMAND.matcher(Files.readString(file)).results().map(r -> r.group()))
            .as(file.toString())
            .isEmpty();
      }
    }
  }
}
