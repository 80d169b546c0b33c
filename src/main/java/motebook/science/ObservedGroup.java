package motebook.science;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import motebook.science.Observation.Share;

/** Observations that may share own parts, and how their sources rest on the parts. */
final class ObservedGroup {
  private final List<Observation> observations = new ArrayList<>();
  private final Parts common;
  private final Parts own = new Parts();
  private final List<List<Slope>> slopes = new ArrayList<>();

  /** An empty group; the common parts are those of all groups. */
  ObservedGroup(Parts common) {
    this.common = common;
  }

  void add(Observation observation) {
    observations.add(observation);
    for (Share share : observation.shares()) {
      common.add(share.common());
      own.add(share.own());
    }
  }

  List<Observation> observations() {
    return observations;
  }

  Parts own() {
    return own;
  }

  /** How each source of an observation changes with the parts; once all groups are complete. */
  List<Slope> slopes(int observation) {
    while (slopes.size() < observations.size()) {
      slopes.add(observations.get(slopes.size()).shares().stream().map(this::slope).toList());
    }
    return slopes.get(observation);
  }

  private Slope slope(Share share) {
    int[] ofCommon = places(common, share.common());
    int[] ofOwn = places(own, share.own());
    return new Slope(ofCommon, deviations(common, ofCommon), ofOwn, deviations(own, ofOwn));
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
