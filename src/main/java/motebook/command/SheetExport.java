package motebook.command;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import motebook.desk.Ledger;
import motebook.desk.Reviews;
import motebook.desk.Week;
import motebook.desk.WeekSheet;
import motebook.journal.Book;
import motebook.model.Refusal;
import motebook.report.Wording;
import motebook.report.sheet.Paper;
import motebook.report.sheet.SheetHtml;
import motebook.report.sheet.SheetPdf;
import picocli.CommandLine.Option;

/** The sheet of a week, or of some weeks, on paper or as a page for a browser. */
final class SheetExport {
  private static final int MOST_WEEKS = 530;

  @Option(
      names = "--pdf",
      paramLabel = "FILE",
      description = "The sheet on paper, one page a week.")
  private Path pdf;

  @Option(
      names = "--html",
      paramLabel = "FILE",
      description = "The sheet as one page for a browser, complete in itself.")
  private Path html;

  @Option(
      names = "--week",
      paramLabel = "DATE",
      description = "Any day of the week that the sheet is of (else this week).")
  private String week;

  @Option(names = "--from", paramLabel = "DATE", description = "First day: a sheet for each week.")
  private String from;

  @Option(names = "--to", paramLabel = "DATE", description = "Last day (else today).")
  private String to;

  @Option(
      names = "--paper",
      paramLabel = "SIZE",
      defaultValue = "a4",
      description = "a4 (the default) or letter.")
  private Paper paper = Paper.A4;

  @Option(names = "--person", paramLabel = "P", description = "Whose (else the book's own person).")
  private String person;

  /** Whether a sheet is wanted. */
  boolean asked() {
    return pdf != null || html != null;
  }

  /** Writes the files and says so. */
  void write(Desk desk, boolean force) {
    List<WeekSheet> sheets = sheets(desk);
    LocalDateTime made = LocalDateTime.now(desk.clock());
    if (pdf != null) {
      SheetFile.write(pdf, SheetPdf.MARK, force, out -> SheetPdf.write(sheets, made, paper, out));
      said(desk, sheets, pdf);
    }
    if (html != null) {
      SheetFile.write(html, SheetHtml.MARK, force, out -> SheetHtml.write(sheets, made, out));
      said(desk, sheets, html);
    }
  }

  private static void said(Desk desk, List<WeekSheet> sheets, Path file) {
    String first = Wording.date(sheets.get(0).review().week().monday());
    desk.out()
        .println(
            (sheets.size() == 1
                    ? "The sheet of the week from " + first
                    : "The sheets of " + sheets.size() + " weeks with work from " + first + " on")
                + (sheets.size() == 1 ? " is in " : " are in ")
                + file);
  }

  private List<WeekSheet> sheets(Desk desk) {
    LocalDate first = firstMonday(desk);
    LocalDate last = lastMonday(desk, first);
    try (Book book = desk.open()) {
      String whose = desk.person(person, book);
      Reviews reviews = new Ledger(book).reviews(first, last, whose);
      List<WeekSheet> sheets = sheets(desk, reviews, first, last);
      if (sheets.isEmpty()) {
        throw new Refusal(nothing(first, last, whose));
      }
      return sheets;
    }
  }

  private static List<WeekSheet> sheets(
      Desk desk, Reviews reviews, LocalDate first, LocalDate last) {
    List<LocalDate> mondays =
        first.datesUntil(last.plusDays(1), Period.ofWeeks(1)).filter(reviews::worked).toList();
    try (Progress progress = Progress.over(desk.world(), "Reckoning the weeks", mondays.size())) {
      List<WeekSheet> sheets = new ArrayList<>();
      for (LocalDate monday : mondays) {
        sheets.add(reviews.sheet(monday));
        progress.step(1);
      }
      return sheets;
    }
  }

  private LocalDate firstMonday(Desk desk) {
    if (week != null && (from != null || to != null)) {
      throw new Refusal("Say one week with --week, or some with --from and --to, not both.");
    }
    if (to != null && from == null) {
      throw new Refusal("--to wants --from beside it: the first day that the sheets are of.");
    }
    return Week.monday(desk.date(from == null ? week : from));
  }

  private LocalDate lastMonday(Desk desk, LocalDate first) {
    LocalDate last = from == null ? first : Week.monday(desk.date(to));
    if (last.isBefore(first)) {
      throw new Refusal("--to lies before --from; give the earlier day as --from.");
    }
    if (first.plusWeeks(MOST_WEEKS).isBefore(last)) {
      throw new Refusal("That is more than ten years of sheets; make them in parts.");
    }
    return last;
  }

  private static String nothing(LocalDate first, LocalDate last, String whose) {
    String of = first.equals(last) ? "the week" : "the weeks";
    String until = first.equals(last) ? "" : " to " + Wording.date(last.plusDays(6));
    return "Nothing is logged by "
        + whose
        + " in "
        + of
        + " from "
        + Wording.date(first)
        + until
        + ", so there is no sheet. Name another week with --week DATE.";
  }
}
