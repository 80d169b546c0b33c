package motebook.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/** Numbers as people read them. */
public final class Figures {
  private static final MathContext TWO_DIGITS = new MathContext(2, RoundingMode.HALF_UP);

  private Figures() {}

  /** Two significant digits in plain notation: an estimate carries no more. */
  public static String rough(double value) {
    if (value == 0) {
      return "0";
    }
    BigDecimal two = new BigDecimal(value).round(TWO_DIGITS);
    return two.scale() < 0 ? two.setScale(0).toPlainString() : two.toPlainString();
  }

  /** A figure that is known, without needless zeros. */
  public static String plain(double value) {
    BigDecimal exact = BigDecimal.valueOf(value).round(new MathContext(6)).stripTrailingZeros();
    return exact.scale() < 0 ? exact.setScale(0).toPlainString() : exact.toPlainString();
  }

  /** A share in whole percent; what is neither none nor all is never shown as such. */
  public static String percent(double percent) {
    if (percent > 0 && percent < 1) {
      return "<1 %";
    }
    if (percent > 99 && percent < 100 - 1e-6) {
      return ">99 %";
    }
    return String.format(Locale.ROOT, "%.0f %%", percent);
  }

  /** Minutes as hours and minutes: {@code 45 min}, {@code 2 h}, {@code 1 h 20}. */
  public static String duration(int minutes) {
    if (minutes < 60) {
      return minutes + " min";
    }
    return minutes % 60 == 0
        ? minutes / 60 + " h"
        : String.format(Locale.ROOT, "%d h %02d", minutes / 60, minutes % 60);
  }
}
