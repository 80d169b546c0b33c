package motebook.report.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * The fine print: every figure used with its grade and source, in three columns, as large as the
 * room that is left allows; lines that do not fit at the smallest size are given back for another
 * page.
 */
final class PdfSources {
  private static final double[] SIZES = {6.5, 6, 5.6, 5.2, 4.9, 4.6, 4.4};
  private static final double SMALLEST = SIZES[SIZES.length - 1];
  private static final double READABLE = 5.6;
  private static final int COLUMNS = 3;
  private static final double GAP = 12;
  private static final double LEADING = 1.15;
  private static final double HEADING = 8;

  private final PdfPen pen;
  private final double column;

  PdfSources(PdfPen pen, double width) {
    this.pen = pen;
    this.column = (width - (COLUMNS - 1) * GAP) / COLUMNS;
  }

  /** Whether all fits between two base lines at a size that reads without effort. */
  boolean readable(List<String> texts, double y, double end) {
    return lines(texts, READABLE).size() <= most(READABLE, end - first(y));
  }

  /** Draws what fits between two base lines; the lines that did not. */
  List<String> draw(String heading, List<String> texts, double y, double end) {
    double room = end - first(y);
    for (double size : SIZES) {
      List<String> lines = lines(texts, size);
      if (lines.size() <= most(size, room)) {
        set(heading, lines, size, y);
        return List.of();
      }
    }
    return lines(heading, lines(texts, SMALLEST), y, end);
  }

  /** Draws as many lines of the smallest size as fit; the others. */
  List<String> lines(String heading, List<String> lines, double y, double end) {
    int fitting = Math.min(lines.size(), most(SMALLEST, end - first(y)));
    if (fitting > 0) {
      set(heading, lines.subList(0, fitting), SMALLEST, y);
    }
    return lines.subList(fitting, lines.size());
  }

  private static double first(double y) {
    return y + PdfPen.leading(HEADING);
  }

  private static int most(double size, double room) {
    return room < 0 ? 0 : COLUMNS * ((int) (room / (LEADING * size)) + 1);
  }

  private List<String> lines(List<String> texts, double size) {
    List<String> lines = new ArrayList<>();
    for (String text : texts) {
      lines.addAll(pen.font().wrap(text, size, column));
    }
    return lines;
  }

  private void set(String heading, List<String> lines, double size, double y) {
    pen.heading(HEADING, 0, y, heading);
    int rows = (lines.size() + COLUMNS - 1) / COLUMNS;
    for (int i = 0; i < lines.size(); i++) {
      pen.text(
          Pen.Tone.INK,
          size,
          Pen.Anchor.START,
          (column + GAP) * Math.floorDiv(i, rows),
          first(y) + (i % rows) * LEADING * size,
          lines.get(i));
    }
  }
}
