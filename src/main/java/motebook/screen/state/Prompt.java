package motebook.screen.state;

import java.util.Optional;

/**
 * A short question that is answered by typing.
 *
 * @param kind what is asked
 * @param line what is typed
 */
public record Prompt(Kind kind, Line line) {
  static final Prompt NONE = new Prompt(Kind.GO_TO, Line.EMPTY);

  /** What is asked. */
  public enum Kind {
    /** What the stopwatch is started for. */
    START("What are you starting? Such as: table saw of oak with collector"),
    /** The name of a new favourite. */
    NAME("What shall this line be called?"),
    /** A day to go to. */
    GO_TO("Which day? Such as: 2026-03-02, yesterday, monday, 3 weeks ago"),
    /** What is looked for. */
    FIND("What was it? Some words, such as: sanding mdf ana");

    private final String text;

    Kind(String text) {
      this.text = text;
    }

    /** The question. */
    public String text() {
      return text;
    }
  }

  Prompt with(Line other) {
    return new Prompt(kind, other);
  }

  /** What is wrong with what was typed, if something is. */
  public Optional<Fault> fault() {
    return line.current().flatMap(Reading::fault);
  }
}
