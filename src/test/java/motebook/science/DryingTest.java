package motebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The room while a finish dries in it, against derived figures and a numerical solution. */
class DryingTest {
  private static final double HOUR = 60;

  private static List<Loss> eightHours(double perHour) {
    return List.of(new Loss(0, 480, perHour / HOUR));
  }

  private static RoomTrace drying(double kPerHour, double lossPerHour) {
    return new RoomTrace(60, eightHours(lossPerHour), Release.drying(100_000, kPerHour, 0, 480));
  }

  @ParameterizedTest
  @CsvSource({"0.4055,740.7", "1,427.7", "2,79.2"})
  void a_hundred_grams_dry_into_60_m3_as_derived(double hours, double mgPerM3) {
    // Derived on (M/V) k/(k-L) (e^-Lt - e^-kt): 100 g, 60 m3, 120 m3/h, k 3 /h.
    assertThat(drying(3, 2).mgPerM3At(hours * HOUR)).isCloseTo(mgPerM3, within(0.05));
  }

  @Test
  void its_peak_stands_at_ln_k_over_loss_and_its_mean_is_104() {
    // Derived: peak at 0.4055 h, mean over 8 h 104.17 mg/m3.
    RoomTrace room = drying(3, 2);
    double peak = Math.log(3 / 2.0) / (3 - 2) * HOUR;
    assertThat(peak / HOUR).isCloseTo(0.4055, within(5e-5));
    assertThat(room.mgPerM3At(peak)).isGreaterThan(room.mgPerM3At(peak - 0.1));
    assertThat(room.mgPerM3At(peak)).isGreaterThan(room.mgPerM3At(peak + 0.1));
    assertThat(room.mgMinPerM3(0, 480) / 480).isCloseTo(104.17, within(0.005));
  }

  @Test
  void where_it_dries_as_fast_as_the_room_clears_the_limiting_form_holds() {
    // (M/V) k t e^-kt, and its integral (M/V)(1 - e^-kt (1 + kt))/k.
    double kt = 2.0 / HOUR * 90;
    assertThat(drying(2, 2).mgPerM3At(90))
        .isCloseTo(100_000 / 60.0 * kt * Math.exp(-kt), within(1e-9));
    assertThat(drying(2, 2).mgMinPerM3(0, 90))
        .isCloseTo(100_000 / 60.0 * (1 - Math.exp(-kt) * (1 + kt)) * 30, within(1e-7));
    assertThat(drying(2 + 1e-9, 2).mgPerM3At(90))
        .isCloseTo(drying(2, 2).mgPerM3At(90), within(1e-5));
  }

  @Test
  void half_a_litre_of_lacquer_at_once_into_a_sealed_room() {
    // Derived: 500 mL at 690 g/L into 60 m3, no air change: 5750 mg/m3.
    RoomTrace room = new RoomTrace(60, eightHours(0), Release.drying(500 * 690, 1e6, 0, 480));
    assertThat(room.mgPerM3At(480)).isCloseTo(5750, within(1e-9));
    assertThat(drying(3, 0).mgPerM3At(480) * 60).isCloseTo(100_000, within(1e-5));
  }

  @Test
  void varnish_brushed_in_half_an_hour() {
    // Derived: 200 mL at 420 g/L in 30 min, 60 m3, 2 /h: 885 mg/m3 at 30 min.
    RoomTrace room = new RoomTrace(60, eightHours(2), Release.even(200 * 420, 0, 30));
    assertThat(room.mgPerM3At(30)).isCloseTo(885, within(0.5));
  }

  @Property(tries = 200)
  void the_room_follows_its_equation_whatever_the_rates(
      @ForAll @Size(min = 1, max = 3) List<@DoubleRange(min = 0, max = 12) Double> lossesPerHour,
      @ForAll @DoubleRange(min = 0, max = 6) double kPerHour,
      @ForAll @DoubleRange(min = 10, max = 500) double volume,
      @ForAll @DoubleRange(min = 0, max = 90) double from) {
    List<Loss> losses = new ArrayList<>();
    for (int i = 0; i < lossesPerHour.size(); i++) {
      losses.add(new Loss(i * 100, (i + 1) * 100, lossesPerHour.get(i) / HOUR));
    }
    double end = 100 * losses.size();
    Release release = new Release(from, end, 1000, kPerHour / HOUR);
    RoomTrace room = new RoomTrace(volume, losses, release);

    double[] solved = {0, 0};
    for (Loss loss : losses) {
      solved = solve(solved, loss, release, volume);
    }
    assertThat(room.mgPerM3At(end)).isCloseTo(solved[0], within(1e-6 * (1 + solved[0])));
    assertThat(room.mgMinPerM3(0, end)).isCloseTo(solved[1], within(1e-6 * (1 + solved[1])));
  }

  /** Concentration and its integral at the end of a stretch, from those at its beginning. */
  private static double[] solve(double[] start, Loss loss, Release release, double volume) {
    double begin = Math.max(loss.fromMinute(), release.fromMinute());
    OrdinaryDifferentialEquation room =
        new OrdinaryDifferentialEquation() {
          @Override
          public int getDimension() {
            return 2;
          }

          @Override
          public double[] computeDerivatives(double t, double[] y) {
            return new double[] {release.mgPerMinAt(t) / volume - loss.perMinute() * y[0], y[0]};
          }
        };
    return new DormandPrince853Integrator(1e-9, 20, 1e-10, 1e-10)
        .integrate(room, new ODEState(begin, start), loss.toMinute())
        .getPrimaryState();
  }

  @Property
  void what_has_dried_is_removed_or_in_the_air(
      @ForAll @DoubleRange(min = 0, max = 20) double lossPerHour,
      @ForAll @DoubleRange(min = 0.01, max = 20) double kPerHour) {
    RoomTrace room = drying(kPerHour, lossPerHour);
    double removed = lossPerHour / HOUR * 60 * room.mgMinPerM3(0, 480);
    double dried = 100_000 * -Math.expm1(-kPerHour * 8);
    assertThat(removed + room.mgPerM3At(480) * 60).isCloseTo(dried, within(1e-7 * dried));
  }

  @Property
  void an_integral_is_the_sum_of_its_parts(
      @ForAll @DoubleRange(min = 0, max = 480) double cut,
      @ForAll @DoubleRange(min = 0, max = 5) double lossPerHour) {
    RoomTrace room = drying(1.5, lossPerHour);
    double whole = room.mgMinPerM3(0, 480);
    assertThat(room.mgMinPerM3(0, cut) + room.mgMinPerM3(cut, 480))
        .isCloseTo(whole, within(1e-9 * whole));
  }

  @Property
  void psi_is_the_divided_difference_in_any_order(
      @ForAll @DoubleRange(min = 0, max = 30) double x,
      @ForAll @DoubleRange(min = 0, max = 30) double y) {
    assertThat(Relaxation.psi(x, y)).isEqualTo(Relaxation.psi(y, x));
    if (Math.abs(x - y) > 1e-3) {
      double quotient = (Relaxation.phi1(x) - Relaxation.phi1(y)) / (y - x);
      assertThat(Relaxation.psi(x, y)).isCloseTo(quotient, within(1e-12));
    }
  }

  @Test
  void the_series_of_psi_meets_its_quotient_where_they_change_over() {
    assertThat(Relaxation.psi(0.004, Math.nextDown(1e-2)))
        .isCloseTo(Relaxation.psi(0.004, 1e-2), within(1e-12));
    assertThat(Relaxation.psi(0, 0)).isEqualTo(0.5);
    assertThat(Relaxation.psi(0, 3)).isCloseTo(Relaxation.phi2(3), within(1e-15));
  }

  @Test
  void a_release_that_ends_before_it_begins_is_a_programmers_error() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Release(2, 1, 1, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> new Release(1, 2, 1, -1));
    assertThatIllegalArgumentException().isThrownBy(() -> new Release(1, 2, Double.NaN, 0));
  }
}
