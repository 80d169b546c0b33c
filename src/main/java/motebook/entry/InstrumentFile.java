package motebook.entry;

import java.io.BufferedReader;
import java.io.IOException;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import motebook.model.Refusal;
import motebook.model.Text;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads the CSV file of any instrument that writes a time and a concentration in each row.
 *
 * <p>The file is read as a stream; of a million rows only the minutes are kept. A reading stands
 * until the next one, but no longer than five times the usual step: what is longer is a gap.
 */
public final class InstrumentFile {
  private static final int HEADER_WITHIN = 100;
  private static final int FIRST = 100;
  private static final double GAP = 5;
  private static final double MICRO = 1000;

  private final Wish wish;
  private final MinuteMeans means = new MinuteMeans();
  private final Complaints complaints = new Complaints();
  private final List<Reading> first = new ArrayList<>();
  private Optional<Reading> last = Optional.empty();
  private double step;
  private long rows;

  /**
   * What was said about the file.
   *
   * @param time name of the time column, if it was named
   * @param value name of the value column, if it was named
   * @param unit mg/m3 or ug/m3, if it was said
   * @param day what times without a date are of
   */
  public record Wish(
      Optional<String> time,
      Optional<String> value,
      Optional<String> unit,
      Optional<LocalDate> day) {}

  /**
   * What the file holds.
   *
   * @param means mg/m³ by minute
   * @param rows that were read as readings
   * @param complaints what was left out or missing, each with its line; the first ten
   * @param channel the particle size that the column of values is called by, such as PM2.5
   */
  public record Contents(
      MinuteMeans means, long rows, List<String> complaints, Optional<String> channel) {}

  private record Reading(LocalDateTime at, double value, long line) {
    double secondsTo(Reading next) {
      return Duration.between(at, next.at).toNanos() / 1e9;
    }
  }

  private InstrumentFile(Wish wish) {
    this.wish = wish;
  }

  /**
   * Reads a file.
   *
   * @throws Refusal if its columns, its unit or its times cannot be told
   * @throws IOException if it cannot be read
   */
  public static Contents read(BufferedReader text, Wish wish) throws IOException {
    InstrumentFile file = new InstrumentFile(wish);
    Optional<String> channel = file.readRows(text);
    return new Contents(file.means, file.rows, file.complaints.told(), channel);
  }

  private Optional<String> readRows(BufferedReader text) throws IOException {
    long lines = 0;
    Optional<Columns> columns = Optional.empty();
    while (columns.isEmpty() && lines < HEADER_WITHIN) {
      String line = text.readLine();
      if (line == null) {
        break;
      }
      lines++;
      columns = Columns.in(line, wish.time(), wish.value());
    }
    Columns found = columns.orElseThrow(InstrumentFile::noColumns);
    double factor = found.micrograms(wish.unit()) ? 1 / MICRO : 1;
    Stamps stamps = new Stamps(wish.day());
    CSVFormat format =
        CSVFormat.DEFAULT.builder().setDelimiter(found.delimiter()).setIgnoreEmptyLines(true).get();
    try (CSVParser parser = CSVParser.parse(text, format)) {
      for (CSVRecord row : parser) {
        row(row, lines + parser.getCurrentLineNumber(), found, factor, stamps);
      }
    }
    if (rows == 0) {
      throw new Refusal(
          "The file holds no reading: each row needs a time like 2026-03-02 09:00:05 (or, with"
              + " --on DATE, 09:00:05) and a number.");
    }
    settle();
    last.ifPresent(reading -> means.add(reading.at(), step, reading.value()));
    return found.channel();
  }

  private static Refusal noColumns() {
    return new Refusal(
        "No row names a column of times and one of concentrations. Name them with --time COLUMN"
            + " and --value COLUMN.");
  }

  private void row(CSVRecord row, long line, Columns columns, double factor, Stamps stamps) {
    Optional<LocalDateTime> at = columns.moment(row).flatMap(stamps::read);
    Optional<Double> value = columns.value(row);
    if (at.isEmpty() || value.isEmpty()) {
      complaints.add("line " + line + ": no " + (at.isEmpty() ? "time" : "number") + ", left out");
      return;
    }
    reading(new Reading(at.get(), factor * value.get(), line));
  }

  private void reading(Reading reading) {
    if (last.isPresent() && !reading.at().isAfter(last.get().at())) {
      complaints.add("line " + reading.line() + ": not later than the row before, left out");
      return;
    }
    rows++;
    if (step == 0) {
      first.add(reading);
      last = Optional.of(reading);
      if (first.size() > FIRST) {
        settle();
      }
    } else {
      last.ifPresent(before -> stand(before, reading));
      last = Optional.of(reading);
    }
  }

  /** Tells the usual step from the first readings, and lets them stand. */
  private void settle() {
    if (step > 0) {
      return;
    }
    List<Double> steps = new ArrayList<>();
    for (int i = 1; i < first.size(); i++) {
      steps.add(first.get(i - 1).secondsTo(first.get(i)));
    }
    steps.sort(null);
    step = steps.isEmpty() ? 60 : steps.get(steps.size() / 2);
    for (int i = 1; i < first.size(); i++) {
      stand(first.get(i - 1), first.get(i));
    }
    first.clear();
  }

  private void stand(Reading reading, Reading next) {
    double seconds = reading.secondsTo(next);
    if (seconds > GAP * step) {
      complaints.add(
          String.format(
              Locale.ROOT, "line %d: nothing was read for %.0f s before it", next.line(), seconds));
      seconds = step;
    }
    means.add(reading.at(), seconds, reading.value());
  }

  /** The first few complaints, and how many more there were. */
  private static final class Complaints {
    private static final int MOST = 10;

    private final List<String> told = new ArrayList<>();
    private long more;

    void add(String complaint) {
      if (told.size() < MOST) {
        told.add(Text.clean(complaint));
      } else {
        more++;
      }
    }

    List<String> told() {
      List<String> all = new ArrayList<>(told);
      if (more > 0) {
        all.add("and " + more + " more of that kind");
      }
      return all;
    }
  }
}
