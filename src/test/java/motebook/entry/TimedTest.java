package motebook.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import motebook.model.Refusal;
import motebook.model.Stopwatch;
import motebook.model.Stopwatch.Stretch;
import motebook.model.Work;
import org.junit.jupiter.api.Test;

class TimedTest {
  private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");
  private static final Instant LONG_AFTER = Instant.parse("2026-03-06T00:00:00Z");

  private static List<Work> timed(Stretch... stretches) {
    Stopwatch watch = new Stopwatch(1, "Ana Lee", "table saw of oak", List.of(stretches));
    return Timed.works(watch, LONG_AFTER, BERLIN, Scenes.usual());
  }

  private static Stretch stretch(String began, String ended) {
    return new Stretch(Instant.parse(began), Optional.of(Instant.parse(ended)));
  }

  @Test
  void a_stretch_is_a_session_at_the_clock_on_the_wall_rounded_to_minutes() {
    List<Work> works = timed(stretch("2026-03-04T08:00:20Z", "2026-03-04T08:25:00Z"));
    assertThat(works).hasSize(1);
    assertThat(works.get(0).person()).isEqualTo("Ana Lee");
    assertThat(works.get(0).start()).hasToString("09:00");
    assertThat(works.get(0).minutes()).isEqualTo(25);
  }

  @Test
  void stretches_never_overlap_whatever_their_seconds() {
    List<Work> works =
        timed(
            stretch("2026-03-04T08:00:50Z", "2026-03-04T08:10:45Z"),
            stretch("2026-03-04T08:10:50Z", "2026-03-04T08:12:49Z"),
            stretch("2026-03-04T08:12:50Z", "2026-03-04T08:13:10Z"));
    assertThat(works).hasSize(2);
    assertThat(works.get(0).endMinute()).isLessThanOrEqualTo(works.get(1).startMinute());
  }

  @Test
  void less_than_half_a_minute_is_nothing() {
    assertThat(timed(stretch("2026-03-04T08:00:00Z", "2026-03-04T08:00:29Z"))).isEmpty();
  }

  @Test
  void work_past_midnight_is_parted_there_and_one_that_was_forgotten_into_lengths_that_fit() {
    List<Work> night = timed(stretch("2026-03-03T22:30:00Z", "2026-03-03T23:30:00Z"));
    assertThat(night)
        .extracting(w -> w.date().toString())
        .containsExactly("2026-03-03", "2026-03-04");
    assertThat(night).extracting(Work::minutes).containsExactly(30, 30);
    List<Work> forgotten = timed(stretch("2026-03-03T05:00:00Z", "2026-03-04T05:00:00Z"));
    assertThat(forgotten.stream().mapToInt(Work::minutes).sum()).isEqualTo(24 * 60);
    assertThat(forgotten).hasSize(3);
  }

  @Test
  void what_is_to_be_timed_is_told_wrong_at_its_word() {
    assertThatThrownBy(() -> Timed.read("table sow of oak", Scenes.usual()))
        .isInstanceOfSatisfying(
            Refusal.class, refusal -> assertThat(refusal.from()).isLessThanOrEqualTo(6))
        .hasMessageContaining("did you mean");
    Work work = Timed.read("table saw of oak with collector note a lid", Scenes.usual());
    assertThat(SpokenLine.untimed(work, Scenes.usual()))
        .isEqualTo("table saw of oak with collector note a lid");
  }
}
