package motebook.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import motebook.desk.ExposureGroup;
import motebook.desk.SampledDay;
import motebook.desk.Statistics;
import motebook.desk.Statistics.Held;
import motebook.model.Figures;
import motebook.reference.Control;

/** The statistics of the samples of each kind of work, as JSON and as text. */
public final class GroupReport {
  /** What stands above them. */
  public static final String HEADING =
      "Sampled days of one person at one job, each as the 8-hour mean that limits are of, mg/m³:";

  private GroupReport() {}

  static Map<String, Object> json(ExposureGroup group) {
    Map<String, Object> object =
        Json.object(
            "person", group.person(),
            "operation", group.operation().key(),
            "controls", group.controls().stream().map(Control::key).toList(),
            "material", group.material().map(material -> material.key()).orElse(null),
            "fraction", fraction(group),
            "limit", group.limit().map(DayJson::limit).orElse(null),
            "limit_in_this_fraction_mg_m3", group.statistics().held().map(Held::limit).orElse(null),
            "days", group.days().stream().map(GroupReport::json).toList());
    object.putAll(StatisticsReport.json(group.statistics()));
    return object;
  }

  private static Map<String, Object> json(SampledDay day) {
    return Json.object(
        "date", day.date().toString(),
        "sampled_minutes", day.minutes(),
        "measured_mg_m3", day.measuredMgPerM3(),
        "rest_of_day_mg_m3", day.restMgPerM3(),
        "mean_8h_mg_m3", day.mgPerM3(),
        "below_detection", day.below(),
        "stands_for_shift", day.standsForShift());
  }

  private static String fraction(ExposureGroup group) {
    return group.fraction().name().toLowerCase(Locale.ROOT);
  }

  /** The lines of a group: what it is, how high it lies, what that says of the limit. */
  public static List<String> lines(ExposureGroup group) {
    Statistics stats = group.statistics();
    List<String> lines = new ArrayList<>();
    lines.add(
        group.person()
            + ", "
            + group.operation().name()
            + group.material().map(material -> " of " + Wording.material(material)).orElse("")
            + (group.controls().isEmpty()
                ? ""
                : " with "
                    + String.join(" and ", group.controls().stream().map(Control::spoken).toList()))
            + ", "
            + fraction(group)
            + ": "
            + stats.results()
            + " days"
            + (stats.censored() > 0 ? ", " + stats.censored() + " below detection" : ""));
    group.days().forEach(day -> lines.add("  " + day(day)));
    stats.sample().ifPresent(sample -> lines.add("  " + StatisticsReport.middle(sample, stats)));
    lines.add("  " + StatisticsReport.upper(stats));
    lines.add("  " + stats.held().map(held -> against(held, group)).orElse("no limit applies"));
    return lines;
  }

  private static String day(SampledDay day) {
    String measured =
        (day.below() ? "below " : "")
            + Figures.rounded(day.measuredMgPerM3())
            + " over "
            + Figures.duration(day.minutes());
    return day.date()
        + ": "
        + (day.standsForShift()
            ? measured + ", which stands for the shift"
            : (day.below() ? "below " : "")
                + Figures.rounded(day.mgPerM3())
                + " ("
                + measured
                + ", and "
                + Figures.rounded(day.restMgPerM3())
                + " estimated for the rest of the day)");
  }

  private static String against(Held held, ExposureGroup group) {
    String limit = Figures.plain(held.limit()) + (group.converted() ? " (converted)" : "");
    return held.over()
            .map(
                over ->
                    StatisticsReport.over(over, limit)
                        + "; 95th percentile "
                        + StatisticsReport.percentile(group.statistics(), held))
            .orElse("limit " + limit)
        + "; EN 689: "
        + StatisticsReport.verdict(held, group.statistics());
  }
}
