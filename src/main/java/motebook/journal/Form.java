package motebook.journal;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.regex.Pattern;
import motebook.model.MinuteOfDay;
import motebook.model.Refusal;
import motebook.model.Text;

/** What a cell of an export holds, and how it is written. */
public enum Form {
  /** A whole number, a Long. */
  WHOLE("a whole number such as 40"),
  /** A number, a Double; written with all its digits. */
  NUMBER("a number such as 0.25"),
  /** A text, cleaned. */
  TEXT("a text"),
  /** The name that a row goes by in its file, cleaned. */
  NAME("a name"),
  /** A day, its ISO text. */
  DATE("a date such as 2026-03-02"),
  /** A time of day as minutes, a Long; midnight at the end of the day is 24:00. */
  TIME("a time such as 09:15"),
  /** A moment in universal time, its ISO text. */
  MOMENT("a moment such as 2026-03-02T08:15:00Z"),
  /** A Boolean. */
  FLAG("yes or no");

  private static final Pattern NUMBER_SHAPE =
      Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)?");
  private static final Pattern TIME_SHAPE = Pattern.compile("(\\d\\d):([0-5]\\d)");
  private static final double LARGEST_PLAIN = 1e15;
  private static final int HOUR = 60;
  private static final int DAY = 24 * HOUR;

  private final String wanted;

  Form(String wanted) {
    this.wanted = wanted;
  }

  /**
   * The value of a text that is not empty.
   *
   * @throws Refusal if the text is none of this form
   */
  public Object parse(String text) {
    try {
      return read(text);
    } catch (DateTimeException | IllegalArgumentException e) {
      throw new Refusal("needs " + wanted + ", not \"" + Text.clean(text) + "\"");
    }
  }

  private Object read(String text) {
    return switch (this) {
      case WHOLE -> Long.valueOf(text);
      case NUMBER -> number(text);
      case TEXT, NAME -> Text.clean(text);
      case DATE -> LocalDate.parse(text).toString();
      case TIME -> minute(text);
      case MOMENT -> Instant.parse(text).toString();
      case FLAG -> flag(text);
    };
  }

  /** The text of a value; {@link #parse} gives the same value again. */
  public String text(Object value) {
    return switch (this) {
      case NUMBER -> plain((Double) value);
      case TIME -> MinuteOfDay.told(Math.toIntExact((Long) value));
      case FLAG -> (Boolean) value ? "yes" : "no";
      default -> value.toString();
    };
  }

  private static String plain(double value) {
    return value == Math.rint(value) && Math.abs(value) < LARGEST_PLAIN
        ? Long.toString((long) value)
        : Double.toString(value);
  }

  private static Object number(String text) {
    double value = NUMBER_SHAPE.matcher(text).matches() ? Double.parseDouble(text) : Double.NaN;
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(text);
    }
    return value;
  }

  private static Object minute(String text) {
    var parts = TIME_SHAPE.matcher(text);
    if (!parts.matches()) {
      throw new IllegalArgumentException(text);
    }
    long minute = Long.parseLong(parts.group(1)) * HOUR + Long.parseLong(parts.group(2));
    if (minute > DAY) {
      throw new IllegalArgumentException(text);
    }
    return minute;
  }

  private static Object flag(String text) {
    return switch (text) {
      case "yes", "true" -> true;
      case "no", "false" -> false;
      default -> throw new IllegalArgumentException(text);
    };
  }
}
