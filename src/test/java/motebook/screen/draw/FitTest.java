package motebook.screen.draw;

import static org.assertj.core.api.Assertions.assertThat;

import motebook.model.Text;
import motebook.screen.state.Look;
import motebook.screen.state.Size;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class FitTest {

  @Test
  void wide_letters_take_two_cells_and_accents_none() {
    assertThat(Width.of("oak")).isEqualTo(3);
    assertThat(Width.of("木工")).isEqualTo(4);
    assertThat(Width.of("x\u0302")).isEqualTo(1);
    assertThat(Width.of("█▒•╌│")).isEqualTo(5);
    assertThat(Width.of("\uD83E\uDE9A")).isEqualTo(2);
  }

  @Test
  void a_text_that_is_too_wide_is_cut_with_a_mark() {
    assertThat(Fit.into("orbital sanding", 8)).isEqualTo("orbital…");
    assertThat(Fit.into("木工木工", 5)).isEqualTo("木工…");
    assertThat(Fit.into("oak", 3)).isEqualTo("oak");
  }

  @Test
  void plain_letters_stand_for_the_others_where_there_is_only_ascii() {
    assertThat(Plainly.of("Zoë: 3.1 mg/m³ … 木")).isEqualTo("Zoe: 3.1 mg/m3 ~ ??");
  }

  @Property
  void wrapped_lines_fit_and_lose_no_letter(
      @ForAll String raw, @ForAll @IntRange(min = 2, max = 90) int columns) {
    String text = Text.clean(raw);
    assertThat(Fit.wrap(text, columns)).allMatch(line -> Width.of(line) <= columns);
    assertThat(String.join("", Fit.wrap(text, columns)).replace(" ", ""))
        .isEqualTo(text.replace(" ", ""));
  }

  @Property
  void text_never_leaves_its_columns(
      @ForAll String raw, @ForAll @IntRange(min = 0, max = 20) int from, @ForAll Look look) {
    Canvas canvas = new Canvas(new Size(20, 1), look);
    int end = canvas.fitted(0, from, 15, Text.clean(raw), Role.PLAIN);
    assertThat(end).isLessThanOrEqualTo(Math.max(from, 15));
    Cells cells = canvas.done();
    for (int column = 15; column < 20; column++) {
      assertThat(cells.grapheme(column, 0)).isEqualTo(" ");
    }
    assertThat(Width.of(cells.line(0))).isLessThanOrEqualTo(20);
  }
}
