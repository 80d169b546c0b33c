package motebook.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import motebook.model.Amount;
import motebook.model.MaskUse;
import motebook.model.Names;
import motebook.model.OwnFinish;
import motebook.model.Person;
import motebook.model.Place;
import motebook.model.Surroundings;
import motebook.model.Text;
import motebook.model.Work;
import motebook.reference.Finish;
import motebook.reference.Finishes;
import motebook.reference.Material;
import motebook.reference.Named;
import motebook.reference.Operation;
import motebook.reference.Operation.Where;
import motebook.reference.Reference;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;

/** What is said back reads as the same session, whatever people, places and masks are called. */
class SayingPropertyTest {
  private static final Reference TABLES = Reference.shipped();

  /** Words that mean something elsewhere in a line, to make names that could be mistaken. */
  private static final List<String> HOSTILE =
      List.of(
          "oak",
          "shop",
          "yard",
          "table",
          "saw",
          "sanding",
          "no",
          "dusty",
          "work",
          "today",
          "monday",
          "9:15",
          "9am",
          "2pm",
          "40m",
          "1h20",
          "50%",
          "95",
          "%",
          "2026-03-02",
          "to",
          "from",
          "a",
          "A",
          "vacuum",
          "tool",
          "cleaner",
          "Zoë",
          "Zoe\u0301",
          "ΟΔΟΣ",
          "İ",
          "ß",
          "木",
          "🪵",
          "'; DROP TABLE session; --",
          "O'Brien",
          "\"",
          "notes:",
          "x",
          "annex",
          "did",
          "ran",
          "up",
          "board",
          "hand",
          "outside",
          "mask",
          "noon",
          "cut",
          "cleaned",
          "windows",
          "open",
          "grit",
          "without",
          "w",
          "w/o",
          "x:",
          "sanded",
          "lathe",
          "few",
          "boards",
          "2x4",
          "hooked",
          "dust",
          "120",
          "running",
          ".",
          "–",
          "(2)",
          "mdf",
          "old",
          "paint");

  @Provide
  Arbitrary<String> names() {
    Arbitrary<String> hostile =
        Combinators.combine(
                Arbitraries.of(HOSTILE).list().ofMinSize(1).ofMaxSize(4),
                Arbitraries.of(" ", "-", ", ", "/", "  "))
            .as((words, gap) -> String.join(gap, words));
    Arbitrary<String> any = Arbitraries.strings().ofMinLength(1).ofMaxLength(12);
    return Arbitraries.frequencyOf(Tuple.of(5, hostile), Tuple.of(2, any))
        .filter(SayingPropertyTest::canBeAName)
        .map(Text::clean);
  }

  private static boolean canBeAName(String raw) {
    String name = Text.clean(raw);
    return name.codePoints().anyMatch(Character::isLetter)
        && Text.length(name) <= Text.NAME_LENGTH
        && List.of(Text.folded(name).split(" ", -1)).stream().noneMatch(Names.JOINTS::contains);
  }

  private static Surroundings surroundings(int kind) {
    return switch (kind) {
      case 0 -> new Surroundings.Outdoors(60);
      case 1 ->
          new Surroundings.Indoors(100, 1, 3, 6, OptionalDouble.empty(), OptionalDouble.empty(), 0);
      default ->
          new Surroundings.Indoors(100, 1, 3, 6, OptionalDouble.of(9), OptionalDouble.of(9), 0);
    };
  }

  /** Unique whatever the case, as in a book. */
  private static List<String> unique(List<String> names) {
    Set<String> seen = new TreeSet<>();
    List<String> unique = new ArrayList<>(names);
    unique.removeIf(name -> !seen.add(name.toLowerCase(Locale.ROOT)));
    return unique;
  }

  @Provide
  Arbitrary<Scene> scenes() {
    Arbitrary<List<String>> several = names().list().ofMinSize(1).ofMaxSize(5);
    return Combinators.combine(
            several,
            several,
            several,
            several,
            Arbitraries.integers().between(0, 2).list().ofSize(5))
        .as(
            (people, places, masks, cans, kinds) -> {
              List<Place> all = new ArrayList<>();
              unique(places)
                  .forEach(
                      name -> all.add(new Place(1, name, surroundings(kinds.get(all.size())))));
              return new Scene(
                  Scenes.NOW,
                  people.get(0),
                  places.get(0),
                  unique(people).stream().map(name -> new Person(1, name)).toList(),
                  date -> all,
                  unique(masks),
                  TABLES,
                  () -> Finishes.shipped().with(own(cans)),
                  false,
                  false);
            });
  }

  /** Finishes of those names, each with a key of its own and named like no shipped one. */
  private static List<OwnFinish> own(List<String> names) {
    Set<String> seen = new TreeSet<>();
    return names.stream()
        .filter(name -> Finishes.shipped().named(name).isEmpty() && seen.add(Text.folded(name)))
        .map(name -> new OwnFinish(name, "lacquer", 600, Map.of("toluene", 1.0)))
        .toList();
  }

  @Provide
  Arbitrary<Draft> drafts() {
    return Combinators.combine(
            scenes(),
            Arbitraries.integers().between(0, 999).list().ofSize(12),
            Arbitraries.oneOf(
                Arbitraries.just(""),
                Arbitraries.of("note", ": x", "- y", "at 9:00 with oak"),
                Arbitraries.strings().ofMaxLength(30)))
        .as(Draft::new);
  }

  /** A scene and numbers to choose a session in it by. */
  record Draft(Scene scene, List<Integer> choices, String note) {
    private <T> T pick(int choice, List<T> of) {
      return of.get(choices.get(choice) % of.size());
    }

    Work work() {
      Place place = pick(0, scene.places().apply(Scenes.NOW.toLocalDate()));
      // Half of them where finishes are used, which few operations do.
      List<Operation> all = new ArrayList<>(TABLES.operations());
      all.removeIf(each -> choices.get(1) % 2 == 0 && !each.finishes());
      all.removeIf(each -> each.where() == Where.OUTDOORS && !place.outdoors());
      Operation operation = pick(1, all);
      int minutes = 1 + choices.get(2) % 900;
      LocalTime start = LocalTime.of(0, 0).plusMinutes(choices.get(3) % (1441 - minutes));
      return new Work(
          pick(4, scene.people()).name(),
          place.name(),
          LocalDate.of(2026, 3, 3).minusDays(choices.get(5)),
          start,
          minutes,
          operation.key(),
          TABLES.materials().stream().map(Material::key).skip(choices.get(6) % 14).findFirst(),
          controls(operation, place),
          mask(),
          operation.finishes() ? amounts() : List.of(),
          note);
    }

    private List<Amount> amounts() {
      List<Finish> all = new ArrayList<>(scene.finishes().get().all());
      Collections.rotate(all, choices.get(10));
      return all.stream()
          .limit(choices.get(11) % 4)
          .map(finish -> new Amount(finish.key(), millilitres(choices.get(10))))
          .toList();
    }

    // Now digits without end, now whole ounces of a US gallon over 128.
    private static double millilitres(int choice) {
      return choice % 2 == 0 ? 0.1 + choice / 7.0 : choice * 231 * 2.54 * 2.54 * 2.54 / 128;
    }

    private List<String> controls(Operation operation, Place place) {
      ControlRules rules = new ControlRules(TABLES, operation.key(), place);
      List<String> usable =
          TABLES.controls().stream()
              .map(Named::key)
              .filter(key -> rules.objection(key).isEmpty())
              .toList();
      return usable.subList(0, choices.get(7) % (usable.size() + 1));
    }

    private Optional<MaskUse> mask() {
      int choice = choices.get(8);
      return choice % 3 == 0
          ? Optional.empty()
          : Optional.of(
              new MaskUse(
                  pick(9, scene.respirators()),
                  choice % 2 == 0,
                  choice % 5 == 0 ? 100 : 1 + choice / 10.1));
    }
  }

  @Property
  void a_session_said_in_full_reads_as_the_same(@ForAll("drafts") Draft draft) {
    Work work = draft.work();
    String line = SpokenLine.say(work, draft.scene());
    assertThat(SpokenLine.read(line, draft.scene())).as(line).isEqualTo(work);
  }

  @Example
  void a_note_with_a_stripped_character_inside_a_letter_is_said_and_read_alike() {
    Work work =
        new Work(
            "me",
            "shop",
            LocalDate.of(2026, 3, 3),
            LocalTime.NOON,
            9,
            "assembly",
            Optional.empty(),
            List.of(),
            Optional.empty(),
            "Zoe\u200b\u0301 helped");
    assertThat(work.note()).isEqualTo("Zoé helped");
    assertThat(SpokenLine.read(SpokenLine.say(work, Scenes.usual()), Scenes.usual()))
        .isEqualTo(work);
  }

  @Property(tries = 300)
  void case_and_commas_change_nothing(@ForAll("drafts") Draft draft) {
    Work work = draft.work();
    Scene plain = Scenes.usual();
    Work usual =
        new Work(
            "Ana Lee",
            "yard",
            work.date(),
            work.start(),
            work.minutes(),
            work.operation(),
            work.material(),
            List.of(),
            Optional.empty(),
            "");
    String line = SpokenLine.say(usual, plain);
    assertThat(SpokenLine.read(line.toUpperCase(Locale.ROOT), plain)).isEqualTo(usual);
    assertThat(SpokenLine.read(line.replace(" by ", ", by ").replace(" at ", ", at "), plain))
        .isEqualTo(usual);
  }
}
