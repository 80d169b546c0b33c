package motebook.entry;

import java.util.ArrayList;
import java.util.List;
import motebook.model.Names;
import motebook.model.Text;

/**
 * One word of a line or of a name.
 *
 * @param word as names are compared: composed, lower case
 * @param from index of its first character in the settled text
 * @param to index after its last character
 * @param afterComma whether a comma or a colon stands between it and the word before
 */
record Token(String word, int from, int to, boolean afterComma) {
  private static final char COLON = ':';
  private static final String WITHOUT = "w/o";

  /** Whether it is one of the words that give the line its joints. */
  boolean joint() {
    return Names.JOINTS.contains(word);
  }

  boolean opensNote() {
    return word.equals("note") || word.equals("note:");
  }

  /** The words of a settled text, up to and with the one that opens a note. */
  static List<Token> upToNote(String text) {
    return split(text, true);
  }

  /** All words of a settled text. */
  static List<Token> all(String text) {
    return split(text, false);
  }

  private static List<Token> split(String text, boolean stopAtNote) {
    List<Token> tokens = new ArrayList<>();
    boolean comma = false;
    int at = 0;
    while (at < text.length()) {
      if (separates(text, at)) {
        comma |= text.charAt(at) == ',' || text.charAt(at) == COLON;
        at++;
      } else {
        int to = wordEnd(text, at);
        Token token = new Token(word(text, at, to), at, to, comma);
        tokens.add(token);
        if (stopAtNote && token.opensNote()) {
          break;
        }
        comma = false;
        at = to;
      }
    }
    return List.copyOf(tokens);
  }

  private static String word(String text, int from, int to) {
    String typed = text.substring(from, to);
    if (typed.equalsIgnoreCase(WITHOUT)) {
      return "without";
    }
    boolean with = typed.equalsIgnoreCase("w") && to < text.length() && text.charAt(to) == '/';
    return with ? "with" : Text.folded(typed);
  }

  private static int wordEnd(String text, int from) {
    boolean without = text.regionMatches(true, from, WITHOUT, 0, WITHOUT.length());
    int to = without ? from + WITHOUT.length() : from;
    while (to < text.length() && !separates(text, to)) {
      to++;
    }
    return to < text.length() && isNote(text, from, to) ? to + 1 : to;
  }

  private static boolean isNote(String text, int from, int to) {
    return text.charAt(to) == COLON && Text.folded(text.substring(from, to)).equals("note");
  }

  // "9:15" is one word, "Ana: 40m" is two.
  private static boolean separates(String text, int at) {
    char c = text.charAt(at);
    boolean last = at + 1 == text.length() || text.charAt(at + 1) == ' ';
    return c == ' ' || c == '-' || c == ',' || c == '/' || (c == COLON && last);
  }
}
