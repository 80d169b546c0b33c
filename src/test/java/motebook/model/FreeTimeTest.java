package motebook.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FreeTimeTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 4);
  private static final LocalDateTime EVENING = DAY.atTime(19, 55);
  private static final List<Work> TWO = List.of(work("19:00", 30), work("19:35", 20));

  private static Work work(String start, int minutes) {
    return new Work(
        "me",
        "shop",
        DAY,
        LocalTime.parse(start),
        minutes,
        "table-saw",
        Optional.empty(),
        List.of(),
        Optional.empty(),
        "");
  }

  private static Optional<String> free(Work work, List<Work> others, LocalDateTime now) {
    return new FreeTime(work, others, now).start().map(LocalTime::toString);
  }

  @Test
  void work_that_has_just_ended_finds_the_newest_free_stretch_before_what_it_overlaps() {
    assertThat(free(work("19:50", 5), TWO, EVENING)).contains("19:30");
    assertThat(free(work("19:40", 15), TWO, EVENING)).contains("18:45");
  }

  @Test
  void nothing_to_come_is_called_free() {
    assertThat(free(work("19:40", 15), TWO, EVENING)).isNotEqualTo(Optional.of("19:55"));
    assertThat(free(work("19:40", 15), TWO, EVENING.plusMinutes(15))).contains("19:55");
    assertThat(free(work("19:40", 15), TWO, EVENING.plusDays(1))).contains("19:55");
  }

  @Test
  void the_nearest_time_is_offered_whether_it_is_before_or_after() {
    List<Work> one = List.of(work("10:00", 60));
    assertThat(free(work("10:10", 10), one, EVENING)).contains("09:50");
    assertThat(free(work("10:50", 20), one, EVENING)).contains("11:00");
  }

  @Test
  void a_day_without_room_offers_nothing() {
    assertThat(free(work("00:10", 20), List.of(work("00:05", 30)), DAY.atTime(0, 40))).isEmpty();
    assertThat(free(work("00:05", 900), List.of(work("10:00", 60)), EVENING)).isEmpty();
  }

  @Test
  void the_earliest_work_that_shares_a_minute_is_the_clash() {
    assertThat(new FreeTime(work("19:20", 20), TWO, EVENING).clash()).contains(TWO.get(0));
    assertThat(new FreeTime(work("19:30", 5), TWO, EVENING).clash()).isEmpty();
  }

  @Test
  void work_of_another_day_is_in_nobodys_way() {
    FreeTime yesterday = new FreeTime(work("19:40", 15), TWO, EVENING);
    assertThat(yesterday.others()).hasSize(2);
    Work earlier =
        new Work(
            "me",
            "shop",
            DAY.minusDays(1),
            LocalTime.of(19, 40),
            15,
            "table-saw",
            Optional.empty(),
            List.of(),
            Optional.empty(),
            "");
    assertThat(new FreeTime(earlier, TWO, EVENING).clash()).isEmpty();
  }
}
