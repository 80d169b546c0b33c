package motebook.report;

import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import motebook.desk.DayReport;
import motebook.desk.LongDay;
import motebook.desk.WeekReport;
import motebook.desk.WeekReport.Contribution;
import motebook.desk.WeekReview;

/** A week as JSON. */
public final class WeekJson {
  private WeekJson() {}

  /** The object of {@code week --json}. */
  public static Map<String, Object> of(WeekReview review) {
    WeekReport week = review.week();
    Map<String, Object> object = figures(week, day -> day(day, review.longDay(day.date())));
    object.putAll(ReviewJson.of(review));
    object.put("vapour", VapourWords.object(week));
    return object;
  }

  private static Map<String, Object> figures(
      WeekReport week, Function<DayReport, Map<String, Object>> day) {
    return Json.object(
        "from", week.monday().toString(),
        "to", week.monday().plusDays(6).toString(),
        "person", week.person(),
        "days", week.days().stream().map(day).toList(),
        "mean_40h",
            Json.object(
                "outside", DayJson.estimate(week.outsideMean()),
                "inside", DayJson.estimate(week.insideMean())),
        "minutes_logged", week.minutesLogged(),
        "learned_from_samples", week.learnedFrom(),
        "days_over_limit", week.daysOverLimit(),
        "sources", week.contributions().stream().map(WeekJson::contribution).toList());
  }

  private static Map<String, Object> day(DayReport day, Optional<LongDay> longDay) {
    return Json.object(
        "date", day.date().toString(),
        "minutes_logged", day.minutesLogged(),
        "limit", DayJson.limit(day.limit()),
        "outside", DayJson.twa(day.outside()),
        "inside", DayJson.twa(day.inside()),
        "minutes_between_counted", day.minutesBetween(),
        "long_day", longDay.map(ReviewJson::longDay).orElse(null));
  }

  private static Map<String, Object> contribution(Contribution contribution) {
    return Json.object(
        "person", contribution.job().person(),
        "operation", contribution.job().operation().key(),
        "material", contribution.job().material().key(),
        "share_percent", contribution.sharePercent());
  }
}
