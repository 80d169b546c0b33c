package motebook.screen.draw;

import java.util.List;
import java.util.Optional;
import motebook.report.Figures;
import motebook.report.Wording;
import motebook.screen.state.Binding;
import motebook.screen.state.Bindings;
import motebook.screen.state.Fault;
import motebook.screen.state.Focus;
import motebook.screen.state.Notice;
import motebook.screen.state.Reading;
import motebook.screen.state.Reading.Understood;
import motebook.screen.state.State;

/** The lowest rows: the line with what was made of it, and the row of keys. */
final class Foot {
  private static final String EXAMPLE = "40m orbital sanding of oak with tool vacuum";

  private final Canvas canvas;
  private final State state;
  private final int keys;

  Foot(Canvas canvas, State state) {
    this.canvas = canvas;
    this.state = state;
    this.keys = canvas.rows() - 1;
  }

  /** Draws the row of keys, the line above it, and what there is to say in the rows above that. */
  void draw(int top) {
    keys();
    LineRow line = new LineRow(canvas, keys - 1, state.line(), state.focus() == Focus.LINE);
    if (state.focus() == Focus.LINE) {
      line.typed();
      said(top, line);
    } else {
      idle();
      notice(top);
    }
  }

  private void keys() {
    int column = 1;
    for (Binding binding : Bindings.of(state.focus())) {
      int width = Width.of(binding.label()) + 1 + Width.of(binding.word());
      if (binding.shown() && column + width < canvas.columns()) {
        column = canvas.text(keys, column, binding.label(), Role.KEY) + 1;
        column = canvas.text(keys, column, binding.word(), Role.QUIET) + 2;
      }
    }
  }

  private void idle() {
    boolean kept = !state.line().blank();
    String text = kept ? state.line().text() : "Enter, then for example: " + EXAMPLE;
    int at = canvas.text(keys - 1, 1, "> ", Role.QUIET);
    canvas.fitted(keys - 1, at, canvas.columns() - 1, text, kept ? Role.TYPED : Role.QUIET);
  }

  private void said(int top, LineRow line) {
    int rows = keys - 1 - top;
    Optional<Reading> reading = state.line().current();
    Optional<Fault> fault = reading.flatMap(Reading::fault);
    if (state.line().blank()) {
      paragraph(
          top, rows, "A duration or a time, what you did, and with what. " + EXAMPLE, Role.QUIET);
    } else if (fault.isPresent()) {
      int under = fault.get().from() >= 0 ? 1 : 0;
      line.mark(keys - 2, fault.get());
      paragraph(top, rows - under, fault.get().sentence(), Role.WRONG);
    } else {
      reading.flatMap(Reading::understood).ifPresent(u -> understood(top, rows, u));
    }
    offer(line);
  }

  private void offer(LineRow line) {
    List<String> choices = state.line().choices();
    if (!choices.isEmpty() && state.line().pick() < 0) {
      line.offered(choices.get(0));
    }
  }

  private void understood(int top, int rows, Understood understood) {
    List<String> said = Fit.wrap(understood.said(), canvas.columns() - 2, Math.max(1, rows - 1));
    for (int row = 0; row < said.size(); row++) {
      canvas.text(top + row, 1, said.get(row), Role.DONE);
    }
    canvas.fitted(top + said.size(), 1, canvas.columns() - 1, dose(understood), Role.PLAIN);
  }

  private static String dose(Understood understood) {
    String after = "about " + Figures.rough(understood.doseAfter()) + " mg/m³";
    String before =
        understood.doseBefore() == 0 ? "" : ", from " + Figures.rough(understood.doseBefore());
    return "the day outside the mask becomes "
        + after
        + before
        + Wording.chance(understood.chanceAfter()).map(chance -> "; " + chance).orElse("");
  }

  private void notice(int top) {
    Notice notice = state.notice();
    String text =
        state.undo().map(change -> "Take this back? " + change.what()).orElse(notice.text());
    Role role =
        state.undo().isPresent() || notice.tone() == Notice.Tone.ASKED
            ? Role.WARNING
            : notice.tone() == Notice.Tone.WRONG ? Role.WRONG : Role.DONE;
    paragraph(top, keys - 1 - top, text, role);
  }

  private void paragraph(int top, int rows, String text, Role role) {
    List<String> lines = text.isEmpty() ? List.of() : Fit.wrap(text, canvas.columns() - 2, rows);
    for (int row = 0; row < lines.size(); row++) {
      canvas.text(top + row, 1, lines.get(row), role);
    }
  }

  /** Whether there is something to say above the line. */
  static boolean speaks(State state) {
    return state.focus() == Focus.LINE
        || state.undo().isPresent()
        || !state.notice().text().isEmpty();
  }
}
