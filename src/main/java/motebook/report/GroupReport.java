package motebook.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import motebook.desk.ExposureGroup;
import motebook.desk.Statistics;
import motebook.desk.Statistics.Held;
import motebook.model.Figures;

/** The statistics of the samples of each kind of work, as JSON and as text. */
public final class GroupReport {
  /** What stands above them. */
  public static final String HEADING =
      "Results of one kind of work together, each the mean over its own time, mg/m³:";

  private GroupReport() {}

  static Map<String, Object> json(ExposureGroup group) {
    Map<String, Object> object =
        Json.object(
            "operation", group.operation().key(),
            "material", group.material().map(material -> material.key()).orElse(null),
            "fraction", fraction(group),
            "limit", group.limit().map(DayJson::limit).orElse(null),
            "limit_in_this_fraction_mg_m3",
                group.statistics().held().map(Held::limit).orElse(null));
    object.putAll(StatisticsReport.json(group.statistics()));
    return object;
  }

  private static String fraction(ExposureGroup group) {
    return group.fraction().name().toLowerCase(Locale.ROOT);
  }

  /** The lines of a group: what it is, how high it lies, what that says of the limit. */
  public static List<String> lines(ExposureGroup group) {
    Statistics stats = group.statistics();
    List<String> lines = new ArrayList<>();
    lines.add(
        group.operation().name()
            + group.material().map(material -> " of " + Wording.material(material)).orElse("")
            + ", "
            + fraction(group)
            + ": "
            + stats.results()
            + " results"
            + (stats.censored() > 0 ? ", " + stats.censored() + " below detection" : ""));
    lines.add("  " + StatisticsReport.middle(stats));
    lines.add("  " + StatisticsReport.upper(stats));
    lines.add("  " + stats.held().map(held -> against(held, group)).orElse("no limit applies"));
    return lines;
  }

  private static String against(Held held, ExposureGroup group) {
    String limit = Figures.plain(held.limit()) + (group.converted() ? " (converted)" : "");
    return StatisticsReport.over(held, limit)
        + "; 95th percentile "
        + StatisticsReport.percentile(group.statistics(), held)
        + "; EN 689: "
        + StatisticsReport.verdict(held);
  }
}
