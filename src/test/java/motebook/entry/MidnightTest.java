package motebook.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.regex.Pattern;
import motebook.model.Work;
import org.junit.jupiter.api.Test;

class MidnightTest {
  private static final LocalDate YESTERDAY = LocalDate.of(2026, 3, 3);
  private static final LocalDate TODAY = LocalDate.of(2026, 3, 4);

  /** The two lines that a refusal offers, read in the same scene. */
  private static List<Work> offered(String line, Scene scene) {
    String message = Refusals.of(line, scene).refusal().getMessage();
    assertThat(message).contains("past midnight");
    return Pattern.compile("\"([^\"]*)\"")
        .matcher(message)
        .results()
        .map(quoted -> SpokenLine.read(quoted.group(1), scene))
        .toList();
  }

  private static void assertOffered(
      String line, Scene scene, LocalDate first, LocalTime start, int before, int after) {
    List<Work> parts = offered(line, scene);
    assertThat(parts).hasSize(2);
    assertThat(parts).extracting(Work::date).containsExactly(first, first.plusDays(1));
    assertThat(parts).extracting(Work::start).containsExactly(start, LocalTime.MIDNIGHT);
    assertThat(parts).extracting(Work::minutes).containsExactly(before, after);
  }

  @Test
  void a_stretch_past_midnight_is_offered_as_two_lines() {
    assertOffered(
        "23:30-00:20 table saw on yesterday",
        Scenes.usual(),
        YESTERDAY,
        LocalTime.of(23, 30),
        30,
        20);
    Refusals.of("23:30-00:20 table saw on yesterday").at("23:30-00:20");
  }

  @Test
  void without_a_date_it_ended_today() {
    assertOffered("23:30-00:20 table saw", Scenes.usual(), YESTERDAY, LocalTime.of(23, 30), 30, 20);
    assertOffered(
        "40m table saw at 11:50pm", Scenes.usual(), YESTERDAY, LocalTime.of(23, 50), 10, 30);
  }

  @Test
  void work_that_has_just_ended_after_midnight_began_yesterday() {
    Scene scene = Scenes.at(LocalDateTime.of(2026, 3, 4, 0, 10, 59));
    assertOffered("40m table saw", scene, YESTERDAY, LocalTime.of(23, 30), 30, 10);
    Scene longest = Scenes.at(LocalDateTime.of(2026, 3, 4, 15, 59));
    assertOffered("16h table saw", longest, YESTERDAY, LocalTime.of(23, 59), 1, 959);
  }

  @Test
  void both_lines_say_all_that_the_one_said() {
    List<Work> parts =
        offered(
            "23:30-00:20 table saw of oak with collector and air cleaner in garage by ana note glue",
            Scenes.usual());
    for (Work part : parts) {
      assertThat(part.material()).contains("oak");
      assertThat(part.controls()).containsExactly("collector", "air-cleaner");
      assertThat(part.place()).isEqualTo("Big Garage");
      assertThat(part.person()).isEqualTo("Ana Lee");
      assertThat(part.note()).isEqualTo("glue");
    }
  }

  @Test
  void work_that_ends_at_midnight_is_one_session() {
    Scene scene = Scenes.at(TODAY.atStartOfDay().plusSeconds(30));
    Work work = SpokenLine.read("40m table saw", scene);
    assertThat(work.date()).isEqualTo(YESTERDAY);
    assertThat(work.endMinute()).isEqualTo(24 * 60);
  }

  @Test
  void nothing_is_offered_that_would_be_refused_itself() {
    Refusals.of("23:30-00:20 table saw with tool vacuum")
        .at("tool vacuum")
        .message()
        .contains("does not help with");
    Refusals.of("23:30-00:20 table saw on today").at("23:30-00:20").message().contains("to come");
  }
}
