package motebook.reference;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVRecord;

/** One row of a shipped table, read cell by cell with a check at each. */
final class Row {
  private final String table;
  private final CSVRecord cells;

  Row(String table, CSVRecord cells) {
    this.table = table;
    this.cells = cells;
  }

  WrongTable wrong(String column, String what) {
    return new WrongTable(table, cells.getRecordNumber() + 1, column, what);
  }

  /** The cell as it stands, possibly empty. */
  String text(String column) {
    if (!cells.isSet(column)) {
      throw wrong(column, "no cell");
    }
    return cells.get(column).strip();
  }

  /** A cell that must not be empty. */
  String word(String column) {
    String text = text(column);
    if (text.isEmpty()) {
      throw wrong(column, "empty");
    }
    return text;
  }

  /** The words of a cell, split at a regular expression; none where it is empty. */
  List<String> words(String column, String separator) {
    return Arrays.stream(text(column).split(separator))
        .map(String::strip)
        .filter(word -> !word.isEmpty())
        .toList();
  }

  double number(String column) {
    double value = signed(column);
    if (value < 0) {
      throw wrong(column, "must be finite and not negative: " + value);
    }
    return value;
  }

  double positive(String column) {
    double value = number(column);
    if (value == 0) {
      throw wrong(column, "must be above 0");
    }
    return value;
  }

  /** A number that may be below 0. */
  double signed(String column) {
    try {
      double value = Double.parseDouble(word(column));
      if (!Double.isFinite(value)) {
        throw wrong(column, "must be finite: " + value);
      }
      return value;
    } catch (NumberFormatException e) {
      throw wrong(column, "no number: \"" + text(column) + "\"");
    }
  }

  /** A number above 0, or an empty cell. */
  OptionalDouble optional(String column) {
    return text(column).isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(positive(column));
  }

  /** A cell that says yes or no. */
  boolean yes(String column) {
    String cell = word(column);
    if (!cell.equals("yes") && !cell.equals("no")) {
      throw wrong(column, "yes or no: \"" + cell + "\"");
    }
    return cell.equals("yes");
  }

  /** A figure and its range from three columns, low to high. */
  Figure figure(String typical, String low, String high) {
    Figure figure = new Figure(number(typical), number(low), number(high));
    if (figure.low() > figure.high()) {
      throw wrong(low, figure.low() + " is above " + high + " " + figure.high());
    }
    if (figure.typical() < figure.low() || figure.typical() > figure.high()) {
      throw wrong(typical, figure.typical() + " lies outside " + low + " to " + high);
    }
    if (figure.low() == 0 && figure.high() > 0) {
      throw wrong(low, "a range that starts at 0 has no logarithm");
    }
    return figure;
  }

  <E extends Enum<E>> E oneOf(Class<E> kind, String column) {
    String cell = word(column);
    return constant(kind, cell).orElseThrow(() -> wrong(column, "unknown: \"" + cell + "\""));
  }

  static <E extends Enum<E>> Optional<E> constant(Class<E> kind, String word) {
    String name = word.toUpperCase(Locale.ROOT).replace('-', '_');
    return Arrays.stream(kind.getEnumConstants()).filter(e -> e.name().equals(name)).findFirst();
  }

  Optional<LocalDate> date(String column) {
    String cell = text(column);
    try {
      return cell.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(cell));
    } catch (DateTimeParseException e) {
      throw wrong(column, "no date like 2026-12-31: \"" + cell + "\"");
    }
  }
}
