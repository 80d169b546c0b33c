package motebook.journal;

import static motebook.journal.Shop.MONDAY;
import static motebook.journal.Shop.work;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import motebook.model.Amount;
import motebook.model.Session;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A disk or a sync program that changes one bit of a row: nothing on record may be taken for what
 * was logged, and what was logged comes back from the history.
 */
class FlippedBitTest {
  private static final int FLIPS = 120;

  @TempDir Path folder;
  private byte[] sound;
  private List<String> rows;
  private List<Session> logged;

  @BeforeEach
  void write() throws IOException {
    try (Book book = Shop.open(folder)) {
      for (int hour = 6; hour < 18; hour++) {
        book.log(
            work("%02d:00".formatted(hour), 35).using(List.of(new Amount("shellac", 20 + hour))));
      }
      book.amend(3, work("08:05", 40));
      book.delete(5);
      logged = book.sessionsOn(MONDAY);
      assertThat(book.verify()).isEmpty();
    }
    sound = Files.readAllBytes(Shop.file(folder));
    rows = Shop.content(folder);
  }

  @Test
  void every_flip_in_a_session_is_found_and_none_is_estimated() throws Exception {
    flips("session", new Random(1));
  }

  @Test
  void every_flip_in_the_controls_is_found_and_none_is_estimated() throws Exception {
    flips("session_control", new Random(2));
  }

  @Test
  void every_flip_in_the_amounts_is_found_and_none_is_estimated() throws Exception {
    flips("session_finish", new Random(3));
  }

  @Test
  void every_flip_in_the_figures_of_places_is_found() throws Exception {
    flips("place_version", new Random(4));
  }

  @Test
  void a_row_of_the_history_that_cannot_be_read_is_told_as_damage() throws Exception {
    String file = new String(sound, StandardCharsets.ISO_8859_1);
    int at = file.lastIndexOf("{\"id\":1,\"person_id\"");
    assertThat(at).isPositive();
    byte[] flipped = sound.clone();
    flipped[at] = 'z';
    Files.write(Shop.file(folder), flipped);
    try (Book book = Shop.open(folder)) {
      assertThat(book.verify()).anyMatch(told -> told.contains("The history is damaged"));
      assertThat(logged).containsAll(book.sessionsOn(MONDAY));
      assertThatThrownBy(() -> book.mending().fromHistory()).isInstanceOf(BookTrouble.class);
      assertThatThrownBy(() -> Stream.generate(book.changes()::undo).allMatch(Optional::isPresent))
          .isInstanceOf(BookTrouble.class)
          .hasMessageContaining("damaged");
    }
  }

  private void flips(String table, Random random) throws Exception {
    List<Integer> bytes = payload(table);
    int changed = 0;
    int mended = 0;
    for (int i = 0; i < FLIPS; i++) {
      int at = bytes.get(random.nextInt(bytes.size()));
      int bit = random.nextInt(8);
      byte[] flipped = sound.clone();
      flipped[at] ^= (byte) (1 << bit);
      Files.write(Shop.file(folder), flipped);
      boolean changes = changed();
      changed += changes ? 1 : 0;
      mended += toldAndMended("bit " + bit + " of byte " + at, changes) ? 1 : 0;
    }
    assertThat(changed).isGreaterThan(FLIPS * 3 / 4);
    assertThat(mended).isGreaterThan(FLIPS / 3);
  }

  /** What the flip changed is told, no day holds it, and what comes back is what was logged. */
  private boolean toldAndMended(String which, boolean changed) {
    try (Book book = Shop.open(folder)) {
      List<String> problems = book.verify();
      assertThat(changed && problems.isEmpty()).as(which + " is not told").isFalse();
      assertThat(logged).as(which).containsAll(book.sessionsOn(MONDAY));
      if (!changed) {
        return false;
      }
      book.mending().fromHistory();
      assertThat(book.verify()).as(which).isEmpty();
      assertThat(Shop.content(folder)).as(which).isEqualTo(rows);
      return true;
    } catch (BookTrouble told) {
      assertThat(told.getMessage()).as(which).doesNotContain("SQL");
      return false;
    }
  }

  private boolean changed() {
    try {
      return !Shop.content(folder).equals(rows);
    } catch (IllegalStateException unreadable) {
      return true;
    }
  }

  /**
   * Where the rows of a table stand in the file, of which each is on one page: from the file format
   * of SQLite (sqlite.org/fileformat2.html, "B-tree Pages").
   */
  private List<Integer> payload(String table) throws SQLException {
    int page = rootPage(table);
    ByteBuffer file = ByteBuffer.wrap(sound);
    int size = Short.toUnsignedInt(file.getShort(16));
    int start = (page - 1) * size;
    int content = Short.toUnsignedInt(file.getShort(start + 5));
    List<Integer> bytes = new ArrayList<>();
    Stream.iterate(start + content, at -> at < start + size, at -> at + 1).forEach(bytes::add);
    return bytes;
  }

  private int rootPage(String table) throws SQLException {
    try (Connection connection = Shop.connect(folder);
        ResultSet row =
            connection
                .createStatement()
                .executeQuery("SELECT rootpage FROM sqlite_schema WHERE name = '" + table + "'")) {
      row.next();
      return row.getInt(1);
    }
  }
}
