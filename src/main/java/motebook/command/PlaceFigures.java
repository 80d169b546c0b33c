package motebook.command;

import java.util.Optional;
import java.util.OptionalDouble;
import motebook.entry.Quantities;
import motebook.model.Figures;
import motebook.model.Refusal;
import motebook.model.Surroundings;
import motebook.model.Surroundings.Indoors;
import motebook.model.Surroundings.Outdoors;
import motebook.model.Text;
import motebook.model.Units;
import motebook.science.Emission;
import picocli.CommandLine.Option;

/** The figures of a place as they are given on the command line. */
final class PlaceFigures {
  private static final String NONE = "none";
  private static final double OPEN_AIR_CHANGES = 3;

  @Option(
      names = "--volume",
      paramLabel = "V",
      description = "Volume: 90m3, 3200ft3; bare: m³, in a book with US units ft³.")
  private String volume;

  @Option(
      names = "--length",
      paramLabel = "L",
      description = "Length: 6.1m, 20ft; bare as the volume.")
  private String length;

  @Option(names = "--width", paramLabel = "W", description = "Width: 4.9m, 16ft.")
  private String width;

  @Option(names = "--height", paramLabel = "H", description = "Height: 2.4m, 8ft.")
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
      description =
          "Air speed at the bench or, up to 60 m/min, at the face outdoors: 6m/min, 20fpm; bare:"
              + " m/min, US ft/min.")
  private String airSpeed;

  @Option(
      names = "--cleaner-flow",
      paramLabel = "F",
      description =
          "Clean-air flow of the air cleaner: 11m3/min, 400cfm; bare: m³/min, US cfm; or none.")
  private String cleanerFlow;

  @Option(
      names = "--cleaner-run-on",
      paramLabel = "MIN",
      description = "Minutes that the air cleaner runs on after each session that used it.")
  private Integer cleanerRunOn;

  @Option(
      names = "--fan-flow",
      paramLabel = "F",
      description = "Flow of the window fan: 11m3/min, 400cfm; bare: m³/min, US cfm; or none.")
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

  /**
   * The surroundings of a new place; what is not given is as in the default shop.
   *
   * @param units those of bare numbers
   */
  Surroundings fresh(Units units) {
    if (outdoor != null) {
      refuseRoomFigures();
      return new Outdoors(speedOutdoors(units).orElseGet(this::wind));
    }
    double closed = airChanges == null ? Emission.SHOP_AIR_CHANGES_PER_HOUR : airChanges;
    return new Indoors(
        volume(units)
            .orElseThrow(
                () ->
                    new Refusal(
                        "A place needs a size: give --volume 90, or --length, --width and"
                            + " --height, or --outdoor light-air for a place outdoors.")),
        closed,
        open(closed, OPEN_AIR_CHANGES),
        speed(units).orElse(Emission.SHOP_AIR_SPEED_M_PER_MIN),
        flow("--cleaner-flow", cleanerFlow, OptionalDouble.empty(), units),
        flow("--fan-flow", fanFlow, OptionalDouble.empty(), units),
        cleanerRunOn == null ? 0 : cleanerRunOn);
  }

  /**
   * The surroundings of a place after the change; what is not given stays.
   *
   * @param units those of bare numbers
   */
  Surroundings applied(Surroundings was, Units units) {
    if (was instanceof Indoors room) {
      return changed(room, units);
    }
    refuseRoomFigures();
    double speed = outdoor == null ? was.airSpeedMPerMin() : wind();
    return new Outdoors(speedOutdoors(units).orElse(speed));
  }

  private Indoors changed(Indoors was, Units units) {
    if (outdoor != null) {
      throw new Refusal(
          "--outdoor is for a place outdoors; this one is a room. Add another place for outdoors,"
              + " with --outdoor light-air.");
    }
    double closed = airChanges == null ? was.airChangesPerHour() : airChanges;
    return new Indoors(
        volume(units).orElse(was.volumeM3()),
        closed,
        open(closed, was.openAirChangesPerHour()),
        speed(units).orElse(was.airSpeedMPerMin()),
        flow("--cleaner-flow", cleanerFlow, was.cleanerFlowM3PerMin(), units),
        flow("--fan-flow", fanFlow, was.fanFlowM3PerMin(), units),
        cleanerRunOn == null ? was.cleanerRunOnMinutes() : cleanerRunOn);
  }

  private void refuseRoomFigures() {
    if (forRooms()) {
      throw new Refusal(
          "Outdoors there is no room to give a size, air changes, a cleaner or a fan; give --outdoor"
              + " or --air-speed alone.");
    }
  }

  private double open(double closed, double usual) {
    if (openAirChanges != null && openAirChanges < closed) {
      throw new Refusal(
          "Open doors let in no less air than closed ones: --open-air-changes "
              + Figures.exact(openAirChanges)
              + " is below the "
              + Figures.exact(closed)
              + " per hour with them closed.");
    }
    return openAirChanges == null ? Math.max(usual, closed) : openAirChanges;
  }

  private Optional<Double> volume(Units units) {
    boolean sides = length != null || width != null || height != null;
    if (volume != null && sides) {
      throw new Refusal("Give either --volume or --length, --width and --height, not both.");
    }
    if (volume != null) {
      return Optional.of(Quantities.volumeM3("--volume", volume, units));
    }
    if (!sides) {
      return Optional.empty();
    }
    if (length == null || width == null || height == null) {
      throw new Refusal("A room has three sides: give --length, --width and --height together.");
    }
    return Optional.of(
        Quantities.lengthM("--length", length, units)
            * Quantities.lengthM("--width", width, units)
            * Quantities.lengthM("--height", height, units));
  }

  private Optional<Double> speed(Units units) {
    return Optional.ofNullable(airSpeed).map(s -> Quantities.speedMPerMin("--air-speed", s, units));
  }

  private Optional<Double> speedOutdoors(Units units) {
    Optional<Double> speed = speed(units);
    if (speed.filter(given -> given > Outdoors.FASTEST).isPresent()) {
      throw new Refusal(
          "Outdoors the tool and the body rule the air at the face, not the wind, so that no more"
              + " than 60 m/min (197 ft/min) is estimated with: give --air-speed up to 60m/min, or"
              + " --outdoor light-air.");
    }
    return speed;
  }

  private static OptionalDouble flow(String option, String given, OptionalDouble was, Units units) {
    if (given == null) {
      return was;
    }
    return Text.folded(given).equals(NONE)
        ? OptionalDouble.empty()
        : OptionalDouble.of(Quantities.flowM3PerMin(option, given, units));
  }

  // The air at the face, m/min: judgement, grade D. The wind itself put into the near field gave a
  // sixth of what was measured at deck building (Decker 2002, AIHA J 63:166).
  private double wind() {
    return switch (Text.folded(outdoor)) {
      case "still" -> 12;
      case "light air" -> 15;
      case "light breeze" -> 20;
      case "gentle breeze" -> 30;
      default ->
          throw new Refusal(
              "\""
                  + Text.clean(outdoor)
                  + "\" is no wind: say still, light-air, light-breeze or gentle-breeze.");
    };
  }
}
