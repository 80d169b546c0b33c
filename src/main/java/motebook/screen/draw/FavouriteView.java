package motebook.screen.draw;

import java.util.List;
import motebook.model.Favourite;
import motebook.screen.state.DayPage;
import motebook.screen.state.State;

/** The lines that are said often, each with the key that logs it. */
final class FavouriteView {
  private static final int NAME = 7;
  private static final int WITH_KEYS = 8;

  private final Canvas canvas;
  private final State state;

  FavouriteView(Canvas canvas, State state) {
    this.canvas = canvas;
    this.state = state;
  }

  void draw() {
    View.title(canvas, state, List.of("Favourites", ""));
    List<Favourite> all = state.sheet().page().map(DayPage::favourites).orElse(List.of());
    int foot = Rows.foot(canvas.rows(), canvas.columns(), state);
    if (all.isEmpty()) {
      canvas.fitted(
          2,
          1,
          canvas.columns() - 1,
          "None yet. On the day, point at some work and press Ctrl-K to keep it under a name.",
          Role.PLAIN);
    }
    int chosen = state.pages().favourite();
    Listing.draw(2, foot, all.size(), chosen, (row, index) -> line(row, index, all.get(index)));
    new Foot(canvas, state).draw(foot);
  }

  private void line(int row, int index, Favourite favourite) {
    Role role = index == state.pages().favourite() ? Role.CHOSEN : Role.PLAIN;
    canvas.role(row, 0, canvas.columns(), role);
    canvas.text(row, 1, role == Role.CHOSEN ? ">" : " ", role);
    canvas.text(row, 3, index < WITH_KEYS ? "F" + (index + 2) : "", role);
    int middle = NAME + Math.max(14, canvas.columns() / 4);
    canvas.fitted(row, NAME, middle - 1, favourite.name(), role);
    canvas.fitted(row, middle, canvas.columns() - 1, favourite.line(), role);
  }
}
