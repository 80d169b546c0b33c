package motebook.reference;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;

/**
 * An occupational exposure limit of one set, as it stood in one edition.
 *
 * @param key stable key
 * @param set key of the set that an owner chooses
 * @param body who calls it what
 * @param place where it holds
 * @param mgPerM3 the value, mg/m³
 * @param fraction the fraction of the dust that it limits
 * @param averagingMinutes averaging time, min
 * @param woodClasses the classes of wood it holds for
 * @param validFrom first day, if the edition names one
 * @param validTo last day, if the edition names one
 * @param judges whether a day is judged by it; one that does not is only shown
 * @param edition edition or date of the source
 * @param evidence whether the figure was read, taken second-hand, or recalled
 * @param source where it is printed
 */
public record Limit(
    String key,
    String set,
    String body,
    String place,
    double mgPerM3,
    Fraction fraction,
    int averagingMinutes,
    Set<WoodClass> woodClasses,
    Optional<LocalDate> validFrom,
    Optional<LocalDate> validTo,
    boolean judges,
    String edition,
    String evidence,
    String source) {

  /** The fractions of airborne dust that limits are written in. */
  public enum Fraction {
    INHALABLE,
    TOTAL,
    RESPIRABLE
  }

  /** Whether it is in force on a day. */
  public boolean validOn(LocalDate day) {
    return validFrom.map(from -> !day.isBefore(from)).orElse(true)
        && validTo.map(to -> !day.isAfter(to)).orElse(true);
  }

  /** Whether it is a recommendation, which no authority enforces. */
  public boolean advisory() {
    return place.equals("advisory");
  }

  /** Whether it holds for a class of wood. */
  public boolean covers(WoodClass woodClass) {
    return woodClasses.contains(woodClass);
  }
}
