package motebook.reference;

import static org.assertj.core.api.Assertions.assertThat;

/** Edits of a table's text, for the tests of what a wrong table is told by. */
final class Edits {
  private Edits() {}

  /** The text with the first occurrence replaced; it must have one. */
  static String replaceFirst(String text, String was, String is) {
    int at = text.indexOf(was);
    assertThat(at).as("the table holds " + was).isNotNegative();
    return text.substring(0, at) + is + text.substring(at + was.length());
  }
}
