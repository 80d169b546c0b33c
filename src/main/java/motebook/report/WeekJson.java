package motebook.report;

import java.util.Map;
import motebook.desk.DayReport;
import motebook.desk.WeekReport;
import motebook.desk.WeekReport.Contribution;

/** A week as JSON. */
public final class WeekJson {
  private WeekJson() {}

  /** The object of {@code week --json}. */
  public static Map<String, Object> of(WeekReport week) {
    return Json.object(
        "from", week.monday().toString(),
        "to", week.monday().plusDays(6).toString(),
        "person", week.person(),
        "days", week.days().stream().map(WeekJson::day).toList(),
        "mean_40h",
            Json.object(
                "outside", DayJson.estimate(week.outsideMean()),
                "inside", DayJson.estimate(week.insideMean())),
        "minutes_logged", week.minutesLogged(),
        "learned_from_samples", week.learnedFrom(),
        "days_over_limit", week.daysOverLimit(),
        "sources", week.contributions().stream().map(WeekJson::contribution).toList());
  }

  private static Map<String, Object> day(DayReport day) {
    return Json.object(
        "date", day.date().toString(),
        "minutes_logged", day.minutesLogged(),
        "limit", DayJson.limit(day.limit()),
        "outside", DayJson.twa(day.outside()),
        "inside", DayJson.twa(day.inside()));
  }

  private static Map<String, Object> contribution(Contribution contribution) {
    return Json.object(
        "person", contribution.job().person(),
        "operation", contribution.job().operation().key(),
        "material", contribution.job().material().key(),
        "share_percent", contribution.sharePercent());
  }
}
