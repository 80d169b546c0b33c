package motebook.report.sheet;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;

/** Draws onto a page of a PDF from a corner of it. */
final class PdfPen implements Pen {
  private static final float[] DASHES = {4, 2.5f};
  private static final float[] SOLID = {};
  private static final double CIRCLE = 0.5523;
  private static final double EDGE = 0.8;
  private static final double BOLD = 0.035;

  private final PDPageContentStream page;
  private final PdfFont font;
  private final double left;
  private final double top;

  /**
   * A pen.
   *
   * @param left where x begins, from the left edge of the paper
   * @param top where y begins, from the lower edge of the paper, as PDF counts
   */
  PdfPen(PDPageContentStream page, PdfFont font, double left, double top) {
    this.page = page;
    this.font = font;
    this.left = left;
    this.top = top;
  }

  /** The same pen with another corner. */
  PdfPen from(double x, double y) {
    return new PdfPen(page, font, left + x, top - y);
  }

  PdfFont font() {
    return font;
  }

  private interface Drawing {
    void draw() throws IOException;
  }

  private static void written(Drawing drawing) {
    try {
      drawing.draw();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private float x(double x) {
    return (float) (left + x);
  }

  private float y(double y) {
    return (float) (top - y);
  }

  @Override
  public void path(Stroke stroke, double... xy) {
    written(
        () -> {
          page.setLineWidth((float) stroke.width);
          page.setLineDashPattern(stroke.dashed ? DASHES : SOLID, 0);
          page.setStrokingColor(
              (float) stroke.tone.red, (float) stroke.tone.green, (float) stroke.tone.blue);
          outline(xy);
          page.stroke();
        });
  }

  @Override
  public void area(Tone fill, double... xy) {
    written(
        () -> {
          filling(fill);
          outline(xy);
          page.fill();
        });
  }

  private void outline(double... xy) throws IOException {
    page.moveTo(x(xy[0]), y(xy[1]));
    for (int i = 2; i < xy.length; i += 2) {
      page.lineTo(x(xy[i]), y(xy[i + 1]));
    }
  }

  private void filling(Tone tone) throws IOException {
    page.setNonStrokingColor((float) tone.red, (float) tone.green, (float) tone.blue);
  }

  @Override
  public void disc(Tone fill, double x, double y, double radius) {
    written(
        () -> {
          filling(fill);
          page.setStrokingColor(
              (float) Tone.INK.red, (float) Tone.INK.green, (float) Tone.INK.blue);
          page.setLineWidth((float) EDGE);
          page.setLineDashPattern(SOLID, 0);
          page.moveTo(x(x + radius), y(y));
          quarter(x, y, radius, 1, 0, 0, 1);
          quarter(x, y, radius, 0, 1, -1, 0);
          quarter(x, y, radius, -1, 0, 0, -1);
          quarter(x, y, radius, 0, -1, 1, 0);
          page.fillAndStroke();
        });
  }

  // The usual curve for a quarter of a circle, from one direction of the centre to another.
  private void quarter(double x, double y, double r, int fromX, int fromY, int toX, int toY)
      throws IOException {
    page.curveTo(
        x(x + r * (fromX + CIRCLE * toX)),
        y(y + r * (fromY + CIRCLE * toY)),
        x(x + r * (toX + CIRCLE * fromX)),
        y(y + r * (toY + CIRCLE * fromY)),
        x(x + r * toX),
        y(y + r * toY));
  }

  @Override
  public void text(Tone tone, double size, Anchor anchor, double x, double y, String text) {
    text(tone, size, anchor, x, y, text, false);
  }

  /** A text whose letters are drawn a little wider; the typeface comes in one weight. */
  void heading(double size, double x, double y, String text) {
    text(Tone.INK, size, Anchor.START, x, y, text, true);
  }

  private void text(
      Tone tone, double size, Anchor anchor, double x, double y, String text, boolean bold) {
    written(
        () -> {
          double width = font.width(text, size);
          double start =
              anchor == Anchor.START ? x : anchor == Anchor.MIDDLE ? x - width / 2 : x - width;
          page.beginText();
          filling(tone);
          page.setStrokingColor((float) tone.red, (float) tone.green, (float) tone.blue);
          page.setLineDashPattern(SOLID, 0);
          page.setLineWidth((float) (size * BOLD));
          page.setRenderingMode(bold ? RenderingMode.FILL_STROKE : RenderingMode.FILL);
          page.setFont(font.face(), (float) size);
          page.newLineAtOffset(x(start), y(y));
          page.showText(font.drawable(text));
          page.endText();
        });
  }

  /** Lines of a text from a base line on; the base line after them. */
  double paragraph(Tone tone, double size, double x, double y, double width, String text) {
    double line = y;
    for (String part : font.wrap(text, size, width)) {
      text(tone, size, Anchor.START, x, line, part);
      line += leading(size);
    }
    return line;
  }

  /** From one base line to the next. */
  static double leading(double size) {
    return 1.28 * size;
  }
}
