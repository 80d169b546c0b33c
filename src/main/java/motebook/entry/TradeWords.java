package motebook.entry;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import motebook.model.Text;
import motebook.reference.Reference;
import motebook.reference.Wood;
import motebook.reference.Woods;

/** What can be answered to words of the trade that no table and no book has a name for. */
final class TradeWords {
  private static final Set<String> MASKS =
      Set.of(
          "mask",
          "masks",
          "respirator",
          "facepiece",
          "dustmask",
          "ffp1",
          "ffp2",
          "ffp3",
          "n95",
          "n100",
          "p95",
          "p100",
          "papr");
  private static final Pattern OUNCES =
      Pattern.compile("(\\d+(?:\\.\\d+)?) ?(?:oz\\.?|ounces?)", Pattern.CASE_INSENSITIVE);
  private static final Set<String> PARTS_OF_DAY =
      Set.of(
          "morning",
          "breakfast",
          "lunch",
          "lunchtime",
          "afternoon",
          "evening",
          "dinner",
          "night",
          "tonight",
          "earlier");

  private final Vocabularies names;
  private final String typed;
  private final List<String> words;

  TradeWords(Vocabularies names, String typed) {
    this.names = names;
    this.typed = typed;
    words = Token.all(Settled.of(Text.folded(typed)).text()).stream().map(Token::word).toList();
  }

  /**
   * The answer to words that name nothing.
   *
   * @param expected the slot whose joint was said, null for bare words
   * @param material whether a material is said elsewhere in the line
   */
  Optional<String> answer(Slot expected, boolean material) {
    return partOfDay()
        .or(this::amount)
        .or(() -> expected == Slot.MASK ? Optional.empty() : mask())
        .or(() -> wood().map(wood -> wood(wood, material)));
  }

  /** The answer to what is worked like wood and is none. */
  Optional<String> notWood() {
    return wood().filter(wood -> wood.stands().isEmpty()).map(wood -> wood(wood, false));
  }

  private Optional<String> partOfDay() {
    return words.stream().anyMatch(PARTS_OF_DAY::contains) || words.contains("ago")
        ? Optional.of("\"" + typed + "\" is no time of day; say when: at 9:15.")
        : Optional.empty();
  }

  private Optional<String> amount() {
    Matcher ounces = OUNCES.matcher(typed);
    if (ounces.matches()) {
      String said = "\"%s\" may be a weight; say: using %s fl oz, and of which finish.";
      return Optional.of(said.formatted(typed, ounces.group(1)));
    }
    Line alone = Line.of(typed);
    return Amounts.at(alone, 0).filter(it -> it.to() == alone.size()).isPresent()
        ? Optional.of(
            "\"%s\" of what? Say the finish behind it: using %s lacquer.".formatted(typed, typed))
        : Optional.empty();
  }

  private Optional<String> mask() {
    Optional<String> worn = words.stream().filter(MASKS::contains).findFirst();
    return worn.map(this::mask);
  }

  private String mask(String worn) {
    List<String> held =
        names.of(Slot.MASK).entries().stream()
            .map(Vocabulary.Entry::label)
            .map(Slot.MASK::said)
            .toList();
    return held.isEmpty()
        ? ("\"%s\" is worn, and the book holds no respirator yet. Add it to the book; then say:"
                + " wearing and its name.")
            .formatted(worn)
        : "\"%s\" is worn; say: %s.".formatted(worn, Wording.list(held, "or"));
  }

  /** The wood with the longest name among the words. */
  private Optional<Wood> wood() {
    String text = " " + String.join(" ", words) + " ";
    return Woods.shipped().all().stream()
        .filter(wood -> longest(wood, text) > 0)
        .max(Comparator.comparingInt(wood -> longest(wood, text)));
  }

  private static int longest(Wood wood, String text) {
    return wood.names().stream()
        .filter(name -> text.contains(" " + name + " "))
        .mapToInt(String::length)
        .max()
        .orElse(0);
  }

  private String wood(Wood wood, boolean material) {
    if (wood.stands().isEmpty()) {
      return "There is no material \"%s\". %s".formatted(typed, wood.advice());
    }
    String stands = Saying.name(Reference.shipped().material(wood.stands()));
    String sorry = "There is no material \"%s\"; ".formatted(typed);
    return material
        ? sorry + "a material is said already, so leave it out."
        : sorry + "%s stands for it: say of %s.".formatted(stands, stands);
  }
}
