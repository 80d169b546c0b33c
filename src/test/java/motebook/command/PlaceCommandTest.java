package motebook.command;

import static motebook.command.Shell.at;
import static motebook.command.Shell.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.InstanceOfAssertFactories.LIST;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Places in the owner's units, and figures that no shop has. */
class PlaceCommandTest {
  private static final double CUBIC_FOOT_M3 = Math.pow(0.3048, 3);

  @TempDir Path folder;
  private Shell shell;

  @BeforeEach
  void open() {
    shell = new Shell(folder.resolve("book.db"));
  }

  private String done(String line) {
    Shell.Said said = shell.say(line);
    assertThat(said.code()).as(said.err()).isZero();
    return said.out();
  }

  private double figure(int place, String key) {
    return number(shell.json("place list"), "places", place, "versions", 0, key);
  }

  @Test
  void a_bare_number_is_in_us_units_in_a_book_that_has_them_and_so_is_the_answer() {
    done("settings units us");
    assertThat(
            done(
                "place change shop --volume 3200 --air-speed 20 --cleaner-flow 400 --fan-flow 800"))
        .contains("shop: 3200 ft³, 1 air change/h closed, 3 open, air speed 20 ft/min")
        .contains("air cleaner 400 cfm, window fan 800 cfm")
        .doesNotContain(" m³");
    assertThat(figure(0, "volume_m3")).isCloseTo(3200 * CUBIC_FOOT_M3, within(1e-9));
    assertThat(figure(0, "air_speed_m_min")).isCloseTo(20 * 0.3048, within(1e-9));
    assertThat(figure(0, "cleaner_flow_m3_min")).isCloseTo(400 * CUBIC_FOOT_M3, within(1e-9));
    assertThat(figure(0, "fan_flow_m3_min")).isCloseTo(800 * CUBIC_FOOT_M3, within(1e-9));
    assertThat(done("place add attic --length 20 --width 16 --height 8"))
        .startsWith("Added attic: 2560 ft³");
    assertThat(done("place list"))
        .contains("shop: 3200 ft³")
        .contains("yard: outdoors, air speed at the face");
    assertThat(done("place list")).doesNotContain("m/min");
  }

  @Test
  void a_unit_that_is_typed_holds_in_any_book() {
    done("settings units us");
    done("place add attic --length 6m --width 16ft --height 8");
    assertThat(figure(2, "volume_m3")).isCloseTo(6 * 16 * 8 * 0.3048 * 0.3048, within(1e-9));
    done("settings units metric");
    assertThat(done("place list")).contains("attic: 71.35 m³");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--air-changes 61 | The closed room changes its air 61.0 times an hour",
        "--open-air-changes 75 | With doors open the room changes its air 75.0 times an hour",
        "--volume 7.9 | A room of 7.9 m³ is smaller than any workshop",
        "--volume 20001 | A room of 20001 m³ is larger than any workshop",
        "--cleaner-flow 101 | The air cleaner moves the whole air of the room 60.6 times an hour",
        "--fan-flow 400 | The window fan moves the whole air of the room 240 times an hour",
        "--cleaner-flow 200 --volume 50 | The air cleaner moves the whole air of the room 240 times"
      })
  void a_figure_out_of_any_shops_range_is_refused_unless_it_is_meant(String figures, String why) {
    String before = done("place list");
    Shell.Said said = shell.say("place change shop " + figures);
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.err()).contains(why).contains("add --yes");
    assertThat(done("place list")).isEqualTo(before);
    done("place change shop " + figures + " --yes");
    assertThat(done("place list")).isNotEqualTo(before);
    // What was meant once is not asked about again.
    done("place change shop --air-speed 7");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--air-changes 60 --open-air-changes 60",
        "--volume 8",
        "--volume 20000",
        "--cleaner-flow 100 --fan-flow 100"
      })
  void a_figure_at_the_end_of_the_range_is_taken(String figures) {
    done("place change shop " + figures);
  }

  @Test
  void at_a_terminal_it_is_asked_about() {
    shell.atTerminal().typing("no\n");
    assertThat(shell.say("place add shed --volume 5").err())
        .contains("smaller than any workshop")
        .contains("Is that right?");
    assertThat(done("place list")).doesNotContain("shed");
    shell.typing("yes\n");
    assertThat(done("place add shed --volume 5")).startsWith("Added shed: 5 m³");
  }

  @Test
  void open_doors_are_never_below_closed_ones() {
    Shell.Said said = shell.say("place change shop --air-changes 4 --open-air-changes 2");
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.err())
        .contains("--open-air-changes 2 is below the 4 per hour with them closed");
    done("place change shop --air-changes 5");
    assertThat(figure(0, "open_air_changes_per_hour")).isEqualTo(5);
    done("log 40m orbital sanding of oak at 8:00");
    double closed = number(shell.json("day"), "twa", "outside", "typical_mg_m3");
    done("undo");
    done("log 40m orbital sanding of oak with doors open at 8:00");
    assertThat(number(shell.json("day"), "twa", "outside", "typical_mg_m3"))
        .isLessThanOrEqualTo(closed);
    assertThat(at(shell.json("day"), "sessions")).asInstanceOf(LIST).hasSize(1);
  }
}
