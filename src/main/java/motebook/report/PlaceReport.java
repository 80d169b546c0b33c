package motebook.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import motebook.journal.PlaceVersion;
import motebook.model.Figures;
import motebook.model.Surroundings;
import motebook.model.Surroundings.Indoors;
import motebook.model.Surroundings.Outdoors;
import motebook.model.Units;

/** A place in words and as JSON. */
public final class PlaceReport {
  private PlaceReport() {}

  /** The name with its figures, one line for each version. */
  public static List<String> lines(String name, List<PlaceVersion> versions, Units units) {
    return versions.stream()
        .map(
            v ->
                name
                    + v.from().map(from -> " from " + from).orElse("")
                    + ": "
                    + figures(v.surroundings(), units))
        .toList();
  }

  /** What the air of a place does, in words, with the owner's units. */
  public static String figures(Surroundings surroundings, Units units) {
    if (surroundings instanceof Indoors room) {
      return Measures.volume(room.volumeM3(), units)
          + ", "
          + Figures.plain(room.airChangesPerHour())
          + (room.airChangesPerHour() == 1 ? " air change/h closed, " : " air changes/h closed, ")
          + Figures.plain(room.openAirChangesPerHour())
          + " open, air speed "
          + Measures.speed(room.airSpeedMPerMin(), units)
          + flow(", air cleaner ", room.cleanerFlowM3PerMin(), units)
          + (room.cleanerRunOnMinutes() > 0
              ? ", runs on " + room.cleanerRunOnMinutes() + " min"
              : "")
          + flow(", window fan ", room.fanFlowM3PerMin(), units);
    }
    String speed =
        "outdoors, air speed at the face " + Measures.speed(surroundings.airSpeedMPerMin(), units);
    return surroundings instanceof Outdoors yard && yard.capped()
        ? speed + ", estimated as " + Measures.speed(Outdoors.FASTEST, units)
        : speed;
  }

  private static String flow(String what, OptionalDouble flow, Units units) {
    return flow.isPresent() ? what + Measures.flow(flow.getAsDouble(), units) : "";
  }

  /** One version as a JSON object. */
  public static Map<String, Object> object(PlaceVersion version) {
    Map<String, Object> object =
        Json.object(
            "from", version.from().map(LocalDate::toString).orElse(null),
            "outdoors", !(version.surroundings() instanceof Indoors),
            "air_speed_m_min", version.surroundings().airSpeedMPerMin());
    if (version.surroundings() instanceof Indoors room) {
      object.put("volume_m3", room.volumeM3());
      object.put("air_changes_per_hour", room.airChangesPerHour());
      object.put("open_air_changes_per_hour", room.openAirChangesPerHour());
      object.put("cleaner_flow_m3_min", orNull(room.cleanerFlowM3PerMin()));
      object.put("fan_flow_m3_min", orNull(room.fanFlowM3PerMin()));
      object.put("cleaner_run_on_minutes", room.cleanerRunOnMinutes());
    }
    return object;
  }

  private static Double orNull(OptionalDouble value) {
    return value.isPresent() ? value.getAsDouble() : null;
  }
}
