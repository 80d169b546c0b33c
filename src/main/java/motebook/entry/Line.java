package motebook.entry;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import motebook.model.Refusal;
import motebook.model.Text;

/** A line cut into words up to its note; every refusal it makes points into the line as given. */
final class Line {
  /** Longest line without its note, in characters. */
  static final int LONGEST = 4000;

  private final String original;
  private final Settled settled;
  private final List<Token> tokens;
  private final int noteWordFrom;
  private final int noteFrom;

  private Line(String original) {
    this.original = original;
    settled = Settled.of(original);
    List<Token> all = Token.upToNote(settled.text());
    boolean noted = !all.isEmpty() && all.get(all.size() - 1).opensNote();
    noteFrom = noted ? settled.originAfter(all.get(all.size() - 1).to()) : -1;
    noteWordFrom = noted ? settled.originOf(all.get(all.size() - 1).from()) : original.length();
    tokens = noted ? all.subList(0, all.size() - 1) : all;
  }

  /**
   * The line, cut into words.
   *
   * @throws Refusal if it is too long or its note is
   */
  static Line of(String original) {
    Line line = new Line(original);
    int length = line.noteFrom < 0 ? original.length() : line.noteFrom;
    if (length > LONGEST) {
      throw new Refusal(
          "A line holds up to "
              + LONGEST
              + " characters before its note; this one has "
              + length
              + ". Shorten it.");
    }
    return line;
  }

  /** The number of words before the note. */
  int size() {
    return tokens.size();
  }

  Token token(int index) {
    return tokens.get(index);
  }

  boolean is(int index, String word) {
    return index < size() && token(index).word().equals(word);
  }

  boolean isJoint(int index) {
    return index < size() && token(index).joint();
  }

  boolean hasNote() {
    return noteFrom >= 0;
  }

  /** Whether the last word is finished: a gap, a comma or a hyphen follows it. */
  boolean endsInGap() {
    String text = settled.text();
    return tokens.isEmpty() || token(size() - 1).to() < text.length();
  }

  /**
   * The note, cleaned; empty where there is none.
   *
   * @throws Refusal that points at it if it is too long
   */
  String note() {
    try {
      return hasNote() ? Text.note(original.substring(noteFrom)) : "";
    } catch (Refusal tooLong) {
      throw new Refusal(tooLong.getMessage(), noteFrom, original.length());
    }
  }

  /** Index in the line as given of the word that opens the note; its length where none does. */
  int noteWordFrom() {
    return noteWordFrom;
  }

  /** The words as names are compared, one space between them. */
  String words(int from, int to) {
    return tokens.subList(from, to).stream().map(Token::word).collect(Collectors.joining(" "));
  }

  /** The words as they were typed, with what stands between them; cut short where they are many. */
  String typed(int from, int to) {
    return from >= to
        ? ""
        : Wording.shortened(
            Text.clean(settled.text().substring(token(from).from(), token(to - 1).to())));
  }

  /** The words as they were typed, with the minus sign before them if there is one. */
  String typedSigned(int from, int to) {
    boolean signed = from < to && signedFrom(token(from)) < token(from).from();
    return (signed ? "-" : "") + typed(from, to);
  }

  /** The words as they were typed, with the marks that stand directly before and after them. */
  String typedWithMarks(int from, int to) {
    String text = settled.text();
    int start = from == 0 ? 0 : token(from - 1).to();
    int end = to < size() ? token(to).from() : hasNote() ? token(to - 1).to() : text.length();
    return Text.clean(text.substring(start, end));
  }

  /** A matcher that looks from the word on; from its minus sign, if it has one. */
  Matcher matcherAt(Pattern pattern, int index) {
    Matcher matcher = pattern.matcher(settled.text());
    return matcher.region(index < size() ? signedFrom(token(index)) : end(), end());
  }

  private int signedFrom(Token token) {
    boolean signed = token.from() > 0 && settled.text().charAt(token.from() - 1) == '-';
    return signed ? token.from() - 1 : token.from();
  }

  private int end() {
    return hasNote() && size() > 0 ? token(size() - 1).to() : settled.text().length();
  }

  /** Index of the first word that starts at or after a place in the settled text. */
  int wordAfter(int place) {
    int index = 0;
    while (index < size() && token(index).from() < place) {
      index++;
    }
    return index;
  }

  /** Index in the line as given of the first character of a word. */
  int originalFrom(int index) {
    return settled.originOf(token(index).from());
  }

  /** The line as given with other text in the place of some of its words. */
  String withWords(int from, int to, String text) {
    return original.substring(0, settled.originOf(token(from).from()))
        + text
        + original.substring(settled.originAfter(token(to - 1).to()));
  }

  /** A refusal that points at some of the words; at none where the range is empty. */
  Refusal refusal(String message, int from, int to) {
    return refusal(new Refusal(message), from, to);
  }

  /** The same of a refusal that points nowhere yet. */
  Refusal refusal(Refusal what, int from, int to) {
    return from >= to
        ? what
        : what.at(settled.originOf(token(from).from()), settled.originAfter(token(to - 1).to()));
  }
}
