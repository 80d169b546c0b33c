package motebook.journal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import motebook.journal.Deed.Subject;
import motebook.model.Favourite;
import motebook.model.Refusal;
import motebook.model.Text;

/** The lines that are said often, each under a name. */
public final class Favourites {
  private final Store store;
  private final Changes changes;

  Favourites(Store store, Changes changes) {
    this.store = store;
    this.changes = changes;
  }

  /** All of them, in the order in which they were added. */
  public List<Favourite> all() {
    return store.list("favourites", Favourites::read);
  }

  private static Favourite read(ResultSet row) throws SQLException {
    return new Favourite(row.getLong("id"), row.getString("name"), row.getString("line"));
  }

  /**
   * Keeps a line under a name.
   *
   * @throws Refusal if the name is taken, whatever its case, or cannot be a name
   */
  public Favourite add(String name, String line) {
    Favourite wanted = new Favourite(0, name, line);
    return changes.make(
        Deed.added(Subject.FAVOURITE, wanted.name(), "Added favourite " + wanted.name()),
        () -> insert(wanted));
  }

  private Favourite insert(Favourite wanted) {
    String name = known().fresh(wanted.name());
    long id = store.number("favourite-insert", name, Text.folded(name), wanted.line());
    return new Favourite(id, name, wanted.line());
  }

  /**
   * Forgets a line.
   *
   * @throws Refusal if none has that name
   */
  public void remove(String name) {
    changes.make(
        Deed.removed(Subject.FAVOURITE, name, "Removed favourite " + name),
        () -> store.run("favourite-delete", known().idOf(name)));
  }

  private Known known() {
    return new Known("favourite", store.list("favourites", Known.Name::read));
  }
}
