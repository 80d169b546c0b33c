package motebook.report.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The typeface of the sheet: Liberation Sans as PDFBox brings it (SIL Open Font License), of which
 * the letters used are put into the file.
 */
final class PdfFont {
  private static final String FACE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
  private static final double UNITS = 1000;

  private static final char MISSING = '?';

  private final PDFont face;

  /** The letters measured so far; not a number for one that the typeface lacks. */
  private final Map<Integer, Double> widths = new HashMap<>();

  PdfFont(PDDocument document) throws IOException {
    try (InputStream in = PDDocument.class.getResourceAsStream(FACE)) {
      TrueTypeFont letters = new TTFParser().parse(new RandomAccessReadBuffer(in));
      // Letters are set as they are measured, one by one: joined ones have widths of their own.
      letters.setEnableGsub(false);
      face = PDType0Font.load(document, letters, true);
    }
  }

  PDFont face() {
    return face;
  }

  /** The text with a question mark for every letter that the typeface lacks. */
  String drawable(String text) {
    StringBuilder drawn = new StringBuilder();
    text.codePoints().map(each -> has(each) ? each : MISSING).forEach(drawn::appendCodePoint);
    return drawn.toString();
  }

  private boolean has(int letter) {
    return !Double.isNaN(units(letter));
  }

  private double units(int letter) {
    return widths.computeIfAbsent(letter, this::measured);
  }

  private double measured(int letter) {
    try {
      return face.getStringWidth(Character.toString(letter));
    } catch (IllegalArgumentException missing) {
      return Double.NaN;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The width of a text, in points. */
  double width(String text, double size) {
    double units = 0;
    for (int at = 0; at < text.length(); at = text.offsetByCodePoints(at, 1)) {
      int letter = text.codePointAt(at);
      units += units(has(letter) ? letter : MISSING);
    }
    return units * size / UNITS;
  }

  /** A text in lines that are no wider than a width, broken at spaces, or in a word too long. */
  List<String> wrap(String text, double size, double width) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.split(" ", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (width(longer, size) <= width) {
        line = longer;
        continue;
      }
      if (!line.isEmpty()) {
        lines.add(line);
      }
      line = broken(word, size, width, lines);
    }
    lines.add(line);
    return lines;
  }

  private String broken(String word, double size, double width, List<String> lines) {
    StringBuilder rest = new StringBuilder();
    for (int letter : word.codePoints().toArray()) {
      String longer = rest + Character.toString(letter);
      if (rest.length() > 0 && width(longer, size) > width) {
        lines.add(rest.toString());
        rest.setLength(0);
      }
      rest.appendCodePoint(letter);
    }
    return rest.toString();
  }

  /** A text that fits a width: shortened with an ellipsis where it must be. */
  String fitted(String text, double size, double width) {
    String kept = text;
    while (!kept.isEmpty() && width(kept + "…", size) > width) {
      if (width(kept, size) <= width && kept.equals(text)) {
        return text;
      }
      kept = kept.substring(0, kept.offsetByCodePoints(kept.length(), -1));
    }
    return kept.equals(text) ? text : kept.strip() + "…";
  }
}
