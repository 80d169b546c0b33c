package motebook.desk;

import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import motebook.model.VapourLimits;
import motebook.reference.Solvent;
import motebook.reference.Solvent.Authority;

/**
 * A figure that one solvent is held against.
 *
 * @param body who calls it what
 * @param ppm above 0
 */
public record VapourLimit(String body, double ppm) {

  /** The figure of those that the owner chose; empty where there is none. */
  static Optional<VapourLimit> of(Solvent solvent, VapourLimits chosen) {
    return switch (chosen) {
      case OSHA -> osha(solvent);
      case NIOSH -> niosh(solvent);
      case STRICTER ->
          Stream.of(osha(solvent), niosh(solvent))
              .flatMap(Optional::stream)
              .min(Comparator.comparingDouble(VapourLimit::ppm));
    };
  }

  private static Optional<VapourLimit> osha(Solvent solvent) {
    return figure("OSHA PEL", solvent.limits().of(Authority.OSHA).eightHour());
  }

  private static Optional<VapourLimit> niosh(Solvent solvent) {
    return figure("NIOSH REL", solvent.limits().of(Authority.NIOSH).eightHour());
  }

  private static Optional<VapourLimit> figure(String body, OptionalDouble ppm) {
    return ppm.isPresent()
        ? Optional.of(new VapourLimit(body, ppm.getAsDouble()))
        : Optional.empty();
  }
}
