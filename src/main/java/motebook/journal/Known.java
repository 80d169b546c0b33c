package motebook.journal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.stream.Collectors;
import motebook.model.Names;
import motebook.model.Refusal;
import motebook.model.Text;

/**
 * The names of one kind that the book knows, each once whatever its case and its composition.
 *
 * @param kind what is named, for messages: "person", "place"
 * @param names in the order in which they were added
 */
record Known(String kind, List<Name> names) {

  /** A name, its number in the book, and the form in which names are compared. */
  record Name(long id, String name, String folded) {
    static Name read(ResultSet row) throws SQLException {
      return new Name(row.getLong("id"), row.getString("name"), row.getString("folded"));
    }
  }

  /** The number of a name; refuses as {@link #get}. */
  long idOf(String raw) {
    return get(raw).id;
  }

  /** The numbers of some names, each once; refuses as {@link #get}. */
  List<Long> idsOf(List<String> raw) {
    return raw.stream().map(this::idOf).distinct().toList();
  }

  /**
   * The name as the book has it.
   *
   * @throws Refusal naming the known ones, if it is none of them
   */
  Name get(String raw) {
    String folded = Text.folded(raw);
    return names.stream()
        .filter(name -> name.folded.equals(folded))
        .findFirst()
        .orElseThrow(() -> unknown(raw));
  }

  private Refusal unknown(String raw) {
    String known = names.stream().map(Name::name).collect(Collectors.joining(", "));
    return new Refusal(
        "The book knows no " + kind + " \"" + Text.clean(raw) + "\". It knows: " + known + ".");
  }

  /**
   * A cleaned name that is new to the book.
   *
   * @throws Refusal if it cannot be a name or is taken
   */
  String fresh(String raw) {
    String name = Names.check(kind, raw);
    String folded = Text.folded(name);
    for (Name other : names) {
      if (other.folded.equals(folded)) {
        throw new Refusal(
            "There is a " + kind + " \"" + other.name + "\" already. Choose another name.");
      }
    }
    return name;
  }

  /** The other names, among which this one may take a new form. */
  Known without(long id) {
    return new Known(kind, names.stream().filter(name -> name.id != id).toList());
  }
}
