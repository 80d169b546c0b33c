package motebook.desk;

import java.util.Comparator;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import motebook.reference.Limit;
import motebook.reference.WoodClass;
import motebook.science.Estimate;

/**
 * The limit that a day is judged by: of those that apply, the one that the day comes closest to.
 *
 * @param limit the limit
 * @param outside the day's TWA outside the mask in the limit's own fraction
 * @param inside the day's TWA inside the mask in the limit's own fraction
 */
public record HeldLimit(Limit limit, Estimate outside, Estimate inside) {

  /** The headline figure outside as a share of the limit; over it above 1. */
  public double ratio() {
    return outside.central() / limit.mgPerM3();
  }

  /** The limit of a day; empty where none of the chosen set applies to what was in the air. */
  static Optional<HeldLimit> of(DayReckoning day) {
    return day.shop().reference().limits(set(day), day.date(), inTheAir(day)).stream()
        .map(limit -> held(limit, day))
        .max(Comparator.comparingDouble(HeldLimit::ratio));
  }

  private static String set(DayReckoning day) {
    return day.shop().settings().limitSet();
  }

  private static Set<WoodClass> inTheAir(DayReckoning day) {
    return day.reached().stream()
        .map(source -> source.material().woodClass())
        .collect(Collectors.toSet());
  }

  private static HeldLimit held(Limit limit, DayReckoning day) {
    return new HeldLimit(limit, day.outside(limit.fraction()), day.inside(limit.fraction()));
  }
}
