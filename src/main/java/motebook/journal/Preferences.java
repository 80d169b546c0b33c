package motebook.journal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import motebook.model.Decimal;
import motebook.model.OwnFigure;
import motebook.model.OwnFigures;
import motebook.model.Refusal;
import motebook.model.Units;
import motebook.model.VapourLimits;

/** The owner's choices: the one row of settings, and the further ones under a key each. */
final class Preferences {
  private static final String UNITS = "units";
  private static final String EQUIPMENT = "equipment";
  private static final String VAPOUR_LIMITS = "vapour-limits";

  /** Begins the key of the day on which an own finish was retired. */
  private static final String RETIRED_FINISH = "retired-finish:";

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
        keys(further.getOrDefault(EQUIPMENT, "")),
        VapourLimits.of(further.getOrDefault(VAPOUR_LIMITS, VapourLimits.STRICTER.key())),
        figures(further));
  }

  private static OwnFigures figures(Map<String, String> further) {
    Map<OwnFigure, Double> chosen = new EnumMap<>(OwnFigure.class);
    for (OwnFigure figure : OwnFigure.values()) {
      if (further.containsKey(figure.key())) {
        chosen.put(figure, number(figure, further.get(figure.key())));
      }
    }
    return new OwnFigures(chosen);
  }

  private static double number(OwnFigure figure, String value) {
    return Decimal.parse(value)
        .orElseThrow(
            () -> new Refusal("The " + figure.key() + " is not a number: \"" + value + "\"."));
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
    if (key.equals(VAPOUR_LIMITS)) {
      VapourLimits.of(value);
    }
    if (key.startsWith(RETIRED_FINISH)) {
      requireDay(value);
    }
    figures(Map.of(key, value));
  }

  private static void requireDay(String value) {
    try {
      LocalDate.parse(value);
    } catch (DateTimeParseException e) {
      throw new Refusal("A finish was retired on \"" + value + "\", which is no date: 2026-03-02.");
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
    boolean stricter = settings.vapourLimits() == VapourLimits.STRICTER;
    put(VAPOUR_LIMITS, stricter ? "" : settings.vapourLimits().key());
    for (OwnFigure figure : OwnFigure.values()) {
      Double chosen = settings.figures().chosen().get(figure);
      put(figure.key(), chosen == null ? "" : chosen.toString());
    }
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
