package motebook.model;

import java.util.OptionalDouble;

/** What the air of a place does. */
public sealed interface Surroundings {

  /** Speed of the air around the worker as it was given, m/min. */
  double airSpeedMPerMin();

  /** Speed of the air around the worker that estimates use, m/min. */
  default double estimatedAirSpeedMPerMin() {
    return airSpeedMPerMin();
  }

  /**
   * A room.
   *
   * @param volumeM3 0.1 to 1,000,000 m³
   * @param airChangesPerHour with doors and windows closed, 0 to 1000 /h
   * @param openAirChangesPerHour with doors and windows open, 0 to 1000 /h; doors that are open let
   *     no less air through than closed ones, so a lower figure counts as the closed one
   * @param airSpeedMPerMin random air speed, 0.01 to 1000 m/min
   * @param cleanerFlowM3PerMin clean-air flow of the room's air cleaner, if it has one
   * @param fanFlowM3PerMin flow of the window fan, if it has one
   * @param cleanerRunOnMinutes how long the cleaner runs on after a session that used it, 0 to 1440
   */
  record Indoors(
      double volumeM3,
      double airChangesPerHour,
      double openAirChangesPerHour,
      double airSpeedMPerMin,
      OptionalDouble cleanerFlowM3PerMin,
      OptionalDouble fanFlowM3PerMin,
      int cleanerRunOnMinutes)
      implements Surroundings {
    public Indoors {
      Checks.within("volume", volumeM3, 0.1, 1e6, "m³");
      Checks.within("air changes", airChangesPerHour, 0, 1000, "per hour");
      Checks.within("open air changes", openAirChangesPerHour, 0, 1000, "per hour");
      openAirChangesPerHour = Math.max(openAirChangesPerHour, airChangesPerHour);
      Checks.within("air speed", airSpeedMPerMin, 0.01, 1000, "m/min");
      cleanerFlowM3PerMin.ifPresent(flow -> Checks.within("cleaner flow", flow, 0, 1e5, "m³/min"));
      fanFlowM3PerMin.ifPresent(flow -> Checks.within("fan flow", flow, 0, 1e5, "m³/min"));
      Checks.within("cleaner run-on", cleanerRunOnMinutes, 0, 1440, "min");
    }
  }

  /**
   * Outdoors. The tool, the heat and the body's own wake rule the air at the face, not the wind of
   * the weather report, so that no estimate uses more than {@link #FASTEST}; older books may hold
   * more.
   *
   * @param airSpeedMPerMin air at the worker's face, 0.01 to 10,000 m/min
   */
  record Outdoors(double airSpeedMPerMin) implements Surroundings {
    /** The fastest air that an estimate uses, m/min. */
    public static final double FASTEST = 60;

    public Outdoors {
      Checks.within("air speed", airSpeedMPerMin, 0.01, 1e4, "m/min");
    }

    @Override
    public double estimatedAirSpeedMPerMin() {
      return Math.min(airSpeedMPerMin, FASTEST);
    }

    /** Whether estimates use less than was given. */
    public boolean capped() {
      return airSpeedMPerMin > FASTEST;
    }
  }
}
