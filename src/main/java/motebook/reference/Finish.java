package motebook.reference;

import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is put on wood and gives off vapour as it dries.
 *
 * @param key stable key
 * @param name listed name
 * @param also other names
 * @param densityGPerMl of the liquid, g/mL
 * @param volatileGPerL organic vapour that a litre gives off, g/L
 * @param withinSession share of it that is given off while it is put on, 0 to 1
 * @param laterPerHour rate at which the rest follows, first order, per hour
 * @param solvents share by weight of each solvent in the vapour, by key; they add to 1
 * @param oil whether it is mist of oil in the air when it is sprayed
 * @param cautions keys of the cautions it raises
 * @param grade how sure
 * @param basis source
 * @param own whether the owner entered it from a data sheet
 * @param retiredOn the last day on which it may have been used; empty while it is in use
 */
public record Finish(
    String key,
    String name,
    List<String> also,
    double densityGPerMl,
    Figure volatileGPerL,
    double withinSession,
    double laterPerHour,
    Map<String, Double> solvents,
    boolean oil,
    List<String> cautions,
    Grade grade,
    String basis,
    boolean own,
    Optional<LocalDate> retiredOn)
    implements Named {

  /** It gives off isocyanate mist, which no vapour balance sees. */
  public static final String ISOCYANATES = "isocyanates";

  /** It gives off formaldehyde as it cures, which its solvents do not tell of. */
  public static final String FORMALDEHYDE = "finish-formaldehyde";

  public Finish {
    also = List.copyOf(also);
    solvents = Collections.unmodifiableMap(new LinkedHashMap<>(solvents));
    cautions = List.copyOf(cautions);
  }

  /** Whether work of a day may have used it. */
  public boolean inUseOn(LocalDate day) {
    return retiredOn.filter(day::isAfter).isEmpty();
  }

  /** Vapour that an amount gives off in all, mg: a millilitre at 1 g/L holds one milligram. */
  public double mg(double millilitres) {
    return millilitres * volatileGPerL.typical();
  }
}
