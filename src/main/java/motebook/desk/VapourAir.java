package motebook.desk;

import java.util.Map;
import motebook.model.Session;
import motebook.reference.Solvent;

/** What vapour was outside the mask during a session. */
@FunctionalInterface
public interface VapourAir {
  /** No vapour was ever there, or none is reckoned. */
  VapourAir NONE = session -> Map.of();

  /**
   * The mean concentration of each solvent while the session lasted; none where there was none.
   * What is warned of and never estimated, such as isocyanates, is there with a figure of 0.
   */
  Map<Solvent, Ppm> during(Session session);

  /**
   * A concentration.
   *
   * @param typical ppm, 0 or more
   * @param high upper end of its 90 % range, ppm
   */
  record Ppm(double typical, double high) {}
}
