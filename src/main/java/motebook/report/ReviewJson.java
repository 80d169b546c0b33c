package motebook.report;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import motebook.desk.Attribution;
import motebook.desk.Attribution.Share;
import motebook.desk.BestChange;
import motebook.desk.LongDay;
import motebook.desk.Trend;
import motebook.desk.WeekReview;
import motebook.desk.Weeks;
import motebook.reference.Caution;
import motebook.reference.Named;

/** What stands in {@code week --json} beside the figures of the week. */
final class ReviewJson {
  private ReviewJson() {}

  static Map<String, Object> of(WeekReview review) {
    String person = review.week().person();
    return Json.object(
        "attribution", attribution(review.attribution()),
        "trend", Json.object("weeks_12", trend(review.quarter()), "weeks_52", trend(review.year())),
        "change", review.change().map(change -> change(change, person)).orElse(null),
        "best_change", review.best().map(best -> best(best, person)).orElse(null),
        "used_up", WearJson.of(review.wear()),
        "remarks", review.remarks(),
        "cautions", review.cautions().stream().map(Caution::sentence).toList());
  }

  static Map<String, Object> longDay(LongDay day) {
    return Json.object(
        "hours", day.hours(),
        "factor", day.factor(),
        "adjusted_mg_m3", day.adjustedMgPerM3(),
        "over", day.over());
  }

  private static Map<String, Object> attribution(Attribution parts) {
    return Json.object(
        "by_operation", shares("operation", parts.byOperation(), Named::key),
        "by_material", shares("material", parts.byMaterial(), Named::key),
        "by_place", shares("place", parts.byPlace(), name -> name),
        "by_person", shares("person", parts.byPerson(), name -> name),
        "left_over_percent", parts.leftOverPercent());
  }

  private static <K> List<Map<String, Object>> shares(
      String what, List<Share<K>> shares, Function<K, String> key) {
    return shares.stream()
        .map(share -> Json.object(what, key.apply(share.of()), "share_percent", share.percent()))
        .toList();
  }

  private static Map<String, Object> trend(Trend trend) {
    Optional<Trend.Found> found = trend.found();
    return Json.object(
        "weeks_with_work", trend.points().size(),
        "direction", found.map(f -> direction(f.direction())).orElse(null),
        "slope_mg_m3_per_week", found.map(f -> f.slope().perStep()).orElse(null),
        "slope_low90_mg_m3_per_week", found.map(f -> f.slope().low90()).orElse(null),
        "slope_high90_mg_m3_per_week", found.map(f -> f.slope().high90()).orElse(null),
        "s", found.map(f -> f.test().s()).orElse(null),
        "p_two_sided", found.map(f -> f.test().pTwoSided()).orElse(null),
        "words", WeekWords.trend(trend));
  }

  private static String direction(int sign) {
    return sign < 0 ? "falling" : sign > 0 ? "rising" : "none-clear";
  }

  private static Map<String, Object> change(Weeks.Change change, String person) {
    return Json.object(
        "before_mg_m3", change.before(),
        "after_mg_m3", change.after(),
        "words", WeekWords.change(change, person));
  }

  private static Map<String, Object> best(BestChange best, String person) {
    return Json.object(
        "person", best.job().person(),
        "operation", best.job().operation().key(),
        "material", best.job().material().key(),
        "control", best.control().key(),
        "mean_40h_outside_central_mg_m3", best.together().central(),
        "mean_of_days_mg_m3", best.would(),
        "words", WeekWords.best(best, person));
  }
}
