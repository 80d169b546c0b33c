package motebook.screen.draw;

import java.util.List;
import java.util.Optional;
import motebook.screen.state.Binding;
import motebook.screen.state.Bindings;
import motebook.screen.state.Focus;
import motebook.screen.state.Line;
import motebook.screen.state.State;

/** The lowest rows: the line with what was made of it, and the row of keys. */
final class Foot {
  private static final int LEAST_FOR_LINE = 3;
  private static final List<String> FIRST = List.of("help", "quit", "close");
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
    int row = top;
    for (String line : WatchRow.lines(state, canvas.columns() - 2, canvas.rows())) {
      canvas.text(row++, 1, line, Role.TITLE);
    }
    Optional<Line> typed = typed(state);
    if (typed.isPresent()) {
      LineRow line = new LineRow(canvas, keys - 1, typed.get());
      line.typed();
      said(row, line, typed.get());
    } else {
      idle();
      notice(row);
    }
  }

  private static Optional<Line> typed(State state) {
    return switch (state.focus()) {
      case LINE -> Optional.of(state.line());
      case PROMPT -> Optional.of(state.pages().prompt().line());
      default -> Optional.empty();
    };
  }

  /** The row of keys. */
  void keys() {
    int column = 1;
    int kept = Bindings.of(state.focus()).stream().filter(Foot::first).mapToInt(Foot::width).sum();
    for (Binding binding : Bindings.of(state.focus())) {
      kept -= first(binding) ? width(binding) : 0;
      if (binding.shown() && column + width(binding) - 2 + kept < canvas.columns()) {
        column = canvas.text(keys, column, binding.label(), Role.KEY) + 1;
        column = canvas.text(keys, column, binding.word(), Role.QUIET) + 2;
      }
    }
  }

  // How to get help and how to leave are shown before everything else.
  private static boolean first(Binding binding) {
    return FIRST.contains(binding.word());
  }

  private static int width(Binding binding) {
    return Width.of(binding.label()) + 1 + Width.of(binding.word()) + 2;
  }

  private void idle() {
    boolean kept = !state.line().blank();
    String text = kept ? state.line().text() : hint();
    if (!text.isEmpty()) {
      int at = canvas.text(keys - 1, 1, "> ", Role.QUIET);
      canvas.fitted(keys - 1, at, canvas.columns() - 1, text, kept ? Role.TYPED : Role.QUIET);
    }
  }

  private String hint() {
    return switch (state.focus()) {
      case DAY -> "Enter, then for example: " + EXAMPLE;
      case WEEK -> "l, then for example: " + EXAMPLE;
      default -> "";
    };
  }

  private void said(int top, LineRow line, Line typed) {
    Told told = told(state, canvas.columns() - 2);
    int rows = keys - 1 - top - (told.fault().isPresent() ? 1 : 0);
    List<Told.Part> parts = told.fitting(rows);
    for (int row = 0; row < parts.size(); row++) {
      canvas.text(top + row, 1, parts.get(row).text(), parts.get(row).role());
    }
    told.fault().ifPresent(fault -> line.mark(keys - 2, fault));
    offer(line, typed);
  }

  private static void offer(LineRow line, Line typed) {
    List<String> choices = typed.choices();
    if (!choices.isEmpty() && typed.pick() < 0) {
      line.offered(choices.get(0));
    }
  }

  private void notice(int top) {
    List<Told.Part> parts = told(state, canvas.columns() - 2).fitting(keys - 1 - top);
    for (int row = 0; row < parts.size(); row++) {
      canvas.text(top + row, 1, parts.get(row).text(), parts.get(row).role());
    }
  }

  private static Told told(State state, int columns) {
    return switch (state.focus()) {
      case LINE -> Told.ofLine(state, columns);
      case PROMPT -> Told.ofPrompt(state, columns);
      default -> Told.ofDay(state, columns);
    };
  }

  /** How many rows there should be for what is said above the line, the stopwatch left out. */
  static int wanted(State state, int columns) {
    int rows = told(state, columns - 2).rows();
    return state.focus() == Focus.LINE ? Math.max(LEAST_FOR_LINE, rows) : rows;
  }
}
