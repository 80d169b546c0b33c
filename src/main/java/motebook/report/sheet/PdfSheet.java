package motebook.report.sheet;

import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.Stream;
import motebook.desk.Attribution;
import motebook.desk.WeekReview;
import motebook.desk.WeekSheet;
import motebook.reference.Caution;
import motebook.report.WeekText;
import motebook.report.Wording;

/** One week on one page, from the title down to the cautions. */
final class PdfSheet {
  private static final double TEXT = 8;
  private static final double SMALL = 7;
  private static final double GAP = 14;
  private static final int COLUMNS = 2;
  private static final double PLOTS = 80;
  private static final double AIR = 94;

  private final PdfPen pen;
  private final double width;
  private final double stretch;
  private final WeekSheet sheet;
  private final WeekReview review;

  /**
   * A sheet.
   *
   * @param stretch how high the plots are, as a multiple of their usual height
   */
  PdfSheet(PdfPen pen, double width, WeekSheet sheet, double stretch) {
    this.stretch = stretch;
    this.pen = pen;
    this.width = width;
    this.sheet = sheet;
    this.review = sheet.review();
  }

  /** Draws it; the base line after it. */
  double draw(LocalDateTime made) {
    double y = head(made);
    y = plots(y + 2);
    y = air(y + 1);
    y = tables(y + 6);
    return cautions(y);
  }

  private double head(LocalDateTime made) {
    pen.heading(17, 0, 14, SheetWords.title(review.week()));
    pen.text(Pen.Tone.QUIET, TEXT, Pen.Anchor.START, 0, 26, SheetWords.made(review.week(), made));
    pen.path(Pen.Stroke.AXIS, 0, 32, width, 32);
    pen.heading(20, 0, 55, SheetWords.headline(review.week()));
    double left = pen.font().width(SheetWords.headline(review.week()), 20) + GAP + 4;
    double y = 43;
    for (String said : SheetWords.means(review)) {
      y = pen.paragraph(Pen.Tone.INK, TEXT, left, y, width - left, said);
    }
    return y;
  }

  private double plots(double y) {
    double half = (width - GAP) / 2;
    double left =
        plot(new DaysPlot(review.week().days()), 0, y, half, stretch * PLOTS, SheetCaptions.DAYS);
    double right =
        plot(new TrendPlot(review), half + GAP, y, half, stretch * PLOTS, SheetCaptions.TREND);
    return Math.max(left, right);
  }

  private double plot(Plot plot, double x, double y, double wide, double high, String caption) {
    pen.heading(TEXT, x, y + TEXT, plot.title());
    plot.draw(pen.from(x, y + TEXT + 2), wide, high);
    return pen.paragraph(Pen.Tone.QUIET, SMALL - 0.5, x, y + TEXT + high + 8, wide, caption);
  }

  private double air(double y) {
    if (sheet.worstAir().isEmpty()) {
      return y;
    }
    AirPlot plot = new AirPlot(sheet, sheet.worstAir().get());
    double line = plot(plot, 0, y, width, stretch * AIR, SheetCaptions.AIR);
    return columns(plot.works().stream().map(NumberedWork::said).toList(), line + 1);
  }

  private double columns(List<String> lines, double y) {
    double wide = (width - (COLUMNS - 1) * GAP / 2) / COLUMNS;
    int rows = (lines.size() + COLUMNS - 1) / COLUMNS;
    for (int i = 0; i < lines.size(); i++) {
      pen.text(
          Pen.Tone.INK,
          SMALL - 0.5,
          Pen.Anchor.START,
          (wide + GAP / 2) * Math.floorDiv(i, rows),
          y + (i % rows) * PdfPen.leading(SMALL - 0.5),
          pen.font().fitted(lines.get(i), SMALL - 0.5, wide));
    }
    return y + rows * PdfPen.leading(SMALL - 0.5);
  }

  private double tables(double y) {
    double leftWidth = (width - GAP) * 0.56;
    double rightWidth = width - GAP - leftWidth;
    double left = new PdfTable(pen.from(0, y), leftWidth).draw(SheetTables.days(review.week()), 8);
    double right =
        new PdfTable(pen.from(leftWidth + GAP, y), rightWidth)
            .draw(SheetTables.jobs(review.week()), 8);
    left = said(0, y + left + 2, leftWidth, SheetWords.findings(review));
    right = said(leftWidth + GAP, y + right + 2, rightWidth, cuts(review));
    return Math.max(left, right);
  }

  private double said(double x, double y, double wide, List<String> sentences) {
    double line = y;
    for (String sentence : sentences) {
      line = pen.paragraph(Pen.Tone.INK, SMALL + 0.5, x, line, wide, sentence) + 1.5;
    }
    return line;
  }

  private static List<String> cuts(WeekReview review) {
    Attribution parts = review.attribution();
    return Stream.concat(
            SheetWords.vapour(review.week()).stream(),
            Stream.of(
                "By operation: " + WeekText.shares(parts.byOperation(), o -> o.name()) + ".",
                "By material: " + WeekText.shares(parts.byMaterial(), Wording::material) + ".",
                "By place: " + WeekText.shares(parts.byPlace(), place -> place) + ".",
                "By who made it: " + WeekText.shares(parts.byPerson(), person -> person) + ".",
                "Left over: " + WeekText.leftOver(parts.leftOverPercent()) + "."))
        .toList();
  }

  private double cautions(double y) {
    double line = y + 3;
    for (Caution caution : review.cautions()) {
      line = pen.paragraph(Pen.Tone.INK, SMALL, 0, line, width, "Caution: " + caution.sentence());
    }
    return pen.paragraph(Pen.Tone.INK, SMALL, 0, line, width, Wording.ESTIMATES);
  }
}
