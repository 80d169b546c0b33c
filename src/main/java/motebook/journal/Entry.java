package motebook.journal;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.model.Refusal;
import motebook.model.Retirement;

/**
 * A row that comes in, with its values by the names of their columns.
 *
 * @param values one for each column of the kind
 */
record Entry(Kind kind, List<Object> values) {
  private static final long LARGEST_ID = 1_000_000_000_000L;
  private static final int HOUR = 60;
  private static final int DAY = 24 * HOUR;

  private Object value(String column) {
    return values.get(kind.index(column));
  }

  long id() {
    long id = (Long) value("id");
    if (id < 1 || id > LARGEST_ID) {
      throw new Refusal("The id is a number from 1 on, not " + id + ".");
    }
    return id;
  }

  boolean has(String column) {
    return value(column) != null;
  }

  private Object needed(String column) {
    Object value = value(column);
    if (value == null) {
      throw new Refusal("The column " + column + " must not be empty here.");
    }
    return value;
  }

  /**
   * Sees to it that columns are empty.
   *
   * @throws Refusal if one is not
   */
  void refuse(String... columns) {
    for (String column : columns) {
      if (has(column)) {
        throw new Refusal("The column " + column + " must be empty here.");
      }
    }
  }

  String text(String column) {
    return (String) needed(column);
  }

  /** The text, or nothing where the cell is empty and may be. */
  Optional<String> words(String column) {
    return Optional.ofNullable((String) value(column));
  }

  double number(String column) {
    return (Double) needed(column);
  }

  OptionalDouble perhaps(String column) {
    return has(column) ? OptionalDouble.of(number(column)) : OptionalDouble.empty();
  }

  int whole(String column) {
    long number = (Long) needed(column);
    if (number != (int) number) {
      throw new Refusal("The number " + number + " in " + column + " is out of every range.");
    }
    return (int) number;
  }

  LocalTime time(String column) {
    int minute = whole(column);
    if (minute >= DAY) {
      throw new Refusal("The last minute of a day is 23:59; " + column + " is 24:00.");
    }
    return LocalTime.of(minute / HOUR, minute % HOUR);
  }

  boolean flag(String column) {
    return (Boolean) needed(column);
  }

  LocalDate date(String column) {
    return LocalDate.parse(text(column));
  }

  Optional<LocalDate> day(String column) {
    return words(column).map(LocalDate::parse);
  }

  Optional<Retirement> retired() {
    if (!has("retired_on")) {
      refuse("retired_because");
    }
    return day("retired_on").map(on -> new Retirement(on, text("retired_because")));
  }

  /** The same with the time of day in another column, empty for all of the day. */
  Optional<Retirement> retiredAt(String column) {
    if (!has("retired_on")) {
      refuse(column);
    }
    return retired().map(end -> new Retirement(end.on(), minute(column), end.why()));
  }

  /** A time as the minute of its day; 0 where it is empty. */
  int minute(String column) {
    return has(column) ? whole(column) : 0;
  }

  @SuppressWarnings("unchecked")
  List<List<Object>> items(String column) {
    return (List<List<Object>>) needed(column);
  }
}
