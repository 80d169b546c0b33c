package motebook.desk;

import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import motebook.reference.Solvent;

/** Whose figures the vapours of a day are held against. */
public enum VapourLimits {
  /** For each solvent the lower of OSHA's and NIOSH's figure. */
  STRICTER,
  /** OSHA's permissible exposure limits, 29 CFR 1910.1000, over 8 h. */
  OSHA,
  /** NIOSH's recommended exposure limits, over up to 10 h. */
  NIOSH;

  /**
   * A figure for one solvent.
   *
   * @param body who calls it what
   * @param ppm above 0
   */
  public record Figure(String body, double ppm) {}

  /** The figure that a solvent is held against; empty where there is none. */
  public Optional<Figure> of(Solvent solvent) {
    return switch (this) {
      case OSHA -> osha(solvent);
      case NIOSH -> niosh(solvent);
      case STRICTER ->
          Stream.of(osha(solvent), niosh(solvent))
              .flatMap(Optional::stream)
              .min(Comparator.comparingDouble(Figure::ppm));
    };
  }

  private static Optional<Figure> osha(Solvent solvent) {
    return figure("OSHA PEL", solvent.limits().oshaPpm());
  }

  private static Optional<Figure> niosh(Solvent solvent) {
    return figure("NIOSH REL", solvent.limits().nioshPpm());
  }

  private static Optional<Figure> figure(String body, OptionalDouble ppm) {
    return ppm.isPresent() ? Optional.of(new Figure(body, ppm.getAsDouble())) : Optional.empty();
  }
}
