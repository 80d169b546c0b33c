package motebook.model;

import java.util.OptionalDouble;
import java.util.regex.Pattern;

/**
 * A number as people write one. The language's own reading takes more: {@code 10d} and {@code 2f}
 * for 10 and 2, hexadecimal figures, NaN.
 */
public final class Decimal {
  private static final Pattern SHAPE =
      Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,3})?");

  private Decimal() {}

  /** The number that the whole text is; empty where it is none, or too large for one. */
  public static OptionalDouble parse(String text) {
    String number = text.strip();
    if (!SHAPE.matcher(number).matches()) {
      return OptionalDouble.empty();
    }
    double value = Double.parseDouble(number);
    return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
  }
}
