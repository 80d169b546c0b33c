package motebook.screen.state;

import java.util.List;
import java.util.Optional;

/**
 * The pages of masks and filters.
 *
 * @param tab which of them is shown
 * @param page what was read, if it has come already
 * @param chosen index of the row that is pointed at
 */
public record CareSheet(Tab tab, Optional<CarePage> page, int chosen) {
  static final CareSheet OPENING = new CareSheet(Tab.DUE, Optional.empty(), 0);

  /** The pages. */
  public enum Tab {
    DUE("What is due"),
    MASKS("Masks"),
    SHOP("Shop filters");

    private final String title;

    Tab(String title) {
      this.title = title;
    }

    /** Its title. */
    public String title() {
      return title;
    }
  }

  /** The rows of the page that is shown. */
  public List<CareRow> rows() {
    return page.map(p -> p.rows().get(List.of(Tab.values()).indexOf(tab))).orElse(List.of());
  }

  /** The row that is pointed at. */
  public Optional<CareRow> row() {
    return chosen < rows().size() ? Optional.of(rows().get(chosen)) : Optional.empty();
  }

  /** With rows just read; what was pointed at is pointed at again, wherever it stands now. */
  CareSheet with(CarePage fresh) {
    CareSheet read = new CareSheet(tab, Optional.of(fresh), chosen);
    int again = row().map(read::find).orElse(-1);
    return read.pointing(again < 0 ? chosen : again);
  }

  private int find(CareRow wanted) {
    for (int index = 0; index < rows().size(); index++) {
      CareRow row = rows().get(index);
      boolean same =
          tab == Tab.DUE ? row.told().equals(wanted.told()) : row.name().equals(wanted.name());
      if (same) {
        return index;
      }
    }
    return -1;
  }

  CareSheet on(Tab other) {
    return new CareSheet(other, page, 0);
  }

  /** The page beside this one. */
  CareSheet next(int by) {
    List<Tab> tabs = List.of(Tab.values());
    return on(tabs.get(Math.floorMod(tabs.indexOf(tab) + by, tabs.size())));
  }

  CareSheet pointing(int index) {
    return new CareSheet(tab, page, Math.max(0, Math.min(index, rows().size() - 1)));
  }
}
