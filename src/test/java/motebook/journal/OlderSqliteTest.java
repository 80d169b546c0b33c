package motebook.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A shop's own tools may open the book with SQLite 3.37 (November 2021, the first with STRICT
 * tables) or any later one. A program older than a word of the schema calls the whole book
 * malformed, so nothing in the schema is newer; what SQLite learned when is told by its release
 * notes (sqlite.org/changes.html).
 */
class OlderSqliteTest {
  /** What the schema may call. All of it is in SQLite 3.37; add only what is, too. */
  private static final Set<String> FUNCTIONS =
      Set.of(
          "abs",
          "char",
          "coalesce",
          "count",
          "date",
          "datetime",
          "glob",
          "group_concat",
          "hex",
          "ifnull",
          "iif",
          "instr",
          "json_array",
          "json_extract",
          "json_group_array",
          "json_object",
          "json_valid",
          "julianday",
          "length",
          "like",
          "lower",
          "max",
          "min",
          "nullif",
          "printf",
          "quote",
          "raise",
          "replace",
          "round",
          "strftime",
          "substr",
          "sum",
          "time",
          "total",
          "trim",
          "typeof",
          "unicode",
          "upper");

  /** Words that stand before a bracket and call nothing. */
  private static final Set<String> KEYWORDS =
      Set.of(
          "and", "as", "between", "by", "check", "else", "exists", "from", "in", "is", "join",
          "key", "not", "on", "or", "over", "primary", "select", "then", "union", "unique", "using",
          "values", "when", "where");

  /** After these stands the name of a table. */
  private static final Set<String> BEFORE_A_TABLE = Set.of("table", "references", "into", "on");

  private static final Pattern TOKEN =
      Pattern.compile("--[^\n]*|'(?:[^']|'')*'|->>?|\\d[\\w.]*|\\w+|\\S");

  @TempDir Path folder;

  @Test
  void a_new_book_holds_nothing_that_sqlite_3_37_cannot_read() throws SQLException {
    Shop.open(folder).close();
    try (Connection connection = Shop.connect(folder)) {
      assertThat(newerThan337(connection)).isEmpty();
    }
  }

  @Test
  void a_book_of_an_earlier_form_loses_what_older_programs_cannot_read() throws SQLException {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite::memory:")) {
      run(connection, 1, 6);
      assertThat(newerThan337(connection))
          .containsExactly(
              "change_row: json_valid() of what may be NULL",
              "change_row: json_valid() of what may be NULL",
              "session_read: ORDER BY inside group_concat()",
              "session_read: function format()",
              "session_read: ORDER BY inside group_concat()");
      run(connection, 7, Migration.FILES.size());
      assertThat(newerThan337(connection)).isEmpty();
    }
  }

  @Test
  void a_record_of_changes_that_is_rewritten_keeps_its_rows_and_its_guards() throws SQLException {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite::memory:");
        Statement statement = connection.createStatement()) {
      run(connection, 1, 7);
      statement.executeUpdate("INSERT INTO change (at, what) VALUES ('2026-03-02T00:00:00Z', 'x')");
      statement.executeUpdate("BEGIN");
      statement.executeUpdate("INSERT INTO open_change (id, change_id) VALUES (1, 1)");
      statement.executeUpdate("INSERT INTO person (name, folded) VALUES ('Ana', 'ana')");
      statement.executeUpdate("DELETE FROM open_change");
      statement.executeUpdate("COMMIT");
      String before = record(statement);
      assertThat(before).contains("Ana");
      run(connection, 8, 8);
      assertThat(record(statement)).isEqualTo(before);
      assertThatThrownBy(() -> statement.executeUpdate("DELETE FROM change_row"))
          .hasMessageContaining("never deleted");
      assertThatThrownBy(() -> statement.executeUpdate("UPDATE change_row SET after = '{}'"))
          .hasMessageContaining("never rewritten");
      assertThatThrownBy(() -> statement.executeUpdate("UPDATE person SET name = 'Ben'"))
          .hasMessageContaining("no change is open");
    }
  }

  private static String record(Statement statement) throws SQLException {
    String sql =
        "SELECT group_concat(id || table_name || coalesce(before, '') || coalesce(after, ''))"
            + " FROM change_row";
    try (ResultSet rows = statement.executeQuery(sql)) {
      return rows.getString(1);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          SELECT group_concat(a, ',' ORDER BY b) FROM t | ORDER BY inside group_concat()
          SELECT concat_ws(',', a, b) FROM t            | function concat_ws()
          SELECT unixepoch(a) FROM t                    | function unixepoch()
          SELECT a ->> 'b' FROM t                       | operator ->>
          SELECT a IS NOT DISTINCT FROM b FROM t        | IS DISTINCT FROM
          SELECT a FROM t FULL OUTER JOIN u             | FULL JOIN
          SELECT a FROM t RIGHT JOIN u                  | RIGHT JOIN
          SELECT 1_000                                  | 1_000
          """)
  void what_came_after_3_37_is_found(String sql, String found) {
    assertThat(newerThan337(sql)).containsExactly(found);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          SELECT group_concat(a) FROM (SELECT a FROM t ORDER BY b)
          SELECT sum(a) OVER (ORDER BY b) FROM t
          SELECT 'concat(a) ->> ORDER BY', char(10) FROM t
          CREATE INDEX i ON t (a, length(b))
          """)
  void what_3_37_knows_is_let_through(String sql) {
    assertThat(newerThan337(sql)).isEmpty();
  }

  private static void run(Connection connection, int first, int last) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      for (int version = first; version <= last; version++) {
        statement.executeUpdate(Migration.shipped(version).script());
      }
    }
  }

  private static List<String> newerThan337(Connection connection) throws SQLException {
    List<String> found = new ArrayList<>();
    try (Statement statement = connection.createStatement();
        ResultSet rows =
            statement.executeQuery(
                "SELECT name, sql FROM sqlite_schema WHERE sql IS NOT NULL ORDER BY name")) {
      while (rows.next()) {
        String name = rows.getString("name");
        newerThan337(rows.getString("sql")).forEach(word -> found.add(name + ": " + word));
      }
    }
    return found;
  }

  private static List<String> newerThan337(String sql) {
    List<String> tokens = tokens(sql);
    List<String> found = new ArrayList<>();
    Deque<String> calls = new ArrayDeque<>(); // of each open bracket, the function called, or ""
    for (int i = 0; i < tokens.size(); i++) {
      String token = tokens.get(i);
      String before = at(tokens, i - 1);
      if (token.equals("(")) {
        boolean isCall =
            before.matches("[a-z]\\w*")
                && !KEYWORDS.contains(before)
                && !BEFORE_A_TABLE.contains(at(tokens, i - 2));
        calls.push(isCall ? before : "");
        // after OR stands what holds where it is NULL; WHEN takes 0 and NULL alike
        if (before.equals("json_valid") && !Set.of("or", "when").contains(at(tokens, i - 2))) {
          found.add("json_valid() of what may be NULL");
        }
        if (isCall && !FUNCTIONS.contains(before)) {
          found.add("function " + before + "()");
        }
      } else if (token.equals(")")) {
        calls.pop();
      } else if (token.equals("order") && !calls.isEmpty() && !calls.peek().isEmpty()) {
        found.add("ORDER BY inside " + calls.peek() + "()");
      } else if (token.startsWith("->")) {
        found.add("operator " + token);
      } else if (token.equals("distinct") && (before.equals("is") || before.equals("not"))) {
        found.add("IS DISTINCT FROM");
      } else if (token.equals("full") || token.equals("right")) {
        found.add(token.toUpperCase(Locale.ROOT) + " JOIN");
      } else if (token.matches("\\d\\w*_\\w*")) {
        found.add(token);
      }
    }
    return found;
  }

  private static String at(List<String> tokens, int i) {
    return i < 0 ? "" : tokens.get(i);
  }

  private static List<String> tokens(String sql) {
    List<String> tokens = new ArrayList<>();
    Matcher token = TOKEN.matcher(sql.toLowerCase(Locale.ROOT));
    while (token.find()) {
      if (!token.group().startsWith("--")) {
        tokens.add(token.group());
      }
    }
    return tokens;
  }
}
