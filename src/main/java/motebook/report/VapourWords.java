package motebook.report;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import motebook.desk.DayReport;
import motebook.desk.VapourReport;
import motebook.desk.WeekReport;
import motebook.desk.WeekVapour;
import motebook.desk.WeekVapour.OfDay;
import motebook.model.Figures;
import motebook.science.Estimate;

/** The vapour of a day or a week in one line. What has no figure is named beside it. */
public final class VapourWords {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);

  private VapourWords() {}

  /** {@code vapour, limit 1 in all: outside about 0.18 (0.057 to 0.57), no mask worn}. */
  public static Optional<String> day(DayReport day) {
    return day.vapour()
        .map(
            vapour ->
                "vapour, limit 1 in all: "
                    + day(vapour, Wording.masked(day))
                    + ProtectionWords.overShortTerm(day).map("; "::concat).orElse("")
                    + beside(vapour));
  }

  private static String day(VapourReport vapour, boolean masked) {
    String inside = masked ? "; inside " + figure(vapour.indexInside()) : ", no mask worn";
    String over = vapour.indexOutside().central() > 1 ? ", over" : "";
    return "outside " + figure(vapour.indexOutside()) + over + inside;
  }

  private static String beside(VapourReport vapour) {
    String unknown = String.join(", ", vapour.notEstimated());
    String apart = unknown.isEmpty() ? "" : "; not estimated: " + unknown;
    return vapour.notJudged().isEmpty() ? apart : apart + "; some have no limit";
  }

  /** The line of {@code week}; none where no vapour was breathed. */
  public static List<String> lines(WeekReport week) {
    return WeekVapour.of(week)
        .map(vapour -> "vapour      limit 1 for all together: " + week(vapour))
        .stream()
        .toList();
  }

  /** {@code worst outside about 0.27 (0.086 to 0.85) on Tue 3 Mar, no mask worn; 2 days …}. */
  public static String week(WeekVapour vapour) {
    OfDay worst = vapour.worst();
    String inside = worst.masked() ? ", inside " + figure(worst.inside()) : ", no mask worn";
    boolean unknown = vapour.days().stream().anyMatch(OfDay::notEstimated);
    return "worst outside "
        + figure(worst.outside())
        + " on "
        + DAY.format(worst.date())
        + inside
        + "; "
        + days(vapour.days().size())
        + " with vapour"
        + (vapour.daysOver() > 0 ? ", " + vapour.daysOver() + " over 1" : "")
        + (unknown ? "; some of it has no figure" : "");
  }

  /** {@code worst about 0.27 (0.086 to 0.85) on Tue 3 Mar, 1 day over; some has no figure}. */
  public static String brief(WeekVapour vapour) {
    boolean unknown = vapour.days().stream().anyMatch(OfDay::notEstimated);
    return "worst outside "
        + figure(vapour.worst().outside())
        + " on "
        + DAY.format(vapour.worst().date())
        + (vapour.daysOver() > 0 ? ", " + days(vapour.daysOver()) + " over" : "")
        + (unknown ? "; some has no figure" : "");
  }

  private static String days(long days) {
    return days == 1 ? "1 day" : days + " days";
  }

  private static String figure(Estimate index) {
    return index.central() == 0
        ? "none"
        : Figures.about(index.central())
            + " ("
            + Figures.range(index.low90(), index.high90())
            + ")";
  }

  /** The object under {@code vapour} of {@code week --json}; null where none was breathed. */
  static Map<String, Object> object(WeekReport week) {
    return WeekVapour.of(week)
        .map(
            vapour ->
                Json.object(
                    "limits", vapour.limits().key(),
                    "days", vapour.days().stream().map(VapourWords::object).toList(),
                    "worst_date", vapour.worst().date().toString(),
                    "worst_mixture_index_outside_central", vapour.worst().outside().central(),
                    "days_over_limit", vapour.daysOver()))
        .orElse(null);
  }

  private static Map<String, Object> object(OfDay day) {
    return Json.object(
        "date", day.date().toString(),
        "mixture_index_outside_central", day.outside().central(),
        "mixture_index_outside_low90", day.outside().low90(),
        "mixture_index_outside_high90", day.outside().high90(),
        "mixture_index_inside_central", day.inside().central(),
        "not_all_has_a_figure", day.notEstimated());
  }
}
