package motebook.screen.state;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import motebook.report.WordPart;

/**
 * The page of the words that a line understands.
 *
 * @param key which part of them is shown
 * @param parts all of them, once they have been read
 */
public record WordsSheet(String key, List<WordPart> parts) {
  static final WordsSheet OPENING = new WordsSheet("operations", List.of());

  private static final Map<String, String> BEHIND =
      Map.ofEntries(
          Map.entry("of", "materials"),
          Map.entry("with", "controls"),
          Map.entry("using", "finishes"),
          Map.entry("in", "names"),
          Map.entry("by", "names"),
          Map.entry("wearing", "names"),
          Map.entry("at", "times"),
          Map.entry("on", "times"));

  public WordsSheet {
    parts = List.copyOf(parts);
  }

  /** The part that is shown, if it has been read. */
  public Optional<WordPart> part() {
    return parts.stream().filter(part -> part.key().equals(key)).findFirst();
  }

  WordsSheet with(List<WordPart> read) {
    return new WordsSheet(key, read);
  }

  WordsSheet on(String other) {
    return new WordsSheet(other, parts);
  }

  /** The part beside this one. */
  WordsSheet next(int by) {
    List<String> keys = parts.stream().map(WordPart::key).toList();
    return keys.isEmpty() ? this : on(keys.get(Math.floorMod(keys.indexOf(key) + by, keys.size())));
  }

  /** The part that a line calls for where it breaks off: what its last joint asks for. */
  static String wanted(String line) {
    if (line.isBlank()) {
      return "durations";
    }
    String wanted = OPENING.key();
    for (String word : line.toLowerCase(Locale.ROOT).split("[ ,]+", -1)) {
      wanted = BEHIND.getOrDefault(word, wanted);
    }
    return wanted;
  }
}
