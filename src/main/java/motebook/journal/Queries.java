package motebook.journal;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The named statements of the query files in {@code sql/}, read once. */
final class Queries {
  private static final Pattern BLOCK =
      Pattern.compile("^-- name: (\\S+)\\n(.*?;)\\n", Pattern.MULTILINE | Pattern.DOTALL);

  /** The files of the statements. */
  static final List<String> FILES =
      List.of(
          "queries.sql",
          "queries-bench.sql",
          "queries-gear.sql",
          "queries-finishes.sql",
          "queries-samples.sql",
          "queries-exchange.sql",
          "queries-copies.sql",
          "queries-checkup.sql");

  private static final Map<String, String> TEXTS = parse(texts());

  private Queries() {}

  /** The text of all the files. */
  static String texts() {
    return FILES.stream().map(file -> Resources.text("sql/" + file)).collect(Collectors.joining());
  }

  /**
   * The statement of that name.
   *
   * @throws IllegalArgumentException if there is none
   */
  static String named(String name) {
    String text = TEXTS.get(name);
    if (text == null) {
      throw new IllegalArgumentException("No statement is named " + name);
    }
    return text;
  }

  /** Every statement by its name: a line {@code -- name: x}, then text up to a line's last ";". */
  static Map<String, String> parse(String file) {
    Map<String, String> texts = new HashMap<>();
    Matcher block = BLOCK.matcher(file);
    while (block.find()) {
      if (texts.put(block.group(1), block.group(2)) != null) {
        throw new IllegalArgumentException("Two statements are named " + block.group(1));
      }
    }
    return texts;
  }
}
