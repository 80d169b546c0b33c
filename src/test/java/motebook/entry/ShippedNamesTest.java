package motebook.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import motebook.model.Names;
import motebook.model.Text;
import motebook.model.Work;
import motebook.reference.Control;
import motebook.reference.EverydayWords;
import motebook.reference.Named;
import motebook.reference.Operation.Where;
import motebook.reference.Reference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ShippedNamesTest {
  /** Words that are asked about, though only one name begins like them. */
  private static final Set<String> EVERYDAY =
      EverydayWords.shipped().all().stream()
          .flatMap(row -> row.words().stream())
          .collect(Collectors.toSet());

  private static final Reference TABLES = Reference.shipped();
  private static final String IN_GARAGE = " in big garage";

  private static Work read(String line) {
    return SpokenLine.read(line, Scenes.usual());
  }

  static List<Named> operations() {
    return List.copyOf(TABLES.operations());
  }

  static List<Named> materials() {
    return List.copyOf(TABLES.materials());
  }

  static List<Control> controls() {
    return TABLES.controls();
  }

  private static String servedBy(Control control) {
    return TABLES.operations().stream()
        .filter(operation -> control.rowFor(operation.key()).isPresent())
        .map(Named::spoken)
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @MethodSource("operations")
  void an_operation_answers_to_its_key_and_to_all_its_names(Named operation) {
    boolean indoors = TABLES.operation(operation.key()).where() != Where.OUTDOORS;
    for (String name : operation.names()) {
      assertThat(read("9m " + name).operation()).as(name).isEqualTo(operation.key());
      assertThat(read("9m of oak " + name + (indoors ? IN_GARAGE : " outdoors")).operation())
          .as(name)
          .isEqualTo(operation.key());
    }
    assertThat(read("9m " + operation.key()).operation()).isEqualTo(operation.key());
  }

  @ParameterizedTest
  @MethodSource("materials")
  void a_material_answers_to_its_key_and_to_all_its_names(Named material) {
    for (String name : material.names()) {
      for (String of : List.of(" ", " of ")) {
        assertThat(read("9m assembly" + of + name).material()).as(name).contains(material.key());
        assertThat(read("9m" + of + name + " assembly").material())
            .as(name)
            .contains(material.key());
      }
    }
    assertThat(read("9m assembly of " + material.key()).material()).contains(material.key());
  }

  @ParameterizedTest
  @MethodSource("controls")
  void a_control_answers_to_its_key_and_to_all_its_names(Control control) {
    String operation = servedBy(control);
    for (String name : Stream.concat(control.names().stream(), Stream.of(control.key())).toList()) {
      assertThat(read("9m " + operation + " with " + name + IN_GARAGE).controls())
          .as(name)
          .containsExactly(control.key());
      assertThat(read("9m with " + name + " " + operation + IN_GARAGE).controls())
          .as(name)
          .containsExactly(control.key());
    }
  }

  /** Runs of words of every name, each word cut in several ways, and the rows that have them. */
  private static Map<String, List<Named>> shortenings(List<? extends Named> rows) {
    Map<String, List<Named>> all = new LinkedHashMap<>();
    for (Named row : rows) {
      for (List<String> run : runs(row)) {
        cuts(run).forEach(cut -> all.computeIfAbsent(cut, key -> rowsWith(key, rows)));
      }
    }
    return all;
  }

  private static List<List<String>> runs(Named row) {
    List<List<String>> runs = new ArrayList<>();
    for (String name : row.names()) {
      List<String> words = List.of(Text.folded(name).split(" ", -1));
      for (int first = 0; first < words.size(); first++) {
        for (int last = first; last < words.size(); last++) {
          runs.add(words.subList(first, last + 1));
        }
      }
    }
    return runs;
  }

  private static List<Named> rowsWith(String cut, List<? extends Named> rows) {
    List<Named> named =
        rows.stream().<Named>map(row -> row).filter(row -> row.names().contains(cut)).toList();
    return named.isEmpty()
        ? rows.stream()
            .<Named>map(row -> row)
            .filter(row -> runs(row).stream().anyMatch(run -> shortens(cut, run)))
            .toList()
        : named;
  }

  private static boolean shortens(String cut, List<String> run) {
    List<String> words = List.of(cut.split(" ", -1));
    if (words.size() != run.size()) {
      return false;
    }
    for (int i = 0; i < words.size(); i++) {
      boolean whole = joint(run.get(i)) || joint(words.get(i));
      if (!(whole ? run.get(i).equals(words.get(i)) : run.get(i).startsWith(words.get(i)))) {
        return false;
      }
    }
    return true;
  }

  private static List<String> cuts(List<String> words) {
    if (joint(words.get(0)) || joint(words.get(words.size() - 1))) {
      return List.of();
    }
    List<String> cuts = List.of("");
    for (String word : words) {
      List<String> longer = new ArrayList<>();
      for (String cut : cuts) {
        for (String begun : beginnings(word)) {
          longer.add(cut.isEmpty() ? begun : cut + " " + begun);
        }
      }
      cuts = longer;
    }
    return cuts;
  }

  /** One, three and all letters; a joint whole, and nothing that a cut would make a joint. */
  private static List<String> beginnings(String word) {
    return joint(word)
        ? List.of(word)
        : Stream.of(1, 3, word.length())
            .map(length -> word.substring(0, Math.min(length, word.length())))
            .distinct()
            .filter(begun -> !joint(begun))
            .toList();
  }

  private static boolean joint(String word) {
    return Names.JOINTS.contains(word);
  }

  private static void assertUnambiguousOnesAreRead(
      List<? extends Named> rows, int atLeast, Reread reread) {
    Map<String, List<Named>> all = shortenings(rows);
    int read = 0;
    for (Map.Entry<String, List<Named>> shortening : all.entrySet()) {
      if (shortening.getValue().size() == 1 && !EVERYDAY.contains(shortening.getKey())) {
        Named row = shortening.getValue().get(0);
        assertThat(reread.key(shortening.getKey(), row))
            .as(shortening.getKey())
            .isEqualTo(row.key());
        read++;
      }
    }
    assertThat(read).isGreaterThan(atLeast);
  }

  private interface Reread {
    String key(String shortening, Named row);
  }

  @Test
  void every_unambiguous_shortening_of_a_material_is_read() {
    assertUnambiguousOnesAreRead(
        TABLES.materials(),
        100,
        (words, row) -> read("9m jointer of " + words).material().orElseThrow());
  }

  @Test
  void every_unambiguous_shortening_of_a_control_is_read() {
    assertUnambiguousOnesAreRead(
        TABLES.controls(),
        100,
        (words, row) -> {
          String operation = servedBy((Control) row);
          return read("9m " + operation + " of oak with " + words + IN_GARAGE).controls().get(0);
        });
  }

  @Test
  void every_unambiguous_shortening_of_an_operation_is_read() {
    assertUnambiguousOnesAreRead(
        TABLES.operations(), 300, (words, row) -> read("9m of oak " + words).operation());
  }
}
