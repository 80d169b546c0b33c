package motebook.journal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import motebook.journal.Flawed.Reason;
import motebook.journal.Sessions.Column;
import motebook.model.OwnFinish;
import motebook.model.Refusal;
import motebook.model.Session;
import motebook.reference.Finishes;

/**
 * Tells sessions that can be gone by from those that cannot: a row that is not what the history
 * holds of it, or that names what this program does not know, must not be estimated.
 */
final class Soundness {
  private static final List<String> UNREADABLE =
      List.of("What the history holds of it cannot be read.");

  private final Store store;
  private final LocalDate first;
  private final RowHistory history;
  private final List<Flawed> flawed = new ArrayList<>();
  private Set<String> ownFinishes;

  /**
   * @param first the first of the days that are read, for rows whose own day cannot be read
   */
  Soundness(Store store, LocalDate first) {
    this.store = store;
    this.first = first;
    history = new RowHistory(store);
  }

  /** The session that the row is; null where it cannot be gone by. */
  Session read(ResultSet row) throws SQLException {
    List<String> damage = damage(row);
    Optional<Session> session = session(row);
    if (!damage.isEmpty() || session.isEmpty()) {
      flawed.add(flawed(row, damage.isEmpty() ? Reason.IMPOSSIBLE : Reason.DAMAGED, damage));
      return null;
    }
    List<String> unknown = unknown(session.get());
    if (!unknown.isEmpty()) {
      flawed.add(flawed(row, Reason.UNKNOWN, unknown));
      return null;
    }
    return session.get();
  }

  /** What was read and cannot be gone by. */
  List<Flawed> flawed() {
    return flawed;
  }

  private static Optional<Session> session(ResultSet row) throws SQLException {
    if (row.getString(Column.PERSON) == null || row.getString(Column.PLACE) == null) {
      return Optional.empty();
    }
    try {
      return Optional.of(Sessions.read(row));
    } catch (Refusal | DateTimeException | NumberFormatException e) {
      return Optional.empty();
    }
  }

  private List<String> damage(ResultSet row) throws SQLException {
    if (!row.getBoolean(Column.DOUBTED)) {
      return List.of();
    }
    try {
      List<Mismatch> damage = history.ofSession(row.getLong(Column.ID));
      return damage.isEmpty() || history.unreadable() == 0
          ? damage.stream().map(Mismatch::sentence).toList()
          : UNREADABLE;
    } catch (BookTrouble e) {
      return UNREADABLE;
    }
  }

  private List<String> unknown(Session session) {
    return KnownKeys.unknown(
        session.work(), session.work().amounts().isEmpty() ? Set.of() : ownFinishes());
  }

  private Set<String> ownFinishes() {
    if (ownFinishes == null) {
      ownFinishes = ownFinishes(store);
    }
    return ownFinishes;
  }

  /** The keys of the finishes from data sheets that this program knows all about. */
  static Set<String> ownFinishes(Store store) {
    return OwnFinishes.known(store).stream()
        .map(OwnFinish::name)
        .map(Finishes.shipped()::key)
        .collect(Collectors.toSet());
  }

  private Flawed flawed(ResultSet row, Reason reason, List<String> details) throws SQLException {
    return new Flawed(
        row.getLong(Column.ID),
        date(row.getString(Column.DATE)),
        Optional.ofNullable(row.getString(Column.PERSON)),
        row.getInt(Column.START_MINUTE),
        row.getInt(Column.MINUTES),
        row.getString(Column.OPERATION),
        reason,
        details);
  }

  private LocalDate date(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeException e) {
      return first;
    }
  }
}
