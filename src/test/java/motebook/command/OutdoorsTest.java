package motebook.command;

import static motebook.command.Shell.at;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Places outdoors, and work that is done there alone. */
class OutdoorsTest {
  @TempDir Path folder;
  private Shell shell;

  @BeforeEach
  void open() {
    shell = new Shell(folder.resolve("book.db"));
  }

  // The air at the face, not the wind: judgement, grade D.
  @Test
  void pallet_wood_is_told_of_preservative_as_reclaimed_wood_is() {
    assertThat(shell.say("log 20m table saw of pallet wood at 9:00").out())
        .contains("Reclaimed wood may carry paint with lead, or preservative");
  }

  @ParameterizedTest
  @CsvSource({"still,12", "light-air,15", "light-breeze,20", "gentle-breeze,30"})
  void a_word_for_the_wind_stands_for_an_air_speed_at_the_face(String word, double speed) {
    shell.say("place add meadow --outdoor " + word);
    assertThat(at(shell.json("place list"), "places", 2, "versions", 0, "air_speed_m_min"))
        .isEqualTo(speed);
  }

  @Test
  void an_air_speed_outdoors_is_taken_up_to_sixty() {
    assertThat(shell.say("place change yard --air-speed 60").code()).isZero();
    Shell.Said faster = shell.say("place change yard --air-speed 61");
    assertThat(faster.code()).isEqualTo(2);
    assertThat(faster.err()).contains("up to 60");
    assertThat(shell.say("place add hill --outdoor still --air-speed 61").code()).isEqualTo(2);
    assertThat(shell.say("place list").out())
        .contains("yard: outdoors, air speed at the face 60 m/min")
        .doesNotContain("hill");
  }

  @Test
  void the_yard_begins_with_the_air_at_the_face() {
    assertThat(shell.say("place list").out())
        .contains("yard: outdoors, air speed at the face 15 m/min");
  }

  @Test
  void chainsaw_milling_is_logged_in_the_yard_and_refused_in_a_room() {
    assertThat(shell.say("log 30m chainsaw milling of oak at 9:00").out()).contains("in yard");
    Map<String, Object> day = shell.json("day");
    assertThat(at(day, "sessions", 0, "place")).isEqualTo("yard");
    // 15 mg/m³ over an emission per exchange of the shop, in the yard's air of 15 m/min: 2.8.
    assertThat((Double) at(day, "sessions", 0, "mean_outside_mg_m3")).isBetween(2.75, 2.85);
    Shell.Said room = shell.say("log 30m chainsaw milling of oak in shop at 10:00");
    assertThat(room.code()).isEqualTo(2);
    assertThat(room.err()).contains("it has no figure for a room, and shop is one. Say outdoors.");
    assertThat(shell.say("plan 30m chainsaw milling of oak in shop").code()).isEqualTo(2);
  }

  @Test
  void old_wood_is_logged_with_the_caution_of_lead_and_of_preservatives() {
    shell.say("log 30m table saw of barn wood at 9:00");
    assertThat(shell.say("day").out())
        .contains("Reclaimed wood may carry paint with lead, or preservative with arsenic");
  }

  @ParameterizedTest
  @CsvSource({"thuja", "white cedar", "cedar"})
  void every_thuja_is_held_by_the_limit_of_red_cedar(String wood) {
    shell.say("log 30m table saw of " + wood + " at 9:00");
    assertThat(at(shell.json("day"), "limit", "key")).isEqualTo("acgih-red-cedar");
  }
}
