package motebook.reference;

import java.io.Reader;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/** Words of every day that no operation is called by alone; read when a name is not known. */
public final class EverydayWords {
  private static final String NAME = "everyday.csv";

  private final List<EverydayWord> rows;

  private EverydayWords(Function<String, Reader> table) {
    Reference reference = Reference.shipped();
    rows =
        Table.read(
            NAME,
            table.apply(NAME),
            List.of("words", "operations", "nearest", "advice", "source"),
            row ->
                new EverydayWord(
                    row.words("words", ";"),
                    operations(row, reference),
                    row.yes("nearest"),
                    row.text("advice"),
                    row.word("source")));
  }

  private static List<String> operations(Row row, Reference reference) {
    List<String> keys = row.words("operations", " ");
    for (String key : keys) {
      if (reference.operations().stream().noneMatch(operation -> operation.key().equals(key))) {
        throw row.wrong("operations", "\"" + key + "\" is not in operations.csv");
      }
    }
    return keys;
  }

  /** The table that the program ships. */
  public static EverydayWords shipped() {
    return Shipped.TABLE;
  }

  /**
   * The shipped table after an edit of its text; what the tests of the table work with.
   *
   * @throws WrongTable at the first thing that is not as it must be
   */
  static EverydayWords edited(Function<String, UnaryOperator<String>> edit) {
    return new EverydayWords(Reference.editor(edit));
  }

  public List<EverydayWord> all() {
    return rows;
  }

  private static final class Shipped {
    static final EverydayWords TABLE = new EverydayWords(Reference::open);
  }
}
