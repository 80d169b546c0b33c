package motebook.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import motebook.model.Refusal;
import motebook.model.Text;
import motebook.reference.Named;
import motebook.reference.Operation;
import motebook.reference.Reference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class NearMissTest {

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          40m orbitel sanding        | orbitel   | "orbitel": did you mean orbital sanding?
          40m tabel saw oak          | tabel     | "tabel": did you mean table saw?
          40m sand carving           | carving   | "carving": did you mean hand carving?
          40m on shop                | shop      | "shop": did you mean in shop?
          40m orbitalsanding         | orbitalsanding | "orbitalsanding": did you mean orbital sanding?
          40m sweping                | sweping   | "sweping": did you mean "dry sweeping" or "with damp sweeping"?
          40m jointer of beach       | beach     | "beach": did you mean beech?
          40m jointer fo oak         | fo        | names neither
          40m jointer plyewood       | plyewood  | "plyewood": did you mean plywood?
          40m jointer with colector  | colector  | "colector": did you mean collector?
          40m jointer with plywod    | plywod    | "plywod": did you mean of plywood?
          40m jointer in garagge     | garagge   | "garagge": did you mean Big Garage?
          40m jointer by anna lee    | anna lee  | "anna lee": did you mean Ana Lee?
          """)
  void a_misspelt_name_is_answered_with_the_nearest(String line, String words, String message) {
    Refusals.of(line).at(words).message().contains(message);
  }

  static List<Operation> operations() {
    return Reference.shipped().operations();
  }

  @ParameterizedTest
  @MethodSource("operations")
  void any_one_wrong_letter_in_an_operation_is_understood_or_answered_with_it(Named operation) {
    int refused = 0;
    for (String typo : typos(operation.spoken())) {
      try {
        assertThat(SpokenLine.read("9m " + typo, Scenes.usual()).operation())
            .as(typo)
            .isEqualTo(operation.key());
      } catch (Refusal refusal) {
        refused++;
        assertThat(refusal.getMessage()).as(typo).contains(Saying.name(operation));
      }
    }
    assertThat(refused).isPositive();
  }

  /** Each letter left out, doubled, swapped with the next or replaced by one of a few others. */
  private static Set<String> typos(String name) {
    Set<String> typos = new LinkedHashSet<>();
    for (int i = 0; i < name.length(); i++) {
      if (name.charAt(i) != ' ') {
        String before = name.substring(0, i);
        String after = name.substring(i + 1);
        typos.add(before + after);
        typos.add(before + name.charAt(i) + name.charAt(i) + after);
        for (char other : "aeoxsz".toCharArray()) {
          typos.add(before + other + after);
          typos.add(before + other + name.charAt(i) + after);
        }
        if (!after.isEmpty() && after.charAt(0) != ' ') {
          typos.add(before + after.charAt(0) + name.charAt(i) + after.substring(1));
        }
      }
    }
    typos.removeIf(typo -> Text.folded(typo).equals(name));
    return typos;
  }

  @ParameterizedTest
  @CsvSource({
    "kitten,sitting,3",
    "'',abc,3",
    "abc,abc,0",
    "ab,ba,1",
    "abcd,acbd,1",
    "ca,abc,3",
    "abc,'',3"
  })
  void the_distance_counts_letters_left_out_put_in_changed_or_swapped(
      String a, String b, int distance) {
    assertThat(Spelling.distance(a, b, 9)).isEqualTo(distance);
    assertThat(Spelling.distance(b, a, 9)).isEqualTo(distance);
  }

  @Test
  void a_distance_larger_than_asked_for_is_only_known_to_be_larger() {
    assertThat(Spelling.distance("a", "abcdef", 2)).isGreaterThan(2);
  }
}
