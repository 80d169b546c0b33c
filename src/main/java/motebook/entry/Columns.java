package motebook.entry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import motebook.model.Decimal;
import motebook.model.Refusal;
import motebook.model.Text;
import org.apache.commons.csv.CSVRecord;

/**
 * Where an instrument's file holds its times and its values.
 *
 * @param names of all columns
 * @param delimiter between them
 * @param date column of the date where it stands apart from the time
 * @param time column of the time
 * @param number column of the value
 */
record Columns(List<String> names, String delimiter, OptionalInt date, int time, int number) {
  private static final List<String> DELIMITERS = List.of("\t", ";", ",");
  private static final Pattern CHANNEL = Pattern.compile("\\bpm[ _]?(1|2\\.5|4|10)(?![0-9.])");
  private static final Set<String> TIMES =
      Set.of("time", "date time", "datetime", "date and time", "timestamp", "clock time");
  private static final Set<String> VALUES =
      Set.of("concentration", "mass", "mass concentration", "dust", "aerosol", "reading", "value");

  /** The columns that a header line names; empty where it is none. */
  static Optional<Columns> in(String line, Optional<String> time, Optional<String> value) {
    for (String delimiter : DELIMITERS) {
      List<String> names =
          Arrays.stream(line.replace("\uFEFF", "").split(delimiter, -1))
              .map(name -> Text.folded(name.replace("\"", "")))
              .toList();
      OptionalInt at = one(names, time.map(Text::folded), TIMES, "--time");
      OptionalInt number = one(names, value.map(Text::folded), VALUES, "--value");
      if (names.size() > 1 && at.isPresent() && number.isPresent()) {
        int date = names.indexOf("date");
        return Optional.of(
            new Columns(
                names,
                delimiter,
                date < 0 || date == at.getAsInt() ? OptionalInt.empty() : OptionalInt.of(date),
                at.getAsInt(),
                number.getAsInt()));
      }
    }
    return Optional.empty();
  }

  private static OptionalInt one(
      List<String> names, Optional<String> named, Set<String> words, String option) {
    List<Integer> found = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      String name = names.get(i);
      boolean meant =
          named.isPresent()
              ? name.equals(named.get())
              : words.contains(bare(name)) || (words == VALUES && unit(name).isPresent());
      if (meant) {
        found.add(i);
      }
    }
    if (found.size() > 1) {
      throw new Refusal(
          "More than one column could be meant: "
              + String.join(", ", found.stream().map(names::get).toList())
              + ". Name it with "
              + option
              + " COLUMN.");
    }
    return found.isEmpty() ? OptionalInt.empty() : OptionalInt.of(found.get(0));
  }

  /** A name without what stands in brackets behind it. */
  private static String bare(String name) {
    return name.replaceAll("[\\[(].*", "").strip();
  }

  /** Whether a name holds a unit, and whether it is the microgram. */
  private static Optional<Boolean> unit(String name) {
    String plain = name.replace("³", "3").replace(" ", "");
    if (plain.contains("mgm3")) {
      return Optional.of(false);
    }
    return plain.contains("µgm3") || plain.contains("ugm3") || plain.contains("μgm3")
        ? Optional.of(true)
        : Optional.empty();
  }

  /**
   * Whether the values are micrograms.
   *
   * @param said the unit that was said, which counts before the file's own
   * @throws Refusal if neither tells
   */
  boolean micrograms(Optional<String> said) {
    if (said.isPresent()) {
      return unit(Text.folded(said.get()))
          .orElseThrow(
              () ->
                  new Refusal("--unit is mg/m3 or ug/m3: got \"" + Text.clean(said.get()) + "\"."));
    }
    return unit(names.get(number))
        .orElseThrow(
            () ->
                new Refusal(
                    "The column \""
                        + names.get(number)
                        + "\" does not tell its unit. Say it with --unit mg/m3 or --unit ug/m3."));
  }

  /** The text of a row's time, with its date where that stands apart. */
  Optional<String> moment(CSVRecord row) {
    if (row.size() <= Math.max(time, date.orElse(0))) {
      return Optional.empty();
    }
    return Optional.of(
        date.isPresent() ? row.get(date.getAsInt()).strip() + " " + row.get(time) : row.get(time));
  }

  /** The value of a row; empty where it is no number. */
  Optional<Double> value(CSVRecord row) {
    if (row.size() <= number) {
      return Optional.empty();
    }
    String text = row.get(number);
    return Decimal.parse(delimiter.equals(",") ? text : text.replace(',', '.')).stream()
        .boxed()
        .findFirst();
  }

  /** The particle size that the column of the value is called by, as {@code PM2.5}. */
  Optional<String> channel() {
    Matcher matcher = CHANNEL.matcher(names.get(number));
    return matcher.find() ? Optional.of("PM" + matcher.group(1)) : Optional.empty();
  }
}
