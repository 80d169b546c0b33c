package motebook.screen.terminal;

import com.googlecode.lanterna.input.CharacterPattern;
import com.googlecode.lanterna.input.KeyDecodingProfile;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.util.List;

/** Knows the marks that a terminal puts around pasted text. */
final class PasteBracket implements CharacterPattern {
  /** What comes before pasted text. */
  static final KeyStroke BEGIN = new KeyStroke(KeyType.Unknown, true, false);

  /** What comes after pasted text. */
  static final KeyStroke END = new KeyStroke(KeyType.Unknown, false, true);

  static final KeyDecodingProfile PROFILE =
      () -> List.of(new PasteBracket("\u001b[200~", BEGIN), new PasteBracket("\u001b[201~", END));

  private final String mark;
  private final KeyStroke key;

  private PasteBracket(String mark, KeyStroke key) {
    this.mark = mark;
    this.key = key;
  }

  @Override
  public Matching match(List<Character> sequence) {
    StringBuilder read = new StringBuilder();
    sequence.forEach(read::append);
    if (mark.contentEquals(read)) {
      return new Matching(key);
    }
    return mark.startsWith(read.toString()) ? Matching.NOT_YET : null;
  }
}
