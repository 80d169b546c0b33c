package motebook.screen.draw;

import java.util.Optional;

/** A drawn screen: one grapheme and one role for each character cell. */
public final class Cells {
  /** What stands in the cell behind a wide character. */
  public static final String TAIL = "";

  private final int columns;
  private final int rows;
  private final String[] graphemes;
  private final Role[] roles;
  private final Optional<Caret> caret;

  /**
   * Where the cursor of the terminal stands.
   *
   * @param column from 0
   * @param row from 0
   */
  public record Caret(int column, int row) {}

  Cells(int columns, int rows, String[] graphemes, Role[] roles, Optional<Caret> caret) {
    this.columns = columns;
    this.rows = rows;
    this.graphemes = graphemes.clone();
    this.roles = roles.clone();
    this.caret = caret;
  }

  public int columns() {
    return columns;
  }

  public int rows() {
    return rows;
  }

  /** The grapheme in a cell; {@link #TAIL} behind a wide one. */
  public String grapheme(int column, int row) {
    return graphemes[row * columns + column];
  }

  /** The role of a cell. */
  public Role role(int column, int row) {
    return roles[row * columns + column];
  }

  /** Where the cursor stands, if it is shown. */
  public Optional<Caret> caret() {
    return caret;
  }

  /** The text of a row without the spaces at its end. */
  public String line(int row) {
    StringBuilder line = new StringBuilder();
    for (int column = 0; column < columns; column++) {
      line.append(grapheme(column, row));
    }
    return line.toString().stripTrailing();
  }
}
