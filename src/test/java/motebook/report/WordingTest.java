package motebook.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.time.api.constraints.DateRange;
import org.junit.jupiter.api.Test;

class WordingTest {
  @Test
  void a_date_is_told_with_its_weekday() {
    assertThat(Wording.date(LocalDate.of(2026, 3, 2))).isEqualTo("Monday 2 March 2026");
    assertThat(Wording.weekday(LocalDate.of(2026, 3, 2))).isEqualTo("Monday");
  }

  @Property
  void every_date_is_told_as_the_library_tells_it(
      @ForAll @DateRange(min = "1900-01-01", max = "2200-12-31") LocalDate date) {
    assertThat(Wording.date(date))
        .isEqualTo(DateTimeFormatter.ofPattern("EEEE d MMMM yyyy", Locale.ENGLISH).format(date));
  }
}
