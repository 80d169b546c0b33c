package motebook.model;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MinuteOfDayTest {
  @ParameterizedTest
  @CsvSource({"0,00:00", "9,00:09", "555,09:15", "1439,23:59", "1440,24:00"})
  void a_minute_is_told_as_a_time_and_the_last_one_as_the_end_of_the_day(int minute, String told) {
    assertThat(MinuteOfDay.told(minute)).isEqualTo(told);
  }
}
