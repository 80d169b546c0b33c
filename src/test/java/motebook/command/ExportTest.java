package motebook.command;

import static motebook.command.Shell.at;
import static motebook.command.Shell.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The week and its sheet as they come out of a real book. */
class ExportTest {
  @TempDir Path folder;
  private Shell shell;
  private Path pdf;
  private Path html;

  @BeforeEach
  void work() {
    shell = new Shell(folder.resolve("book.db")).at("2026-03-06T17:00");
    pdf = folder.resolve("week.pdf");
    html = folder.resolve("week.html");
    done("person add Zoë");
    done("log 40m orbital sanding of mdf with tool vacuum at 9:15 by Zoë on 2026-03-02");
    done("log 30m table saw of oak at 10:05 by Zoë on 2026-03-02");
    done("log 50m block sanding of oak at 9:30 on 2026-03-02");
    done("log 2h assembly of pine outdoors at 13:00 by Zoë on 2026-03-04");
    done("log 1h table saw of oak at 13:00 by Zoë on 2026-02-24");
  }

  private String done(String line) {
    Shell.Said said = shell.say(line);
    assertThat(said.code()).as(line + ": " + said.err()).isZero();
    return said.out();
  }

  private Document page() throws Exception {
    DocumentBuilderFactory parsers = DocumentBuilderFactory.newInstance();
    parsers.setNamespaceAware(true);
    return parsers.newDocumentBuilder().parse(html.toFile());
  }

  private static List<Element> all(Document page, String tag) {
    NodeList nodes = page.getElementsByTagNameNS("*", tag);
    List<Element> all = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      all.add((Element) nodes.item(i));
    }
    return all;
  }

  @Test
  void the_page_is_well_formed_and_says_what_and_whose_it_is() throws Exception {
    done("export --html " + html + " --week 2026-03-04 --person zoë");
    Document page = page();
    assertThat(page.getDocumentElement().getAttribute("lang")).isEqualTo("en");
    assertThat(all(page, "title").get(0).getTextContent())
        .isEqualTo("Dust in the week of 2 to 8 March 2026, Zoë");
    assertThat(all(page, "h1")).hasSize(1);
    assertThat(page.getDocumentElement().getTextContent())
        .contains("For Zoë. Made with Motebook on 6 March 2026, 17:00.")
        .contains("mg/m³")
        .contains("Wood dust can cause cancer")
        .contains("Estimates from published averages, not measurements.");
  }

  @Test
  void every_picture_has_words_and_every_table_has_heads() throws Exception {
    done("export --html " + html + " --week 2026-03-04 --person Zoë");
    Document page = page();
    Set<String> ids = new HashSet<>();
    for (Element each : all(page, "*")) {
      String id = each.getAttribute("id");
      assertThat(id.isEmpty() || ids.add(id)).as("id %s is given once", id).isTrue();
    }
    assertThat(all(page, "svg")).hasSize(3);
    for (Element picture : all(page, "svg")) {
      assertThat(picture.getAttribute("role")).isEqualTo("img");
      assertThat(ids).contains(picture.getAttribute("aria-labelledby").split(" ", -1));
      assertThat(picture.getElementsByTagName("desc").item(0).getTextContent()).isNotBlank();
    }
    assertThat(all(page, "table")).hasSizeGreaterThan(5);
    for (Element table : all(page, "table")) {
      assertThat(table.getElementsByTagName("caption").item(0).getTextContent()).isNotBlank();
    }
    assertThat(all(page, "th")).allMatch(head -> !head.getAttribute("scope").isEmpty());
  }

  @Test
  void the_page_needs_nothing_from_elsewhere() throws Exception {
    done("export --html " + html + " --week 2026-03-04 --person Zoë");
    String text = Files.readString(html);
    assertThat(text).doesNotContain("href=").doesNotContain("src=").doesNotContain("url(");
    assertThat(text).doesNotContain("<script").startsWith("<!DOCTYPE html>");
    assertThat(text.substring(text.indexOf("<style>"), text.indexOf("</style>")))
        .doesNotContain("&");
  }

  @Test
  void the_paper_is_one_page_with_every_figure_its_grade_and_source() throws Exception {
    done("export --pdf " + pdf + " --week 2026-03-04 --person Zoë");
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      assertThat(document.getNumberOfPages()).isEqualTo(1);
      assertThat(document.getPage(0).getMediaBox().getWidth()).isCloseTo(595.3f, within(0.1f));
      String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
      assertThat(text)
          .contains("For Zoë. Made with Motebook on 6 March 2026, 17:00.")
          .contains("mg/m³")
          .contains("Orbital sanding 25 [9–62] mg/m³ (grade A)")
          .contains("MDF, sanded 1.5 [1–2.4] times (grade C)")
          .contains("Vacuum on the tool 0.15 [0.06–0.44] let through (grade B)")
          .contains("OSHA")
          .contains("Shop, 100 m³, 1 air change/h closed")
          .contains("Left over:")
          .contains("Caution: Wood dust can cause cancer");
    }
  }

  private static long sheets(PDDocument document) throws IOException {
    long sheets = 0;
    for (int page = 1; page <= document.getNumberOfPages(); page++) {
      PDFTextStripper text = new PDFTextStripper();
      text.setStartPage(page);
      text.setEndPage(page);
      sheets += text.getText(document).contains("further figures used") ? 0 : 1;
    }
    return sheets;
  }

  @Test
  void no_letter_leaves_the_paper_and_all_typefaces_are_in_the_file() throws Exception {
    done("sample-shop --book " + folder.resolve("sample.db"));
    for (String paper : List.of("a4", "letter")) {
      done(
          "export --pdf "
              + pdf
              + " --from 2025-12-01 --to 2026-03-01 --book "
              + folder.resolve("sample.db")
              + " --paper "
              + paper);
      try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
        // Twelve weeks, one of them without work; sources that do not fit run on to a page more.
        assertThat(sheets(document)).isEqualTo(11);
        for (PDPage page : document.getPages()) {
          for (COSName font : page.getResources().getFontNames()) {
            assertThat(page.getResources().getFont(font).isEmbedded()).isTrue();
          }
        }
        assertThat(new Margins().outside(document)).isEmpty();
      }
    }
  }

  /** Collects the letters that stand in the outer 20 points of a page. */
  private static final class Margins extends PDFTextStripper {
    private final List<String> outside = new ArrayList<>();

    List<String> outside(PDDocument document) throws IOException {
      getText(document);
      return outside;
    }

    @Override
    protected void processTextPosition(TextPosition letter) {
      super.processTextPosition(letter);
      double right = letter.getX() + letter.getWidth();
      if (letter.getX() < 20
          || right > letter.getPageWidth() - 20
          || letter.getY() < 20
          || letter.getY() > letter.getPageHeight() - 20) {
        outside.add(letter.getUnicode() + " at " + letter.getX() + ", " + letter.getY());
      }
    }
  }

  @Test
  void the_same_week_at_the_same_minute_is_the_same_file() throws Exception {
    done("export --pdf " + pdf + " --html " + html + " --person Zoë");
    byte[] first = Files.readAllBytes(pdf);
    byte[] page = Files.readAllBytes(html);
    done("export --pdf " + pdf + " --html " + html + " --person Zoë");
    assertThat(Files.readAllBytes(pdf)).isEqualTo(first);
    assertThat(Files.readAllBytes(html)).isEqualTo(page);
  }

  @Test
  void weeks_without_work_get_no_page() throws Exception {
    assertThat(done("export --pdf " + pdf + " --from 2026-01-01 --to 2026-03-06 --person Zoë"))
        .contains("The sheets of 2 weeks with work");
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      assertThat(document.getNumberOfPages()).isEqualTo(2);
    }
  }

  @Test
  void what_stands_there_already_and_is_no_sheet_is_left_alone() throws Exception {
    Path book = folder.resolve("book.db");
    byte[] before = Files.readAllBytes(book);
    Shell.Said said = shell.say("export --pdf " + book + " --person Zoë");
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.err()).contains("was not written by this program");
    assertThat(Files.readAllBytes(book)).isEqualTo(before);
  }

  @Test
  void a_folder_that_is_not_there_is_told_and_nothing_is_left_behind() throws Exception {
    Shell.Said said =
        shell.say("export --pdf " + folder.resolve("no/such/week.pdf") + " --person Zoë");
    assertThat(said.code()).isEqualTo(1);
    assertThat(said.err()).contains("no such folder");
  }

  @Test
  void a_name_in_letters_that_the_typeface_lacks_still_makes_a_page() throws Exception {
    done("person add 木村");
    done("log 1h table saw of oak at 15:00 by 木村 on 2026-03-02");
    done("export --pdf " + pdf + " --html " + html + " --person 木村");
    assertThat(Files.readString(html)).contains("For 木村.");
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      assertThat(new PDFTextStripper().getText(document)).contains("For ??.");
    }
  }

  @Test
  void the_week_answers_where_it_came_from_its_trend_and_what_would_have_helped() {
    Map<String, Object> week = shell.json("week 2026-03-04 --person Zoë");
    assertThat(week)
        .containsKeys(
            "from",
            "to",
            "person",
            "days",
            "mean_40h",
            "minutes_logged",
            "days_over_limit",
            "sources",
            "mean_of_days_mg_m3",
            "attribution",
            "trend",
            "change",
            "best_change",
            "remarks",
            "cautions");
    assertThat(week).as("a limit is held against days").doesNotContainKey("limit");
    assertThat(at(week, "days", 0, "limit", "key")).isEqualTo("acgih-wood");
    assertThat(at(week, "days", 0, "long_day")).isNull();
    assertThat(number(week, "days", 0, "minutes_between_counted")).isEqualTo(10);
    assertThat(at(week, "trend", "weeks_12", "direction")).isNull();
    assertThat(number(week, "trend", "weeks_12", "weeks_with_work")).isEqualTo(2);
    assertThat(number(week, "attribution", "left_over_percent")).isBetween(0.1, 50.0);
    assertThat(number(week, "best_change", "mean_40h_outside_central_mg_m3"))
        .isLessThan(number(week, "mean_40h", "outside", "central_mg_m3"));
    for (String cut : List.of("by_operation", "by_material", "by_place", "by_person")) {
      double sum = 0;
      for (Object share : (List<?>) at(week, "attribution", cut)) {
        sum += number(share, "share_percent");
      }
      assertThat(sum).as(cut).isCloseTo(100, within(1e-9));
    }
  }

  @Test
  void a_shop_that_changed_in_the_year_is_reckoned_for_each_day_as_it_was() {
    done("place change shop --volume 200 --from 2026-03-01");
    Map<String, Object> earlier = shell.json("week 2026-02-24 --person Zoë");
    Map<String, Object> later = shell.json("week 2026-03-04 --person Zoë");
    double before = number(later, "change", "before_mg_m3");
    assertThat(before).isEqualTo(number(earlier, "mean_of_days_mg_m3"));
    assertThat(number(later, "days", 0, "outside", "central_mg_m3"))
        .isEqualTo(
            number(shell.json("day 2026-03-02 --person Zoë"), "twa", "outside", "central_mg_m3"));
    assertThat(number(earlier, "days", 1, "outside", "central_mg_m3"))
        .isEqualTo(
            number(shell.json("day 2026-02-24 --person Zoë"), "twa", "outside", "central_mg_m3"));
  }
}
