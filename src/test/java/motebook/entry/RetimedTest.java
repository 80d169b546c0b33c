package motebook.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RetimedTest {
  private static final LocalTime QUARTER_TO_SEVEN = LocalTime.of(6, 45);

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          40m table saw of oak                        | 40m table saw of oak at 06:45
          40m table saw of oak note at the end        | 40m table saw of oak at 06:45 note at the end
          40m table saw at 9:15 with collector        | 40m table saw at 06:45 with collector
          40m table saw with collector at 9am         | 40m table saw with collector at 06:45
          9:00-9:30 table saw of oak                  | 06:45-07:15 table saw of oak
          from 9am to 9:30 table saw, oak note 9-9:30 | 06:45-07:15 table saw, oak note 9-9:30
          table saw of oak from 7:30 to 8:00          | table saw of oak 06:45-07:15
          """)
  void the_line_says_the_other_start_and_all_else_as_before(String line, String timed) {
    assertThat(SpokenLine.startingAt(line, QUARTER_TO_SEVEN, Scenes.usual())).contains(timed);
  }

  @Test
  void a_range_may_end_at_midnight() {
    assertThat(
            SpokenLine.startingAt(
                "9:00-9:30 table saw on yesterday", LocalTime.of(23, 30), Scenes.usual()))
        .contains("23:30-24:00 table saw on yesterday");
  }

  @Test
  void a_line_that_cannot_be_read_is_not_retimed() {
    assertThat(SpokenLine.startingAt("40m tabel saw", QUARTER_TO_SEVEN, Scenes.usual())).isEmpty();
  }
}
