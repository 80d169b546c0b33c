package motebook.screen.state;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class LineTest {

  @Test
  void text_goes_in_at_the_caret() {
    Line line = Line.of("20m of oak").home().right().right().right().typed(" drilling");
    assertThat(line.text()).isEqualTo("20m drilling of oak");
    assertThat(line.caret()).isEqualTo("20m drilling".length());
  }

  @Test
  void an_accent_typed_after_its_letter_joins_it() {
    Line line = Line.EMPTY.typed("Zoe").typed("\u0308");
    assertThat(line.text()).isEqualTo("Zoë");
    assertThat(line.backspace().text()).isEqualTo("Zo");
  }

  @Test
  void a_letter_beyond_sixteen_bits_is_one_letter() {
    Line line = Line.of("a\uD842\uDFB7b").left().left();
    assertThat(line.caret()).isEqualTo(1);
    assertThat(line.delete().text()).isEqualTo("ab");
  }

  @Test
  void a_word_is_deleted_with_the_space_behind_it() {
    assertThat(Line.of("20m drilling of oak ").withoutWord().text()).isEqualTo("20m drilling of ");
    assertThat(Line.of("").withoutWord().text()).isEmpty();
  }

  @Test
  void what_reaches_beyond_the_longest_line_is_not_typed() {
    Line full = Line.of("x".repeat(Line.LONGEST));
    assertThat(full.text()).hasSize(Line.LONGEST);
    assertThat(full.typed("y")).isEqualTo(full);
  }

  @Property
  void whatever_is_typed_the_caret_stays_within_and_nothing_unprintable_gets_in(
      @ForAll String first, @ForAll String second) {
    Line line = Line.of(first).left().typed(second).backspace().left().delete();
    assertThat(line.caret()).isBetween(0, line.text().length());
    assertThat(line.text().codePoints()).noneMatch(Character::isISOControl);
  }
}
