package motebook.screen.state;

import java.util.Optional;

/**
 * A short question that is answered by typing.
 *
 * @param kind what is asked
 * @param line what is typed
 * @param about the question, where it depends on what is in the book; else empty
 */
public record Prompt(Kind kind, Line line, String about) {
  static final Prompt NONE = new Prompt(Kind.GO_TO, Line.EMPTY, "");

  /** What is asked. */
  public enum Kind {
    /** What the stopwatch is started for. */
    START(
        "What are you starting? Such as: table saw of oak with collector",
        "Nothing was said, so no stopwatch was started."),
    /** The name of a new favourite. */
    NAME("What shall this line be called?", "A favourite needs a name; nothing was kept."),
    /** A day to go to. */
    GO_TO(
        "Which day? Such as: 2026-03-02, 2.3., monday, last tuesday, 3 weeks ago",
        "No day was said."),
    /** When the work ended whose stopwatch is stopped. */
    STOPPED("", "Nothing was said; the stopwatch runs on."),
    /** When the work ended whose stopwatch is paused. */
    PAUSED("", "Nothing was said; the stopwatch runs on."),
    /** What may come to be done. */
    PLAN(
        "What may be done? Such as: 30m router table of oak with collector, tomorrow at 9am",
        "Nothing was said, so nothing was planned."),
    /** What is looked for. */
    FIND("What was it? Some words, such as: sanding mdf ana", "");

    private final String text;
    private final String unsaid;

    Kind(String text, String unsaid) {
      this.text = text;
      this.unsaid = unsaid;
    }

    /** What is said where nothing was typed. */
    String unsaid() {
      return unsaid;
    }
  }

  /** The question. */
  public String text() {
    return about.isEmpty() ? kind.text : about;
  }

  Prompt with(Line other) {
    return new Prompt(kind, other, about);
  }

  /** What is wrong with what was typed, if something is. */
  public Optional<Fault> fault() {
    return line.current().flatMap(Reading::fault);
  }
}
