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
 * @param asked what is asked, if something is
 * @param over whether the person wants to leave
 */
public record State(
    Surface surface,
    Where where,
    Pages pages,
    Line line,
    String kept,
    Notice notice,
    Optional<Asked> asked,
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

  /** What is asked, if something is. */
  public Optional<Question> question() {
    return asked.map(Asked::question);
  }

  /** Whether the line is open and something stands in it, so that the keys act on it. */
  public boolean typing() {
    return where.open() && !line.text().isEmpty();
  }

  /** Whether a stopwatch of the person is under way, as far as that has been read. */
  public boolean timed() {
    return pages.sheet().page().map(page -> page.ready().underWay()).orElse(false);
  }

  State with(Surface other) {
    return new State(other, where, pages, line, kept, notice, asked, over);
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

  /** With the line open or closed. */
  State opening(boolean open) {
    return with(where.open(open));
  }

  /** With another focus; a question is left unanswered. */
  State with(Focus other) {
    return with(where.to(other));
  }

  /** Back to the page that lies below what is closed. */
  State under() {
    return with(where.under());
  }

  /** Back to the day or the week, whichever was shown last. */
  State home() {
    return with(where.home());
  }

  State with(Pages other) {
    return new State(surface, where, other, line, kept, notice, asked, over);
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
    return new State(surface, where, pages, other, kept, notice, asked, over);
  }

  State keeping(String draft) {
    return new State(surface, where, pages, line, draft, notice, asked, over);
  }

  State saying(String text, Notice.Tone tone) {
    return new State(surface, where, pages, line, kept, new Notice(text, tone), asked, over);
  }

  State quiet() {
    return new State(surface, where, pages, line, kept, Notice.NONE, asked, over);
  }

  /** Asking something; what is typed instead of an answer goes into the line. */
  State asking(Question other) {
    return with(where.open(true)).asked(Optional.of(Asked.of(other)));
  }

  State asked(Optional<Asked> other) {
    return new State(surface, where, pages, line, kept, notice, other, over);
  }

  State leaving() {
    return new State(surface, where, pages, line, kept, notice, asked, true);
  }
}
