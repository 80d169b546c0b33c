package motebook.report;

import java.time.LocalTime;
import java.util.Map;
import motebook.model.Figures;
import motebook.model.Upkeep;

/** What was done to a shop filter, in words and as JSON. */
public final class UpkeepReport {
  private UpkeepReport() {}

  /** {@code emptied on 2026-03-02 at 17:30}; {@code gauge read 1.4 on 2026-03-02}. */
  public static String told(Upkeep upkeep) {
    String done =
        upkeep.reading().isPresent()
            ? "gauge read " + Figures.plain(upkeep.reading().getAsDouble())
            : upkeep.what().key();
    return done + " on " + upkeep.date() + upkeep.time().map(at -> " at " + at).orElse("");
  }

  /** One of them as a JSON object; the reading is in the gauge's own unit. */
  public static Map<String, Object> object(Upkeep upkeep) {
    return Json.object(
        "date", upkeep.date().toString(),
        "time", upkeep.time().map(LocalTime::toString).orElse(null),
        "what", upkeep.what().key(),
        "reading", upkeep.reading().isPresent() ? upkeep.reading().getAsDouble() : null);
  }
}
