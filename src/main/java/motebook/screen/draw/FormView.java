package motebook.screen.draw;

import java.util.List;
import motebook.screen.state.Field;
import motebook.screen.state.Form;
import motebook.screen.state.State;

/** A form: a window of its fields, what may stand in the one that is typed in, what it says. */
final class FormView {
  private static final int VALUE = 19;
  private static final int LEAST_LISTED = 3;
  private static final String WAITING =
      "Letters change nothing here yet. Enter or an arrow goes to a field; Esc leaves.";

  private final Canvas canvas;
  private final State state;
  private final Form form;

  FormView(Canvas canvas, State state) {
    this.canvas = canvas;
    this.state = state;
    this.form = state.pages().form().orElseThrow();
  }

  void draw() {
    View.title(canvas, state, List.of(title(form.kind()), ""));
    int keys = canvas.rows() - Foot.keyRows(canvas.rows());
    List<Told.Part> told = told();
    int bottom = keys - 1 - Math.min(told.size(), canvas.rows() >= 20 ? 4 : 1);
    int fields = fields(1 + intro(), bottom - 1);
    int hint = Math.min(fields, bottom - 1);
    boolean listed =
        !form.waiting() && !form.field().told().isEmpty() && bottom - hint > LEAST_LISTED;
    hint(hint, listed);
    if (listed) {
      listed(hint + 1, bottom, form.field());
    }
    for (int row = bottom; row < keys - 1 && row - bottom < told.size(); row++) {
      Told.Part part = told.get(row - bottom);
      canvas.fitted(row + 1, 1, canvas.columns() - 1, part.text(), part.role());
    }
    new Foot(canvas, state).keys();
  }

  private static String title(Form.Kind kind) {
    return switch (kind) {
      case NEW -> "Log work";
      case AMEND -> "Change a session";
      case SETTINGS -> "Your settings";
      case FIRST -> "Welcome: a few questions";
      case RESPIRATOR -> "A respirator";
      case ELEMENT -> "An element";
      case FIT_TEST -> "A fit test";
    };
  }

  /** What is said once above the fields; gives the rows that it takes. */
  private int intro() {
    if (form.kind() != Form.Kind.FIRST || canvas.rows() < 20) {
      return 0;
    }
    String text =
        "Skip any of these: Enter accepts all as it stands, Esc leaves it for later; the word"
            + " settings in the line opens it again. The figures of this program are estimates, not measurements; local rules,"
            + " the maker's instructions and a licensed hygienist come first.";
    int row = 2;
    for (String line : Fit.wrap(text, canvas.columns() - 4)) {
      canvas.text(row++, 1, line, Role.PLAIN);
    }
    return row - 1;
  }

  private int fields(int top, int bottom) {
    int room = Math.max(1, bottom - top);
    int size = form.fields().size();
    int first = Math.max(0, Math.min(form.at() - room / 2, size - room));
    int row = top;
    for (int index = first; index < size && row < top + room; index++) {
      field(row++, index);
    }
    return row;
  }

  private void field(int row, int index) {
    Field field = form.fields().get(index);
    boolean here = index == form.at() && !form.waiting();
    canvas.text(row, 1, here ? ">" : " ", Role.KEY);
    canvas.fitted(row, 3, VALUE - 1, field.label(), here ? Role.TITLE : Role.QUIET);
    int end = canvas.columns() - 1;
    String text = field.line().text();
    int behind = canvas.fitted(row, VALUE, end, text, role(field, here));
    String more = field.told().getOrDefault(field.text(), "");
    if (!more.isEmpty()) {
      canvas.fitted(row, behind + 2, end, more, Role.QUIET);
    }
    if (here) {
      canvas.caret(Math.min(behind, end), row);
    }
  }

  // What would be replaced by typing is drawn as what is chosen.
  private Role role(Field field, boolean here) {
    boolean replaced = here && form.entered() && !field.text().isEmpty();
    return replaced ? Role.CHOSEN : here ? Role.TYPED : Role.PLAIN;
  }

  /** The choices around the one that stands in the field, with what is told of each. */
  private void listed(int top, int end, Field field) {
    int chosen = Math.max(0, field.choices().indexOf(field.text()));
    Listing.draw(
        top,
        end,
        field.choices().size(),
        chosen,
        (row, index) -> {
          String choice = field.choices().get(index);
          String told = field.told().getOrDefault(choice, "");
          Role role = index == chosen ? Role.CHOSEN : Role.QUIET;
          canvas.text(row, 3, index == chosen ? ">" : " ", Role.KEY);
          canvas.fitted(row, 5, VALUE - 1, choice, role);
          canvas.fitted(row, VALUE, canvas.columns() - 1, told, Role.QUIET);
        });
  }

  private void hint(int row, boolean listedBelow) {
    if (form.waiting()) {
      canvas.fitted(row, 3, canvas.columns() - 1, WAITING, Role.WARNING);
      return;
    }
    Field field = form.field();
    List<String> offers =
        listedBelow ? List.of() : field.offers().stream().map(field::told).toList();
    String choices =
        offers.isEmpty() ? "" : canvas.glyph("  → ", "  > ") + String.join(", ", offers);
    canvas.fitted(row, 3, canvas.columns() - 1, field.hint() + choices, Role.QUIET);
  }

  private List<Told.Part> told() {
    return form.current().map(reading -> Told.of(reading, canvas.columns() - 2)).orElse(List.of());
  }
}
