package motebook.report;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import motebook.desk.DayReport;
import motebook.desk.WeekReport;
import motebook.desk.WeekReport.Contribution;

/** A week as text for a terminal. */
public final class WeekText {
  private static final DateTimeFormatter SHORT_DAY =
      DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
  private static final int WORST = 3;

  private WeekText() {}

  /** The lines of {@code week}. */
  public static List<String> of(WeekReport week, Ink ink) {
    List<String> lines = new ArrayList<>();
    lines.add(ink.headline("Week from " + Wording.date(week.monday()) + ", " + week.person()));
    week.days().forEach(day -> lines.add(day(day)));
    if (week.minutesLogged() == 0) {
      lines.add("Nothing is logged in this week.");
      return lines;
    }
    lines.add("40-h mean   outside " + ink.headline(Wording.estimate(week.outsideMean())));
    boolean masked = week.days().stream().anyMatch(Wording::masked);
    lines.add("            inside  " + Wording.inside(week.insideMean(), masked));
    Wording.learned(week.learnedFrom()).ifPresent(said -> lines.add("learned     " + said));
    lines.add("over limit  " + daysOver(week.daysOverLimit()) + " by the headline figure outside");
    week.contributions().stream().limit(WORST).forEach(c -> lines.add(worst(c, week.person())));
    lines.add(Wording.ESTIMATES);
    return lines;
  }

  private static String daysOver(long days) {
    return days == 0 ? "no day" : days == 1 ? "1 day" : days + " days";
  }

  private static String day(DayReport day) {
    String date = String.format(Locale.ROOT, "%-10s", SHORT_DAY.format(day.date()));
    if (day.minutesLogged() == 0) {
      return "  " + date + "  -";
    }
    return "  "
        + date
        + "  "
        + String.format(Locale.ROOT, "%-8s", Figures.duration(day.minutesLogged()))
        + "  outside "
        + Wording.estimate(day.outside().estimate())
        + day.limit().map(held -> ", " + Wording.ratio(held)).orElse("");
  }

  private static String worst(Contribution worst, String person) {
    String whose = worst.job().person().equals(person) ? "" : worst.job().person() + "'s ";
    return String.format(
        Locale.ROOT,
        "from        %5s  %s%s of %s",
        Figures.percent(worst.sharePercent()),
        whose,
        worst.job().operation().name(),
        Wording.material(worst.job().material()));
  }
}
