package motebook.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import motebook.entry.LineExamples;
import motebook.entry.NearMiss;
import motebook.entry.Scene;
import motebook.model.Refusal;
import motebook.model.Text;
import motebook.reference.Named;
import motebook.reference.Reference;
import motebook.reference.Woods;
import motebook.report.WordPart.Word;

/** All the words that a line understands: the shipped tables and the book's own names. */
public final class Words {
  private static final String GRADES =
      "A measured by several, B by one, C back-calculated, D judged";

  private final Scene scene;
  private final Reference reference;
  private final WordRows rows;

  private Words(Scene scene) {
    this.scene = scene;
    this.reference = scene.reference();
    rows = new WordRows(scene);
  }

  /** Every part, in the order of a line. */
  public static List<WordPart> of(Scene scene) {
    return new Words(scene).parts();
  }

  /**
   * The parts that a word asks for: one, or all where it is empty.
   *
   * @throws Refusal naming the parts, if there is none of that name
   */
  public static List<WordPart> of(Scene scene, Optional<String> wanted) {
    List<WordPart> all = of(scene);
    if (wanted.isEmpty()) {
      return all;
    }
    String key = Text.folded(wanted.get());
    List<WordPart> some = all.stream().filter(part -> belongs(part, key)).toList();
    if (some.isEmpty()) {
      throw unknown(key, all.stream().map(WordPart::key).toList());
    }
    return some;
  }

  // Woods without figures of their own are looked for among the materials.
  private static boolean belongs(WordPart part, String key) {
    boolean asked = part.key().equals(key) || part.key().equals(key + "s");
    return asked || (part.key().equals("woods") && "materials".startsWith(key));
  }

  private static Refusal unknown(String key, List<String> keys) {
    List<String> near = NearMiss.words(key, keys);
    return new Refusal(
        "There is no list of words \"%s\". %s: %s."
            .formatted(
                key,
                near.isEmpty() ? "There are" : "The nearest",
                String.join(", ", near.isEmpty() ? keys : near)));
  }

  /** An object with a list for each part. */
  public static Map<String, Object> object(List<WordPart> parts) {
    Map<String, Object> object = new LinkedHashMap<>();
    parts.forEach(part -> object.put(part.key(), part.objects()));
    return object;
  }

  private List<WordPart> parts() {
    return List.of(
        examples(
            "durations",
            "How long",
            "at the beginning of the line, or behind",
            LineExamples.DURATIONS),
        part(
            "operations",
            "What",
            "after the duration; the dust at the face in the first hour, in the shipped shop,"
                + " without a control; "
                + GRADES,
            reference.operations(),
            rows::operation),
        part(
            "materials",
            "Of what",
            "with or without \"of\"; the dust against that of hardwood",
            reference.materials(),
            rows::material),
        part("woods", "Other woods", "say the one named", Woods.shipped().all(), rows::wood),
        part("controls", "With what", "\"with\" before it", reference.controls(), rows::control),
        part(
            "finishes",
            "Using what",
            "where an operation takes finishes, \"using\" and an amount before it",
            scene.finishes().get().inUseOn(scene.now().toLocalDate()),
            rows::finish),
        examples("times", "When", "behind the duration, in any order", LineExamples.TIMES),
        new WordPart("names", "Names of this book", "as they stand in it", names()),
        examples("joints", "Between them", "words that join", LineExamples.joints()));
  }

  private static <T extends Named> WordPart part(
      String key, String title, String how, List<T> rows, Function<T, Word> word) {
    return new WordPart(key, title, how, rows.stream().map(word).toList());
  }

  private static WordPart examples(
      String key, String title, String how, List<LineExamples.Example> examples) {
    return new WordPart(
        key,
        title,
        how,
        examples.stream()
            .map(
                e ->
                    new Word(
                        e.said(),
                        List.of(),
                        List.of(e.means()),
                        Json.object("spoken", e.said(), "note", e.means())))
            .toList());
  }

  private List<Word> names() {
    return Stream.of(
            scene.places().apply(scene.now().toLocalDate()).stream()
                .map(place -> name("in", "place", place.name())),
            scene.people().stream().map(person -> name("by", "person", person.name())),
            scene.respirators().stream().map(mask -> name("wearing", "respirator", mask)))
        .flatMap(stream -> stream)
        .toList();
  }

  private static Word name(String joint, String kind, String name) {
    return new Word(
        joint + " " + name,
        List.of(),
        List.of("a " + kind),
        Json.object("name", name, "spoken", joint + " " + name, "note", kind));
  }
}
