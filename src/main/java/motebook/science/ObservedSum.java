package motebook.science;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Sums of the lognormal things of an observed day, which are no longer lognormal alone: where
 * several made up one result, what one made less another made more.
 *
 * <p>The things are taken at evenly spread points of the joint normals that stand for them, and
 * each point weighs by the likelihood of the day's results over what their {@link Site}s say. The
 * middle and both ends of the 90 % range are those of the weighted sums.
 */
public final class ObservedSum {
  private static final int POINTS = 4096;
  private static final double END = 0.05;

  private final double[][] factors;
  private final double[] weights;

  /**
   * A result and the things that made it up.
   *
   * @param observation the result; its shares are what each thing was thought to add before
   * @param things the place of each share's thing
   * @param shifts of each share's thing: the logarithm by which its typical value was moved
   */
  @SuppressWarnings("ArrayRecordComponent") // never compared, written once
  public record Result(Observation observation, int[] things, double[] shifts) {}

  /**
   * Things and the results that they made up.
   *
   * @param doubts of each thing
   */
  ObservedSum(List<Doubts> doubts, List<Result> results, List<Site> sites, List<int[]> ofShare) {
    double[][] root = Matrices.lowerOfNearly(new SharedDoubts(doubts).covariance());
    double[][] points = new NormalPoints(POINTS).in(root.length);
    factors = new double[points.length][];
    double[] logs = new double[points.length];
    for (int p = 0; p < points.length; p++) {
      double[] x = Matrices.product(root, points[p]);
      for (int r = 0; r < sites.size(); r++) {
        logs[p] += log(results.get(r), sites.get(r), ofShare.get(r), x);
      }
      factors[p] = Arrays.stream(x).map(Math::exp).toArray();
    }
    double most = Arrays.stream(logs).max().orElseThrow();
    weights = Arrays.stream(logs).map(log -> Math.exp(log - most)).toArray();
  }

  /** What a result says of a point beyond its site. */
  private static double log(Result result, Site site, int[] ofShare, double[] x) {
    Observation observed = result.observation();
    double[] sources = new double[site.pull().length];
    double[] adds = new double[result.things().length];
    for (int s = 0; s < adds.length; s++) {
      double moved = result.shifts()[s] + x[result.things()[s]];
      if (ofShare[s] >= 0) {
        sources[ofShare[s]] = moved;
      }
      adds[s] = Math.log(observed.shares().get(s).typical()) + moved;
    }
    double off = (observed.log() - Forecast.logSum(adds)) / Math.sqrt(observed.variance());
    return (observed.below() ? Normal.logBelow(off) : -off * off / 2) - site.log(sources);
  }

  /**
   * The sum of the things; nothing where all are zero.
   *
   * @param typical of each, ≥ 0, in their order
   */
  public Estimate sum(double[] typical) {
    double all = Arrays.stream(typical).sum();
    if (all == 0) {
      return Estimate.ZERO;
    }
    double[] sums = new double[factors.length];
    for (int p = 0; p < sums.length; p++) {
      sums[p] = Matrices.dot(factors[p], typical);
    }
    int[] order =
        IntStream.range(0, sums.length)
            .boxed()
            .sorted(Comparator.comparingDouble(p -> sums[p]))
            .mapToInt(Integer::intValue)
            .toArray();
    return Estimate.ofRange(
        all,
        quantile(sums, order, END),
        quantile(sums, order, 0.5),
        quantile(sums, order, 1 - END));
  }

  private double quantile(double[] sums, int[] order, double share) {
    double goal = share * Arrays.stream(weights).sum();
    double passed = 0;
    int i = 0;
    while (i < order.length - 1 && passed + weights[order[i]] < goal) {
      passed += weights[order[i++]];
    }
    return sums[order[i]];
  }
}
