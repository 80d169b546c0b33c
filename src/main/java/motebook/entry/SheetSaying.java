package motebook.entry;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import motebook.model.Refusal;
import motebook.model.Text;

/** The cells of a row as the parts of a spoken line. */
final class SheetSaying {
  /** What each part of a saying comes from. */
  static final List<SheetColumn> COLUMNS =
      List.of(
          SheetColumn.OPERATION,
          SheetColumn.MATERIAL,
          SheetColumn.CONTROLS,
          SheetColumn.USING,
          SheetColumn.PLACE,
          SheetColumn.PERSON,
          SheetColumn.RESPIRATOR,
          SheetColumn.CHECKED,
          SheetColumn.WORN);

  // A comma inside a number is a decimal one.
  private static final Pattern BETWEEN_AMOUNTS = Pattern.compile("\\s*(?:[;+&\\n]|,\\s)\\s*");
  private static final Pattern BETWEEN_CONTROLS = Pattern.compile("\\s*[;+&,\\n]\\s*");
  private static final Pattern PERCENT = Pattern.compile("(\\d{1,3}(?:[.,]\\d{1,6})?) *%?");
  private static final Set<String> NOTHING = Set.of("none", "no", "nothing", "n/a");
  private static final Set<String> YES =
      Set.of("yes", "y", "x", "1", "true", "checked", "done", "ok", "✓", "✔");
  private static final Set<String> NO = Set.of("", "no", "n", "0", "false", "none");

  private SheetSaying() {}

  /** The parts, one for each of the columns, each empty or begun with a gap. */
  static Optional<List<String>> parts(SheetRow row) {
    int before = row.faultCount();
    if (!row.filled(SheetColumn.OPERATION)) {
      row.fault(SheetColumn.OPERATION, "what was done is missing, such as orbital sanding.");
    }
    Optional<String> checked = row.read(SheetColumn.CHECKED, SheetSaying::checked);
    Optional<String> worn = row.read(SheetColumn.WORN, SheetSaying::worn);
    if (row.faultCount() > before) {
      return Optional.empty();
    }
    boolean notWorn = worn.filter("0"::equals).isPresent();
    String mask = notWorn ? "" : said(row, SheetColumn.RESPIRATOR, " wearing ");
    if (mask.isEmpty() && !notWorn && (!checked.orElse("").isEmpty() || worn.isPresent())) {
      row.fault(SheetColumn.RESPIRATOR, "the respirator that was worn is missing.");
      return Optional.empty();
    }
    return Optional.of(
        List.of(
            " " + row.cell(SheetColumn.OPERATION),
            said(row, SheetColumn.MATERIAL, " of "),
            BETWEEN_CONTROLS.matcher(said(row, SheetColumn.CONTROLS, " with ")).replaceAll(" and "),
            BETWEEN_AMOUNTS.matcher(said(row, SheetColumn.USING, " using ")).replaceAll(" and "),
            place(row),
            said(row, SheetColumn.PERSON, " by "),
            mask,
            mask.isEmpty() ? "" : checked.orElse(""),
            mask.isEmpty() ? "" : worn.map(share -> " " + share + "%").orElse("")));
  }

  private static String said(SheetRow row, SheetColumn column, String joint) {
    String cell = row.cell(column);
    return row.filled(column) && !NOTHING.contains(Text.folded(cell)) ? joint + cell : "";
  }

  private static String place(SheetRow row) {
    String said = said(row, SheetColumn.PLACE, " in ");
    return Text.folded(said).equals("in outdoors") ? " outdoors" : said;
  }

  private static String checked(String cell) {
    String word = Text.folded(cell);
    if (YES.contains(word)) {
      return " checked";
    }
    if (NO.contains(word)) {
      return "";
    }
    throw new Refusal(
        "\"%s\" does not tell whether the seal was checked: write yes or no."
            .formatted(Wording.shortened(Text.clean(cell))));
  }

  private static String worn(String cell) {
    Matcher percent = PERCENT.matcher(cell);
    if (!percent.matches()) {
      throw new Refusal(
          "\"%s\" is no share of the time: write it in percent, such as 95."
              .formatted(Wording.shortened(Text.clean(cell))));
    }
    return percent.group(1).replace(',', '.').replaceAll("^0+(\\.0+)?$", "0");
  }
}
