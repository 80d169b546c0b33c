package motebook.journal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import motebook.journal.Changes.Decided;
import motebook.journal.Deed.Subject;
import motebook.model.OwnFinish;
import motebook.model.Refusal;
import motebook.model.Text;
import motebook.reference.Finishes;

/** The finishes that the owner entered from makers' data sheets. */
public final class OwnFinishes {
  private final Store store;
  private final Changes changes;

  OwnFinishes(Store store, Changes changes) {
    this.store = store;
    this.changes = changes;
  }

  /**
   * All of them, in the order in which they were added, but those that speak of what this program
   * does not know: sessions that used one are not estimated.
   */
  public List<OwnFinish> all() {
    return known(store);
  }

  static List<OwnFinish> known(Store store) {
    return read(store).stream().filter(sheet -> KnownKeys.unknown(sheet).isEmpty()).toList();
  }

  /** The days on which an amount of any finish was used. */
  public Set<LocalDate> days() {
    return Set.copyOf(
        store.list("days-with-finishes", row -> LocalDate.parse(row.getString("date"))));
  }

  static List<OwnFinish> read(Store store) {
    return store.list("finishes", OwnFinishes::read);
  }

  private static OwnFinish read(ResultSet row) throws SQLException {
    return new OwnFinish(
        row.getString("name"),
        row.getString("dries_like"),
        row.getDouble("volatile_g_per_l"),
        solvents(row.getString("solvents")),
        Row.optional(row, "retired_on").map(LocalDate::parse));
  }

  /** A line each: the solvent, a tab, its share. */
  private static Map<String, Double> solvents(String text) {
    Map<String, Double> solvents = new LinkedHashMap<>();
    text.lines()
        .map(line -> line.split("\t", -1))
        .forEach(cells -> solvents.put(cells[0], Double.valueOf(cells[1])));
    return solvents;
  }

  /**
   * Enters a data sheet.
   *
   * @throws Refusal if there is one of that name, whatever its case
   */
  public OwnFinish add(OwnFinish sheet) {
    return changes.make(
        Deed.added(Subject.FINISH, sheet.name(), "Added finish " + sheet.name()),
        () -> {
          known().fresh(sheet.name());
          write(sheet);
          return sheet;
        });
  }

  /**
   * Puts a data sheet in the place of the one of the same name.
   *
   * @throws Refusal if there is none of that name
   */
  public OwnFinish replace(OwnFinish sheet) {
    return changes.make(
        Deed.changed(Subject.FINISH, sheet.name(), "Changed finish " + sheet.name()),
        () -> {
          long old = known().idOf(sheet.name());
          delete(old, sheet.name());
          write(sheet);
          return sheet;
        });
  }

  private void delete(long id, String name) {
    store.run("finish-take-back", Text.folded(name));
    store.run("finish-solvents-delete", id);
    store.run("finish-delete", id);
  }

  /** Whether there is a data sheet of that name, whatever its case. */
  public boolean holds(String name) {
    return read(store).stream()
        .anyMatch(sheet -> Text.folded(sheet.name()).equals(Text.folded(name)));
  }

  /** What became of a data sheet that was to be removed. */
  public enum Removed {
    /** No session refers to it. */
    DELETED,
    /** The shipped finish of that name counts again, in every session. */
    SHIPPED_AGAIN,
    /** Sessions refer to it: it stays for them and is not used in new ones. */
    RETIRED
  }

  /**
   * Takes a data sheet out. One that sessions refer to by a name of its own is retired instead,
   * since they could not be reckoned without.
   *
   * @param on the last day on which it may have been used, if it is retired
   * @throws Refusal if there is none of that name, or it was retired already
   */
  public Removed remove(String name, LocalDate on) {
    return changes.make(() -> removal(known().get(name), on));
  }

  private Decided<Removed> removal(Known.Name known, LocalDate on) {
    String name = known.name();
    String key = Finishes.shipped().key(name);
    boolean used = store.number("finish-in-sessions", key) > 0;
    if (used && !Finishes.shipped().holds(key)) {
      return new Decided<>(
          Deed.changed(Subject.FINISH, name, "Retired the finish " + name),
          () -> retired(name, on));
    }
    return new Decided<>(
        Deed.removed(Subject.FINISH, name, "Deleted the finish " + name),
        () -> {
          delete(known.id(), name);
          return used ? Removed.SHIPPED_AGAIN : Removed.DELETED;
        });
  }

  private Removed retired(String name, LocalDate on) {
    requireInUse(name);
    store.run("finish-retire", Text.folded(name), on);
    return Removed.RETIRED;
  }

  private void requireInUse(String name) {
    all().stream()
        .filter(sheet -> sheet.name().equals(name))
        .flatMap(sheet -> sheet.retiredOn().stream())
        .forEach(
            day -> {
              throw new Refusal("\"%s\" was retired on %s already.".formatted(name, day));
            });
  }

  private void write(OwnFinish sheet) {
    long id =
        store.number(
            "finish-insert",
            sheet.name(),
            Text.folded(sheet.name()),
            sheet.like(),
            sheet.volatileGPerL());
    int position = 0;
    for (Map.Entry<String, Double> part : sheet.solvents().entrySet()) {
      store.run("finish-solvent-insert", id, position++, part.getKey(), part.getValue());
    }
  }

  private Known known() {
    return new Known("finish", store.list("finish-names", Known.Name::read));
  }
}
