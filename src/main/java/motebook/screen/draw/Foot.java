package motebook.screen.draw;

import java.util.List;
import motebook.screen.state.Binding;
import motebook.screen.state.Bindings;
import motebook.screen.state.Focus;
import motebook.screen.state.Line;
import motebook.screen.state.State;

/** The lowest rows: the line with what was made of it, and the rows of keys. */
final class Foot {
  private static final int LEAST_FOR_LINE = 3;
  private static final int TALL = 20;
  private static final List<String> FIRST = List.of("stop", "type", "help", "quit", "close");
  private static final String HINT = "such as: 40m orbital sanding of oak with tool vacuum";

  private final Canvas canvas;
  private final State state;
  private final int keys;

  Foot(Canvas canvas, State state) {
    this.canvas = canvas;
    this.state = state;
    this.keys = canvas.rows() - keyRows(canvas.rows());
  }

  /**
   * Draws the rows of keys, the line above them, and what there is to say in the rows above that.
   */
  void draw(int top) {
    keys();
    int row = top;
    for (String line : WatchRow.lines(state, canvas.columns() - 2, canvas.rows())) {
      canvas.text(row++, 1, line, Role.TITLE);
    }
    LineRow line = new LineRow(canvas, keys - 1, typed(state));
    if (state.where().open() || state.focus().isFilledIn()) {
      line.typed();
      hint();
      said(row, line);
    } else {
      line.closed();
      said(row, line);
    }
  }

  private static Line typed(State state) {
    return state.focus() == Focus.PROMPT ? state.pages().prompt().line() : state.line();
  }

  /** The rows of keys: how to stop, to get help and to leave are shown before everything else. */
  void keys() {
    List<Binding> shown = Bindings.of(state).stream().filter(Binding::shown).toList();
    int kept = shown.stream().filter(Foot::first).mapToInt(Foot::width).sum();
    int row = keys;
    int column = 1;
    for (Binding binding : shown) {
      kept -= first(binding) ? width(binding) : 0;
      int reserved = row == canvas.rows() - 1 ? kept : 0;
      if (column + width(binding) - 2 + reserved >= canvas.columns() && row < canvas.rows() - 1) {
        row++;
        column = 1;
        reserved = kept;
      }
      if (column + width(binding) - 2 + reserved < canvas.columns()) {
        column = canvas.text(row, column, binding.label(), Role.KEY) + 1;
        column = canvas.text(row, column, binding.word(), Role.QUIET) + 2;
      }
    }
  }

  private static boolean first(Binding binding) {
    return FIRST.contains(binding.word());
  }

  private static int width(Binding binding) {
    return Width.of(binding.label()) + 1 + Width.of(binding.word()) + 2;
  }

  private void hint() {
    boolean base = state.focus() == Focus.DAY || state.focus() == Focus.WEEK;
    if (base && state.line().text().isEmpty()) {
      canvas.fitted(keys - 1, LineRow.FROM + 2, canvas.columns() - 1, HINT, Role.QUIET);
    }
  }

  private void said(int top, LineRow line) {
    Told told = told(state, canvas.columns() - 2);
    int rows = keys - 1 - top - (told.fault().isPresent() ? 1 : 0);
    List<Told.Part> parts = told.fitting(rows);
    for (int row = 0; row < parts.size(); row++) {
      canvas.text(top + row, 1, parts.get(row).text(), parts.get(row).role());
    }
    told.fault().ifPresent(fault -> line.mark(keys - 2, fault));
    if (state.focus() == Focus.PROMPT || state.typing()) {
      offer(line, typed(state));
    }
  }

  private static void offer(LineRow line, Line typed) {
    List<String> choices = typed.choices();
    if (!choices.isEmpty() && typed.pick() < 0) {
      line.offered(choices.get(0));
    }
  }

  private static Told told(State state, int columns) {
    if (state.focus() == Focus.PROMPT) {
      return Told.ofPrompt(state, columns);
    }
    boolean quiet = state.question().isEmpty() && state.notice().text().isEmpty();
    return quiet && state.typing() ? Told.ofLine(state, columns) : Told.ofPage(state, columns);
  }

  /** How many rows there should be for what is said above the line, the stopwatch left out. */
  static int wanted(State state, int columns) {
    int rows = told(state, columns - 2).rows();
    return state.typing() ? Math.max(LEAST_FOR_LINE, rows) : rows;
  }

  /** The rows of keys at some height. */
  static int keyRows(int height) {
    return height < TALL ? 1 : 2;
  }
}
