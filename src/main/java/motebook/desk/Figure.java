package motebook.desk;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers in the sentences of this package. */
final class Figure {
  private Figure() {}

  /** Two significant digits, or all digits before the point. */
  static String plain(double value) {
    BigDecimal rounded =
        Math.abs(value) >= 10
            ? BigDecimal.valueOf(value).setScale(0, RoundingMode.HALF_UP)
            : BigDecimal.valueOf(value).round(new MathContext(2, RoundingMode.HALF_UP));
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** A count with its word, {@code 1 day}, {@code 3 days}. */
  static String count(long count, String word) {
    return count + " " + word + (count == 1 ? "" : "s");
  }
}
