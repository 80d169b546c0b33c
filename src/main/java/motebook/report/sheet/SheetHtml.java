package motebook.report.sheet;

import java.io.OutputStream;
import java.time.LocalDateTime;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import motebook.desk.WeekSheet;

/** The sheets as one page for a browser that needs nothing beside itself. */
public final class SheetHtml {
  private SheetHtml() {}

  /** Stands in the head of every page. */
  public static final String MARK = "name=\"generator\" content=\"Motebook\"";

  /**
   * Writes the page in UTF-8.
   *
   * @param sheets one a week, in order
   * @param made when, at the shop
   * @param out is left open
   * @throws XMLStreamException if it cannot be written
   */
  public static void write(List<WeekSheet> sheets, LocalDateTime made, OutputStream out)
      throws XMLStreamException {
    XMLStreamWriter xml = XMLOutputFactory.newFactory().createXMLStreamWriter(out, "UTF-8");
    xml.writeDTD("<!DOCTYPE html>\n");
    xml.writeStartElement("html");
    xml.writeAttribute("lang", "en");
    xml.writeAttribute("xmlns", "http://www.w3.org/1999/xhtml");
    head(xml, sheets);
    xml.writeStartElement("body");
    for (int i = 0; i < sheets.size(); i++) {
      new HtmlSheet(xml, sheets.get(i), "week" + (i + 1)).write(made);
    }
    xml.writeEndElement();
    xml.writeEndElement();
    xml.writeEndDocument();
    xml.flush();
  }

  private static void head(XMLStreamWriter xml, List<WeekSheet> sheets) throws XMLStreamException {
    xml.writeStartElement("head");
    xml.writeEmptyElement("meta");
    xml.writeAttribute("charset", "utf-8");
    xml.writeEmptyElement("meta");
    xml.writeAttribute("name", "generator");
    xml.writeAttribute("content", "Motebook");
    xml.writeEmptyElement("meta");
    xml.writeAttribute("name", "viewport");
    xml.writeAttribute("content", "width=device-width, initial-scale=1");
    xml.writeStartElement("title");
    xml.writeCharacters(title(sheets));
    xml.writeEndElement();
    xml.writeStartElement("style");
    xml.writeCharacters(STYLE);
    xml.writeEndElement();
    xml.writeEndElement();
  }

  private static String title(List<WeekSheet> sheets) {
    String first = SheetWords.title(sheets.get(0).review().week());
    return (sheets.size() == 1 ? first : first + " and " + (sheets.size() - 1) + " more")
        + ", "
        + sheets.get(0).review().week().person();
  }

  // Without the three characters that a browser reads otherwise in a style than in a text.
  private static final String STYLE =
      """
      body { font: 15px/1.45 system-ui, "Liberation Sans", Arial, sans-serif; color: #1a2129;
        background: #fff; max-width: 62rem; margin: 2rem auto; padding: 0 1.2rem; }
      article { break-after: page; margin-bottom: 4rem; }
      article:last-child { break-after: auto; margin-bottom: 0; }
      h1 { font-size: 1.7rem; margin: 0; }
      h2 { font-size: 1.05rem; margin: 1.8rem 0 .4rem; border-top: 1px solid #bcc9d6;
        padding-top: .6rem; }
      .made { color: #59636e; margin: .2rem 0 1rem; }
      .headline { font-size: 1.9rem; font-weight: 700; margin: 0; }
      .row { display: grid; grid-template-columns: repeat(auto-fit, minmax(19rem, 1fr));
        gap: 0 2rem; align-items: start; }
      figure { margin: .6rem 0; }
      figcaption { font-size: .82rem; color: #454f59; }
      svg { width: 100%; height: auto; font-family: inherit; }
      table { border-collapse: collapse; width: 100%; margin: .6rem 0; font-size: .9rem; }
      caption { text-align: left; font-weight: 700; padding-bottom: .25rem; }
      th, td { text-align: left; padding: .16rem .7rem .16rem 0; border-bottom: 1px solid #e3e7eb;
        font-weight: 400; vertical-align: top; }
      thead th { color: #454f59; }
      .right { text-align: right; font-variant-numeric: tabular-nums; padding-right: 0; }
      .right + .right { padding-left: .9rem; }
      .small { font-size: .8rem; color: #333c45; }
      ul, ol { padding-left: 1.2rem; margin: .4rem 0; }
      .marked { list-style: none; padding-left: 0; columns: 2 18rem; font-size: .82rem; }
      @media print { @page { margin: 12mm; } body { margin: 0; font-size: 11px; max-width: none; } }
      """;
}
