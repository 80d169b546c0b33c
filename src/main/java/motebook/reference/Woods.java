package motebook.reference;

import java.io.Reader;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/** The woods without figures of their own; read only when a name is not known. */
public final class Woods {
  private static final String NAME = "woods.csv";

  private final List<Wood> rows;

  private Woods(Function<String, Reader> table) {
    Reference reference = Reference.shipped();
    rows =
        Table.read(
            NAME,
            table.apply(NAME),
            List.of("name", "also", "stands", "advice", "source"),
            row -> wood(row, reference));
  }

  private static Wood wood(Row row, Reference reference) {
    Optional<String> stands = material(row, reference);
    if (stands.isPresent() != row.text("advice").isEmpty()) {
      throw row.wrong("advice", "given where no material stands for it, and only then");
    }
    return new Wood(
        row.word("name"), row.words("also", ";"), stands, row.text("advice"), row.word("source"));
  }

  private static Optional<String> material(Row row, Reference reference) {
    String key = row.text("stands");
    if (key.isEmpty()) {
      return Optional.empty();
    }
    if (reference.materials().stream().noneMatch(material -> material.key().equals(key))) {
      throw row.wrong("stands", "\"" + key + "\" is not in materials.csv");
    }
    return Optional.of(key);
  }

  /** The table that the program ships. */
  public static Woods shipped() {
    return Shipped.TABLE;
  }

  /**
   * The shipped table after an edit of its text; what the tests of the table work with.
   *
   * @throws WrongTable at the first thing that is not as it must be
   */
  static Woods edited(Function<String, UnaryOperator<String>> edit) {
    return new Woods(Reference.editor(edit));
  }

  public List<Wood> all() {
    return rows;
  }

  private static final class Shipped {
    static final Woods TABLE = new Woods(Reference::open);
  }
}
