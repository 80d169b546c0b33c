package motebook.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import motebook.model.MaskUse;
import motebook.model.Work;
import org.junit.jupiter.api.Test;

class HabitsTest {
  private final Scene scene = Scenes.usual();

  /** Works said in order of time; the habits are read newest first. */
  private Habits after(String... lines) {
    List<Work> past = new ArrayList<>();
    for (String line : lines) {
      past.add(0, SpokenLine.read(line, scene));
    }
    return Habits.of(past, scene);
  }

  @Test
  void an_empty_line_is_completed_by_what_was_done_most_and_last() {
    Habits habits =
        after(
            "1h table saw oak with collector on 2026-03-01 at 9:00",
            "40m orb sand of mdf on 2026-03-02 at 9:00",
            "40m orb sand of mdf on 2026-03-03 at 9:00");
    assertThat(habits.complete(""))
        .containsExactly("40m orbital sanding of MDF", "1h table saw of oak with collector");
  }

  @Test
  void what_was_done_on_this_weekday_comes_first() {
    Habits habits =
        after(
            "1h table saw oak with collector on 2026-02-25 at 9:00",
            "40m orb sand of mdf on 2026-03-02 at 9:00",
            "30m orb sand of mdf on 2026-03-03 at 9:00");
    assertThat(habits.complete("45m ").get(0)).isEqualTo("45m table saw of oak with collector");
  }

  @Test
  void a_material_brings_the_controls_that_were_used_with_it() {
    Habits habits =
        after(
            "1h orb sand oak with tool vacuum on 2026-03-02 at 9:00",
            "40m orb sand of mdf with tool vacuum on 2026-03-03 at 9:00",
            "40m orb sand of mdf on 2026-03-02 at 14:00");
    assertThat(habits.complete("20m ORBital sanding of mdf"))
        .containsExactly("20m ORBital sanding of mdf with tool vacuum");
    assertThat(habits.complete("20m orbital sanding of m")).hasSize(2);
  }

  @Test
  void nothing_is_offered_inside_the_duration_or_for_other_work() {
    Habits habits = after("40m orb sand of mdf on 2026-03-03 at 9:00");
    assertThat(habits.complete("4")).isEmpty();
    assertThat(habits.complete("40m")).isEmpty();
    assertThat(habits.complete("40m table")).isEmpty();
    assertThat(habits.complete("not a line")).isEmpty();
    assertThat(Habits.NONE.complete("")).isEmpty();
  }

  @Test
  void a_seal_check_is_never_taken_over() {
    Work plain = SpokenLine.read("40m orb sand of mdf on 2026-03-03 at 9:00", scene);
    Work masked =
        new Work(
            plain.person(),
            plain.place(),
            plain.date(),
            plain.start(),
            plain.minutes(),
            plain.operation(),
            plain.material(),
            plain.controls(),
            java.util.Optional.of(new MaskUse("half mask", true, 90)),
            "a note");
    assertThat(Habits.of(List.of(masked), scene).complete(""))
        .containsExactly("40m orbital sanding of MDF wearing half mask 90%");
  }

  @Test
  void the_lines_said_last_are_called_back_newest_first_and_once() {
    Habits habits =
        after(
            "1h assembly on 2026-03-01 at 9:00",
            "40m orb sand of mdf on 2026-03-02 at 9:00",
            "1h assembly on 2026-03-02 at 11:00",
            "20m sweeping outdoors on 2026-03-03 at 9:00");
    assertThat(habits.recent())
        .containsExactly("20m dry sweeping in yard", "1h assembly", "40m orbital sanding of MDF");
  }

  @Test
  void every_line_that_is_offered_can_be_read() {
    Habits habits =
        after(
            "1h table saw oak with collector and doors open on 2026-02-25 at 9:00",
            "20m block sanding of red cedar outdoors on 2026-03-02 at 9:00");
    for (String line : habits.complete("15m ")) {
      assertThat(SpokenLine.read(line, scene).minutes()).isEqualTo(15);
    }
    assertThat(habits.complete("15m ")).hasSize(2);
  }
}
