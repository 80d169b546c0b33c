package motebook.entry;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import motebook.model.Refusal;
import motebook.model.Text;
import motebook.model.Units;

/** Figures with units as a person gives them; a bare number is in the units of the book. */
public final class Quantities {
  /** One foot in metres, exact by definition. */
  private static final double FOOT_M = 0.3048;

  private static final double CUBIC_FOOT_M3 = FOOT_M * FOOT_M * FOOT_M;
  private static final Pattern FIGURE =
      Pattern.compile("([-+]?\\d{1,12}(?:[.,]\\d{1,12})?)\\s*([a-z³/]*[a-z0-9³/]*)");

  private static final Pattern THOUSANDS = Pattern.compile("[-+]?[1-9]\\d{0,2},\\d{3}");

  private static final Map<String, Double> VOLUMES =
      units("m³", 1.0, "m3", 1.0, "ft3", CUBIC_FOOT_M3, "ft³", CUBIC_FOOT_M3, "l", 0.001);
  private static final Map<String, Double> LENGTHS =
      units("m", 1.0, "ft", FOOT_M, "cm", 0.01, "in", FOOT_M / 12);
  private static final Map<String, Double> FLOWS =
      units("m³/min", 1.0, "m3/min", 1.0, "cfm", CUBIC_FOOT_M3, "m³/h", 1 / 60.0, "m3/h", 1 / 60.0);
  private static final Map<String, Double> SPEEDS =
      units("m/min", 1.0, "fpm", FOOT_M, "ft/min", FOOT_M, "m/s", 60.0);

  private static final Pattern SIDES = Pattern.compile("\\s*[x×*]\\s*", Pattern.CASE_INSENSITIVE);

  // A pound is 453.59237 g, a US gallon 3.785411784 L, both exact by definition.
  private static final Map<String, Double> CONTENTS =
      units("g/l", 1.0, "lb/gal", 453.59237 / 3.785411784);

  private Quantities() {}

  private static Map<String, Double> units(Object... namesAndFactors) {
    Map<String, Double> units = new LinkedHashMap<>();
    for (int i = 0; i < namesAndFactors.length; i += 2) {
      units.put((String) namesAndFactors[i], (Double) namesAndFactors[i + 1]);
    }
    return units;
  }

  /**
   * A volume in m³, from {@code 90m3}, {@code 3200ft3} or a bare {@code 90}.
   *
   * @param what the option it stands for, for the message
   * @param units those of a bare number
   * @throws Refusal if it is no number, negative, or has a suffix that is not known
   */
  public static double volumeM3(String what, String text, Units units) {
    return figure(what, inUnits(text, units, "ft3"), VOLUMES);
  }

  /** A length in m, from {@code 6.1m}, {@code 20ft} or a bare number; refuses as for a volume. */
  public static double lengthM(String what, String text, Units units) {
    return figure(what, inUnits(text, units, "ft"), LENGTHS);
  }

  /** A flow in m³/min, from {@code 400cfm} or a bare number; refuses as for a volume. */
  public static double flowM3PerMin(String what, String text, Units units) {
    return figure(what, inUnits(text, units, "cfm"), FLOWS);
  }

  /** A speed in m/min, from {@code 20fpm} or a bare number; refuses as for a volume. */
  public static double speedMPerMin(String what, String text, Units units) {
    return figure(what, inUnits(text, units, "fpm"), SPEEDS);
  }

  /** A content in g/L, from {@code 640} or {@code 5.3lb/gal}; refuses as for a volume. */
  public static double contentGPerL(String what, String text) {
    return figure(what, text, CONTENTS);
  }

  /**
   * The volume of a room in m³, from {@code 90}, {@code 3200 ft3}, {@code 6.5 x 5 x 2.6} or {@code
   * 20 x 16 x 8 ft}; a bare number is in the units chosen.
   *
   * @throws Refusal as for a volume, or where there are two sides or more than three
   */
  public static double roomM3(String what, String text, Units units) {
    List<String> sides = List.of(SIDES.split(Text.clean(text), -1));
    if (sides.size() == 1) {
      return volumeM3(what, text, units);
    }
    if (sides.size() != 3) {
      throw new Refusal(
          what + " is length x width x height, such as 6.5 x 5 x 2.6: got \"" + text + "\".");
    }
    String unit = unitOf(sides.get(2)).orElse(units == Units.US ? "ft" : "m");
    return sides.stream()
        .mapToDouble(side -> lengthM(what, unitOf(side).isPresent() ? side : side + unit, units))
        .reduce(1, (a, b) -> a * b);
  }

  private static String inUnits(String text, Units units, String us) {
    boolean bare = unitOf(text).isEmpty();
    return bare && units == Units.US ? text + us : text;
  }

  private static Optional<String> unitOf(String text) {
    String unit = Text.clean(text).replaceFirst("^[-+]?[\\d.,]*", "").strip();
    return unit.isEmpty() ? Optional.empty() : Optional.of(unit);
  }

  /** A bare number; refuses as for a volume, and every unit. */
  public static double plain(String what, String text) {
    return figure(what, text, Map.of());
  }

  private static double figure(String what, String text, Map<String, Double> units) {
    String clean = Text.clean(text);
    Matcher figure = FIGURE.matcher(clean.toLowerCase(java.util.Locale.ROOT));
    if (!figure.matches()) {
      throw new Refusal(what + " needs a number, with or without a unit: got \"" + clean + "\".");
    }
    if (THOUSANDS.matcher(figure.group(1)).matches()) {
      throw new Refusal(
          "The comma may be a thousands mark or a decimal one; write "
              + what
              + " without it, such as 3200 or 3.2: got \""
              + clean
              + "\".");
    }
    double value = Double.parseDouble(figure.group(1).replace(',', '.'));
    if (value < 0) {
      throw new Refusal(what + " cannot be negative: got \"" + clean + "\".");
    }
    String unit = figure.group(2);
    if (unit.isEmpty()) {
      return value;
    }
    Double factor = units.get(unit);
    if (factor == null) {
      throw new Refusal(
          what
              + " knows no unit \""
              + unit
              + "\". It knows: "
              + String.join(", ", units.keySet())
              + ".");
    }
    return value * factor;
  }
}
