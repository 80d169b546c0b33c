package motebook.entry;

import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import motebook.model.Text;

/** What a column of a hand-made sheet may hold, and the plain words that head it. */
enum SheetColumn {
  DATE("date", "day", "on", "when"),
  START("start", "from", "begin", "began", "started", "start time", "time", "at"),
  END("to", "end", "until", "till", "ended", "end time", "stop", "stopped"),
  LENGTH(
      "minutes",
      "minute",
      "min",
      "mins",
      "hours",
      "hour",
      "hrs",
      "h",
      "duration",
      "duration min",
      "duration minutes",
      "duration h",
      "duration hours",
      "length",
      "lasted",
      "how long",
      "time spent"),
  OPERATION("operation", "work", "job", "task", "what", "what was done", "activity"),
  MATERIAL("material", "wood", "timber", "stock", "of"),
  CONTROLS("controls", "control", "dust control", "dust controls", "with", "extraction"),
  PLACE("place", "where", "in", "room", "location"),
  PERSON("person", "who", "by", "name", "worker"),
  RESPIRATOR("respirator", "mask", "wearing"),
  CHECKED("checked", "seal check", "seal checked", "seal"),
  WORN("worn", "worn %", "% worn", "worn percent", "percent worn", "time worn"),
  USING("using", "finish", "finishes", "amount", "amounts", "used"),
  NOTE("note", "notes", "remark", "remarks", "comment", "comments");

  private static final String BETWEEN = "|";

  private final String words;

  SheetColumn(String... words) {
    this.words = BETWEEN + String.join(BETWEEN, words) + BETWEEN;
  }

  /** The word that heads it first of all. */
  String word() {
    return switch (this) {
      case LENGTH -> "minutes";
      case WORN -> "worn %";
      default -> Text.folded(name());
    };
  }

  /** What a header means; a unit in brackets may follow the word. */
  static Optional<SheetColumn> headedBy(String header) {
    String whole = plain(header);
    String bare = plain(header.replaceAll("[(\\[].*", ""));
    return Arrays.stream(values())
        .filter(column -> column.heads(whole) || column.heads(bare))
        .findFirst();
  }

  private boolean heads(String header) {
    return !header.isEmpty() && words.contains(BETWEEN + header + BETWEEN);
  }

  private static String plain(String header) {
    return Text.folded(header.replace('_', ' ').replace(':', ' ').replaceAll("[()\\[\\]]", " "));
  }

  /** Minutes in the unit that a header of a duration names; empty where it names none. */
  static Optional<Integer> minutesPerUnit(String header) {
    Set<String> said = Set.of(plain(header).split(" ", -1));
    if (said.stream().anyMatch(Set.of("minutes", "minute", "min", "mins", "m")::contains)) {
      return Optional.of(1);
    }
    return said.stream().anyMatch(Set.of("hours", "hour", "hrs", "h")::contains)
        ? Optional.of(60)
        : Optional.empty();
  }
}
