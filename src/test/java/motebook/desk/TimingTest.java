package motebook.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import motebook.model.Session;
import motebook.model.Stopwatch;
import motebook.model.Stopwatch.Stretch;
import motebook.model.Work;
import org.junit.jupiter.api.Test;

class TimingTest {
  private static final LocalDateTime TEN = Shops.DAY.atTime(10, 0);
  private static final Stopwatch RUNNING = watch(Optional.empty());
  private static final Stopwatch PAUSED = watch(Optional.of(Instant.parse("2026-03-02T10:00:00Z")));

  private static Stopwatch watch(Optional<Instant> ended) {
    return new Stopwatch(
        1, "me", "any", List.of(new Stretch(Instant.parse("2026-03-02T09:00:00Z"), ended)));
  }

  private static Work work(String place, String start, int minutes, String what) {
    Shops shops = new Shops().did("me", place, start, minutes, what);
    return shops.sessions().get(0).work();
  }

  private static Timing timing(Stopwatch watch, Shops before, Work... works) {
    return Timing.of(
        watch, Optional.empty(), List.of(works), TEN, before.sessions(), before.shop());
  }

  @Test
  void outdoors_the_time_left_follows_from_the_near_field_alone() {
    // 141.5 mg/min over an exchange of pi 0.8^2 15 = 30.16 m3/min is 4.692 mg/m3 (the emission and
    // the near field of the model); 480/4.692 = 102.3 min to a mean of 1 mg/m3, 30 of them gone.
    Timing timing =
        timing(RUNNING, new Shops(), work("yard", "09:30", 30, "orbital-sanding of oak"));
    assertThat(timing.minutes()).isEqualTo(30);
    assertThat((double) timing.minutesLeft().orElseThrow()).isCloseTo(72.3, within(1.0));
    assertThat(timing.clearAt()).isEmpty();
  }

  @Test
  void the_minute_found_is_the_first_over_the_limit() {
    Shops before = new Shops().me("08:00", 20, "drilling of oak");
    Work now = work("shop", "09:50", 10, "table-saw of oak");
    int left = timing(RUNNING, before, now).minutesLeft().orElseThrow();
    assertThat(ratio(before, "09:50", 10 + left)).isGreaterThanOrEqualTo(1);
    assertThat(ratio(before, "09:50", 10 + left - 1)).isLessThan(1);
  }

  private static double ratio(Shops before, String start, int minutes) {
    List<Session> sessions =
        Timing.with(before.sessions(), List.of(work("shop", start, minutes, "table-saw of oak")));
    return HeldLimit.of(new DayReckoning(Shops.DAY, "me", sessions, before.shop()))
        .orElseThrow()
        .ratio();
  }

  @Test
  void a_day_over_its_limit_has_nothing_left_and_a_clean_one_no_end() {
    Shops over = new Shops().me("07:00", 120, "orbital-sanding of oak");
    assertThat(timing(RUNNING, over, work("shop", "09:50", 10, "drilling of oak")).minutesLeft())
        .hasValue(0);
    Shops none = new Shops();
    assertThat(timing(RUNNING, none, work("shop", "09:50", 10, "in-shop")).minutesLeft()).isEmpty();
  }

  @Test
  void a_paused_stopwatch_promises_no_time_left() {
    Timing timing =
        timing(PAUSED, new Shops(), work("shop", "09:00", 60, "orbital-sanding of oak"));
    assertThat(timing.minutesLeft()).isEmpty();
  }

  @Test
  void fine_dust_of_a_closed_room_falls_to_a_tenth_in_its_own_time() {
    // One change of air an hour and settling of 0.3 /h: ln 10 / (1.3/60) = 106.3 min after 10:00.
    Timing timing =
        timing(RUNNING, new Shops(), work("shop", "09:00", 60, "orbital-sanding of oak"));
    assertThat(timing.clearAt()).hasValue(10 * 60 + 107);
  }

  @Test
  void what_lies_before_the_first_minute_is_nothing_yet() {
    Timing timing = timing(RUNNING, new Shops());
    assertThat(timing.minutes()).isZero();
    assertThat(timing.minutesLeft()).isEmpty();
  }
}
