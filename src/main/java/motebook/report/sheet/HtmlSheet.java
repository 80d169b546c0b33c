package motebook.report.sheet;

import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import motebook.desk.WeekReview;
import motebook.desk.WeekSheet;
import motebook.reference.Caution;
import motebook.report.Wording;

/** One week as an article of the page. */
final class HtmlSheet {
  private static final double WIDE = 620;
  private static final double NARROW = 310;

  private final XMLStreamWriter xml;
  private final WeekSheet sheet;
  private final String id;

  HtmlSheet(XMLStreamWriter xml, WeekSheet sheet, String id) {
    this.xml = xml;
    this.sheet = sheet;
    this.id = id;
  }

  void write(LocalDateTime made) throws XMLStreamException {
    WeekReview review = sheet.review();
    xml.writeStartElement("article");
    xml.writeAttribute("aria-labelledby", id);
    xml.writeStartElement("h1");
    xml.writeAttribute("id", id);
    xml.writeCharacters(SheetWords.title(review.week()));
    xml.writeEndElement();
    text("p", "made", SheetWords.made(review.week(), made));
    text("p", "headline", SheetWords.headline(review.week()));
    list("ul", "", SheetWords.means(review));
    week(review);
    worstDay();
    origins(review);
    text("h2", "", "What to make of it");
    list("ul", "", found(review));
    text("h2", "", "Cautions");
    list("ul", "", review.cautions().stream().map(Caution::sentence).toList());
    text("p", "", Wording.ESTIMATES);
    sources();
    xml.writeEndElement();
  }

  private static List<String> found(WeekReview review) {
    return Stream.concat(
            SheetWords.findings(review).stream(), SheetWords.vapour(review.week()).stream())
        .toList();
  }

  private void week(WeekReview review) throws XMLStreamException {
    text("h2", "", "The week");
    open("div", "row");
    plot(new DaysPlot(review.week().days()), "days", NARROW, 170, SheetCaptions.DAYS);
    TrendPlot trend = new TrendPlot(review);
    plot(trend, "trend", NARROW, 170, SheetCaptions.TREND);
    xml.writeEndElement();
    table(SheetTables.days(review.week()));
  }

  private void worstDay() throws XMLStreamException {
    if (sheet.worstAir().isPresent()) {
      AirPlot plot = new AirPlot(sheet, sheet.worstAir().get());
      text("h2", "", "The worst day");
      plot(plot, "air", WIDE, 190, SheetCaptions.AIR);
      list("ul", "marked", plot.works().stream().map(NumberedWork::said).toList());
    }
  }

  private void origins(WeekReview review) throws XMLStreamException {
    text("h2", "", "Where the dust came from");
    open("div", "row");
    table(SheetTables.jobs(review.week()));
    for (Grid cut : SheetTables.cuts(review)) {
      table(cut);
    }
    xml.writeEndElement();
  }

  private void sources() throws XMLStreamException {
    text("h2", "", "The figures used, and where they come from");
    text("p", "small", SheetWords.GRADES);
    list(
        "ul",
        "small",
        sheet.figures().stream().map(it -> SheetWords.figure(it, sheet.units())).toList());
  }

  private void plot(Plot plot, String name, double width, double height, String caption)
      throws XMLStreamException {
    xml.writeStartElement("figure");
    SvgPen.write(xml, plot, id + "-" + name, width, height);
    text("figcaption", "", plot.title() + ". " + caption);
    xml.writeEndElement();
  }

  private void table(Grid grid) throws XMLStreamException {
    xml.writeStartElement("table");
    text("caption", "", grid.title());
    xml.writeStartElement("thead");
    xml.writeStartElement("tr");
    for (int column = 0; column < grid.heads().size(); column++) {
      cell("th", "col", grid.right(column), grid.heads().get(column));
    }
    xml.writeEndElement();
    xml.writeEndElement();
    xml.writeStartElement("tbody");
    for (List<String> row : grid.rows()) {
      row(grid, row);
    }
    xml.writeEndElement();
    xml.writeEndElement();
  }

  private void row(Grid grid, List<String> row) throws XMLStreamException {
    xml.writeStartElement("tr");
    for (int column = 0; column < row.size(); column++) {
      boolean first = column == 0;
      cell(first ? "th" : "td", first ? "row" : "", grid.right(column), row.get(column));
    }
    xml.writeEndElement();
  }

  private void cell(String tag, String scope, boolean right, String text)
      throws XMLStreamException {
    open(tag, right ? "right" : "");
    if (!scope.isEmpty()) {
      xml.writeAttribute("scope", scope);
    }
    xml.writeCharacters(text);
    xml.writeEndElement();
  }

  private void list(String tag, String style, List<String> items) throws XMLStreamException {
    if (items.isEmpty()) {
      return;
    }
    open(tag, style);
    for (String item : items) {
      text("li", "", item);
    }
    xml.writeEndElement();
  }

  private void text(String tag, String style, String text) throws XMLStreamException {
    open(tag, style);
    xml.writeCharacters(text);
    xml.writeEndElement();
  }

  private void open(String tag, String style) throws XMLStreamException {
    xml.writeStartElement(tag);
    if (!style.isEmpty()) {
      xml.writeAttribute("class", style);
    }
  }
}
