package motebook.science;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import motebook.science.Observation.Share;

/**
 * Observations that may share own parts, and how their sources rest on the parts. Sources that rest
 * on the same parts are one.
 */
final class ObservedGroup {
  private final List<Observation> observations = new ArrayList<>();
  private final Parts common;
  private final Parts own = new Parts();
  private final Map<List<Map<String, Double>>, Integer> places = new LinkedHashMap<>();
  private final List<Seen> seen = new ArrayList<>();
  private List<Slope> slopes = List.of();

  /**
   * The sources of an observation.
   *
   * @param places of the sources in the group, each once
   * @param logTypical logarithm of what each was thought to add
   * @param ofShare for each share its place in the two others, −1 for one that is left out
   * @param figure logarithm of the part of the result that these sources were thought to be
   */
  @SuppressWarnings("ArrayRecordComponent") // never compared, written once
  record Seen(int[] places, double[] logTypical, int[] ofShare, double figure) {}

  /** An empty group; the common parts are those of all groups. */
  ObservedGroup(Parts common) {
    this.common = common;
  }

  /**
   * Adds an observation.
   *
   * @param leftOut the part of it, by expectation, that may go unexplained: the least sources that
   *     make it up together are taken as a fixed part of the sum
   */
  void add(Observation observation, double leftOut) {
    observations.add(observation);
    boolean[] kept = kept(observation, leftOut);
    double all = 0;
    double explained = 0;
    for (int i = 0; i < kept.length; i++) {
      Share share = observation.shares().get(i);
      all += expected(share);
      if (kept[i]) {
        explained += expected(share);
        common.add(share.common());
        own.add(share.own());
      }
    }
    seen.add(seen(observation, kept, Math.log(explained / all)));
  }

  private static boolean[] kept(Observation observation, double leftOut) {
    List<Share> shares = observation.shares();
    double all = shares.stream().mapToDouble(ObservedGroup::expected).sum();
    boolean[] kept = new boolean[shares.size()];
    Arrays.fill(kept, true);
    double left = leftOut * all;
    for (int i :
        IntStream.range(0, kept.length)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> expected(shares.get(i))))
            .toList()) {
      left -= expected(shares.get(i));
      kept[i] = left < 0;
    }
    return kept;
  }

  private static double expected(Share share) {
    double variance = 0;
    for (double part : share.common().values()) {
      variance += part;
    }
    for (double part : share.own().values()) {
      variance += part;
    }
    return share.typical() * Math.exp(variance / 2);
  }

  private Seen seen(Observation observation, boolean[] kept, double part) {
    Map<Integer, Integer> mine = new LinkedHashMap<>();
    Map<Integer, Double> typical = new HashMap<>();
    int[] ofShare = new int[kept.length];
    Arrays.fill(ofShare, -1);
    for (int i = 0; i < kept.length; i++) {
      if (kept[i]) {
        Share share = observation.shares().get(i);
        int place =
            places.computeIfAbsent(List.of(share.common(), share.own()), any -> places.size());
        typical.merge(place, share.typical(), Double::sum);
        ofShare[i] = mine.computeIfAbsent(place, any -> mine.size());
      }
    }
    return new Seen(
        mine.keySet().stream().mapToInt(Integer::intValue).toArray(),
        mine.keySet().stream().mapToDouble(place -> Math.log(typical.get(place))).toArray(),
        ofShare,
        observation.log() + part);
  }

  List<Observation> observations() {
    return observations;
  }

  /** The place of one of its observations, by the observation itself. */
  @SuppressWarnings("ReferenceEquality") // two results may say the same
  int placeOf(Observation observation) {
    for (int i = 0; i < observations.size(); i++) {
      if (observations.get(i) == observation) {
        return i;
      }
    }
    throw new IllegalArgumentException("not an observation of this group");
  }

  /** Whether an observation is of one source and has a figure, so that its site is exact. */
  boolean exact(int observation) {
    return seen.get(observation).places().length == 1 && !observations.get(observation).below();
  }

  Seen seen(int observation) {
    return seen.get(observation);
  }

  /** What sites of its observations say of all its sources together. */
  Site together(List<Site> sites) {
    Site all = Site.none(places.size());
    for (int i = 0; i < sites.size(); i++) {
      int[] at = seen.get(i).places();
      for (int k = 0; k < at.length; k++) {
        all.pull()[at[k]] += sites.get(i).pull()[k];
        for (int l = 0; l < at.length; l++) {
          all.precision()[at[k]][at[l]] += sites.get(i).precision()[k][l];
        }
      }
    }
    return all;
  }

  Parts own() {
    return own;
  }

  /** How each source changes with the parts; once all groups are complete. */
  List<Slope> slopes() {
    if (slopes.size() < places.size()) {
      slopes = places.keySet().stream().map(maps -> slope(maps.get(0), maps.get(1))).toList();
    }
    return slopes;
  }

  private Slope slope(Map<String, Double> ofAll, Map<String, Double> ofGroup) {
    int[] inCommon = places(common, ofAll);
    int[] inOwn = places(own, ofGroup);
    return new Slope(inCommon, deviations(common, inCommon), inOwn, deviations(own, inOwn));
  }

  private static int[] places(Parts parts, Map<String, Double> of) {
    return of.keySet().stream().mapToInt(parts::place).filter(at -> at >= 0).sorted().toArray();
  }

  private static double[] deviations(Parts parts, int[] places) {
    double[] deviations = new double[places.length];
    for (int i = 0; i < places.length; i++) {
      deviations[i] = parts.deviation(places[i]);
    }
    return deviations;
  }
}
