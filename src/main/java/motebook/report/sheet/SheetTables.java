package motebook.report.sheet;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import motebook.desk.Attribution;
import motebook.desk.Attribution.Share;
import motebook.desk.DayReport;
import motebook.desk.WeekReport;
import motebook.desk.WeekReview;
import motebook.model.Figures;
import motebook.report.WeekText;
import motebook.report.WeekWords;
import motebook.report.Wording;
import motebook.science.Estimate;

/** The tables of the sheet. */
final class SheetTables {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
  private static final int WORST = 7;

  private SheetTables() {}

  /** The seven days. */
  static Grid days(WeekReport week) {
    return new Grid(
        "The days, 8-hour means in mg/m³",
        List.of("Day", "Logged", "Outside", "90 % range", "Times limit", "Inside"),
        week.days().stream().map(SheetTables::day).toList(),
        List.of(0.21, -0.15, -0.14, -0.22, -0.16, -0.12));
  }

  private static List<String> day(DayReport day) {
    if (day.minutesLogged() == 0) {
      return List.of(DAY.format(day.date()), "–", "", "", "", "");
    }
    Estimate outside = day.outside().estimate();
    return List.of(
        DAY.format(day.date()),
        Figures.duration(day.minutesLogged()),
        Figures.cell(outside.central()),
        Figures.cell(outside.low90()) + "–" + Figures.cell(outside.high90()),
        day.limit()
                .map(held -> Figures.cell(held.ratio()))
                .orElse(day.uncovered().isPresent() ? "" : "none")
            + day.uncovered().map(dust -> dust.alone() ? "not covered" : ", in part").orElse(""),
        Wording.masked(day) ? Figures.cell(day.inside().estimate().central()) : "same");
  }

  /** The work that most of the dust came from. */
  static Grid jobs(WeekReport week) {
    return shares(
        "Which work it came from",
        "Work",
        week.contributions().stream()
            .map(c -> new Share<>(WeekWords.said(c.job(), week.person()), c.sharePercent()))
            .toList(),
        WORST,
        name -> name);
  }

  /** The same dose cut in the other ways. */
  static List<Grid> cuts(WeekReview review) {
    Attribution parts = review.attribution();
    double left = parts.leftOverPercent();
    List<Grid> cuts = new ArrayList<>();
    cuts.add(shares("By operation", "Operation", parts.byOperation(), WORST, o -> o.name()));
    cuts.add(shares("By material", "Material", parts.byMaterial(), 3, Wording::material));
    cuts.add(shares("By place", "Place", parts.byPlace(), 3, place -> place));
    cuts.add(shares("By who made it", "Person", parts.byPerson(), 3, person -> person));
    cuts.add(
        shares(
            "By when it was breathed",
            "When",
            List.of(
                new Share<>("while it was made", 100 - left),
                new Share<>("left over from before", left)),
            2,
            when -> when));
    return cuts;
  }

  private static <K> Grid shares(
      String title, String head, List<Share<K>> shares, int most, Function<K, String> name) {
    int named = shares.size() <= most ? most : most - 1;
    List<List<String>> rows =
        WeekText.parts(shares, named, "all else", name).stream()
            .map(part -> List.of(SheetWords.capital(part.getKey()), part.getValue()))
            .toList();
    return new Grid(title, List.of(head, "Share"), rows, List.of(0.78, -0.22));
  }
}
