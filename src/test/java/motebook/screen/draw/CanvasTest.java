package motebook.screen.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import motebook.screen.state.Look;
import motebook.screen.state.Size;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import org.junit.jupiter.api.Test;

class CanvasTest {
  private static final Size ROW = new Size(40, 1);

  private static List<String> drawn(String text) {
    Canvas canvas = new Canvas(ROW, Look.UNICODE);
    int end = canvas.text(0, 0, text, Role.PLAIN);
    Cells cells = canvas.done();
    List<String> letters = new ArrayList<>();
    for (int column = 0; column < end; column++) {
      if (!cells.grapheme(column, 0).equals(Cells.TAIL)) {
        letters.add(cells.grapheme(column, 0));
      }
    }
    return letters;
  }

  @Test
  void a_letter_keeps_the_marks_that_stand_on_it_in_its_cell() {
    assertThat(drawn("e\u0301a m³")).containsExactly("e\u0301", "a", " ", "m", "³");
    assertThat(drawn("木 ▄⣿")).containsExactly("木", " ", "▄", "⣿");
    assertThat(drawn("☂\uFE0F1")).containsExactly("☂\uFE0F", "1");
  }

  @Property
  void letters_part_where_the_library_parts_them(@ForAll("texts") String text) {
    BreakIterator breaks = BreakIterator.getCharacterInstance(Locale.ROOT);
    breaks.setText(text);
    List<String> expected = new ArrayList<>();
    int from = breaks.first();
    for (int to = breaks.next(); to != BreakIterator.DONE; to = breaks.next()) {
      expected.add(text.substring(from, to));
      from = to;
    }
    assertThat(drawn(text)).isEqualTo(expected);
  }

  /** Letters, punctuation and drawing characters of one cell each, and marks that join them. */
  @Provide
  Arbitrary<String> texts() {
    Arbitrary<Character> alone =
        Arbitraries.chars()
            .range(' ', '~')
            .range('\u00A1', '\u00AC')
            .range('\u00AE', '\u02FF')
            .range('\u2010', '\u2027')
            .range('\u2190', '\u22FF')
            .range('\u2500', '\u25FC')
            .range('\u2800', '\u28FF');
    Arbitrary<Character> joining = Arbitraries.of('\u0301', '\uFE0F', '\u20DD', '\u0308');
    return Arbitraries.frequencyOf(Tuple.of(20, alone), Tuple.of(1, joining))
        .list()
        .ofMaxSize(20)
        .map(
            letters -> {
              StringBuilder text = new StringBuilder("a");
              letters.forEach(text::append);
              return text.toString();
            });
  }
}
