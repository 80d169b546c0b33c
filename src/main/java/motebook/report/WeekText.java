package motebook.report;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import motebook.desk.Attribution;
import motebook.desk.Attribution.Share;
import motebook.desk.DayReport;
import motebook.desk.WeekReport;
import motebook.desk.WeekReport.Contribution;
import motebook.desk.WeekReview;
import motebook.model.Figures;
import motebook.reference.Operation;

/** A week as text for a terminal. */
public final class WeekText {
  private static final DateTimeFormatter SHORT_DAY =
      DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
  private static final int WORST = 3;

  private WeekText() {}

  /** The lines of {@code week}. */
  public static List<String> of(WeekReview review, Ink ink) {
    WeekReport week = review.week();
    List<String> lines = new ArrayList<>();
    lines.add(ink.headline("Week from " + Wording.date(week.monday()) + ", " + week.person()));
    WeekWarnings.full(week).forEach(said -> lines.add("warning     " + ink.warning(said)));
    week.days().forEach(day -> lines.addAll(day(day)));
    if (week.minutesLogged() == 0) {
      lines.addAll(leftOut(week));
      lines.add("Nothing is logged in this week.");
      return lines;
    }
    lines.addAll(means(review, ink));
    List<Contribution> all = week.contributions();
    List<String> shown = Figures.shares(all.stream().map(Contribution::sharePercent).toList());
    for (int i = 0; i < Math.min(WORST, all.size()); i++) {
      lines.add(worst(all.get(i), shown.get(i), week.person()));
    }
    lines.addAll(cuts(review));
    lines.addAll(sentences(review));
    lines.add(Wording.ESTIMATES);
    return lines;
  }

  private static List<String> means(WeekReview review, Ink ink) {
    WeekReport week = review.week();
    List<String> lines = new ArrayList<>();
    lines.add("worst day   " + ink.headline(WeekWords.worstDay(week)));
    lines.add("over limit  " + WeekWords.daysOver(week));
    lines.add("mean        " + WeekWords.meanOfDays(week));
    Wording.learned(week.learnedFrom())
        .ifPresent(
            said ->
                lines.add(
                    "learned     "
                        + said
                        + "; without: motebook week "
                        + week.days().get(0).date()
                        + " --published"));
    week.longDays().forEach(day -> lines.add("long day    " + WeekWords.longDay(day)));
    week.nights().forEach(night -> lines.add("night       " + LimitText.night(night)));
    WeekWords.uncovered(week).ifPresent(said -> lines.add("no limit    " + said));
    lines.addAll(VapourWords.lines(week));
    return lines;
  }

  private static List<String> cuts(WeekReview review) {
    Attribution parts = review.attribution();
    List<String> lines = new ArrayList<>();
    if (!parts.byOperation().isEmpty()) {
      lines.add("operation   " + shares(parts.byOperation(), Operation::name));
      lines.add("material    " + shares(parts.byMaterial(), Wording::material));
      lines.add("place       " + shares(parts.byPlace(), place -> place));
      lines.add("made by     " + shares(parts.byPerson(), person -> person));
      lines.add("left over   " + leftOver(parts.leftOverPercent()));
    }
    return lines;
  }

  /** What was breathed after the work that made it. */
  public static String leftOver(double percent) {
    return Figures.percent(percent) + " was breathed after the work that made it had ended";
  }

  /** The largest parts, and the rest in one: {@code oak 61 %, pine 39 %}. */
  public static <K> String shares(List<Share<K>> shares, Function<K, String> name) {
    return shares(shares, WORST, name);
  }

  static <K> String shares(List<Share<K>> shares, int most, Function<K, String> name) {
    return parts(shares, most, "the rest", name).stream()
        .map(part -> part.getKey() + " " + part.getValue())
        .collect(Collectors.joining(", "));
  }

  /**
   * The largest parts by name, each with its share, and the rest in one; what is shown adds to 100
   * %.
   *
   * @param most how many to name before the rest
   */
  public static <K> List<Map.Entry<String, String>> parts(
      List<Share<K>> shares, int most, String rest, Function<K, String> name) {
    List<String> names =
        new ArrayList<>(shares.stream().limit(most).map(s -> name.apply(s.of())).toList());
    List<Double> percents =
        new ArrayList<>(shares.stream().limit(most).map(Share::percent).toList());
    if (shares.size() > most) {
      names.add(rest);
      percents.add(shares.stream().skip(most).mapToDouble(Share::percent).sum());
    }
    List<String> shown = Figures.shares(percents);
    return IntStream.range(0, names.size())
        .mapToObj(i -> Map.entry(names.get(i), shown.get(i)))
        .toList();
  }

  private static List<String> sentences(WeekReview review) {
    String person = review.week().person();
    List<String> lines = new ArrayList<>();
    lines.add("trend       12 weeks: " + WeekWords.trend(review.quarter()));
    if (review.year().points().size() > review.quarter().points().size()) {
      lines.add("            52 weeks: " + WeekWords.trend(review.year()));
    }
    review
        .change()
        .ifPresent(change -> lines.add("change      " + WeekWords.change(change, person)));
    WeekWords.help(review).ifPresent(help -> lines.add("would help  " + help));
    WearText.lines(review.wear(), person).forEach(used -> lines.add("used up     " + used));
    lines.addAll(leftOut(review.week()));
    review.remarks().forEach(remark -> lines.add("note        " + remark));
    review.cautions().forEach(caution -> lines.add("caution     " + caution.sentence()));
    return lines;
  }

  private static List<String> leftOut(WeekReport week) {
    return LeftOut.sentences(week.leftOut()).stream().map(said -> "left out    " + said).toList();
  }

  private static List<String> day(DayReport day) {
    String date = String.format(Locale.ROOT, "%-10s", SHORT_DAY.format(day.date()));
    if (day.minutesLogged() == 0) {
      return List.of("  " + date + "  -");
    }
    String outside =
        "  "
            + date
            + "  "
            + String.format(Locale.ROOT, "%-8s", Figures.duration(day.minutesLogged()))
            + "  outside "
            + Wording.estimate(day.outside().estimate())
            + WeekWords.toLimit(day);
    return Wording.masked(day)
        ? List.of(outside, " ".repeat(24) + "inside  " + Wording.estimate(day.inside().estimate()))
        : List.of(outside);
  }

  private static String worst(Contribution worst, String share, String person) {
    String whose = worst.job().person().equals(person) ? "" : worst.job().person() + "'s ";
    return String.format(
        Locale.ROOT,
        "from        %5s  %s%s of %s",
        share,
        whose,
        worst.job().operation().name(),
        Wording.material(worst.job().material()));
  }
}
