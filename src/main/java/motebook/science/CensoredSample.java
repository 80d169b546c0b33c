package motebook.science;

import java.util.Arrays;

/**
 * Lognormal results of which some are only known to lie below a limit of detection, fitted by
 * maximum likelihood.
 *
 * <p>The likelihood {@code Π φ((xᵢ−µ)/σ)/σ · Π Φ((cⱼ−µ)/σ)} of the logarithms is concave in γ = 1/σ
 * and δ = µ/σ (Olsen 1978, Econometrica 46:1211, from memory), so Newton's steps, halved where they
 * do not climb, find its only top. The spread so found has the divisor n, not n − 1.
 */
public final class CensoredSample {
  private static final int STEPS = 200;
  private static final double STILL = 1e-12;

  private final double centre;
  private final double[] told;
  private final double[] below;

  private CensoredSample(double[] logTold, double[] logBelow) {
    centre = Arrays.stream(logTold).average().orElseThrow();
    told = Arrays.stream(logTold).map(x -> x - centre).toArray();
    below = Arrays.stream(logBelow).map(x -> x - centre).toArray();
  }

  /**
   * The lognormal that fits best. Its {@code n} counts all results, as EN 689 asks of a set with
   * results below detection (from memory); its mean is that of the distribution: results that are
   * not known have no plain mean.
   *
   * @param told results, each above 0, two or more that differ
   * @param below the limits of detection that the others lie below, each above 0, one or more
   * @throws IllegalArgumentException otherwise
   */
  public static LognormalSample fit(double[] told, double[] below) {
    if (Arrays.stream(told).distinct().count() < 2 || below.length < 1) {
      throw new IllegalArgumentException("needs two results that differ and one below detection");
    }
    LognormalSample plain = LognormalSample.of(told);
    CensoredSample sample = new CensoredSample(logs(told), logs(below));
    Point top = sample.climb(new Point(1 / plain.logSd(), 0));
    double mean = sample.centre + top.delta / top.gamma;
    double sd = 1 / top.gamma;
    return new LognormalSample(told.length + below.length, Math.exp(mean + sd * sd / 2), mean, sd);
  }

  private static double[] logs(double[] values) {
    return Arrays.stream(values).map(Math::log).toArray();
  }

  private record Point(double gamma, double delta) {
    Point plus(Point step, double share) {
      return new Point(gamma + share * step.gamma, delta + share * step.delta);
    }

    double size() {
      return Math.max(Math.abs(gamma), Math.abs(delta));
    }
  }

  private Point climb(Point start) {
    Point here = start;
    for (int i = 0; i < STEPS; i++) {
      Point step = newton(here);
      Point next = higher(here, step);
      if (next.equals(here) || step.size() < STILL * (1 + here.size())) {
        return next;
      }
      here = next;
    }
    throw new IllegalStateException("no top found after " + STEPS + " steps");
  }

  private Point higher(Point here, Point step) {
    double height = logLikelihood(here);
    for (double share = 1; share > STILL; share /= 2) {
      Point next = here.plus(step, share);
      if (next.gamma > 0 && logLikelihood(next) >= height) {
        return next;
      }
    }
    return here;
  }

  private double logLikelihood(Point at) {
    double sum = told.length * Math.log(at.gamma);
    for (double x : told) {
      double z = at.gamma * x - at.delta;
      sum -= z * z / 2;
    }
    for (double c : below) {
      sum += Normal.logBelow(at.gamma * c - at.delta);
    }
    return sum;
  }

  /** The step that leads to the top of the parabola which touches the likelihood here. */
  private Point newton(Point at) {
    double g = told.length / at.gamma;
    double d = 0;
    double gg = told.length / (at.gamma * at.gamma);
    double gd = 0;
    double dd = told.length;
    for (double x : told) {
      double z = at.gamma * x - at.delta;
      g -= x * z;
      d += z;
      gg += x * x;
      gd -= x;
    }
    for (double c : below) {
      double z = at.gamma * c - at.delta;
      double ratio = Normal.ratioBelow(z);
      double bend = ratio * (ratio + z);
      g += c * ratio;
      d -= ratio;
      gg += c * c * bend;
      gd -= c * bend;
      dd += bend;
    }
    double determinant = gg * dd - gd * gd;
    return new Point((dd * g - gd * d) / determinant, (gg * d - gd * g) / determinant);
  }
}
