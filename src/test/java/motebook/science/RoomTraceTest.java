package motebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoomTraceTest {

  @ParameterizedTest
  @CsvSource({"15,1.474661,0.768021", "60,4.214137,2.452530"})
  void one_room_follows_its_closed_form(double minutes, double end, double mean) {
    // Derived regression values: V 90 m3, Q 1.5 m3/min, G 10 mg/min; steady 6.666667 mg/m3.
    RoomTrace room = new RoomTrace(90, List.of(new Loss(0, minutes, 1.5 / 90)), 10, 0, minutes);
    assertThat(room.mgPerM3At(minutes)).isCloseTo(end, within(5e-7));
    assertThat(room.mgMinPerM3(0, minutes) / minutes).isCloseTo(mean, within(5e-7));
  }

  @Test
  void a_room_left_alone_settles_at_g_over_q() {
    RoomTrace room = new RoomTrace(90, List.of(new Loss(0, 1e5, 1.5 / 90)), 10, 0, 1e5);
    assertThat(room.mgPerM3At(1e5)).isCloseTo(6.666667, within(5e-7));
  }

  @Test
  void a_sealed_room_keeps_every_milligram() {
    RoomTrace room = new RoomTrace(50, List.of(new Loss(0, 480, 0)), 10, 60, 120);
    assertThat(room.mgPerM3At(480) * 50).isCloseTo(600, within(1e-9));
    assertThat(room.mgMinPerM3(60, 120)).isCloseTo(10 / 50.0 * 60 * 60 / 2, within(1e-9));
    assertThat(room.mgPerM3At(30)).isZero();
  }

  @Property
  void what_is_emitted_is_removed_or_left(
      @ForAll @Size(min = 1, max = 6) List<@DoubleRange(min = 0, max = 30) Double> ratesPerHour,
      @ForAll @DoubleRange(min = 0.5, max = 5000) double volume,
      @ForAll @DoubleRange(min = 0.01, max = 1000) double emission,
      @ForAll @IntRange(min = 0, max = 100) int from,
      @ForAll @IntRange(min = 1, max = 200) int minutes) {
    List<Loss> losses = hundredMinutesEach(ratesPerHour);
    double end = losses.get(losses.size() - 1).toMinute();
    double to = Math.min(end, from + minutes);
    RoomTrace room = new RoomTrace(volume, losses, emission, Math.min(from, end), to);

    double removed =
        losses.stream()
            .mapToDouble(
                l -> l.perMinute() * volume * room.mgMinPerM3(l.fromMinute(), l.toMinute()))
            .sum();
    double emitted = emission * (to - Math.min(from, end));
    assertThat(removed + room.mgPerM3At(end) * volume)
        .isCloseTo(emitted, within(1e-9 * Math.max(1, emitted)));
  }

  @Property
  void an_integral_is_the_sum_of_its_parts_and_never_negative(
      @ForAll @Size(min = 1, max = 5) List<@DoubleRange(min = 0, max = 1e4) Double> ratesPerHour,
      @ForAll @DoubleRange(min = 0, max = 1e6) double emission,
      @ForAll @DoubleRange(min = 0, max = 100) double cut) {
    List<Loss> losses = hundredMinutesEach(ratesPerHour);
    RoomTrace room = new RoomTrace(30, losses, emission, 20, 90);
    double whole = room.mgMinPerM3(0, 100);
    double parts = room.mgMinPerM3(0, cut) + room.mgMinPerM3(cut, 100);
    assertThat(whole).isFinite().isNotNegative();
    assertThat(parts).isCloseTo(whole, within(1e-9 * Math.max(1e-9, whole)));
  }

  @Property
  void a_tiny_loss_is_close_to_none_at_all(
      @ForAll @DoubleRange(min = 0, max = 1e-9) @Scale(15) double loss) {
    RoomTrace sealed = new RoomTrace(40, List.of(new Loss(0, 600, 0)), 5, 0, 300);
    RoomTrace nearly = new RoomTrace(40, List.of(new Loss(0, 600, loss)), 5, 0, 300);
    assertThat(nearly.mgMinPerM3(0, 600)).isCloseTo(sealed.mgMinPerM3(0, 600), within(0.02));
  }

  @Test
  void the_series_of_phi2_meets_its_quotient_where_they_change_over() {
    double below = Relaxation.phi2(Math.nextDown(1e-2));
    double above = Relaxation.phi2(1e-2);
    assertThat(below).isCloseTo(above, within(1e-12));
  }

  @Test
  void losses_with_a_gap_are_a_programmers_error() {
    List<Loss> gap = List.of(new Loss(0, 10, 0), new Loss(11, 20, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> new RoomTrace(1, gap, 1, 0, 5));
    assertThatIllegalArgumentException().isThrownBy(() -> new RoomTrace(1, List.of(), 1, 0, 5));
  }

  private static List<Loss> hundredMinutesEach(List<Double> ratesPerHour) {
    List<Loss> losses = new ArrayList<>();
    for (int i = 0; i < ratesPerHour.size(); i++) {
      losses.add(new Loss(i * 100, (i + 1) * 100, ratesPerHour.get(i) / 60));
    }
    return losses;
  }
}
