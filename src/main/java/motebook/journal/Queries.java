package motebook.journal;

import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The named statements of {@code sql/queries.sql}, read once. */
final class Queries {
  private static final Pattern BLOCK =
      Pattern.compile("^-- name: (\\S+)\\n(.*?;)\\n", Pattern.MULTILINE | Pattern.DOTALL);

  private static final Map<String, String> TEXTS = parse(Resources.text("sql/queries.sql"));

  private Queries() {}

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
