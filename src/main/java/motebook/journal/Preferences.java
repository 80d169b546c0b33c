package motebook.journal;

import java.sql.ResultSet;
import java.sql.SQLException;

/** The one row of settings. */
final class Preferences {
  private final Store store;
  private final People people;
  private final Places places;

  Preferences(Store store, People people, Places places) {
    this.store = store;
    this.people = people;
    this.places = places;
  }

  Settings read() {
    return store
        .first("settings", Preferences::read)
        .orElseThrow(() -> new BookTrouble(Troubles.damaged(store.file())));
  }

  private static Settings read(ResultSet row) throws SQLException {
    return new Settings(
        row.getString("person"),
        row.getString("place"),
        row.getString("limit_set"),
        row.getDouble("total_conversion"),
        row.getInt("gap_minutes"));
  }

  void write(Settings settings) {
    long person = people.known().idOf(settings.person());
    long place = places.known().idOf(settings.place());
    store.run(
        "settings-update",
        person,
        place,
        settings.limitSet(),
        settings.totalConversion(),
        settings.gapMinutes());
  }
}
