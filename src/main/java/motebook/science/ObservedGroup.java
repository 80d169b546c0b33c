package motebook.science;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import motebook.science.Observation.Share;
import org.hipparchus.linear.RealVector;

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
      slopes.add(
          observations.get(slopes.size()).shares().stream()
              .map(share -> new Slope(slope(common, share.common()), slope(own, share.own())))
              .toList());
    }
    return slopes.get(observation);
  }

  private static RealVector slope(Parts parts, Map<String, Double> of) {
    RealVector slope = parts.zero();
    for (String name : of.keySet()) {
      int place = parts.place(name);
      if (place >= 0) {
        slope.setEntry(place, parts.deviation(place));
      }
    }
    return slope;
  }
}
