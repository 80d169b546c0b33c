package motebook.journal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import motebook.model.Refusal;
import motebook.model.Units;

/** The owner's choices: the one row of settings, and the further ones under a key each. */
final class Preferences {
  private static final String UNITS = "units";
  private static final String EQUIPMENT = "equipment";

  private final Store store;
  private final People people;
  private final Places places;

  Preferences(Store store, People people, Places places) {
    this.store = store;
    this.people = people;
    this.places = places;
  }

  Settings read() {
    Map<String, String> further = new HashMap<>();
    store
        .list("preferences", row -> Map.entry(row.getString("key"), row.getString("value")))
        .forEach(choice -> further.put(choice.getKey(), choice.getValue()));
    return store
        .first("settings", row -> read(row, further))
        .orElseThrow(() -> new BookTrouble(Troubles.damaged(store.file())));
  }

  private static Settings read(ResultSet row, Map<String, String> further) throws SQLException {
    return new Settings(
        row.getString("person"),
        row.getString("place"),
        row.getString("limit_set"),
        row.getDouble("total_conversion"),
        row.getInt("gap_minutes"),
        Units.valueOf(further.getOrDefault(UNITS, Units.METRIC.name())),
        keys(further.getOrDefault(EQUIPMENT, "")));
  }

  /**
   * Sees to it that a choice could have been made.
   *
   * @throws Refusal if it could not
   */
  static void check(String key, String value) {
    if (key.equals(UNITS) && Arrays.stream(Units.values()).noneMatch(u -> u.name().equals(value))) {
      throw new Refusal("The units are METRIC or US, not \"" + value + "\".");
    }
  }

  private static List<String> keys(String text) {
    return text.isEmpty() ? List.of() : List.of(text.split(" ", -1));
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
    put(UNITS, settings.units() == Units.METRIC ? "" : settings.units().name());
    put(EQUIPMENT, String.join(" ", settings.equipment()));
  }

  /** What is as shipped is not kept. */
  private void put(String key, String value) {
    if (value.isEmpty()) {
      store.run("preference-drop", key);
    } else {
      store.run("preference-put", key, value);
    }
  }
}
