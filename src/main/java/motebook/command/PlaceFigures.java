package motebook.command;

import java.util.Optional;
import java.util.OptionalDouble;
import motebook.entry.Quantities;
import motebook.model.Refusal;
import motebook.model.Surroundings;
import motebook.model.Surroundings.Indoors;
import motebook.model.Surroundings.Outdoors;
import motebook.model.Text;
import motebook.science.Emission;
import picocli.CommandLine.Option;

/** The figures of a place as they are given on the command line. */
final class PlaceFigures {
  private static final String NONE = "none";
  private static final double OPEN_AIR_CHANGES = 3;

  @Option(names = "--volume", paramLabel = "V", description = "Volume, m³; or 3200ft3.")
  private String volume;

  @Option(names = "--length", paramLabel = "L", description = "Length, m; or 20ft.")
  private String length;

  @Option(names = "--width", paramLabel = "W", description = "Width, m; or 16ft.")
  private String width;

  @Option(names = "--height", paramLabel = "H", description = "Height, m; or 8ft.")
  private String height;

  @Option(
      names = "--air-changes",
      paramLabel = "N",
      description = "Air changes per hour with doors and windows closed.")
  private Double airChanges;

  @Option(
      names = "--open-air-changes",
      paramLabel = "N",
      description = "Air changes per hour with doors and windows open.")
  private Double openAirChanges;

  @Option(
      names = "--air-speed",
      paramLabel = "S",
      description = "Air speed at the bench, or wind outdoors, m/min; or 20fpm.")
  private String airSpeed;

  @Option(
      names = "--cleaner-flow",
      paramLabel = "F",
      description = "Clean-air flow of the air cleaner, m³/min; or 400cfm; or none.")
  private String cleanerFlow;

  @Option(
      names = "--cleaner-run-on",
      paramLabel = "MIN",
      description = "Minutes that the air cleaner runs on after each session that used it.")
  private Integer cleanerRunOn;

  @Option(
      names = "--fan-flow",
      paramLabel = "F",
      description = "Flow of the window fan, m³/min; or 400cfm; or none.")
  private String fanFlow;

  @Option(
      names = "--outdoor",
      paramLabel = "WIND",
      description = "Outdoors: still, light-air, light-breeze or gentle-breeze.")
  private String outdoor;

  /** Whether no figure was given at all. */
  boolean none() {
    return !forRooms() && airSpeed == null && outdoor == null;
  }

  private boolean forRooms() {
    return volume != null
        || length != null
        || width != null
        || height != null
        || airChanges != null
        || openAirChanges != null
        || cleanerFlow != null
        || cleanerRunOn != null
        || fanFlow != null;
  }

  /** The surroundings of a new place; what is not given is as in the default shop. */
  Surroundings fresh() {
    if (outdoor != null) {
      refuseRoomFigures();
      return new Outdoors(speed().orElseGet(this::wind));
    }
    double closed = airChanges == null ? Emission.SHOP_AIR_CHANGES_PER_HOUR : airChanges;
    return new Indoors(
        volume()
            .orElseThrow(
                () ->
                    new Refusal(
                        "A place needs a size: give --volume 90, or --length, --width and"
                            + " --height, or --outdoor light-air for a place outdoors.")),
        closed,
        openAirChanges == null ? Math.max(OPEN_AIR_CHANGES, closed) : openAirChanges,
        speed().orElse(Emission.SHOP_AIR_SPEED_M_PER_MIN),
        flow("--cleaner-flow", cleanerFlow, OptionalDouble.empty()),
        flow("--fan-flow", fanFlow, OptionalDouble.empty()),
        cleanerRunOn == null ? 0 : cleanerRunOn);
  }

  /** The surroundings of a place after the change; what is not given stays. */
  Surroundings applied(Surroundings was) {
    if (was instanceof Indoors room) {
      return changed(room);
    }
    refuseRoomFigures();
    double speed = outdoor == null ? was.airSpeedMPerMin() : wind();
    return new Outdoors(speed().orElse(speed));
  }

  private Indoors changed(Indoors was) {
    if (outdoor != null) {
      throw new Refusal(
          "--outdoor is for a place outdoors; this one is a room. Add another place for outdoors,"
              + " with --outdoor light-air.");
    }
    return new Indoors(
        volume().orElse(was.volumeM3()),
        airChanges == null ? was.airChangesPerHour() : airChanges,
        openAirChanges == null ? was.openAirChangesPerHour() : openAirChanges,
        speed().orElse(was.airSpeedMPerMin()),
        flow("--cleaner-flow", cleanerFlow, was.cleanerFlowM3PerMin()),
        flow("--fan-flow", fanFlow, was.fanFlowM3PerMin()),
        cleanerRunOn == null ? was.cleanerRunOnMinutes() : cleanerRunOn);
  }

  private void refuseRoomFigures() {
    if (forRooms()) {
      throw new Refusal(
          "Outdoors there is no room to give a size, air changes, a cleaner or a fan; give --outdoor"
              + " or --air-speed alone.");
    }
  }

  private Optional<Double> volume() {
    boolean sides = length != null || width != null || height != null;
    if (volume != null && sides) {
      throw new Refusal("Give either --volume or --length, --width and --height, not both.");
    }
    if (volume != null) {
      return Optional.of(Quantities.volumeM3("--volume", volume));
    }
    if (!sides) {
      return Optional.empty();
    }
    if (length == null || width == null || height == null) {
      throw new Refusal("A room has three sides: give --length, --width and --height together.");
    }
    return Optional.of(
        Quantities.lengthM("--length", length)
            * Quantities.lengthM("--width", width)
            * Quantities.lengthM("--height", height));
  }

  private Optional<Double> speed() {
    return Optional.ofNullable(airSpeed).map(s -> Quantities.speedMPerMin("--air-speed", s));
  }

  private static OptionalDouble flow(String option, String given, OptionalDouble was) {
    if (given == null) {
      return was;
    }
    return Text.folded(given).equals(NONE)
        ? OptionalDouble.empty()
        : OptionalDouble.of(Quantities.flowM3PerMin(option, given));
  }

  // Beaufort bands read in a copy: 1-3, 4-7, 8-12 mph; "still" is judgement. m/min.
  private double wind() {
    return switch (Text.folded(outdoor)) {
      case "still" -> 0.2 * 60;
      case "light air" -> 1.0 * 60;
      case "light breeze" -> 2.5 * 60;
      case "gentle breeze" -> 4.5 * 60;
      default ->
          throw new Refusal(
              "\""
                  + Text.clean(outdoor)
                  + "\" is no wind: say still, light-air, light-breeze or gentle-breeze.");
    };
  }
}
