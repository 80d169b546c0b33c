package motebook.screen.state;

/**
 * The size of a terminal in character cells.
 *
 * @param columns at least 1
 * @param rows at least 1
 */
public record Size(int columns, int rows) {
  /** The smallest terminal in which the screens are drawn. */
  public static final Size SMALLEST = new Size(60, 15);

  /** The size that the screens are designed for. */
  public static final Size USUAL = new Size(80, 24);

  /** Whether the other fits into this one. */
  public boolean holds(Size other) {
    return columns >= other.columns && rows >= other.rows;
  }
}
