package motebook.entry;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.LongConsumer;
import motebook.model.Refusal;
import motebook.model.Text;
import motebook.model.Work;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads a sheet of sessions that somebody keeps by hand: columns in any order, headed by plain
 * words, parted by tabs, semicolons or commas.
 */
public final class SessionSheet {
  private static final int HEADER_WITHIN = 20;
  private static final List<Character> DELIMITERS = List.of('\t', ';', ',');

  private final SheetHeader header;
  private final Scene scene;
  private final SheetSpans spans;
  private final SheetWork works;
  private final List<Row> rows = new ArrayList<>();
  private final List<SheetFault> faults = new ArrayList<>();

  /**
   * A row that was read.
   *
   * @param line of the file on which it begins, from 1
   * @param work what it says; it keeps {@link WorkRules}
   */
  public record Row(long line, Work work) {}

  /**
   * What the sheet holds.
   *
   * @param rows those that could be read, in order
   * @param faults what is wrong with the others
   * @param remarks what was passed over or guessed
   * @param startColumn how the sheet heads the start, to name what is wrong with a whole row
   * @param maskColumn how it heads the respirator
   */
  public record Contents(
      List<Row> rows,
      List<SheetFault> faults,
      List<String> remarks,
      String startColumn,
      String maskColumn) {}

  private SessionSheet(SheetHeader header, Scene scene, Optional<SheetDateOrder> order) {
    this.header = header;
    this.scene = scene;
    spans =
        new SheetSpans(
            new SheetDates(order),
            new SheetTimes(SheetColumn.minutesPerUnit(header.name(SheetColumn.LENGTH))));
    works = new SheetWork(scene);
  }

  /**
   * Reads a sheet.
   *
   * @param order of dates with slashes, if it was said
   * @param upTo told again and again how many characters of the text are read
   * @throws Refusal if it has no header that can be understood, or is no CSV
   */
  public static Contents read(
      SheetText sheet, Scene scene, Optional<SheetDateOrder> order, LongConsumer upTo) {
    for (char delimiter : DELIMITERS) {
      Optional<Contents> contents = read(sheet, delimiter, scene, order, upTo);
      if (contents.isPresent()) {
        return contents.get();
      }
    }
    throw new Refusal(
        "No row heads the columns. The first one names them in plain words, such as: date, start,"
            + " minutes, operation, material, controls, place, person, respirator, checked, worn %,"
            + " using, note.");
  }

  private static Optional<Contents> read(
      SheetText sheet,
      char delimiter,
      Scene scene,
      Optional<SheetDateOrder> order,
      LongConsumer upTo) {
    CSVFormat format =
        CSVFormat.DEFAULT.builder().setDelimiter(delimiter).setIgnoreEmptyLines(false).get();
    long line = 1;
    Optional<SessionSheet> reader = Optional.empty();
    try (CSVParser parser = CSVParser.parse(sheet.text(), format)) {
      for (CSVRecord record : parser) {
        if (reader.isPresent()) {
          reader.get().row(record, line);
        } else {
          reader = headed(record, scene, order);
          if (reader.isEmpty() && line > HEADER_WITHIN) {
            return Optional.empty();
          }
        }
        line = parser.getCurrentLineNumber() + 1;
        upTo.accept(record.getCharacterPosition());
      }
    } catch (IOException | UncheckedIOException e) {
      if (reader.isEmpty()) {
        return Optional.empty(); // other separators read the quotes in another way
      }
      throw new Refusal(
          "line "
              + line
              + ": a quote is opened and not closed as CSV wants it. Correct the quotes.");
    }
    return reader.map(it -> it.contents(sheet));
  }

  private static Optional<SessionSheet> headed(
      CSVRecord record, Scene scene, Optional<SheetDateOrder> order) {
    SheetHeader header = SheetHeader.of(record.toList());
    if (!header.heads()) {
      return Optional.empty();
    }
    header.requireEnough();
    return Optional.of(new SessionSheet(header, scene, order));
  }

  private Contents contents(SheetText sheet) {
    List<String> remarks = new ArrayList<>();
    sheet.remark().ifPresent(remarks::add);
    header.remark().ifPresent(remarks::add);
    return new Contents(
        rows, faults, remarks, header.name(SheetColumn.START), header.name(SheetColumn.RESPIRATOR));
  }

  private void row(CSVRecord record, long line) {
    List<String> cells = record.toList();
    SheetRow row = new SheetRow(header, cells, line, faults);
    if (cells.stream().allMatch(String::isBlank) || shifted(row, cells)) {
      return;
    }
    Optional<SheetSpans.Span> span = spans.read(row);
    Optional<Work> done = works.read(row, span.map(SheetSpans.Span::date).orElse(scene.today()));
    if (span.isPresent() && done.isPresent()) {
      add(row, span.get(), done.get());
    }
  }

  private void add(SheetRow row, SheetSpans.Span span, Work done) {
    int before = row.faultCount();
    String note = row.read(SheetColumn.NOTE, Text::note).orElse("");
    Work work = works.at(done, span, note);
    WorkRules.future(work, scene)
        .ifPresent(breach -> row.fault(SheetColumn.DATE, breach.refusal().getMessage()));
    if (row.faultCount() == before) {
      rows.add(new Row(row.line(), work));
    }
  }

  /** A comma that was meant as a decimal one moves all that follows it by a cell. */
  private boolean shifted(SheetRow row, List<String> cells) {
    int headed = header.names().size();
    boolean more =
        cells.size() > headed
            && cells.subList(headed, cells.size()).stream().anyMatch(c -> !c.isBlank());
    if (more) {
      String message =
          "the row has %d cells and the header %d: put a cell that holds the separator into quotes.";
      faults.add(
          new SheetFault(
              row.line(), header.names().get(headed - 1), message.formatted(cells.size(), headed)));
    }
    return more;
  }
}
