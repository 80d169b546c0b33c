package motebook.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class QueriesTest {
  private static final Path JAVA = Path.of("src/main/java");

  @TempDir Path folder;

  private static Map<String, String> all() {
    return Queries.parse(Queries.texts());
  }

  private static String sources() throws IOException {
    try (Stream<Path> files = Files.walk(JAVA.resolve("motebook/journal"))) {
      return files
          .filter(Files::isRegularFile)
          .map(QueriesTest::read)
          .collect(Collectors.joining("\n"));
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @Test
  void every_block_of_the_file_is_read() {
    long blocks = Queries.texts().lines().filter(l -> l.startsWith("-- name:")).count();
    assertThat(all()).hasSize((int) blocks);
  }

  @Test
  void every_statement_fits_the_book() throws SQLException {
    Shop.open(folder).close();
    try (Connection connection = Shop.connect(folder)) {
      FoldedText.makeKnown(connection);
      connection.createStatement().executeUpdate("ATTACH '" + Shop.file(folder) + "' AS present");
      for (Map.Entry<String, String> query : all().entrySet()) {
        try (PreparedStatement statement = connection.prepareStatement(query.getValue())) {
          assertThat(statement).as(query.getKey()).isNotNull();
        }
      }
    }
  }

  @Test
  void every_statement_is_used_and_every_change_of_every_table_can_be_taken_back()
      throws IOException {
    String sources = sources();
    Set<String> unused = new TreeSet<>();
    Set<String> restores = new TreeSet<>();
    Set<String> exchanges = new TreeSet<>();
    for (String name : all().keySet()) {
      if (name.startsWith("restore-")) {
        restores.add(name);
      } else if (name.startsWith("export-") || name.startsWith("import-")) {
        exchanges.add(name);
      } else if (!sources.contains('"' + name + '"')) {
        unused.add(name);
      }
    }
    assertThat(unused).isEmpty();
    assertThat(restores).isEqualTo(recordedSteps());
    assertThat(exchanges).isEqualTo(exchangeSteps());
  }

  /** A pair for each file of an export, and for each list in it. */
  private static Set<String> exchangeSteps() {
    Set<String> steps = new TreeSet<>();
    for (Kind kind : BookForm.kinds()) {
      steps.addAll(Set.of("export-" + kind.name(), "import-" + kind.name()));
      for (Column column : kind.columns()) {
        if (column.list()) {
          String list = kind.name() + "-" + column.name();
          steps.addAll(Set.of("export-" + list, "import-" + list));
        }
      }
    }
    return steps;
  }

  /**
   * A trigger "person_inserted" records what the statement "restore-inserted-person" takes back.
   */
  private static Set<String> recordedSteps() {
    return Pattern.compile("CREATE TRIGGER (\\w+)_(inserted|updated|deleted) ")
        .matcher(steps())
        .results()
        .map(found -> "restore-" + found.group(2) + "-" + found.group(1))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static String steps() {
    return Migration.FILES.stream()
        .map(file -> Resources.text("sql/" + file))
        .collect(Collectors.joining());
  }

  @Test
  void no_statement_stands_in_the_code() throws IOException {
    assertThat(sources())
        .doesNotContainPattern(
            "\"(?i:SELECT|INSERT INTO|UPDATE|DELETE FROM|PRAGMA|CREATE|BEGIN|VACUUM) ");
  }

  @Test
  void a_name_that_is_unknown_or_given_twice_is_a_fault_of_the_program() {
    assertThatThrownBy(() -> Queries.named("no-such"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("no-such");
    String twice = "-- name: a\nSELECT 1;\n\n-- name: a\nSELECT 2;\n";
    assertThatThrownBy(() -> Queries.parse(twice))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("named a");
  }
}
