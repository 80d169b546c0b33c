package motebook.report.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
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

  private final PDFont face;

  PdfFont(PDDocument document) throws IOException {
    try (InputStream in = PDDocument.class.getResourceAsStream(FACE)) {
      face = PDType0Font.load(document, in, true);
    }
  }

  PDFont face() {
    return face;
  }

  /** The text with a question mark for every letter that the typeface lacks. */
  String drawable(String text) throws IOException {
    StringBuilder drawn = new StringBuilder();
    for (int letter : text.codePoints().toArray()) {
      drawn.append(has(letter) ? Character.toString(letter) : "?");
    }
    return drawn.toString();
  }

  private boolean has(int letter) throws IOException {
    try {
      return face.encode(Character.toString(letter)).length > 0;
    } catch (IllegalArgumentException missing) {
      return false;
    }
  }

  /** The width of a text, in points. */
  double width(String text, double size) throws IOException {
    return face.getStringWidth(drawable(text)) * size / UNITS;
  }

  /** A text in lines that are no wider than a width, broken at spaces, or in a word too long. */
  List<String> wrap(String text, double size, double width) throws IOException {
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

  private String broken(String word, double size, double width, List<String> lines)
      throws IOException {
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
  String fitted(String text, double size, double width) throws IOException {
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
