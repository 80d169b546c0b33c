package motebook.entry;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import motebook.model.Amount;
import motebook.model.Figures;

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
  private static final int FEW_DECIMALS = 2;
  private static final List<String> THIRDS = List.of("1/3", "2/3");

  // A comma and three digits may be a thousands mark, so they are no decimal.
  private static final String NUMBER =
      "(\\d{1,7}(?:\\.\\d{1,20}|,\\d{1,2})?|\\d{1,3}/[1-9]\\d{0,2})";

  private Amounts() {}

  /** A unit, the ways in which it is written, and the millilitres in it. */
  private enum Unit {
    MILLILITRE("ml", "ml|millilit(?:re|er)s?", 1),
    LITRE("l", "l|lit(?:re|er)s?", LITRE_ML),
    FLUID_OUNCE(" fl oz", "fl\\.? ?oz\\.?|fluid ounces?", GALLON_ML / 128),
    PINT(" pint", "pt|pints?", GALLON_ML / 8),
    QUART(" quart", "qt|quarts?", GALLON_ML / 4),
    GALLON(" gallon", "gal|gallons?", GALLON_ML);

    // Of two that say it as shortly, the larger one.
    private static final List<Unit> AMERICAN = List.of(GALLON, QUART, PINT, FLUID_OUNCE);

    private final String ending;
    private final Pattern pattern;
    private final double millilitres;

    Unit(String ending, String written, double millilitres) {
      this.ending = ending;
      pattern =
          Pattern.compile(
              NUMBER + " *(?:" + written + ")" + Durations.END, Pattern.CASE_INSENSITIVE);
      this.millilitres = millilitres;
    }

    /** The amount in this unit, where few digits say exactly what is kept of it. */
    private Optional<String> inFew(double amount) {
      String few =
          BigDecimal.valueOf(amount / millilitres)
              .setScale(FEW_DECIMALS, RoundingMode.HALF_EVEN)
              .stripTrailingZeros()
              .toPlainString();
      return Stream.concat(Stream.of(few), THIRDS.stream())
          .filter(said -> Amount.kept(number(said) * millilitres) == Amount.kept(amount))
          .findFirst()
          .map(said -> said + ending);
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

  /**
   * An amount as the line writes it, so that it reads as the same amount again: in the units of the
   * United States where they say shortly what takes many digits in millilitres.
   */
  static String written(double millilitres) {
    double tenths = millilitres * 10;
    if (tenths == Math.rint(tenths)) {
      return inMillilitres(millilitres);
    }
    return Unit.AMERICAN.stream()
        .flatMap(unit -> unit.inFew(millilitres).stream())
        .min(Comparator.comparingInt(Amounts::digits))
        .orElseGet(() -> inMillilitres(millilitres));
  }

  private static int digits(String amount) {
    return amount.indexOf(' ');
  }

  private static String inMillilitres(double millilitres) {
    return Figures.exact(millilitres) + Unit.MILLILITRE.ending;
  }
}
