package motebook.desk;

import java.util.List;
import java.util.Map;
import motebook.model.Session;
import motebook.reference.Solvent;

/** What vapour was outside the mask during a session. */
@FunctionalInterface
public interface VapourAir {
  /** No vapour was ever there, or none is estimated. */
  VapourAir NONE = session -> Map.of();

  /**
   * The mean concentration of each solvent while the session lasted; none where there was none.
   * What is warned of and never estimated, such as isocyanates, is there with a figure of 0.
   */
  Map<Solvent, Ppm> during(Session session);

  /** What it asks of a mask; where no more is known than the means, all of it asks. */
  default VapourDemand demand(Session session) {
    Map<Solvent, Ppm> means = during(session);
    List<Solvent> aboveIdlh =
        means.keySet().stream().filter(one -> one.aboveIdlh(means.get(one).high)).toList();
    return new VapourDemand(
        means.keySet(),
        aboveIdlh,
        List.of(),
        counted ->
            means.entrySet().stream()
                .filter(mean -> counted.test(mean.getKey()))
                .mapToDouble(mean -> mean.getValue().typical)
                .sum());
  }

  /**
   * A concentration.
   *
   * @param typical ppm, 0 or more
   * @param high upper end of its 90 % range, ppm
   */
  record Ppm(double typical, double high) {}
}
