package motebook.science;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import motebook.science.Observation.Share;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.special.Erf;

/**
 * The posterior of named parts by importance sampling, without any of the program's own
 * mathematics: random draws of the sources' logarithms from a normal that is fitted to them in a
 * few rounds (population Monte Carlo, Cappé 2004, from memory), each weighed by prior times
 * likelihood over the density it was drawn from.
 */
final class BruteForce {
  private static final int ROUNDS = 12;
  private static final int DRAWS = 10_000;
  private static final double WIDER = 1.6;

  private final List<Observation> observations;
  private final List<Map<String, Double>> sources = new ArrayList<>();
  private final List<int[]> places = new ArrayList<>();
  private final RealMatrix prior;
  private final RealMatrix priorInverse;
  private final Random random = new Random(1);

  private final double[][] draws;
  private final double[] weights;

  BruteForce(List<Observation> observations, int lastDraws) {
    this.observations = observations;
    for (Observation o : observations) {
      places.add(o.shares().stream().mapToInt(this::placeOf).toArray());
    }
    prior = covariance(sources, sources);
    priorInverse = new LUDecomposition(prior).getSolver().getInverse();
    double[] centre = new double[sources.size()];
    RealMatrix spread = prior;
    double[][] drawn = {};
    double[] weighed = {};
    for (int round = 0; round <= ROUNDS; round++) {
      boolean last = round == ROUNDS;
      // flattened at first, so that far results are found step by step
      double heat = Math.pow(0.5, Math.max(0, ROUNDS - 3 - round));
      drawn = new double[last ? lastDraws : DRAWS][];
      weighed = draw(drawn, centre, spread.scalarMultiply(WIDER), heat);
      if (!last) {
        centre = mean(drawn, weighed);
        spread = spread(drawn, weighed, centre);
      }
    }
    draws = drawn;
    weights = weighed;
  }

  private static Map<String, Double> parts(Share share) {
    Map<String, Double> all = new HashMap<>(share.common());
    all.putAll(share.own());
    return all;
  }

  private int placeOf(Share share) {
    Map<String, Double> parts = parts(share);
    if (!sources.contains(parts)) {
      sources.add(parts);
    }
    return sources.indexOf(parts);
  }

  private static RealMatrix covariance(
      List<Map<String, Double>> rows, List<Map<String, Double>> columns) {
    RealMatrix covariance = new Array2DRowRealMatrix(rows.size(), columns.size());
    for (int i = 0; i < rows.size(); i++) {
      for (int j = 0; j < columns.size(); j++) {
        double shared = 0;
        for (Map.Entry<String, Double> part : rows.get(i).entrySet()) {
          shared += columns.get(j).containsKey(part.getKey()) ? part.getValue() : 0;
        }
        covariance.setEntry(i, j, shared + (rows == columns && i == j ? 1e-9 : 0));
      }
    }
    return covariance;
  }

  private double[] draw(double[][] drawn, double[] centre, RealMatrix spread, double heat) {
    RealMatrix root = new CholeskyDecomposition(spread, 1e-6, 0).getL();
    double[] logs = new double[drawn.length];
    for (int n = 0; n < drawn.length; n++) {
      double[] z = new double[centre.length];
      double size = 0;
      for (int i = 0; i < z.length; i++) {
        z[i] = random.nextGaussian();
        size += z[i] * z[i];
      }
      double[] x = root.operate(z);
      for (int i = 0; i < x.length; i++) {
        x[i] += centre[i];
      }
      drawn[n] = x;
      logs[n] = size / 2 + logPrior(x) + heat * logLikelihood(x);
    }
    double most = Arrays.stream(logs).max().orElseThrow();
    return Arrays.stream(logs).map(log -> Math.exp(log - most)).toArray();
  }

  private double logPrior(double[] x) {
    double[] y = priorInverse.operate(x);
    double sum = 0;
    for (int i = 0; i < x.length; i++) {
      sum -= x[i] * y[i] / 2;
    }
    return sum;
  }

  private double logLikelihood(double[] x) {
    double sum = 0;
    for (int i = 0; i < observations.size(); i++) {
      Observation o = observations.get(i);
      double predicted = 0;
      for (int s = 0; s < o.shares().size(); s++) {
        predicted += o.shares().get(s).typical() * Math.exp(x[places.get(i)[s]]);
      }
      double off = (o.log() - Math.log(predicted)) / Math.sqrt(o.variance());
      sum +=
          o.below()
              ? Math.log(Math.max(1e-300, Erf.erfc(-off / Math.sqrt(2)) / 2))
              : -off * off / 2;
    }
    return sum;
  }

  private static double[] mean(double[][] drawn, double[] weighed) {
    double[] mean = new double[drawn[0].length];
    double all = Arrays.stream(weighed).sum();
    for (int n = 0; n < drawn.length; n++) {
      for (int i = 0; i < mean.length; i++) {
        mean[i] += weighed[n] / all * drawn[n][i];
      }
    }
    return mean;
  }

  private RealMatrix spread(double[][] drawn, double[] weighed, double[] mean) {
    int size = mean.length;
    double[][] spread = new double[size][size];
    double all = Arrays.stream(weighed).sum();
    for (int n = 0; n < drawn.length; n++) {
      for (int i = 0; i < size; i++) {
        for (int j = 0; j < size; j++) {
          spread[i][j] += weighed[n] / all * (drawn[n][i] - mean[i]) * (drawn[n][j] - mean[j]);
        }
      }
    }
    // never quite flat, where few draws weighed anything
    return new Array2DRowRealMatrix(spread).scalarMultiply(0.97).add(prior.scalarMultiply(0.003));
  }

  /** How many even draws the weighed ones are worth. */
  double effectiveDraws() {
    double sum = Arrays.stream(weights).sum();
    return sum * sum / Arrays.stream(weights).map(w -> w * w).sum();
  }

  /**
   * The 5th, 50th and 95th percentile of a sum of lognormal terms.
   *
   * @param typical of each by its parts
   */
  double[] ofSum(Map<Map<String, Double>, Double> typical) {
    List<Map<String, Double>> terms = List.copyOf(new LinkedHashMap<>(typical).keySet());
    RealMatrix with = covariance(terms, sources);
    RealMatrix slope = with.multiply(priorInverse);
    RealMatrix left = covariance(terms, terms).subtract(slope.multiply(with.transpose()));
    left = left.add(left.transpose()).scalarMultiply(0.5);
    for (int i = 0; i < terms.size(); i++) {
      left.addToEntry(i, i, 1e-7);
    }
    RealMatrix root = new CholeskyDecomposition(left, 1e-6, 0).getL();
    double[] sums = new double[draws.length];
    for (int n = 0; n < draws.length; n++) {
      double[] z = new double[terms.size()];
      for (int i = 0; i < z.length; i++) {
        z[i] = random.nextGaussian();
      }
      double[] x = slope.operate(draws[n]);
      double[] more = root.operate(z);
      for (int i = 0; i < x.length; i++) {
        sums[n] += typical.get(terms.get(i)) * Math.exp(x[i] + more[i]);
      }
    }
    int[] order =
        IntStream.range(0, sums.length)
            .boxed()
            .sorted(Comparator.comparingDouble(n -> sums[n]))
            .mapToInt(Integer::intValue)
            .toArray();
    return new double[] {
      quantile(sums, order, 0.05), quantile(sums, order, 0.5), quantile(sums, order, 0.95)
    };
  }

  private double quantile(double[] sums, int[] order, double share) {
    double goal = share * Arrays.stream(weights).sum();
    double passed = 0;
    for (int n : order) {
      passed += weights[n];
      if (passed >= goal) {
        return sums[n];
      }
    }
    return sums[order[order.length - 1]];
  }
}
