package motebook.model;

import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A finish as its maker's data sheet tells of it, entered by the owner.
 *
 * @param name unique in the book, whatever the case
 * @param like key of the finish that it dries like and shares the cautions of
 * @param volatileGPerL organic vapour that a litre gives off, above 0 to 2000 g/L
 * @param solvents share by weight of each solvent in that vapour, by key; they add to 1
 * @param retiredOn the last day on which it may have been used; empty while it is in use
 */
public record OwnFinish(
    String name,
    String like,
    double volatileGPerL,
    Map<String, Double> solvents,
    Optional<LocalDate> retiredOn) {
  // Data sheets round to whole percent.
  private static final double ROUNDING = 0.02;

  public OwnFinish {
    name = Names.check("finish", name);
    Checks.within("volatile content", volatileGPerL, 0.1, 2000, "g/L");
    solvents = Collections.unmodifiableMap(whole(solvents));
  }

  /** One that is in use. */
  public OwnFinish(String name, String like, double volatileGPerL, Map<String, Double> solvents) {
    this(name, like, volatileGPerL, solvents, Optional.empty());
  }

  /** The shares scaled so that they add to 1 but for the last digit. */
  private static Map<String, Double> whole(Map<String, Double> parts) {
    parts.forEach((key, part) -> Checks.within("share of " + key, part, 1e-6, 1, "by weight"));
    double sum = parts.values().stream().mapToDouble(Double::doubleValue).sum();
    if (Math.abs(sum - 1) > ROUNDING) {
      throw new Refusal(
          "The shares of the solvents by weight must add to 1, such as toluene 0.2 acetone 0.8: these"
              + " add to "
              + Figures.exact(Math.rint(sum * 1e6) / 1e6)
              + ".");
    }
    Map<String, Double> whole = new LinkedHashMap<>(parts);
    // Written again what is whole already must stay as it is, to the last digit.
    if (Math.abs(sum - 1) > 1e-9) {
      whole.replaceAll((key, part) -> part / sum);
    }
    return whole;
  }
}
