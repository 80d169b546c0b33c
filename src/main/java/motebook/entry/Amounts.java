package motebook.entry;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import motebook.model.Amount;

/**
 * How much of a liquid was used, as a person writes it: {@code 250ml}, {@code 0.5 l}, {@code 8 fl
 * oz}, {@code 1 pint}, {@code 1/2 quart}. The ounce, pint, quart and gallon are those of the United
 * States. A bare number is none, since it has no unit.
 */
final class Amounts {
  /** What is offered where an amount is wanted. */
  static final String EXAMPLE = "250ml";

  // Exact: a US gallon is 231 cubic inches of 2.54 cm.
  private static final double GALLON_ML = 231 * 2.54 * 2.54 * 2.54;
  private static final double LITRE_ML = 1000;

  // A comma and three digits may be a thousands mark, so they are no decimal.
  private static final String NUMBER =
      "(\\d{1,7}(?:\\.\\d{1,20}|,\\d{1,2})?|\\d{1,3}/[1-9]\\d{0,2})";

  private Amounts() {}

  /** A unit, the ways in which it is written, and the millilitres in it. */
  private enum Unit {
    MILLILITRE("ml|millilit(?:re|er)s?", 1),
    LITRE("l|lit(?:re|er)s?", LITRE_ML),
    FLUID_OUNCE("fl\\.? ?oz\\.?|fluid ounces?", GALLON_ML / 128),
    PINT("pt|pints?", GALLON_ML / 8),
    QUART("qt|quarts?", GALLON_ML / 4),
    GALLON("gal|gallons?", GALLON_ML);

    private final Pattern pattern;
    private final double millilitres;

    Unit(String written, double millilitres) {
      pattern =
          Pattern.compile(
              NUMBER + " *(?:" + written + ")" + Durations.END, Pattern.CASE_INSENSITIVE);
      this.millilitres = millilitres;
    }
  }

  /**
   * An amount found in a line.
   *
   * @param millilitres 0 or more
   * @param to index of the word after it and after an "of" that follows it
   */
  record Found(double millilitres, int to) {}

  static Optional<Found> at(Line line, int index) {
    for (Unit unit : Unit.values()) {
      Matcher match = line.matcherAt(unit.pattern, index);
      if (match.lookingAt()) {
        int after = line.wordAfter(match.end());
        int to = line.is(after, "of") ? after + 1 : after;
        return Optional.of(new Found(number(match.group(1)) * unit.millilitres, to));
      }
    }
    return Optional.empty();
  }

  private static double number(String text) {
    String[] parts = text.split("/", -1);
    return parts.length == 2
        ? Double.parseDouble(parts[0]) / Double.parseDouble(parts[1])
        : Double.parseDouble(text.replace(',', '.'));
  }

  /** What falls to a part of the work, in tenths of a millilitre, of each at least one. */
  static List<Amount> part(List<Amount> amounts, double share) {
    return share == 1
        ? amounts
        : amounts.stream()
            .map(it -> new Amount(it.finish(), Math.max(1, tenths(it, share)) / 10.0))
            .toList();
  }

  private static long tenths(Amount amount, double share) {
    return Math.round(amount.millilitres() * share * 10);
  }

  /** An amount as the line writes it. */
  static String written(double millilitres) {
    return BigDecimal.valueOf(millilitres).stripTrailingZeros().toPlainString() + "ml";
  }
}
