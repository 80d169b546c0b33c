package motebook.report.sheet;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import motebook.desk.DayReport;
import motebook.desk.UsedFigure;
import motebook.desk.WeekReport;
import motebook.desk.WeekReview;
import motebook.desk.WeekSheet;
import motebook.desk.WeekVapour;
import motebook.model.Figures;
import motebook.model.Text;
import motebook.model.Units;
import motebook.report.LeftOut;
import motebook.report.LimitText;
import motebook.report.PlaceReport;
import motebook.report.VapourWords;
import motebook.report.WearText;
import motebook.report.WeekWarnings;
import motebook.report.WeekWords;
import motebook.report.Wording;
import motebook.science.Estimate;

/** What the sheet says in sentences. */
final class SheetWords {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);
  private static final DateTimeFormatter MADE =
      DateTimeFormatter.ofPattern("d MMMM yyyy, HH:mm", Locale.ENGLISH);

  private SheetWords() {}

  /** {@code Dust in the week of 16 to 22 November 2026}. */
  static String title(WeekReport week) {
    LocalDate last = week.monday().plusDays(6);
    String first =
        week.monday().getMonth() == last.getMonth()
            ? String.valueOf(week.monday().getDayOfMonth())
            : DAY.format(week.monday());
    return "Dust in the week of " + first + " to " + DAY.format(last);
  }

  static String made(WeekReport week, LocalDateTime made) {
    return "For " + week.person() + ". Made with Motebook on " + MADE.format(made) + ".";
  }

  /** The best estimate of the worst day. */
  static String headline(WeekReport week) {
    return "About " + Figures.rounded(week.worstDay().outside().estimate().central()) + " mg/m³";
  }

  /** What the headline is, its range, its limit, the figure inside, and the days over the limit. */
  static List<String> means(WeekReview review) {
    WeekReport week = review.week();
    DayReport worst = week.worstDay();
    Estimate outside = worst.outside().estimate();
    List<String> said = new ArrayList<>();
    said.add(
        "Worst day, "
            + Wording.weekday(worst.date())
            + ": inhalable dust outside the mask over 8 h; 90 % range "
            + Figures.rounded(outside.low90())
            + " to "
            + Figures.rounded(outside.high90())
            + ". Inside "
            + Wording.inside(worst.inside().estimate(), Wording.masked(worst))
            + ".");
    said.add(limit(worst));
    said.add(
        "Over the limit: "
            + WeekWords.daysOver(week)
            + ". Mean "
            + WeekWords.meanOfDays(week)
            + ". "
            + Figures.duration(week.minutesLogged())
            + " logged."
            + (review.wear().isEmpty() ? "" : " Used up: " + WearText.brief(review.wear()) + "."));
    return said;
  }

  private static String limit(DayReport worst) {
    String none =
        worst.uncovered().isPresent()
            ? "No limit here covers this dust"
            : "No limit of the chosen set applies to this wood";
    return worst
            .limit()
            .map(held -> capital(Wording.ratio(held)) + ", " + LimitText.limit(held))
            .orElse(none)
        + worst.limits().advisory().map(held -> "; " + LimitText.advisory(held)).orElse("")
        + ".";
  }

  /** What to make of the week. */
  static List<String> findings(WeekReview review) {
    String person = review.week().person();
    List<String> said = new ArrayList<>(WeekWarnings.full(review.week()));
    said.add("12 weeks: " + WeekWords.trend(review.quarter()) + ".");
    if (review.year().points().size() > review.quarter().points().size()) {
      said.add("52 weeks: " + WeekWords.trend(review.year()) + ".");
    }
    review.change().ifPresent(change -> said.add(WeekWords.change(change, person)));
    WeekWords.help(review).ifPresent(said::add);
    review.week().longDays().forEach(day -> said.add(WeekWords.longDay(day) + "."));
    review.week().nights().forEach(night -> said.add(LimitText.night(night) + "."));
    WeekWords.uncovered(review.week()).ifPresent(said::add);
    said.addAll(LeftOut.sentences(review.week().leftOut()));
    said.addAll(review.remarks());
    return said;
  }

  /** The vapour of the week in a sentence; none where none was breathed. */
  static List<String> vapour(WeekReport week) {
    return WeekVapour.of(week)
        .map(vapour -> "Vapour, limit 1 in all: " + VapourWords.brief(vapour) + ".")
        .stream()
        .toList();
  }

  /** How to read the figures, then those of each kind run on in one text. */
  static List<String> sources(WeekSheet sheet) {
    List<String> texts = new ArrayList<>(List.of(GRADES));
    for (UsedFigure.Kind kind : UsedFigure.Kind.values()) {
      List<String> said =
          sheet.figures().stream()
              .filter(figure -> figure.kind() == kind)
              .map(figure -> figure(figure, sheet.units()))
              .toList();
      if (!said.isEmpty()) {
        String name =
            kind.name().substring(0, 1) + kind.name().substring(1).toLowerCase(Locale.ROOT);
        texts.add(name + "s · " + String.join(" · ", said));
      }
    }
    return texts;
  }

  /** A figure with its range and grade, and where it comes from. */
  static String figure(UsedFigure used, Units units) {
    String grade = used.grade().map(g -> " (grade " + g + ")").orElse("");
    return capital(used.name()) + amount(used, units) + grade + ": " + used.basis() + ".";
  }

  private static String amount(UsedFigure used, Units units) {
    if (used.place().isPresent()) {
      return ", " + PlaceReport.figures(used.place().get().surroundings(), units);
    }
    return used.amount()
        .map(
            figure ->
                " "
                    + Figures.plain(figure.typical())
                    + (figure.low() == figure.high()
                        ? ""
                        : " ["
                            + Figures.plain(figure.low())
                            + "–"
                            + Figures.plain(figure.high())
                            + "]")
                    + " "
                    + used.unit())
        .orElse("");
  }

  static String capital(String text) {
    String clean = Text.clean(text);
    return clean.isEmpty()
        ? clean
        : clean.substring(0, 1).toUpperCase(Locale.ROOT) + clean.substring(1);
  }

  /** How the figures are to be read. */
  static final String GRADES =
      "Operations: mg/m³ inhalable at the face over the first hour, in a plain shop without a"
          + " control. Grades: A measured by several, B measured once, C back-calculated, D judgement (C and D are"
          + " rough). In brackets the range that the sources leave. Air: a near field of 0.8 m around"
          + " the face in one well-mixed room; coarse dust settles at 5.2 /h, fine at 0.3 /h"
          + " (Howard-Reed 2003); 16.7 % of inhalable dust is respirable (Kalliny 2008); the model"
          + " itself is taken as good to a factor of two.";
}
