package motebook.science;

/**
 * The air around a worker's face: a hemisphere that exchanges air with the rest of the place.
 *
 * <p>Decoupled form: while a source of {@code G} mg/min runs, the near field lies {@code G/β} above
 * the room, {@code β = π r² s}. Source: Nicas 1996; Keil, Simmons and Anthony, AIHA 2009 (from
 * memory); Nicas 2024, Ann Work Expo Health 68:78-85 calls the decoupled form an excellent
 * approximation.
 */
public final class NearField {
  /** Radius of the hemisphere, m; the usual choice (from memory). */
  public static final double RADIUS_M = 0.8;

  private NearField() {}

  /**
   * Exchange of air between near field and room, m³/min.
   *
   * @param airSpeedMPerMin random air speed, above 0 m/min
   */
  public static double exchangeM3PerMin(double airSpeedMPerMin) {
    return Math.PI * RADIUS_M * RADIUS_M * airSpeedMPerMin;
  }
}
