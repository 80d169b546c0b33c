package motebook.report.sheet;

import java.util.Locale;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Writes what is drawn as SVG into a page. */
final class SvgPen implements Pen {
  private static final double EDGE = 0.8;

  private final XMLStreamWriter out;

  private SvgPen(XMLStreamWriter out) {
    this.out = out;
  }

  /** Writes a plot as one picture with its title and description. */
  static void write(XMLStreamWriter out, Plot plot, String id, double width, double height)
      throws XMLStreamException {
    out.writeStartElement("svg");
    out.writeAttribute("xmlns", "http://www.w3.org/2000/svg");
    out.writeAttribute("viewBox", "0 0 " + number(width) + " " + number(height));
    out.writeAttribute("role", "img");
    out.writeAttribute("aria-labelledby", id + "-title " + id + "-desc");
    described(out, "title", id + "-title", plot.title());
    described(out, "desc", id + "-desc", plot.description());
    try {
      plot.draw(new SvgPen(out), width, height);
    } catch (Unwritten e) {
      throw e.cause;
    }
    out.writeEndElement();
  }

  private static void described(XMLStreamWriter out, String tag, String id, String text)
      throws XMLStreamException {
    out.writeStartElement(tag);
    out.writeAttribute("id", id);
    out.writeCharacters(text);
    out.writeEndElement();
  }

  @Override
  public void path(Stroke stroke, double... xy) {
    element(
        "polyline",
        "points",
        points(xy),
        "fill",
        "none",
        "stroke",
        colour(stroke.tone),
        "stroke-width",
        number(stroke.width),
        "stroke-dasharray",
        stroke.dashed ? "4 2.5" : "none");
  }

  @Override
  public void area(Tone fill, double... xy) {
    element("polygon", "points", points(xy), "fill", colour(fill));
  }

  @Override
  public void disc(Tone fill, double x, double y, double radius) {
    element(
        "circle",
        "cx",
        number(x),
        "cy",
        number(y),
        "r",
        number(radius),
        "fill",
        colour(fill),
        "stroke",
        colour(Tone.INK),
        "stroke-width",
        number(EDGE));
  }

  @Override
  public void text(Tone tone, double size, Anchor anchor, double x, double y, String text) {
    try {
      out.writeStartElement("text");
      attributes(
          "x", number(x),
          "y", number(y),
          "font-size", number(size),
          "text-anchor", anchor.name().toLowerCase(Locale.ROOT),
          "fill", colour(tone));
      out.writeCharacters(text);
      out.writeEndElement();
    } catch (XMLStreamException e) {
      throw new Unwritten(e);
    }
  }

  private void element(String tag, String... attributes) {
    try {
      out.writeEmptyElement(tag);
      attributes(attributes);
    } catch (XMLStreamException e) {
      throw new Unwritten(e);
    }
  }

  private void attributes(String... namesAndValues) throws XMLStreamException {
    for (int i = 0; i < namesAndValues.length; i += 2) {
      out.writeAttribute(namesAndValues[i], namesAndValues[i + 1]);
    }
  }

  private static String points(double... xy) {
    StringBuilder points = new StringBuilder();
    for (int i = 0; i < xy.length; i += 2) {
      points.append(number(xy[i])).append(',').append(number(xy[i + 1])).append(' ');
    }
    return points.toString().strip();
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  private static String colour(Tone tone) {
    return String.format(
        Locale.ROOT,
        "#%02x%02x%02x",
        Math.round(255 * tone.red),
        Math.round(255 * tone.green),
        Math.round(255 * tone.blue));
  }

  /** Carries what went wrong with the page through the strokes of a plot. */
  private static final class Unwritten extends RuntimeException {
    private static final long serialVersionUID = 1;
    private final XMLStreamException cause;

    Unwritten(XMLStreamException cause) {
      super(cause);
      this.cause = cause;
    }
  }
}
