package motebook.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import motebook.journal.PlaceVersion;
import motebook.model.Figures;
import motebook.model.Surroundings;
import motebook.model.Surroundings.Indoors;

/** A place in words and as JSON. */
public final class PlaceReport {
  private PlaceReport() {}

  /** The name with its figures, one line for each version. */
  public static List<String> lines(String name, List<PlaceVersion> versions) {
    return versions.stream()
        .map(
            v ->
                name
                    + v.from().map(from -> " from " + from).orElse("")
                    + ": "
                    + figures(v.surroundings()))
        .toList();
  }

  /** What the air of a place does, in words. */
  public static String figures(Surroundings surroundings) {
    if (surroundings instanceof Indoors room) {
      return Figures.plain(room.volumeM3())
          + " m³, "
          + Figures.plain(room.airChangesPerHour())
          + " air changes/h closed, "
          + Figures.plain(room.openAirChangesPerHour())
          + " open, air speed "
          + Figures.plain(room.airSpeedMPerMin())
          + " m/min"
          + flow(", air cleaner ", room.cleanerFlowM3PerMin())
          + (room.cleanerRunOnMinutes() > 0
              ? ", runs on " + room.cleanerRunOnMinutes() + " min"
              : "")
          + flow(", window fan ", room.fanFlowM3PerMin());
    }
    return "outdoors, wind " + Figures.plain(surroundings.airSpeedMPerMin()) + " m/min";
  }

  private static String flow(String what, OptionalDouble flow) {
    return flow.isPresent() ? what + Figures.plain(flow.getAsDouble()) + " m³/min" : "";
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
