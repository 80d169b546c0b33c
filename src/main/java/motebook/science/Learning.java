package motebook.science;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealVector;

/**
 * Updates all named parts together by measured means.
 *
 * <p>Each part is normal about 0 with its variance; {@code ln(result)} is normal about the log of
 * the sum of its sources. That log is taken as a straight line in the parts: through the median of
 * the sum, with each source's share of the expected sum as its weight, both by {@link Forecast} at
 * the newest estimate. The normal system is solved exactly, the lines drawn anew, and so on until
 * they stay (Gauss and Newton's steps, with lines fitted over the whole estimate and not at one
 * point: posterior linearisation, García-Fernández 2015, from memory). A result below detection
 * stands in by the normal of the same moments, {@link Target#below}. With one source a line is no
 * approximation, and the update is the exact {@code kn = 1/τ² + n/σ²} of the teaching chapter of
 * the R package glmbayes.
 */
final class Learning {
  private static final double STILL = 1e-9;
  private static final double WEAKEST = Math.log(Target.WEAKEST);

  private final Parts common = new Parts();
  private final List<ObservedGroup> groups;
  private NormalUpdate update;
  private List<List<Line>> lines = List.of();
  private List<List<Target>> targets = List.of();

  private Learning(List<Observation> observations) {
    Map<String, ObservedGroup> byName = new LinkedHashMap<>();
    observations.forEach(
        o -> byName.computeIfAbsent(o.group(), any -> new ObservedGroup(common)).add(o));
    groups = List.copyOf(byName.values());
    update = NormalUpdate.none(common, groups);
  }

  static Posterior of(List<Observation> observations) {
    Learning learning = new Learning(observations);
    RealVector first = learning.sketch(true);
    learning.draw(new FixedPoint(learning::redrawn).from(first, STILL));
    return new Posterior(
        learning.common, learning.groups, learning.update, learning.lines, learning.targets);
  }

  private RealVector redrawn(RealVector sketch) {
    draw(sketch);
    return sketch(false);
  }

  /**
   * Solves the system of the lines and targets that a sketch stands for; one that was mixed from
   * others is kept within what can be.
   */
  private void draw(RealVector sketch) {
    List<List<Line>> newLines = new ArrayList<>();
    List<List<Target>> newTargets = new ArrayList<>();
    int next = 0;
    for (ObservedGroup group : groups) {
      List<Line> ofGroup = new ArrayList<>();
      List<Target> drawn = new ArrayList<>();
      for (int i = 0; i < group.observations().size(); i++) {
        double strongest = Math.log(group.observations().get(i).variance());
        double variance = Math.max(strongest, Math.min(sketch.getEntry(next + 1), WEAKEST));
        drawn.add(new Target(sketch.getEntry(next), Math.exp(variance)));
        double level = sketch.getEntry(next + 2);
        next += 3;
        double[] weights = new double[group.slopes(i).size()];
        for (int source = 0; source < weights.length; source++) {
          weights[source] = Math.max(0, Math.min(sketch.getEntry(next++), 1));
        }
        ofGroup.add(new Line(level, weights));
      }
      newLines.add(ofGroup);
      newTargets.add(drawn);
    }
    lines = newLines;
    targets = newTargets;
    update = NormalUpdate.of(common, groups, lines, targets);
  }

  /** For each observation: its target, the level of its line, the weight of each source. */
  private RealVector sketch(boolean first) {
    double[] sketch = new double[size()];
    int next = 0;
    for (int g = 0; g < groups.size(); g++) {
      for (int i = 0; i < groups.get(g).observations().size(); i++) {
        Outlook outlook = update.outlook(g, groups.get(g).slopes(i));
        Forecast forecast = forecast(groups.get(g).observations().get(i), outlook);
        Target target = target(g, i, outlook, forecast, first);
        sketch[next++] = target.log();
        sketch[next++] = Math.log(target.variance());
        int level = next++;
        sketch[level] = forecast.log();
        for (int s = 0; s < outlook.means().length; s++) {
          sketch[level] -= forecast.weight(s) * outlook.means()[s];
          sketch[next++] = forecast.weight(s);
        }
      }
    }
    return new ArrayRealVector(sketch, false);
  }

  private int size() {
    return groups.stream()
        .flatMap(group -> group.observations().stream())
        .mapToInt(observation -> 3 + observation.shares().size())
        .sum();
  }

  private static Forecast forecast(Observation observed, Outlook outlook) {
    double[] logs = new double[outlook.means().length];
    for (int s = 0; s < logs.length; s++) {
      logs[s] = Math.log(observed.shares().get(s).typical()) + outlook.means()[s];
    }
    return new Forecast(logs, outlook.covariance());
  }

  private Target target(
      int group, int observation, Outlook outlook, Forecast forecast, boolean first) {
    Observation observed = groups.get(group).observations().get(observation);
    if (!observed.below()) {
      return new Target(observed.log(), observed.variance());
    }
    Target without =
        first
            ? new Target(forecast.log(), forecast.variance())
            : without(group, observation, outlook);
    return Target.below(observed, without.log(), without.variance());
  }

  private Target without(int group, int observation, Outlook outlook) {
    Line line = lines.get(group).get(observation);
    return targets
        .get(group)
        .get(observation)
        .without(line.mean(outlook.means()), line.variance(outlook.covariance()));
  }
}
