package motebook.reference;

/** A shipped table that does not hold what it must; names table, row and column. */
public final class WrongTable extends IllegalStateException {
  private static final long serialVersionUID = 1L;

  WrongTable(String table, long row, String column, String what) {
    super(table + ", row " + row + ", column " + column + ": " + what);
  }
}
