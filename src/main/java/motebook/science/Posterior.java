package motebook.science;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** What all named parts became once observations spoke, and how each observation fits. */
public final class Posterior {
  /** Nothing was observed: every part is as it was first thought to be. */
  public static final Posterior NONE =
      new Posterior(new Parts(), List.of(), null, List.of(), List.of());

  private final Parts common;
  private final List<ObservedGroup> groups;
  private final NormalUpdate update;
  private final List<List<Site>> sites;
  private final List<List<Fit>> agreements;
  private final Map<String, Integer> owners = new HashMap<>();
  private final Map<String, Optional<Part>> parts = new ConcurrentHashMap<>();

  Posterior(
      Parts common,
      List<ObservedGroup> groups,
      NormalUpdate update,
      List<List<Site>> sites,
      List<List<Fit>> agreements) {
    this.common = common;
    this.groups = groups;
    this.update = update;
    this.sites = sites;
    this.agreements = agreements;
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
      return Optional.of(part(0, Slope.ofCommon(place, common.deviation(place))));
    }
    int group = owners.get(name);
    Parts own = groups.get(group).own();
    int ownPlace = own.place(name);
    return Optional.of(part(group, Slope.ofOwn(ownPlace, own.deviation(ownPlace))));
  }

  private Part part(int group, Slope slope) {
    return new Part(
        update.mean(group, slope),
        Map.of(
            "",
            update.onCommon(group, slope),
            groups.get(group).observations().get(0).group(),
            update.onOwn(group, slope)));
  }

  /** How each observation fits, by the observation itself: two of equal figures are two. */
  public IdentityHashMap<Observation, Fit> fits() {
    IdentityHashMap<Observation, Fit> fits = new IdentityHashMap<>();
    for (int g = 0; g < groups.size(); g++) {
      List<Observation> observations = groups.get(g).observations();
      for (int i = 0; i < observations.size(); i++) {
        fits.put(observations.get(i), agreements.get(g).get(i));
      }
    }
    return fits;
  }

  /**
   * Sums of the things of a day that some of its results shaped.
   *
   * @param doubts of each thing, by what was learned
   * @param results all of one group; of observations that this came from
   * @return nothing where one lognormal is exact: a single thing that has a figure
   */
  public Optional<ObservedSum> sums(List<Doubts> doubts, List<ObservedSum.Result> results) {
    List<Site> used = new ArrayList<>();
    List<int[]> ofShare = new ArrayList<>();
    boolean exact = true;
    for (ObservedSum.Result result : results) {
      ObservedGroup group = groupOf(result.observation());
      int at = group.placeOf(result.observation());
      used.add(sites.get(groups.indexOf(group)).get(at));
      ofShare.add(group.seen(at).ofShare());
      exact &= group.exact(at);
    }
    return exact && doubts.size() == 1
        ? Optional.empty()
        : Optional.of(new ObservedSum(doubts, results, used, ofShare));
  }

  private ObservedGroup groupOf(Observation observation) {
    return groups.stream()
        .filter(group -> group.observations().get(0).group().equals(observation.group()))
        .findFirst()
        .orElseThrow();
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
