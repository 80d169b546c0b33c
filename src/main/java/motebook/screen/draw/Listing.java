package motebook.screen.draw;

/** Draws a window of a list: only the rows that are seen are touched, however long it is. */
final class Listing {
  private Listing() {}

  /** Draws one row of the list. */
  @FunctionalInterface
  interface Line {
    void draw(int row, int index);
  }

  /** Draws the part of a list around the chosen line between two rows. */
  static void draw(int top, int end, int size, int chosen, Line line) {
    int room = Math.max(0, end - top);
    int first = Math.max(0, Math.min(chosen - room / 2, size - room));
    for (int row = 0; row < room && first + row < size; row++) {
      line.draw(top + row, first + row);
    }
  }
}
