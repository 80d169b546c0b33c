package motebook.entry;

/** How far two spellings are apart. */
final class Spelling {
  private Spelling() {}

  /**
   * The number of letters left out, put in, changed or swapped with their neighbour that turns one
   * text into the other; optimal string alignment, in chars.
   *
   * @param most where the distance is larger than this, any larger number may be returned
   */
  static int distance(String a, String b, int most) {
    if (Math.abs(a.length() - b.length()) > most) {
      return most + 1;
    }
    int[] twoBack = new int[b.length() + 1];
    int[] back = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      back[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] row = row(a, b, i, back, twoBack);
      twoBack = back;
      back = row;
    }
    return back[b.length()];
  }

  private static int[] row(String a, String b, int i, int[] back, int[] twoBack) {
    int[] row = new int[b.length() + 1];
    row[0] = i;
    for (int j = 1; j <= b.length(); j++) {
      int change = back[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
      row[j] = Math.min(change, Math.min(back[j], row[j - 1]) + 1);
      if (i > 1 && j > 1 && swapped(a, b, i, j)) {
        row[j] = Math.min(row[j], twoBack[j - 2] + 1);
      }
    }
    return row;
  }

  private static boolean swapped(String a, String b, int i, int j) {
    return a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
  }
}
