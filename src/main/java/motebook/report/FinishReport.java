package motebook.report;

import java.util.List;
import java.util.Map;
import motebook.desk.Attribution.Share;
import motebook.model.Figures;
import motebook.reference.Finish;

/** A finish in words and as JSON. */
public final class FinishReport {
  private static final double PERCENT = 100;

  private FinishReport() {}

  /** {@code oil varnish: 400 g/L of vapour (mineral spirits 98 %, xylenes 2 %), rough}. */
  public static String line(Finish finish) {
    return (finish.own() ? finish.name() : finish.spoken())
        + ": "
        + Figures.plain(finish.volatileGPerL().typical())
        + " g/L of vapour ("
        + WeekText.shares(
            finish.solvents().entrySet().stream()
                .map(part -> new Share<>(part.getKey(), PERCENT * part.getValue()))
                .toList(),
            finish.solvents().size(),
            FinishReport::spoken)
        + ")"
        + (finish.own() ? ", from its data sheet" : finish.grade().rough() ? ", rough" : "");
  }

  private static String spoken(String key) {
    return key.replace('-', ' ');
  }

  /** The object of {@code gear finishes --json}. */
  public static Map<String, Object> object(List<Finish> finishes) {
    return Json.object("finishes", finishes.stream().map(FinishReport::object).toList());
  }

  private static Map<String, Object> object(Finish finish) {
    return Json.object(
        "finish", finish.key(),
        "name", finish.name(),
        "volatile_g_l", finish.volatileGPerL().typical(),
        "volatile_low_g_l", finish.volatileGPerL().low(),
        "volatile_high_g_l", finish.volatileGPerL().high(),
        "within_session_share", finish.withinSession(),
        "later_rate_per_h", finish.laterPerHour(),
        "solvent_weight_shares", finish.solvents(),
        "own", finish.own(),
        "rough", finish.grade().rough());
  }
}
