package motebook.science;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Updates all named parts together by measured means.
 *
 * <p>Each part is normal about 0 with its variance; {@code ln(result)} is normal about the log of
 * the sum of its sources. An observation of one source with a figure is exact in closed form, the
 * {@code kn = 1/τ² + n/σ²} of the teaching chapter of the R package glmbayes. For every other one
 * stands a normal {@link Site} in its sources' logarithms, chosen such that together with all that
 * is known without the observation it gives the moments of the exact distribution ({@link
 * TiltedSum}); all sites are drawn again, a share of the way at a time, until none moves:
 * expectation propagation (Minka 2001, from memory).
 */
final class Learning {
  private static final double STILL = 1e-6;
  private static final double NEARLY_STILL = 0.01;
  private static final int SWEEPS = 60;
  private static final double FIRST_SHARE = 0.8;
  private static final double LEAST_SHARE = 0.2;
  private static final double WORSE = 0.95;
  private static final double SLOWER = 0.6;
  private static final double FASTER = 1.2;
  // Where there are many observations each gets fewer points, and is laid to the sources that make
  // up most of it.
  private static final int MOST_POINTS = 8192;
  private static final int FEWEST_POINTS = 64;
  private static final int ALL_POINTS = 1 << 15;
  private static final int MANY = 16;
  private static final double LEFT_OUT = 0.05;

  private final Parts common = new Parts();
  private final List<ObservedGroup> groups;
  private final NormalPoints points;
  private final double still;
  private List<List<Site>> sites = new ArrayList<>();
  private NormalUpdate update;

  private Learning(List<Observation> observations) {
    Map<String, ObservedGroup> byName = new LinkedHashMap<>();
    long summed = observations.stream().filter(o -> o.shares().size() > 1).count();
    still = summed > MANY ? NEARLY_STILL : STILL;
    double leftOut = summed > MANY ? LEFT_OUT : 0;
    observations.forEach(
        o -> byName.computeIfAbsent(o.group(), any -> new ObservedGroup(common)).add(o, leftOut));
    groups = List.copyOf(byName.values());
    points =
        new NormalPoints(
            (int) Math.max(FEWEST_POINTS, Math.min(MOST_POINTS, ALL_POINTS / (summed + 1))));
    for (ObservedGroup group : groups) {
      List<Site> ofGroup = new ArrayList<>();
      for (int i = 0; i < group.observations().size(); i++) {
        ofGroup.add(first(group, i));
      }
      sites.add(ofGroup);
    }
    update = updated(sites).orElseThrow();
  }

  private static Site first(ObservedGroup group, int i) {
    Observation observed = group.observations().get(i);
    double[] typical = group.seen(i).logTypical();
    return group.exact(i)
        ? Site.exact(group.seen(i).figure() - typical[0], observed.variance())
        : Site.none(typical.length);
  }

  static Posterior of(List<Observation> observations) {
    Learning learning = new Learning(observations);
    learning.settle();
    return new Posterior(
        learning.common, learning.groups, learning.update, learning.sites, learning.agreements());
  }

  private void settle() {
    double share = FIRST_SHARE;
    double before = Double.POSITIVE_INFINITY;
    for (int sweep = 0; sweep < SWEEPS; sweep++) {
      Sweep next = new Sweep();
      if (next.moved < still) {
        return;
      }
      share =
          next.moved > WORSE * before
              ? Math.max(LEAST_SHARE, share * SLOWER)
              : Math.min(FIRST_SHARE, share * FASTER);
      before = next.moved;
      share = step(next.goals, share);
    }
  }

  /** Goes a share of the way; a smaller one where that leaves no distribution. */
  private double step(List<List<Site>> goals, double wanted) {
    for (double share = wanted; share > LEAST_SHARE / 1e3; share /= 2) {
      List<List<Site>> mixed = mixed(goals, share);
      Optional<NormalUpdate> next = updated(mixed);
      if (next.isPresent()) {
        sites = mixed;
        update = next.get();
        return wanted;
      }
    }
    return wanted;
  }

  private List<List<Site>> mixed(List<List<Site>> goals, double share) {
    List<List<Site>> mixed = new ArrayList<>();
    for (int g = 0; g < goals.size(); g++) {
      List<Site> ofGroup = new ArrayList<>();
      for (int i = 0; i < goals.get(g).size(); i++) {
        ofGroup.add(sites.get(g).get(i).towards(goals.get(g).get(i), share));
      }
      mixed.add(ofGroup);
    }
    return mixed;
  }

  private Optional<NormalUpdate> updated(List<List<Site>> of) {
    List<Site> together = new ArrayList<>();
    for (int g = 0; g < groups.size(); g++) {
      together.add(groups.get(g).together(of.get(g)));
    }
    return NormalUpdate.of(common, groups, together);
  }

  /** Where each site would go from here, and how far the farthest is from it. */
  private final class Sweep {
    private final List<List<Site>> goals = new ArrayList<>();
    private double moved;

    Sweep() {
      for (int g = 0; g < groups.size(); g++) {
        List<Site> ofGroup = new ArrayList<>();
        Outlook outlook = update.outlook(g);
        for (int i = 0; i < sites.get(g).size(); i++) {
          Site now = sites.get(g).get(i);
          ofGroup.add(groups.get(g).exact(i) ? now : goal(groups.get(g), i, now, outlook));
        }
        goals.add(ofGroup);
      }
    }

    private Site goal(ObservedGroup group, int i, Site now, Outlook outlook) {
      Outlook mine = outlook.at(group.seen(i).places());
      Optional<Outlook> without = mine.without(now);
      if (without.isEmpty()) {
        return now;
      }
      Outlook tilted = tilted(group, i, without.get()).sources();
      for (int k = 0; k < mine.means().length; k++) {
        double variance = mine.covariance()[k][k];
        double off = Math.abs(tilted.means()[k] - mine.means()[k]) / Math.sqrt(variance);
        double wider = Math.abs(tilted.covariance()[k][k] / variance - 1);
        moved = Math.max(moved, Math.max(off, wider));
      }
      return Site.between(without.get(), tilted).orElse(now);
    }
  }

  private TiltedSum.Moments tilted(ObservedGroup group, int i, Outlook without) {
    return TiltedSum.of(group.observations().get(i), group.seen(i), without, points);
  }

  private List<List<Fit>> agreements() {
    List<List<Fit>> all = new ArrayList<>();
    for (int g = 0; g < groups.size(); g++) {
      List<Fit> ofGroup = new ArrayList<>();
      Outlook outlook = update.outlook(g);
      for (int i = 0; i < sites.get(g).size(); i++) {
        ofGroup.add(agreement(groups.get(g), i, sites.get(g).get(i), outlook));
      }
      all.add(ofGroup);
    }
    return all;
  }

  private Fit agreement(ObservedGroup group, int i, Site site, Outlook outlook) {
    Outlook mine = outlook.at(group.seen(i).places());
    Outlook without = mine.without(site).orElse(mine);
    Forecast with = tilted(group, i, without).sum();
    Forecast others =
        Forecast.of(sum(group.seen(i).logTypical(), without.means()), without.covariance());
    double part = group.observations().get(i).log() - group.seen(i).figure();
    return new Fit(with.log() + part, with.variance(), others.log() + part, others.variance());
  }

  private static double[] sum(double[] one, double[] other) {
    double[] sum = Arrays.copyOf(one, one.length);
    Matrices.axpy(1, other, sum);
    return sum;
  }
}
