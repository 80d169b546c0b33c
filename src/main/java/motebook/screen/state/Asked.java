package motebook.screen.state;

import java.util.Optional;

/**
 * A question that stands. It is answered by y and then Enter; the y goes into the line as every
 * letter does, for it may as well begin something else.
 *
 * @param question what is asked
 * @param before the line as it was before the y; empty where none has been typed
 */
public record Asked(Question question, Optional<Line> before) {
  Asked yes(Line line) {
    return new Asked(question, Optional.of(line));
  }
}
