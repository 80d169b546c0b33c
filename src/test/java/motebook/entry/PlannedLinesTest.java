package motebook.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.time.LocalTime;
import motebook.model.Refusal;
import motebook.model.Work;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lines that say what may come to be done; it is Wednesday 4 March 2026, half past two. */
class PlannedLinesTest {
  private static final Scene AHEAD = Scenes.usual().planned();

  private static Work read(String line) {
    return SpokenLine.read(line, AHEAD);
  }

  @Test
  void without_a_time_it_begins_now() {
    Work work = read("40m table saw of oak");
    assertThat(work.date()).isEqualTo(LocalDate.of(2026, 3, 4));
    assertThat(work.start()).isEqualTo(LocalTime.of(14, 30));
  }

  @ParameterizedTest
  @CsvSource({
    "on friday at 9:00,       2026-03-06",
    "on wednesday at 9:00,    2026-03-04",
    "on monday at 9:00,       2026-03-09",
    "tomorrow at 9:00,        2026-03-05",
    "on tomorrow at 9:00,     2026-03-05",
    "yesterday at 9:00,       2026-03-03",
    "on 2026-04-01 at 9:00,   2026-04-01",
    "at 9:00,                 2026-03-04",
    "at 23:00,                2026-03-04"
  })
  void a_weekday_is_the_next_one_and_nothing_need_be_over(String when, String date) {
    assertThat(read("40m table saw of oak " + when).date()).isEqualTo(date);
  }

  @Test
  void what_is_said_in_full_reads_as_the_same_work() {
    Work work = read("40m table saw of oak with collector on friday at 9:00");
    assertThat(read(SpokenLine.say(work, AHEAD))).isEqualTo(work);
  }

  @Test
  void it_still_may_not_run_past_midnight() {
    assertThatThrownBy(() -> read("3h assembly at 22:00"))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("past midnight");
  }

  @Test
  void tomorrow_says_nothing_of_what_was_done() {
    assertThatThrownBy(() -> SpokenLine.read("40m assembly tomorrow at 9:00", Scenes.usual()))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("tomorrow");
  }

  @Test
  void the_completion_offers_what_is_to_come() {
    assertThat(SpokenLine.complete("40m assembly on ", AHEAD))
        .contains("40m assembly on tomorrow")
        .doesNotContain("40m assembly on yesterday");
    assertThat(SpokenLine.complete("40m assembly at ", AHEAD)).contains("40m assembly at 14:30");
  }
}
