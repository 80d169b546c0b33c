package motebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The decoupled near field against the full two-zone equations {@code V_N C_N' = G + β(C_F − C_N)},
 * {@code V_F C_F' = β(C_N − C_F) − (Q + kV_F)C_F}, solved numerically.
 */
class TwoZoneTest {
  private static final double NEAR_VOLUME = 2.0 / 3 * Math.PI * Math.pow(NearField.RADIUS_M, 3);

  @ParameterizedTest
  @CsvSource({"1,0.595947,0.104426", "15,1.962820,1.470084", "60,4.707130,4.211955"})
  void the_full_equations_give_the_derived_values(double minutes, double near, double far) {
    double[] end = solve(new Case(90, 1.5 / 90 * 60, 0, 10, minutes), 10);
    assertThat(end[0]).isCloseTo(near, within(1e-5));
    assertThat(end[1]).isCloseTo(far, within(1e-5));
  }

  @ParameterizedTest
  @CsvSource({"15,1.253229,0.762849", "60,2.941987,2.448812"})
  void the_full_equations_give_the_derived_means(double minutes, double near, double far) {
    double[] end = solve(new Case(90, 1.5 / 90 * 60, 0, 10, minutes), 10);
    assertThat(end[2] / minutes).isCloseTo(near, within(1e-5));
    assertThat(end[3] / minutes).isCloseTo(far, within(1e-5));
  }

  @Test
  void in_shops_of_40_m3_and_more_the_mean_lies_within_3_percent_of_the_full_equations() {
    Random random = new Random(20260302);
    for (int i = 0; i < 400; i++) {
      assertClose(randomCase(random, 40, 15, 6), 0.03);
    }
  }

  @Test
  void in_the_smallest_shops_the_mean_lies_within_7_percent_of_the_full_equations() {
    Random random = new Random(20260303);
    for (int i = 0; i < 400; i++) {
      assertClose(randomCase(random, 20, 5, 3), 0.07);
    }
  }

  private static void assertClose(Case c, double bound) {
    double full = solve(c, 10)[2] / c.minutes;
    double beta = NearField.exchangeM3PerMin(c.airSpeed);
    double loss = Loss.rate(c.airChanges, c.settling, 0, c.volume);
    RoomTrace room =
        new RoomTrace(c.volume, List.of(new Loss(0, c.minutes, loss)), 10, 0, c.minutes);
    double decoupled = 10 / beta + room.mgMinPerM3(0, c.minutes) / c.minutes;
    assertThat(decoupled / full).as(c.toString()).isBetween(1 - bound, 1 + bound);
  }

  private static Case randomCase(Random random, double volume, double minutes, double speed) {
    return new Case(
        volume * Math.pow(25, random.nextDouble()),
        0.2 * Math.pow(50, random.nextDouble()),
        random.nextBoolean() ? Dust.COARSE.settlingPerHour() : Dust.FINE.settlingPerHour(),
        speed * Math.pow(4, random.nextDouble()),
        minutes * Math.pow(16, random.nextDouble()));
  }

  /** Near and far concentration at the end, then their integrals over the time. */
  private static double[] solve(Case c, double emission) {
    double beta = NearField.exchangeM3PerMin(c.airSpeed);
    double farVolume = c.volume - NEAR_VOLUME;
    double lost = c.airChanges / 60 * c.volume + c.settling / 60 * c.volume;
    OrdinaryDifferentialEquation zones =
        new OrdinaryDifferentialEquation() {
          @Override
          public int getDimension() {
            return 4;
          }

          @Override
          public double[] computeDerivatives(double t, double[] y) {
            return new double[] {
              (emission + beta * (y[1] - y[0])) / NEAR_VOLUME,
              (beta * (y[0] - y[1]) - lost * y[1]) / farVolume,
              y[0],
              y[1]
            };
          }
        };
    return new DormandPrince853Integrator(1e-9, 10, 1e-9, 1e-9)
        .integrate(zones, new ODEState(0, new double[4]), c.minutes)
        .getPrimaryState();
  }

  private record Case(
      double volume, double airChanges, double settling, double airSpeed, double minutes) {}
}
