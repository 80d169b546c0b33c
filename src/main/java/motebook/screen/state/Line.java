package motebook.screen.state;

import java.text.BreakIterator;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import motebook.model.Text;

/**
 * The line that is being typed.
 *
 * @param text clean text; unlike a stored text it may begin or end with a space
 * @param caret index in the text before which the next character goes
 * @param reading what was last made of it, possibly of an earlier text
 * @param pick which completion stands in the text, or −1 for none
 * @param sent whether it is on its way into the book
 * @param past which line said before stands in it, 0 for the last, or −1 for none
 */
public record Line(
    String text, int caret, Optional<Reading> reading, int pick, boolean sent, int past) {
  /** Nothing typed. */
  public static final Line EMPTY = new Line("", 0, Optional.empty(), -1, false, -1);

  /** The longest line that is taken, in characters; what goes beyond is not typed. */
  public static final int LONGEST = 5000;

  /** A line with the caret at its end. */
  public static Line of(String raw) {
    return EMPTY.typed(raw);
  }

  /** Whether there is nothing in it. */
  public boolean blank() {
    return text.isBlank();
  }

  /** The line after some text was typed at the caret. */
  Line typed(String raw) {
    String before = Normalizer.normalize(text.substring(0, caret) + fit(raw), Normalizer.Form.NFC);
    String whole = before + text.substring(caret);
    return whole.length() > LONGEST ? this : changed(whole, before.length());
  }

  // The bars keep the spaces at both ends, which cleaning would trim.
  private static String fit(String raw) {
    String fenced = Text.clean("|" + raw + "|");
    return fenced.substring(1, fenced.length() - 1);
  }

  private Line changed(String newText, int newCaret) {
    return new Line(newText, newCaret, reading, -1, false, past);
  }

  private Line at(int newCaret) {
    return new Line(text, newCaret, reading, pick, sent, past);
  }

  Line left() {
    return at(before(caret));
  }

  Line right() {
    return at(after(caret));
  }

  Line home() {
    return at(0);
  }

  Line end() {
    return at(text.length());
  }

  Line backspace() {
    return without(before(caret), caret);
  }

  Line delete() {
    return without(caret, after(caret));
  }

  Line withoutWord() {
    int from = text.substring(0, caret).stripTrailing().lastIndexOf(' ') + 1;
    return without(from, caret);
  }

  private Line without(int from, int to) {
    return from == to ? this : changed(text.substring(0, from) + text.substring(to), from);
  }

  private int before(int index) {
    return index == 0 ? 0 : letters().preceding(index);
  }

  private int after(int index) {
    return index == text.length() ? index : letters().following(index);
  }

  private BreakIterator letters() {
    BreakIterator letters = BreakIterator.getCharacterInstance(Locale.ROOT);
    letters.setText(text);
    return letters;
  }

  /** The next completion (or the one before) in the place of the text; itself if there is none. */
  Line completed(int by) {
    List<String> choices = choices();
    if (choices.isEmpty()) {
      return this;
    }
    int next = pick < 0 ? (by > 0 ? 0 : choices.size() - 1) : pick + by;
    int turned = Math.floorMod(next, choices.size());
    String choice = choices.get(turned);
    return new Line(choice, choice.length(), reading, turned, false, past);
  }

  /** What it could become, best first; none unless they were found for this text. */
  public List<String> choices() {
    return reading
        .filter(r -> pick >= 0 || r.text().equals(text))
        .map(Reading::completions)
        .orElse(List.of());
  }

  /** What was made of exactly this text, if that is known already. */
  public Optional<Reading> current() {
    return reading.filter(r -> r.text().equals(text));
  }

  /** A reading has come; while completions are gone through, the first list of them is kept. */
  Line read(Reading fresh) {
    if (!fresh.text().equals(text)) {
      return this;
    }
    Reading kept =
        pick < 0 ? fresh : new Reading(fresh.text(), fresh.understood(), fresh.fault(), choices());
    return new Line(text, caret, Optional.of(kept), pick, sent, past);
  }

  Line sending() {
    return new Line(text, caret, reading, pick, true, past);
  }

  Line refused(Fault fault) {
    Reading refusal = new Reading(text, Optional.empty(), Optional.of(fault), choices());
    return new Line(text, caret, Optional.of(refusal), -1, false, past);
  }

  /**
   * Another of the lines said before in the place of the text; itself beyond their ends. What was
   * typed is given up only where it is such a line or empty.
   *
   * @param lines newest first
   * @param by 1 for an older one, −1 for a newer one
   */
  Line recalled(List<String> lines, int by) {
    boolean typed = !blank() && (past < 0 || past >= lines.size() || !lines.get(past).equals(text));
    int next = past + by;
    if (typed || next >= lines.size() || next < -1) {
      return this;
    }
    String recalled = next < 0 ? "" : lines.get(next);
    return new Line(recalled, recalled.length(), reading, -1, false, next);
  }
}
