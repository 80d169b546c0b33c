package motebook.entry;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import motebook.model.Refusal;
import motebook.model.Text;

/**
 * Where a sheet holds what.
 *
 * @param places index of each column that is known
 * @param names every column as it is headed
 */
record SheetHeader(Map<SheetColumn, Integer> places, List<String> names) {

  /** What a row of cells names as columns; nothing where a column is named twice. */
  static SheetHeader of(List<String> cells) {
    Map<SheetColumn, Integer> places = new EnumMap<>(SheetColumn.class);
    for (int i = 0; i < cells.size(); i++) {
      Optional<SheetColumn> column = SheetColumn.headedBy(cells.get(i));
      if (column.isPresent()) {
        Integer other = places.putIfAbsent(column.get(), i);
        if (other != null) {
          throw twice(cells.get(other), cells.get(i), column.get());
        }
      }
    }
    return new SheetHeader(places, cells.stream().map(Text::clean).toList());
  }

  private static Refusal twice(String one, String other, SheetColumn column) {
    return new Refusal(
        "The columns \"%s\" and \"%s\" both mean the %s. Rename or delete one of them."
            .formatted(Text.clean(one), Text.clean(other), column.word()));
  }

  /** Whether a row heads a table: it names the work and something of its time. */
  boolean heads() {
    return has(SheetColumn.OPERATION) && places.size() > 1;
  }

  boolean has(SheetColumn column) {
    return places.containsKey(column);
  }

  /** A column as it is headed; by its usual word where the sheet lacks it. */
  String name(SheetColumn column) {
    return has(column) ? names.get(places.get(column)) : column.word();
  }

  /**
   * Sees that nothing is lacking that no row can do without.
   *
   * @throws Refusal naming all that is
   */
  void requireEnough() {
    List<String> lacking = new ArrayList<>();
    if (!has(SheetColumn.DATE) && !has(SheetColumn.START)) {
      lacking.add("date");
    }
    int times = 0;
    for (SheetColumn column : List.of(SheetColumn.START, SheetColumn.END, SheetColumn.LENGTH)) {
      times += has(column) ? 1 : 0;
    }
    if (times < 2) {
      lacking.add("two of start, end and minutes");
    }
    if (!lacking.isEmpty()) {
      throw new Refusal(
          "The sheet lacks a column for the %s. It has: %s."
              .formatted(String.join(", and ", lacking), quoted(names)));
    }
  }

  /** What was not understood of the header; empty where all was. */
  Optional<String> remark() {
    List<String> unknown = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      if (!places.containsValue(i) && !names.get(i).isEmpty()) {
        unknown.add(names.get(i));
      }
    }
    return unknown.isEmpty()
        ? Optional.empty()
        : Optional.of(
            (unknown.size() == 1 ? "The column %s is" : "The columns %s are")
                    .formatted(quoted(unknown))
                + " not read.");
  }

  private static String quoted(List<String> names) {
    return names.stream()
        .filter(name -> !name.isEmpty())
        .map(name -> "\"" + Wording.shortened(name) + "\"")
        .collect(Collectors.joining(", "));
  }
}
