package motebook.model;

/** Words as a shell takes them. */
public final class ShellWord {
  private ShellWord() {}

  /** A word in quotes where it holds anything but letters, digits, hyphens and underscores. */
  public static String quoted(String word) {
    return word.codePoints().allMatch(c -> Character.isLetterOrDigit(c) || c == '-' || c == '_')
        ? word
        : "\"" + word.replaceAll("([\\\\\"$`])", "\\\\$1") + "\"";
  }
}
