package motebook.screen.state;

import java.util.List;
import java.util.Locale;

/**
 * One field of a form.
 *
 * @param key what it stands for
 * @param label its name on the form
 * @param hint what may stand in it
 * @param lead the word that joins it to a spoken line; empty for none
 * @param line what stands in it
 * @param choices what it can be, where that is a matter of choosing
 */
public record Field(
    String key, String label, String hint, String lead, Line line, List<String> choices) {
  private static final String JOINT = " and ";

  public Field {
    choices = List.copyOf(choices);
  }

  /** What stands in it, without the spaces at its ends. */
  public String text() {
    return line.text().strip();
  }

  /** The part of the words of a line that may stand in it. */
  String words() {
    return switch (key) {
      case "minutes" -> WordsSheet.wanted("");
      case "material", "controls", "finishes", "place", "mask", "person", "start", "date" ->
          WordsSheet.wanted(lead);
      default -> WordsSheet.OPENING.key();
    };
  }

  Field with(Line other) {
    return new Field(key, label, hint, lead, other, choices);
  }

  Field offering(List<String> other) {
    return new Field(key, label, hint, lead, line, other);
  }

  /** Whether several choices may stand in it. */
  private boolean many() {
    return lead.equals("with");
  }

  /** The next choice (or the one before) that begins with what was typed; then any other. */
  Field chosen(int by) {
    List<String> fitting = choices;
    String last = last();
    int at = fitting.indexOf(last);
    if (at < 0 && !last.isEmpty()) {
      List<String> begun = begun(last);
      fitting = begun.isEmpty() ? choices : begun;
    }
    if (fitting.isEmpty()) {
      return this;
    }
    int next = at < 0 ? (by > 0 ? 0 : fitting.size() - 1) : Math.floorMod(at + by, fitting.size());
    return with(Line.of(before() + fitting.get(next)));
  }

  private List<String> begun(String typed) {
    String wanted = typed.toLowerCase(Locale.ROOT);
    return choices.stream()
        .filter(choice -> choice.toLowerCase(Locale.ROOT).contains(wanted))
        .toList();
  }

  private String last() {
    return line.text().substring(before().length()).strip();
  }

  private String before() {
    int at = many() ? line.text().lastIndexOf(JOINT) : -1;
    return at < 0 ? "" : line.text().substring(0, at + JOINT.length());
  }

  /** What it could become, best first; for the row below the form. */
  public List<String> offers() {
    String last = last();
    return last.isEmpty() || choices.contains(last) ? choices : begun(last);
  }
}
