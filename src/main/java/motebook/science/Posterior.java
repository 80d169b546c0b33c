package motebook.science;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.hipparchus.linear.RealVector;

/** What all named parts became once observations spoke, and how each observation fits. */
public final class Posterior {
  /** Nothing was observed: every part is as it was first thought to be. */
  public static final Posterior NONE =
      new Posterior(new Parts(), List.of(), null, List.of(), List.of());

  private final Parts common;
  private final List<ObservedGroup> groups;
  private final NormalUpdate update;
  private final List<List<Line>> lines;
  private final List<List<Target>> targets;
  private final Map<String, Integer> owners = new HashMap<>();
  private final Map<String, Optional<Part>> parts = new ConcurrentHashMap<>();

  Posterior(
      Parts common,
      List<ObservedGroup> groups,
      NormalUpdate update,
      List<List<Line>> lines,
      List<List<Target>> targets) {
    this.common = common;
    this.groups = groups;
    this.update = update;
    this.lines = lines;
    this.targets = targets;
    for (int g = groups.size() - 1; g >= 0; g--) {
      for (String name : groups.get(g).own().names()) {
        owners.put(name, g);
      }
    }
  }

  /**
   * Updates all parts that some observations bear on.
   *
   * @param observations a name must mean the same part, of the same variance, in all of them
   */
  public static Posterior of(List<Observation> observations) {
    return observations.isEmpty() ? NONE : Learning.of(observations);
  }

  /** A part that observations bear on; empty for one that is as it was. */
  public Optional<Part> part(String name) {
    // what no observation bears on is not kept: there is no end to such names
    return common.place(name) < 0 && !owners.containsKey(name)
        ? Optional.empty()
        : parts.computeIfAbsent(name, this::find);
  }

  private Optional<Part> find(String name) {
    int place = common.place(name);
    if (place >= 0) {
      RealVector slope = unit(common, place);
      return Optional.of(part(0, new Slope(slope, groups.get(0).own().zero())));
    }
    int group = owners.getOrDefault(name, -1);
    if (group < 0) {
      return Optional.empty();
    }
    Parts own = groups.get(group).own();
    return Optional.of(part(group, new Slope(common.zero(), unit(own, own.place(name)))));
  }

  private static RealVector unit(Parts parts, int place) {
    RealVector unit = parts.zero();
    unit.setEntry(place, parts.deviation(place));
    return unit;
  }

  private Part part(int group, Slope slope) {
    Slope rests = update.loadings(group, slope);
    return new Part(
        update.mean(group, slope),
        Map.of(
            "",
            rests.common().toArray(),
            groups.get(group).observations().get(0).group(),
            rests.own().toArray()));
  }

  /** How each observation fits, by the observation itself: two of equal figures are two. */
  public IdentityHashMap<Observation, Fit> fits() {
    IdentityHashMap<Observation, Fit> fits = new IdentityHashMap<>();
    for (int g = 0; g < groups.size(); g++) {
      List<Observation> observations = groups.get(g).observations();
      for (int i = 0; i < observations.size(); i++) {
        fits.put(observations.get(i), fit(g, i));
      }
    }
    return fits;
  }

  // To take an observation out, each source goes back by its covariance with the prediction, and
  // gets back the doubt that the observation took.
  private Fit fit(int group, int observation) {
    Line line = lines.get(group).get(observation);
    Target target = targets.get(group).get(observation);
    Slope rests = update.loadings(group, line.slope());
    double variance = rests.dot(rests);
    double predicted = line.level() + update.mean(group, line.slope());
    double left = target.variance() - variance;
    List<Slope> slopes = groups.get(group).slopes(observation);
    double[] logs = new double[slopes.size()];
    double[][] covariance = new double[slopes.size()][slopes.size()];
    List<Slope> loadings = slopes.stream().map(slope -> update.loadings(group, slope)).toList();
    for (int i = 0; i < logs.length; i++) {
      double back = loadings.get(i).dot(rests) / left;
      double typical = groups.get(group).observations().get(observation).shares().get(i).typical();
      logs[i] =
          Math.log(typical) + update.mean(group, slopes.get(i)) + back * (predicted - target.log());
      for (int j = 0; j < logs.length; j++) {
        covariance[i][j] = loadings.get(i).dot(loadings.get(j)) + back * loadings.get(j).dot(rests);
      }
    }
    Forecast without = new Forecast(logs, covariance);
    return new Fit(predicted, variance, without.log(), without.variance());
  }

  /**
   * A lognormal term by what its parts became.
   *
   * @param prior by what they were first thought to be
   */
  public LognormalSum.Term applied(LognormalSum.Term prior) {
    Outcome outcome = outcome(prior.doubts());
    return outcome.doubts == prior.doubts()
        ? prior
        : new LognormalSum.Term(prior.typical() * Math.exp(outcome.shift), outcome.doubts);
  }

  /**
   * What became of some doubts.
   *
   * @param shift of the logarithm of what has them
   * @param doubts those that are left
   */
  public record Outcome(double shift, Doubts doubts) {}

  /** What became of some doubts. */
  public Outcome outcome(Doubts prior) {
    Map<String, Double> left = prior.variances();
    Map<String, double[]> rows = new HashMap<>();
    prior.rows().forEach((name, row) -> rows.put(name, row.clone()));
    double shift = 0;
    boolean touched = false;
    for (String name : prior.names) {
      Optional<Part> part = part(name);
      if (part.isPresent()) {
        touched = true;
        shift += part.get().shift();
        left.remove(name);
        part.get().rows().forEach((row, values) -> rows.merge(row, values, Doubts::sum));
      }
    }
    return touched ? new Outcome(shift, new Doubts(left, rows)) : new Outcome(0, prior);
  }
}
