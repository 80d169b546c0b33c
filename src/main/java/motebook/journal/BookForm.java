package motebook.journal;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import motebook.model.Refusal;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The form in which a whole book is exported: which files there are, in the order in which they
 * refer to each other, and which columns each has. All of it is told by the shipped table
 * columns.csv, which goes with every export.
 */
public final class BookForm {
  /** What an export calls itself. */
  public static final String FORMAT = "motebook-book";

  /** The version of the form that is written; those before it are read too. */
  public static final int VERSION = 4;

  /** From this version on an air speed outdoors is that at the face; before it was the wind's. */
  private static final int AIR_AT_THE_FACE = 3;

  private static final Map<Double, Double> WINDS = Map.of(60.0, 15.0, 150.0, 20.0, 270.0, 30.0);

  private static final CSVFormat TABLE =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
  private static final List<Kind> KINDS = read();

  private BookForm() {}

  /** The text of the table of columns. */
  public static String table() {
    return Resources.text("motebook/exchange/columns.csv");
  }

  /** Every kind of thing that is exported; what is referred to comes first. */
  public static List<Kind> kinds() {
    return KINDS;
  }

  /**
   * Sees to it that a version of the form is one that can be read.
   *
   * @throws Refusal if it is not
   */
  public static void requireKnown(int version) {
    if (version < 1 || version > VERSION) {
      throw new Refusal(
          ("It is in version %d of the form, and this Motebook reads up to version %d. Take the"
                  + " Motebook that wrote it, or a newer one.")
              .formatted(version, VERSION));
    }
  }

  /**
   * A row as this version means it: the figures that the words for outdoors gave in earlier ones
   * become those they give now, as in the book itself (sql/011-outdoor-air.sql).
   *
   * @param version of the form that the row was written in
   */
  public static List<Object> upToDate(Kind kind, int version, List<Object> values) {
    if (version >= AIR_AT_THE_FACE || !kind.name().equals("place-figures")) {
      return values;
    }
    List<Object> now = new ArrayList<>(values);
    if ("outdoors".equals(now.get(kind.index("kind")))) {
      int speed = kind.index("air_speed_m_per_min");
      Double was = (Double) now.get(speed);
      now.set(speed, WINDS.getOrDefault(was, was));
    }
    return now;
  }

  private static List<Kind> read() {
    Map<String, List<Column>> files = new LinkedHashMap<>();
    try (CSVParser rows = TABLE.parse(new StringReader(table()))) {
      for (CSVRecord row : rows) {
        files.computeIfAbsent(row.get("file"), any -> new ArrayList<>()).add(column(row));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return files.entrySet().stream().map(f -> new Kind(f.getKey(), f.getValue())).toList();
  }

  private static Column column(CSVRecord row) {
    return Column.of(
        row.get("column"),
        row.get("holds"),
        row.get("may_be_empty").equals("no"),
        Optional.of(row.get("refers_to")).filter(file -> !file.isEmpty()),
        Integer.parseInt(row.get("since")));
  }
}
