package motebook.entry;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DurationsTest {

  @ParameterizedTest
  @CsvSource({
    "120m,120",
    "1h20,80",
    "1:20,80",
    "1.5h,90",
    "'1,5 h',90",
    "1.33h,80",
    "0m,0",
    "24h,1440",
    "' 40 min ',40",
    "1 h 20 min,80",
    "90 MINUTES,90"
  })
  void a_duration_is_read_in_whole_minutes(String text, int minutes) {
    assertThat(Durations.parse(text)).hasValue(minutes);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "40",
        "m",
        "h20",
        "40x",
        "-40m",
        "1h75",
        "1:75",
        "1:2",
        "40m oak",
        "oak 40m",
        "1h20m30s",
        "9999999m",
        "NaN",
        "40m note",
        "1.5m",
        "٤٠m"
      })
  void what_is_no_duration_is_empty(String text) {
    assertThat(Durations.parse(text)).isEmpty();
  }

  @Property
  void what_is_written_reads_as_the_same(@ForAll @IntRange(max = 100_000) int minutes) {
    assertThat(Durations.parse(Durations.written(minutes))).hasValue(minutes);
  }
}
