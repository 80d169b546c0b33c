package motebook.report;

import java.util.Map;
import motebook.desk.DayReport;
import motebook.desk.Uncovered;
import motebook.desk.WeekReport;
import motebook.desk.WeekReport.Contribution;
import motebook.desk.WeekReview;

/** A week as JSON. */
public final class WeekJson {
  private WeekJson() {}

  /** The object of {@code week --json}. */
  public static Map<String, Object> of(WeekReview review) {
    WeekReport week = review.week();
    Map<String, Object> object = figures(week);
    object.putAll(ReviewJson.of(review));
    object.put("vapour", VapourWords.object(week));
    return object;
  }

  private static Map<String, Object> figures(WeekReport week) {
    return Json.object(
        "from", week.monday().toString(),
        "to", week.monday().plusDays(6).toString(),
        "person", week.person(),
        "days", week.days().stream().map(WeekJson::day).toList(),
        "mean_40h",
            Json.object(
                "outside", DayJson.estimate(week.outsideMean()),
                "inside", DayJson.estimate(week.insideMean())),
        "days_over_advisory", week.daysOverAdvisory().stream().boxed().findFirst().orElse(null),
        "mean_of_days_mg_m3", week.meanOfDays(),
        "mean_of_days_inside_mg_m3", week.meanOfDaysInside(),
        "nights", week.nights().stream().map(DayJson::night).toList(),
        "left_out", LeftOut.objects(week.leftOut()),
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
        "inside", DayJson.twa(day.inside()),
        "minutes_between_counted", day.minutesBetween(),
        "uncovered_percent", day.uncovered().map(Uncovered::percent).orElse(0.0),
        "long_day", day.limits().longDay().map(ReviewJson::longDay).orElse(null),
        "warnings", ProtectionWords.alarms(day),
        "acute", VapourJson.acute(day));
  }

  private static Map<String, Object> contribution(Contribution contribution) {
    return Json.object(
        "person", contribution.job().person(),
        "operation", contribution.job().operation().key(),
        "material", contribution.job().material().key(),
        "share_percent", contribution.sharePercent());
  }
}
