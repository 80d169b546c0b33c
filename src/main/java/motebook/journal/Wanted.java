package motebook.journal;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;

/**
 * A word that sessions are looked for by.
 *
 * @param word in lower case; it may stand anywhere in a session
 * @param keys of operations, materials and controls that the word names otherwise
 */
public record Wanted(String word, List<String> keys) {
  public Wanted {
    keys = List.copyOf(keys);
  }

  static String json(List<Wanted> words) {
    try {
      return JSON.std.asString(
          words.stream().map(w -> Map.of("word", w.word, "keys", w.keys)).toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
