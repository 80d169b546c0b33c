package motebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import motebook.science.BreathedAir.Stretch;
import motebook.science.WorstWindow.Weighted;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WorstWindowTest {
  private static final double DAY = 1440;

  private static WorstWindow worst(List<Stretch> stretches) {
    return WorstWindow.of(List.of(new Weighted(new BreathedAir(stretches), 1)), 15, -15, DAY);
  }

  @Test
  void half_an_hour_of_steady_air_is_that_air_and_five_minutes_are_a_third_of_it() {
    // Derived: 12 mg/m3 over 15 min of 30; over 5 min of the 15.
    assertThat(worst(List.of(new Stretch(540, 570, 12, 1, List.of()))).sum() / 15)
        .isCloseTo(12, within(1e-12));
    assertThat(worst(List.of(new Stretch(540, 545, 12, 1, List.of()))).sum() / 15)
        .isCloseTo(4, within(1e-12));
  }

  @Test
  void two_short_jobs_within_a_quarter_of_an_hour_count_together() {
    // Derived: 5 min at 12 and 4 min at 6 mg/m3, three apart: (60 + 24)/15.
    WorstWindow worst =
        worst(
            List.of(
                new Stretch(540, 545, 12, 1, List.of()), new Stretch(548, 552, 6, 1, List.of())));
    assertThat(worst.sum() / 15).isCloseTo(5.6, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({"3,2", "2,3", "0.5,4", "6,1"})
  void of_a_drying_finish_it_begins_where_the_air_is_as_thick_at_both_ends(
      double perHour, double airChanges) {
    // Derived: C = (M/V)k/(k-L)(e^-Lt - e^-kt) is equal at t and t + w where
    // t = ln((1 - e^-kw)/(1 - e^-Lw))/(k - L); its integral is (e^-at)(1 - e^-aw)/a of each part.
    RoomTrace room =
        new RoomTrace(
            60,
            List.of(new Loss(0, DAY, airChanges / 60)),
            Release.drying(100_000, perHour, 60, DAY));
    WorstWindow worst = worst(List.of(new Stretch(0, DAY, 0, 1, List.of(room))));
    double k = perHour / 60;
    double loss = airChanges / 60;
    double begins = Math.log(Math.expm1(-15 * k) / Math.expm1(-15 * loss)) / (k - loss);
    double integral = part(loss, begins) - part(k, begins);
    assertThat(worst.fromMinute()).isCloseTo(60 + begins, within(0.01));
    assertThat(worst.sum())
        .isCloseTo(100_000 / 60.0 * k / (k - loss) * integral, within(1e-7 * worst.sum()));
  }

  private static double part(double rate, double begins) {
    return Math.exp(-rate * begins) * -Math.expm1(-15 * rate) / rate;
  }

  @Test
  void only_windows_that_may_begin_are_looked_at() {
    List<Stretch> day =
        List.of(new Stretch(540, 570, 12, 1, List.of()), new Stretch(600, 630, 3, 0.5, List.of()));
    List<Weighted> airs = List.of(new Weighted(new BreathedAir(day), 2));
    WorstWindow later = WorstWindow.of(airs, 15, 585, 630);
    // Derived: weight 2, share one half of 3 mg/m3, 15 min.
    assertThat(later.sum()).isCloseTo(45, within(1e-12));
  }

  @Property(tries = 300)
  void no_window_of_a_fine_grid_is_worse_and_the_one_found_is_a_window(
      @ForAll @Size(min = 1, max = 4) List<@DoubleRange(min = 0, max = 60) Double> airChanges,
      @ForAll @Size(min = 1, max = 3) List<@DoubleRange(min = 0, max = 6) Double> perHour,
      @ForAll @IntRange(min = 1, max = 90) int minutes,
      @ForAll @IntRange(min = 0, max = 40) int gap,
      @ForAll @DoubleRange(min = 0, max = 50) double atHand) {
    List<Loss> losses = new ArrayList<>();
    for (int i = 0; i < airChanges.size(); i++) {
      losses.add(new Loss(i * 40, (i + 1) * 40, airChanges.get(i) / 60));
    }
    losses.add(new Loss(airChanges.size() * 40, 400, 0.5 / 60));
    List<Weighted> airs = new ArrayList<>();
    for (int i = 0; i < perHour.size(); i++) {
      List<RoomTrace> traces =
          List.of(
              new RoomTrace(50, losses, Release.even(5000, 10 + i, 10 + i + minutes)),
              new RoomTrace(50, losses, Release.drying(3000, perHour.get(i), 10 + minutes, 400)));
      List<Stretch> stretches =
          List.of(
              new Stretch(10, 10 + minutes, atHand, 0.7, traces),
              new Stretch(10 + minutes + gap, 200, 0, 1, traces));
      airs.add(new Weighted(new BreathedAir(stretches), 1.0 + i));
    }
    WorstWindow worst = WorstWindow.of(airs, 15, -15, 400);
    assertThat(worst.sum()).isCloseTo(sum(airs, worst.fromMinute()), within(1e-12 * worst.sum()));
    for (int step = 0; step < 4300; step++) {
      assertThat(sum(airs, -15 + step * 0.05)).isLessThanOrEqualTo(worst.sum() * (1 + 1e-9));
    }
  }

  private static double sum(List<Weighted> airs, double from) {
    return airs.stream().mapToDouble(w -> w.weight() * w.air().mgMinPerM3(from, from + 15)).sum();
  }

  @Test
  void stretches_over_each_other_are_a_programmers_error() {
    Stretch one = new Stretch(0, 20, 1, 1, List.of());
    Stretch other = new Stretch(10, 30, 1, 1, List.of());
    assertThatIllegalArgumentException().isThrownBy(() -> new BreathedAir(List.of(one, other)));
  }
}
