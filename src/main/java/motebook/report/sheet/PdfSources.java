package motebook.report.sheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * The fine print: every figure used with its grade and source, in three columns, as large as the
 * room that is left allows; what does not fit at the smallest size is given back for another page.
 */
final class PdfSources {
  private static final double[] SIZES = {6.5, 6, 5.6, 5.2, 4.9, 4.6};
  private static final int COLUMNS = 3;
  private static final double GAP = 12;
  private static final double LEADING = 1.18;
  private static final double HEADING = 8;

  private final PdfPen pen;
  private final double width;

  PdfSources(PdfPen pen, double width) {
    this.pen = pen;
    this.width = width;
  }

  /** Draws what fits between two base lines; the texts that did not fit. */
  List<String> draw(String heading, List<String> texts, double y, double end) throws IOException {
    double first = y + PdfPen.leading(HEADING);
    for (double size : SIZES) {
      int rows = (int) Math.max(0, (end - first) / (LEADING * size) + 1);
      boolean last = size == SIZES[SIZES.length - 1];
      int fitting = fitting(texts, size, COLUMNS * rows);
      if (fitting == texts.size() || last) {
        if (fitting > 0) {
          pen.heading(HEADING, 0, y, heading);
          draw(lines(texts.subList(0, fitting), size), size, first);
        }
        return texts.subList(fitting, texts.size());
      }
    }
    throw new IllegalStateException("no size at all");
  }

  private double column() {
    return (width - (COLUMNS - 1) * GAP) / COLUMNS;
  }

  private List<String> lines(List<String> texts, double size) throws IOException {
    List<String> lines = new ArrayList<>();
    for (String text : texts) {
      lines.addAll(pen.font().wrap(text, size, column()));
    }
    return lines;
  }

  private int fitting(List<String> texts, double size, int most) throws IOException {
    int lines = 0;
    for (int i = 0; i < texts.size(); i++) {
      lines += pen.font().wrap(texts.get(i), size, column()).size();
      if (lines > most) {
        return i;
      }
    }
    return texts.size();
  }

  private void draw(List<String> lines, double size, double y) {
    int rows = (lines.size() + COLUMNS - 1) / COLUMNS;
    for (int i = 0; i < lines.size(); i++) {
      pen.text(
          Pen.Tone.INK,
          size,
          Pen.Anchor.START,
          (column() + GAP) * Math.floorDiv(i, rows),
          y + (i % rows) * LEADING * size,
          lines.get(i));
    }
  }
}
