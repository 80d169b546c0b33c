package motebook.science;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What is thought of an observation's sources once it has spoken, in exact moments.
 *
 * <p>The sources' logarithms are joint normals x before. With {@code a = V⁻¹1/(1ᵀV⁻¹1)} the level
 * {@code λ = aᵀx} and what is left, {@code ξ = x − λ1}, are independent, and the logarithm of the
 * sum of the sources is {@code f(ξ) + λ}: so λ is integrated in closed form, whether the result has
 * a figure or lies below one, and only ξ is taken at points. They lie about the likeliest place
 * and, where the result is above what was expected, about each place at which one source alone
 * gives it; each point weighs by its density over that of the mixture of these clouds.
 */
final class TiltedSum {
  private static final int STEPS = 30;
  private static final double FARTHEST = 8;
  private static final double STRIDE = 0.25;
  private static final int FEWEST = 32;

  private final double figure;
  private final boolean below;
  private final double error;
  private final double[] middle;
  private final double[] logs;
  private final double level;
  private final double[][] spread;

  private double weight;
  private final double[] mean;
  private final double[][] square;
  private double ofLevel;
  private double sumMean;
  private double sumSquare;

  /**
   * Exact moments.
   *
   * @param sources of the sources' logarithms
   * @param sum of the logarithm of their sum
   */
  record Moments(Outlook sources, Forecast sum) {}

  private TiltedSum(Observation observed, ObservedGroup.Seen seen, Outlook before) {
    int n = seen.places().length;
    figure = seen.figure();
    below = observed.below();
    error = observed.variance();
    middle = before.means();
    logs = seen.logTypical().clone();
    Matrices.axpy(1, middle, logs);
    double[][] lower = Matrices.lowerOfNearly(before.covariance());
    double[][] root = Matrices.inverseRoot(lower);
    double[] ones = new double[n];
    Arrays.fill(ones, 1);
    double[] b = Matrices.product(Matrices.transposed(root, n), ones);
    double sum = Matrices.dot(b, b);
    level = 1 / sum;
    spread = Matrices.product(lower, complement(b, Math.sqrt(sum)));
    mean = new double[n];
    square = new double[n][n];
  }

  /** Columns that with b/|b| make up an orthonormal basis, by a Householder reflection. */
  private static double[][] complement(double[] b, double length) {
    int n = b.length;
    double[] v = new double[n];
    for (int i = 0; i < n; i++) {
      v[i] = b[i] / length;
    }
    v[0] -= v[0] > 0 ? -1 : 1;
    double half = Matrices.dot(v, v) / 2;
    double[][] columns = new double[n][n - 1];
    for (int i = 0; i < n; i++) {
      for (int j = 1; j < n; j++) {
        columns[i][j - 1] = (i == j ? 1 : 0) - v[i] * v[j] / half;
      }
    }
    return columns;
  }

  /**
   * The moments.
   *
   * @param seen its sources
   * @param before what was thought without the observation
   */
  static Moments of(
      Observation observed, ObservedGroup.Seen seen, Outlook before, NormalPoints points) {
    TiltedSum sum = new TiltedSum(observed, seen, before);
    sum.gather(points.in(seen.places().length - 1));
    return sum.moments();
  }

  private void gather(double[][] points) {
    List<double[]> clouds = clouds();
    int each = Math.max(Math.min(FEWEST, points.length), points.length / clouds.size());
    double[] at = new double[points[0].length];
    for (int cloud = 0; cloud < clouds.size(); cloud++) {
      for (int i = 0; i < each; i++) {
        double[] point = points[(cloud * each + i) % points.length];
        for (int d = 0; d < at.length; d++) {
          at[d] = clouds.get(cloud)[d] + point[d];
        }
        add(at, Math.exp(-Matrices.dot(at, at) / 2) / density(at, clouds));
      }
    }
  }

  private static double density(double[] at, List<double[]> clouds) {
    double sum = 0;
    for (double[] cloud : clouds) {
      double distance = 0;
      for (int d = 0; d < at.length; d++) {
        distance += (at[d] - cloud[d]) * (at[d] - cloud[d]);
      }
      sum += Math.exp(-distance / 2);
    }
    return sum;
  }

  private double logSum(double[] at) {
    return Forecast.logSum(sources(at));
  }

  private double[] sources(double[] at) {
    double[] sources = Matrices.product(spread, at);
    Matrices.axpy(1, logs, sources);
    return sources;
  }

  private void add(double[] at, double ofPoint) {
    double[] x = Matrices.product(spread, at);
    double[] sources = x.clone();
    Matrices.axpy(1, logs, sources);
    double sum = Forecast.logSum(sources);
    double off = figure - sum;
    double whole = level + error;
    double shift;
    double left;
    double likely;
    if (below) {
      double z = off / Math.sqrt(whole);
      double ratio = Normal.ratioBelow(z);
      shift = -level / Math.sqrt(whole) * ratio;
      left = level - level * level / whole * ratio * (ratio + z);
      likely = Math.exp(Normal.logBelow(z));
    } else {
      shift = off * level / whole;
      left = level * error / whole;
      likely = Math.exp(-off * off / whole / 2);
    }
    double w = ofPoint * likely;
    weight += w;
    ofLevel += w * left;
    sumMean += w * (sum + shift);
    sumSquare += w * ((sum + shift) * (sum + shift) + left);
    for (int i = 0; i < x.length; i++) {
      x[i] += shift;
      mean[i] += w * x[i];
      for (int j = 0; j <= i; j++) {
        square[i][j] += w * x[i] * x[j];
      }
    }
  }

  private Moments moments() {
    int n = mean.length;
    double[] means = new double[n];
    double[][] covariance = new double[n][n];
    for (int i = 0; i < n; i++) {
      means[i] = mean[i] / weight;
      for (int j = 0; j <= i; j++) {
        covariance[i][j] = square[i][j] / weight - means[i] * means[j] + ofLevel / weight;
        covariance[j][i] = covariance[i][j];
      }
    }
    Matrices.axpy(1, middle, means);
    double log = sumMean / weight;
    return new Moments(
        new Outlook(means, covariance), new Forecast(log, sumSquare / weight - log * log));
  }

  /** Where the clouds of points lie. */
  private List<double[]> clouds() {
    int dimensions = spread[0].length;
    List<double[]> clouds = new ArrayList<>();
    double[] origin = new double[dimensions];
    double expected = logSum(origin);
    clouds.add(below && expected <= figure ? origin : likeliest());
    if (!below && expected < figure && dimensions > 0) {
      for (double[] source : spread) {
        clouds.add(alone(source));
      }
    }
    return clouds;
  }

  private double cost(double[] at) {
    double off = figure - logSum(at);
    return Matrices.dot(at, at) / 2 + off * off / (level + error) / 2;
  }

  /** Gauss and Newton's steps, halved where they do not lead down. */
  private double[] likeliest() {
    double[] here = new double[spread[0].length];
    double cost = cost(here);
    for (int step = 0; step < STEPS; step++) {
      double[] sources = sources(here);
      double sum = Forecast.logSum(sources);
      double[] slope = new double[here.length];
      for (int i = 0; i < sources.length; i++) {
        Matrices.axpy(Math.exp(sources[i] - sum), spread[i], slope);
      }
      double[] move = new double[here.length];
      Matrices.axpy((figure - sum) / (level + error), slope, move);
      Matrices.axpy(-1, here, move);
      Matrices.axpy(
          -Matrices.dot(slope, move) / (level + error + Matrices.dot(slope, slope)), slope, move);
      double share = 1;
      double[] next = moved(here, share, move);
      while (cost(next) > cost && share > 1e-3) {
        share /= 2;
        next = moved(here, share, move);
      }
      double lower = cost(next);
      if (!(lower < cost - 1e-6)) {
        break;
      }
      here = next;
      cost = lower;
    }
    return here;
  }

  private static double[] moved(double[] here, double share, double[] move) {
    double[] next = here.clone();
    Matrices.axpy(share, move, next);
    return next;
  }

  /** Where one source that rises alone makes the result likeliest. */
  private double[] alone(double[] source) {
    double length = Math.sqrt(Matrices.dot(source, source));
    double[] best = new double[source.length];
    double least = cost(best);
    for (double far = STRIDE; far <= FARTHEST && length > 0; far += STRIDE) {
      double[] there = moved(new double[source.length], far / length, source);
      double cost = cost(there);
      if (cost < least) {
        least = cost;
        best = there;
      }
    }
    return best;
  }
}
