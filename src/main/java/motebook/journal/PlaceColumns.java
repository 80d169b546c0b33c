package motebook.journal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import motebook.model.Surroundings;
import motebook.model.Surroundings.Indoors;
import motebook.model.Surroundings.Outdoors;

/** The figures of a place as the columns of a row. */
final class PlaceColumns {
  private static final int INDOORS_ONLY = 6;

  private PlaceColumns() {}

  /** The values of kind, air speed, volume, air changes, open ones, cleaner, fan, run-on. */
  static List<Object> columns(Surroundings surroundings) {
    if (surroundings instanceof Indoors in) {
      return indoors(in);
    }
    List<Object> columns = new ArrayList<>();
    columns.add("outdoors");
    columns.add(surroundings.airSpeedMPerMin());
    columns.addAll(Collections.nCopies(INDOORS_ONLY, null));
    return columns;
  }

  private static List<Object> indoors(Indoors in) {
    List<Object> columns = new ArrayList<>();
    columns.add("indoors");
    columns.add(in.airSpeedMPerMin());
    columns.add(in.volumeM3());
    columns.add(in.airChangesPerHour());
    columns.add(in.openAirChangesPerHour());
    columns.add(Columns.orNull(in.cleanerFlowM3PerMin()));
    columns.add(Columns.orNull(in.fanFlowM3PerMin()));
    columns.add(in.cleanerRunOnMinutes());
    return columns;
  }

  /** The figures of the row that the result set stands on. */
  static Surroundings read(ResultSet row) throws SQLException {
    double speed = row.getDouble("air_speed_m_per_min");
    if (row.getString("kind").equals("outdoors")) {
      return new Outdoors(speed);
    }
    return new Indoors(
        row.getDouble("volume_m3"),
        row.getDouble("air_changes_per_hour"),
        row.getDouble("open_air_changes_per_hour"),
        speed,
        Columns.number(row, "cleaner_flow_m3_per_min"),
        Columns.number(row, "fan_flow_m3_per_min"),
        row.getInt("cleaner_run_on_minutes"));
  }
}
