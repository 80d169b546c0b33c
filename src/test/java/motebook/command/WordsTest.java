package motebook.command;

import static motebook.command.Shell.at;
import static motebook.command.Shell.number;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import motebook.entry.Scene;
import motebook.entry.SpokenLine;
import motebook.model.Person;
import motebook.model.Place;
import motebook.model.Surroundings;
import motebook.model.Work;
import motebook.reference.Control;
import motebook.reference.Finish;
import motebook.reference.Finishes;
import motebook.reference.Material;
import motebook.reference.Named;
import motebook.reference.Operation;
import motebook.reference.Reference;
import motebook.reference.Woods;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WordsTest {
  @TempDir Path folder;
  private Shell shell;

  @BeforeEach
  void open() {
    shell = new Shell(folder.resolve("book.db"));
  }

  @SuppressWarnings("unchecked")
  private List<Map<String, Object>> words(String kind) {
    return (List<Map<String, Object>>) at(shell.json("words " + kind), kind);
  }

  private Set<Object> keys(String kind) {
    return words(kind).stream().map(word -> word.get("key")).collect(Collectors.toSet());
  }

  private static Object[] keys(List<? extends Named> rows) {
    return rows.stream().map(Named::key).toArray();
  }

  @Test
  void every_row_of_the_tables_is_listed() {
    Reference reference = Reference.shipped();
    assertThat(keys("operations")).containsExactlyInAnyOrder(keys(reference.operations()));
    assertThat(keys("materials")).containsExactlyInAnyOrder(keys(reference.materials()));
    assertThat(keys("controls")).containsExactlyInAnyOrder(keys(reference.controls()));
    assertThat(keys("finishes")).containsExactlyInAnyOrder(keys(Finishes.shipped().all()));
    assertThat(words("woods")).hasSameSizeAs(Woods.shipped().all());
  }

  @Test
  void what_is_told_of_a_word_is_what_the_table_holds() {
    Operation operation = Reference.shipped().operation("orbital-sanding");
    Material material = Reference.shipped().material(Optional.of("mdf"));
    Control control = Reference.shipped().control("tool-vacuum");
    Finish finish = Finishes.shipped().finish("lacquer");
    assertThat(word("operations", "orbital-sanding"))
        .containsEntry("name", operation.name())
        .containsEntry("grade", operation.grade().name())
        .containsEntry("reference_mg_m3", operation.referenceMgPerM3().typical());
    assertThat(word("materials", "mdf"))
        .containsEntry("spoken", "MDF")
        .containsEntry("sanding_factor", material.sandingFactor().typical())
        .containsEntry("wood_class", "board");
    assertThat(word("controls", "tool-vacuum"))
        .containsEntry("aliases", control.names().subList(1, control.names().size()));
    assertThat(number(word("controls", "tool-vacuum"), "rows", 0, "pass_factor"))
        .isEqualTo(control.rows().get(0).passFactor().typical());
    assertThat(word("finishes", "lacquer"))
        .containsEntry("volatile_g_l", finish.volatileGPerL().typical());
  }

  private Map<String, Object> word(String kind, String key) {
    return words(kind).stream()
        .filter(word -> key.equals(word.get("key")))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void every_word_that_is_listed_can_be_said() {
    List<String> lines =
        Stream.of(
                words("durations").stream().map(word -> word.get("spoken") + " assembly"),
                words("times").stream().map(word -> "5m assembly " + word.get("spoken")),
                spoken("operations").map(name -> "5m " + name + " at 1:00"),
                spoken("materials").map(name -> "5m table saw of " + name + " at 1:00"),
                controls(),
                spoken("finishes").map(name -> "5m finishing using 20ml " + name + " at 1:00"))
            .flatMap(stream -> stream)
            .toList();
    assertThat(lines).hasSizeGreaterThan(60).allSatisfy(line -> assertThat(read(line)).isNotNull());
  }

  private static Work read(String line) {
    Surroundings shop =
        new Surroundings.Indoors(100, 1, 3, 6, OptionalDouble.of(9), OptionalDouble.of(9), 0);
    Scene scene =
        new Scene(
            LocalDateTime.of(2026, 3, 4, 23, 0),
            "me",
            "shop",
            List.of(new Person(1, "me")),
            date ->
                List.of(
                    new Place(1, "shop", shop),
                    new Place(2, "yard", new Surroundings.Outdoors(15))),
            List.of(),
            Reference.shipped());
    return SpokenLine.read(line, scene);
  }

  private Stream<String> controls() {
    return Reference.shipped().controls().stream()
        .flatMap(
            control ->
                control.names().stream()
                    .map(name -> "5m " + served(control) + " with " + name + " at 1:00"));
  }

  private static String served(Control control) {
    return Reference.shipped().operations().stream()
        .filter(operation -> control.rowFor(operation.key()).isPresent())
        .map(Named::spoken)
        .findFirst()
        .orElseThrow();
  }

  private Stream<String> spoken(String kind) {
    return words(kind).stream()
        .flatMap(
            word ->
                Stream.concat(
                    Stream.of((String) word.get("spoken")),
                    ((List<?>) word.get("aliases")).stream().map(String::valueOf)));
  }

  @Test
  void all_kinds_are_told_in_lines_and_the_names_of_the_book_among_them() {
    shell.say("person add Ana");
    String told = shell.say("words").out();
    assertThat(told)
        .contains("  orbital sanding: about 25 mg/m³ (9 to 62), grade A")
        .contains("    also random orbital sanding;")
        .contains("  walnut: say hardwood")
        .contains("  tool vacuum: lets 15 % (6 % to 44 %) through at orbital sanding,")
        .contains("  by Ana: a person")
        .contains("  with: before a control; \"and\" before a further one");
    assertThat(shell.say("words materials").out())
        .contains("  MDF: board; sanding 1.5 (1 to 2.4), cutting 1, grade C, rough")
        .contains("  walnut: say hardwood")
        .doesNotContain("orbital sanding");
  }

  @Test
  void a_kind_that_there_is_not_is_answered_with_the_nearest() {
    Shell.Said said = shell.say("words controlls");
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.err())
        .contains("There is no list of words \"controlls\". The nearest: controls.");
  }
}
