package motebook.screen.state;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Optional;
import motebook.report.Invocation;

/**
 * All that the screens know; what is drawn follows from it alone.
 *
 * @param surface what is drawn on, and when
 * @param where what the keys act on
 * @param pages what is shown on each page
 * @param line the line that is being typed
 * @param kept the line as it was last kept on the disk
 * @param notice what has just happened
 * @param question what is asked, if something is
 * @param over whether the person wants to leave
 */
public record State(
    Surface surface,
    Where where,
    Pages pages,
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
        new Surface(size, look, now, Invocation.USUAL),
        Where.OPENING,
        Pages.of(day),
        line,
        line.text(),
        Notice.NONE,
        Optional.empty(),
        false);
  }

  /** The same, for a book that a shell is told of otherwise. */
  public State calledBy(Invocation invocation) {
    return with(new Surface(size(), look(), now(), invocation));
  }

  /** How a shell calls the program for this book. */
  public Invocation program() {
    return surface.invocation();
  }

  /** Size of the terminal. */
  public Size size() {
    return surface.size();
  }

  /** The characters that it can show. */
  public Look look() {
    return surface.look();
  }

  /** Local time. */
  public LocalDateTime now() {
    return surface.now();
  }

  /** Today's date. */
  public LocalDate today() {
    return now().toLocalDate();
  }

  /** What the keys act on. */
  public Focus focus() {
    return where.focus();
  }

  /** The day that is looked at. */
  public Sheet sheet() {
    return pages.sheet();
  }

  /** The week that is looked at. */
  public WeekSheet week() {
    return pages.week();
  }

  State with(Surface other) {
    return new State(other, where, pages, line, kept, notice, question, over);
  }

  State with(Size other) {
    return with(new Surface(other, look(), now(), surface.invocation()));
  }

  State at(LocalDateTime other) {
    return with(new Surface(size(), look(), other, surface.invocation()));
  }

  private State with(Where other) {
    return new State(surface, other, pages, line, kept, notice, Optional.empty(), over);
  }

  /** With another focus; a question is left unanswered. */
  State with(Focus other) {
    return with(where.to(other));
  }

  /** Back to the page that lies below what is closed. */
  State closed() {
    return with(where.closed());
  }

  /** Back to the day or the week, whichever was shown last. */
  State home() {
    return with(where.home());
  }

  State with(Pages other) {
    return new State(surface, where, other, line, kept, notice, question, over);
  }

  State with(Sheet other) {
    return with(pages.with(other));
  }

  State with(WeekSheet other) {
    return with(pages.with(other));
  }

  State with(Form other) {
    return with(pages.with(Optional.of(other)));
  }

  State with(Prompt other) {
    return with(pages.with(other));
  }

  State with(Found other) {
    return with(pages.with(other));
  }

  State with(EvidenceSheet other) {
    return with(pages.with(other));
  }

  State with(PlanSheet other) {
    return with(pages.with(other));
  }

  State with(CareSheet other) {
    return with(pages.with(other));
  }

  State with(Line other) {
    return new State(surface, where, pages, other, kept, notice, question, over);
  }

  State keeping(String draft) {
    return new State(surface, where, pages, line, draft, notice, question, over);
  }

  State saying(String text, Notice.Tone tone) {
    return new State(surface, where, pages, line, kept, new Notice(text, tone), question, over);
  }

  State quiet() {
    return new State(surface, where, pages, line, kept, Notice.NONE, question, over);
  }

  State asking(Question other) {
    return new State(
        surface, where.to(Focus.QUESTION), pages, line, kept, notice, Optional.of(other), over);
  }

  State leaving() {
    return new State(surface, where, pages, line, kept, notice, question, true);
  }
}
