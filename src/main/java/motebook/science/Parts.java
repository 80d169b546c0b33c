package motebook.science;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Named parts, each with a place in a row and the standard deviation it was thought to have. A part
 * without any doubt is left out: nothing can move it.
 */
final class Parts {
  private final Map<String, Integer> places = new LinkedHashMap<>();
  private final List<Double> deviations = new ArrayList<>();

  void add(Map<String, Double> variances) {
    variances.forEach(
        (name, variance) -> {
          if (variance > 0 && !places.containsKey(name)) {
            places.put(name, places.size());
            deviations.add(Math.sqrt(variance));
          }
        });
  }

  /** The names of all parts, in the order of their places. */
  Set<String> names() {
    return places.keySet();
  }

  /** The place of a part, −1 where it is none. */
  int place(String name) {
    return places.getOrDefault(name, -1);
  }

  double deviation(int place) {
    return deviations.get(place);
  }

  /** How many parts there are. */
  int size() {
    return deviations.size();
  }
}
