package motebook.model;

import java.util.Set;

/** What may be the name of a person or a place. */
public final class Names {
  /** The words that give the spoken line its joints; a name that holds one could not be said. */
  public static final Set<String> JOINTS =
      Set.of(
          "of",
          "with",
          "and",
          "in",
          "at",
          "on",
          "by",
          "the",
          "outdoors",
          "wearing",
          "checked",
          "using",
          "note",
          "note:");

  private Names() {}

  /**
   * A cleaned name.
   *
   * @param kind what is named, for the message: "person", "place"
   * @throws Refusal if it is empty, too long, has no letter, or holds a joint of the spoken line
   */
  public static String check(String kind, String raw) {
    String name = Text.clean(raw);
    if (name.codePoints().noneMatch(Character::isLetter)) {
      throw new Refusal(
          "The name of a " + kind + " needs at least one letter: got \"" + name + "\".");
    }
    if (Text.length(name) > Text.NAME_LENGTH) {
      throw new Refusal(
          "The name of a "
              + kind
              + " holds up to "
              + Text.NAME_LENGTH
              + " characters; this one has "
              + Text.length(name)
              + ". Shorten it.");
    }
    for (String word : Text.folded(name).split(" ", -1)) {
      if (JOINTS.contains(word)) {
        throw new Refusal(
            "The name \""
                + name
                + "\" holds \""
                + word
                + "\", a word that the spoken line uses "
                + "itself. Choose a name without it.");
      }
    }
    return name;
  }
}
