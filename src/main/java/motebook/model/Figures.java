package motebook.model;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Numbers as people read them, in plain notation: all texts, screens and messages write theirs
 * here. What was calculated has three significant digits; JSON and CSV are not rounded.
 */
public final class Figures {
  /**
   * A smaller estimate is told as being less than this: no estimate of air or dose is that good.
   */
  private static final double FLOOR = 0.001;

  /** From here on a sum of shares is all of the whole, but for the last digits of the machine. */
  private static final double ALL = 100 - 1e-6;

  /** A larger figure is told as being over this: nobody reads, or trusts, more digits. */
  private static final BigDecimal CEILING = BigDecimal.valueOf(1_000_000);

  private static final String ABOVE_CEILING = "over 1 000 000";

  private static final MathContext THREE_DIGITS = new MathContext(3, RoundingMode.HALF_UP);
  private static final MathContext SIX_DIGITS = new MathContext(6, RoundingMode.HALF_UP);

  private Figures() {}

  /**
   * A figure that was calculated: {@code 3.13}, {@code 1450}, {@code less than 0.001}, {@code over
   * 1 000 000}.
   */
  public static String rounded(double value) {
    return floored(value, FLOOR);
  }

  /**
   * A figure in a unit that the person chose, who may have chosen a small one: {@link #rounded}
   * with a tenth of its floor.
   */
  public static String scaled(double value) {
    return floored(value, FLOOR / 10);
  }

  private static String floored(double value, double floor) {
    if (value == 0) {
      return "0";
    }
    if (Math.abs(value) < floor) {
      return "less than " + plain(floor) + (value < 0 ? " below 0" : "");
    }
    BigDecimal three = new BigDecimal(value).round(THREE_DIGITS);
    if (three.abs().compareTo(CEILING) > 0) {
      return ABOVE_CEILING + (value < 0 ? " below 0" : "");
    }
    int decimals = three.scale() + THREE_DIGITS.getPrecision() - three.precision();
    return three.setScale(Math.max(0, decimals)).toPlainString();
  }

  /** {@link #rounded} for a narrow column: {@code <0.001}, {@code >1 000 000}. */
  public static String cell(double value) {
    return value > 0 && value < FLOOR
        ? "<0.001"
        : rounded(value).replace(ABOVE_CEILING, ">1 000 000");
  }

  /** An estimate: {@code about 3.13}, {@code less than 0.001}. */
  public static String about(double value) {
    String shown = rounded(value);
    return (value != 0 && Math.abs(value) < FLOOR) || shown.startsWith(ABOVE_CEILING)
        ? shown
        : "about " + shown;
  }

  /** A range: {@code 0.365 to 26.7}. */
  public static String range(double low, double high) {
    return high != 0 && Math.abs(high) < FLOOR
        ? rounded(high)
        : rounded(low) + " to " + rounded(high);
  }

  /** A figure that is known, without needless zeros: {@code 1}, {@code 0.5}, {@code 53.3}. */
  public static String plain(double value) {
    BigDecimal exact = BigDecimal.valueOf(value).round(SIX_DIGITS).stripTrailingZeros();
    return exact.scale() < 0 ? exact.setScale(0).toPlainString() : exact.toPlainString();
  }

  /** A figure that somebody typed, with all its digits. */
  public static String exact(double value) {
    return Double.isFinite(value)
        ? BigDecimal.valueOf(value).stripTrailingZeros().toPlainString()
        : Double.toString(value);
  }

  /** A share in whole percent; what is neither none nor all is never shown as such. */
  public static String percent(double percent) {
    if (percent >= 1000) {
      return scaled(percent) + " %";
    }
    return percent > 99 && percent < ALL
        ? ">99 %"
        : percent < 1 && percent > 0 ? "<1 %" : Math.round(percent) + " %";
  }

  /** A chance from 0 to 1, which is never certain: {@code less than 1 %}, {@code 81 %}. */
  public static String chance(double chance) {
    if (chance < 0.01) {
      return "less than 1 %";
    }
    return chance > 0.99 ? "over 99 %" : Math.round(100 * chance) + " %";
  }

  /**
   * The parts of a whole in whole percent that add to it by the largest remainder. A part that
   * comes out as 0 or 100 and is neither is said to be {@code <1 %} or {@code >99 %}.
   *
   * @param percents the parts, none below 0
   */
  public static List<String> shares(List<Double> percents) {
    long whole = Math.round(percents.stream().mapToDouble(Double::doubleValue).sum());
    long left = whole - percents.stream().mapToLong(it -> (long) Math.floor(it)).sum();
    Set<Integer> roundedUp =
        IntStream.range(0, percents.size())
            .boxed()
            .sorted(Comparator.comparingDouble(i -> Math.floor(percents.get(i)) - percents.get(i)))
            .limit(left)
            .collect(Collectors.toSet());
    return IntStream.range(0, percents.size())
        .mapToObj(
            i ->
                share(
                    percents.get(i),
                    (long) Math.floor(percents.get(i)) + (roundedUp.contains(i) ? 1 : 0)))
        .toList();
  }

  private static String share(double percent, long shown) {
    if (shown == 0 && percent > 0) {
      return "<1 %";
    }
    return shown == 100 && percent < ALL ? ">99 %" : shown + " %";
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

  /** A count with its word: {@code 1 day}, {@code 3 days}. */
  public static String count(long count, String word) {
    return count + " " + word + (count == 1 ? "" : "s");
  }
}
