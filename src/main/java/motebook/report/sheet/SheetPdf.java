package motebook.report.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.List;
import motebook.desk.WeekSheet;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** The sheets on paper, one page a week. */
public final class SheetPdf {
  private static final double MARGIN = 30;
  private static final double[] STRETCHES = {1.8, 1.6, 1.4, 1.2, 1, 0.8, 0.65};

  private final PDDocument document;
  private final PdfFont font;
  private final Paper paper;

  /** The last line of every file, a comment: what a reader looks for stands in the lines before. */
  public static final String MARK = "% Written by Motebook";

  private SheetPdf(PDDocument document, Paper paper) throws IOException {
    this.document = document;
    this.paper = paper;
    this.font = new PdfFont(document);
  }

  /**
   * Writes the pages.
   *
   * @param sheets one a week, in order
   * @param made when, at the shop
   * @param out is left open
   */
  public static void write(
      List<WeekSheet> sheets, LocalDateTime made, Paper paper, OutputStream out)
      throws IOException {
    try (PDDocument document = new PDDocument()) {
      SheetPdf pages = new SheetPdf(document, paper);
      pages.describe(sheets, made);
      for (WeekSheet sheet : sheets) {
        pages.add(sheet, made);
      }
      document.save(out);
      out.write(("\n" + MARK + "\n").getBytes(StandardCharsets.US_ASCII));
    }
  }

  // The same sheets made at the same minute are the same file, byte for byte.
  private void describe(List<WeekSheet> sheets, LocalDateTime made) {
    document.getDocumentCatalog().setLanguage("en");
    document.setDocumentId(made.toEpochSecond(ZoneOffset.UTC));
    PDDocumentInformation about = document.getDocumentInformation();
    about.setTitle(SheetWords.title(sheets.get(0).review().week()));
    about.setSubject("Estimated wood dust, " + sheets.get(0).review().week().person());
    about.setCreator("Motebook");
    about.setCreationDate(GregorianCalendar.from(made.atZone(ZoneOffset.UTC)));
  }

  private void add(WeekSheet sheet, LocalDateTime made) throws IOException {
    List<String> sources = SheetWords.sources(sheet);
    double width = paper.width - 2 * MARGIN;
    double bottom = paper.height - 2 * MARGIN + 8;
    double stretch = stretch(sheet, made, sources, width, bottom);
    List<String> rest;
    try (PDPageContentStream page = page()) {
      PdfPen pen = new PdfPen(page, font, MARGIN, paper.height - MARGIN);
      double y = new PdfSheet(pen, width, sheet, stretch).draw(made);
      rest =
          new PdfSources(pen, width)
              .draw("The figures used, and where they come from", sources, y + 7, bottom);
    }
    while (!rest.isEmpty()) {
      rest = further(sheet, rest, width, bottom);
    }
  }

  // The plots are as high as they can be with the sources still readable: tried on a loose page.
  private double stretch(
      WeekSheet sheet, LocalDateTime made, List<String> sources, double width, double bottom)
      throws IOException {
    for (double stretch : STRETCHES) {
      try (PDPageContentStream loose = new PDPageContentStream(document, new PDPage())) {
        PdfPen pen = new PdfPen(loose, font, MARGIN, paper.height - MARGIN);
        double y = new PdfSheet(pen, width, sheet, stretch).draw(made);
        if (new PdfSources(pen, width).readable(sources, y + 7, bottom)) {
          return stretch;
        }
      }
    }
    return STRETCHES[STRETCHES.length - 1];
  }

  private List<String> further(WeekSheet sheet, List<String> rest, double width, double bottom)
      throws IOException {
    try (PDPageContentStream page = page()) {
      PdfPen pen = new PdfPen(page, font, MARGIN, paper.height - MARGIN);
      String heading = SheetWords.title(sheet.review().week()) + ": further figures used";
      return new PdfSources(pen, width).lines(heading, rest, 10, bottom);
    }
  }

  private PDPageContentStream page() throws IOException {
    PDPage page = new PDPage(new PDRectangle((float) paper.width, (float) paper.height));
    document.addPage(page);
    return new PDPageContentStream(document, page);
  }
}
