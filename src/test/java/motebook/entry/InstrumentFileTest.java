package motebook.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.StringReader;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import motebook.entry.InstrumentFile.Contents;
import motebook.entry.InstrumentFile.Wish;
import motebook.entry.MinuteMeans.Stretch;
import motebook.model.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class InstrumentFileTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
  private static final Wish NOTHING_SAID =
      new Wish(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

  private static Contents read(String text) throws IOException {
    return read(text, NOTHING_SAID);
  }

  private static Contents read(String text, Wish wish) throws IOException {
    return InstrumentFile.read(new BufferedReader(new StringReader(text)), wish);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Time,Dust (mg/m3)\n2026-03-02 09:00:00,1\n2026-03-02 09:01:00,3\n",
        "time;mg/m³\n02.03.2026 09:00;1,0\n02.03.2026 09:01;3,0\n",
        """
        Serial,4711
        Made by,hand
        "Date","Time","PM [ug/m3]"
        2026/03/02,9:00 AM,1000
        2026/03/02,9:01 AM,3000
        """,
        "\uFEFFTimestamp\tConcentration mg/m3\n2026-03-02T09:00:00.0\t1\n2026-03-02T09:01:00\t3\n",
      })
  void times_values_and_units_are_recognised(String text) throws IOException {
    Contents contents = read(text);
    assertThat(contents.rows()).isEqualTo(2);
    assertThat(contents.complaints()).isEmpty();
    assertThat(contents.means().stretches()).containsExactly(new Stretch(DAY, 540, 542));
    assertThat(contents.means().mean(new Stretch(DAY, 540, 542))).isCloseTo(2, within(1e-12));
  }

  @Test
  void columns_unit_and_day_can_be_named() throws IOException {
    Wish wish =
        new Wish(
            Optional.of("When"), Optional.of("Channel 2"), Optional.of("ug/m3"), Optional.of(DAY));
    Contents contents = read("when,channel 1,channel 2\n09:00:00,7,500\n09:00:30,7,1500\n", wish);
    assertThat(contents.means().mean(new Stretch(DAY, 540, 541))).isCloseTo(1, within(1e-12));
  }

  @Test
  void a_reading_stands_until_the_next_one() throws IOException {
    // By hand: 1 for 10 s, 5 for 20 s, 2 for the usual step of 10 s -> (10 + 100 + 20)/40.
    Contents contents =
        read(
            """
            time,mg/m3
            2026-03-02 09:00:00,1
            2026-03-02 09:00:10,5
            2026-03-02 09:00:30,2
            2026-03-02 09:00:40,2
            2026-03-02 09:00:50,2
            """);
    assertThat(contents.means().mean(new Stretch(DAY, 540, 541)))
        .isCloseTo((10 + 100 + 60) / 60.0, within(1e-12));
  }

  @Test
  void gaps_backward_times_and_other_rows_are_told_by_their_line() throws IOException {
    Contents contents =
        read(
            """
            time,mg/m3
            2026-03-02 09:00:00,1
            2026-03-02 09:01:00,1
            2026-03-02 09:00:30,9
            2026-03-02 09:02:00,fault
            never,1
            2026-03-02 09:02:00,1
            2026-03-02 09:30:00,2
            2026-03-02 09:31:00,2
            """);
    assertThat(contents.complaints())
        .containsExactly(
            "line 4: not later than the row before, left out",
            "line 5: no number, left out",
            "line 6: no time, left out",
            "line 8: nothing was read for 1680 s before it");
    assertThat(contents.rows()).isEqualTo(5);
    assertThat(contents.means().stretches())
        .containsExactly(new Stretch(DAY, 540, 543), new Stretch(DAY, 570, 572));
  }

  @Test
  void many_complaints_are_counted() throws IOException {
    Contents contents = read("time,mg/m3\n" + "2026-03-02 09:00:00,1\n" + "x,1\n".repeat(50));
    assertThat(contents.complaints()).hasSize(11).last().isEqualTo("and 40 more of that kind");
  }

  @Test
  void a_reading_may_run_past_midnight() throws IOException {
    Contents contents =
        read("time,mg/m3\n2026-03-02 23:50:00,4\n2026-03-03 00:00:00,2\n2026-03-03 00:10:00,2\n");
    assertThat(contents.means().stretches())
        .containsExactly(new Stretch(DAY, 1430, 1440), new Stretch(DAY.plusDays(1), 0, 20));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a,b\n1,2\n",
        "",
        "time,mg/m3\n",
        "time,dust\n2026-03-02 09:00:00,1\n",
        "time,mg/m3,ug/m3\n2026-03-02 09:00:00,1,2\n",
        "time,mg/m3\n02/03/2026 09:00:00,1\n",
        "time,mg/m3\n09:00:00,1\n",
      })
  void what_cannot_be_told_is_refused(String text) {
    assertThatThrownBy(() -> read(text)).isInstanceOf(Refusal.class);
  }

  @Test
  void a_long_file_is_read_as_a_stream() throws IOException {
    StringBuilder text = new StringBuilder("time,mg/m3\n");
    LocalDateTime moment = DAY.atStartOfDay();
    for (int i = 0; i < 90_000; i++) {
      text.append(moment.plusSeconds(i)).append(',').append(i % 2).append('\n');
    }
    Contents contents = read(text.toString());
    assertThat(contents.rows()).isEqualTo(90_000);
    assertThat(contents.complaints()).isEmpty();
    List<Stretch> stretches = contents.means().stretches();
    assertThat(stretches).hasSize(2);
    assertThat(contents.means().mean(stretches.get(0))).isCloseTo(0.5, within(1e-9));
  }
}
