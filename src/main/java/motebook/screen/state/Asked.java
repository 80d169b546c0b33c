package motebook.screen.state;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A question that stands. It is answered by y and then Enter, or by n or no; the letters go into
 * the line as every letter does, for they may as well begin something else.
 *
 * @param question what is asked
 * @param said what has been typed as an answer: nothing, y, n or no
 * @param before the line as it was before the answer; empty where none has been typed
 */
public record Asked(Question question, String said, Optional<Line> before) {
  private static final List<String> ANSWERS = List.of("y", "n", "no");

  static Asked of(Question question) {
    return new Asked(question, "", Optional.empty());
  }

  /** With one more letter typed into a line; empty where that answers nothing. */
  Optional<Asked> answered(String letter, Line line) {
    String answer = said + letter.toLowerCase(Locale.ROOT);
    return ANSWERS.contains(answer)
        ? Optional.of(new Asked(question, answer, before.or(() -> Optional.of(line))))
        : Optional.empty();
  }

  /** Whether it has been answered by yes. */
  public boolean yes() {
    return said.equals("y");
  }
}
