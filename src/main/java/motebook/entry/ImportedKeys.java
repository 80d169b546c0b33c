package motebook.entry;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import motebook.journal.Column;
import motebook.journal.Kind;
import motebook.journal.KnownKeys;
import motebook.model.Refusal;
import motebook.model.Text;
import motebook.reference.Finishes;

/**
 * Sees to it that the keys in a book that comes in are those of the tables, or of the book's own.
 */
final class ImportedKeys {
  private static final Map<String, String> TABLES =
      Map.of(
          "settings limit_set", "limits",
          "elements class", "elements",
          "finishes dries_like", "finishes",
          "finishes solvents_weight_share", "solvents",
          "sessions operation", "operations",
          "sessions material", "materials",
          "sessions controls", "controls",
          "sessions finishes_ml", "finishes");
  private static final String OWN_FINISHES = "finishes";

  private final Set<String> own = new HashSet<>();

  /**
   * Takes a cell in.
   *
   * @throws Refusal if it names what nobody knows, as a sentence without its subject
   */
  void check(Kind kind, Column column, Object value) {
    if (value != null && kind.name().equals(OWN_FINISHES) && column.name().equals("name")) {
      own.add(Finishes.shipped().key((String) value));
    }
    String table = TABLES.get(kind.name() + " " + column.name());
    if (table != null && value != null) {
      named(value).forEach(key -> require(key, table, kind));
    }
  }

  private static List<String> named(Object value) {
    return value instanceof List<?> items
        ? items.stream().map(item -> (String) ((List<?>) item).get(0)).toList()
        : List.of((String) value);
  }

  private void require(String key, String table, Kind kind) {
    Set<String> known = new HashSet<>(KnownKeys.of(table));
    if (table.equals(OWN_FINISHES) && !kind.name().equals(OWN_FINISHES)) {
      known.addAll(own);
    }
    if (!known.contains(key)) {
      List<String> near = NearMiss.words(key, known.stream().sorted().toList());
      throw new Refusal(
          "names \""
              + Text.clean(key)
              + "\", which this Motebook does not know"
              + (near.isEmpty() ? "" : "; near it is " + String.join(", ", near)));
    }
  }
}
