package motebook.screen.state;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Optional;

/**
 * All that the screens know; what is drawn follows from it alone.
 *
 * @param size of the terminal
 * @param look the characters that it can show
 * @param now local time
 * @param focus what the keys act on
 * @param back what they act on again when a page over it is closed
 * @param sheet the day that is looked at
 * @param line the line that is being typed
 * @param kept the line as it was last kept on the disk
 * @param notice what has just happened
 * @param question what is asked, if something is
 * @param over whether the person wants to leave
 */
public record State(
    Size size,
    Look look,
    LocalDateTime now,
    Focus focus,
    Focus back,
    Sheet sheet,
    Line line,
    String kept,
    Notice notice,
    Optional<Question> question,
    boolean over) {

  /**
   * The state in which the screens open.
   *
   * @param draft a line that was left unfinished last time, or empty
   */
  public static State opening(
      Size size, Look look, LocalDateTime now, LocalDate day, String draft) {
    Line line = Line.of(draft);
    return new State(
        size,
        look,
        now,
        Focus.DAY,
        Focus.DAY,
        Sheet.of(day),
        line,
        line.text(),
        Notice.NONE,
        Optional.empty(),
        false);
  }

  /** Today's date. */
  public LocalDate today() {
    return now.toLocalDate();
  }

  State with(Size other) {
    return new State(other, look, now, focus, back, sheet, line, kept, notice, question, over);
  }

  State at(LocalDateTime other) {
    return new State(size, look, other, focus, back, sheet, line, kept, notice, question, over);
  }

  State with(Focus other) {
    return new State(
        size, look, now, other, focus, sheet, line, kept, notice, Optional.empty(), over);
  }

  State with(Sheet other) {
    return new State(size, look, now, focus, back, other, line, kept, notice, question, over);
  }

  State with(Line other) {
    return new State(size, look, now, focus, back, sheet, other, kept, notice, question, over);
  }

  State keeping(String draft) {
    return new State(size, look, now, focus, back, sheet, line, draft, notice, question, over);
  }

  State saying(String text, Notice.Tone tone) {
    Notice said = new Notice(text, tone);
    return new State(size, look, now, focus, back, sheet, line, kept, said, question, over);
  }

  State quiet() {
    return new State(size, look, now, focus, back, sheet, line, kept, Notice.NONE, question, over);
  }

  State asking(Question other) {
    return new State(
        size,
        look,
        now,
        Focus.QUESTION,
        focus,
        sheet,
        line,
        kept,
        notice,
        Optional.of(other),
        over);
  }

  State leaving() {
    return new State(size, look, now, focus, back, sheet, line, kept, notice, question, true);
  }
}
