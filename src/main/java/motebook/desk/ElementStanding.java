package motebook.desk;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import motebook.model.Element;
import motebook.reference.ElementClass;
import motebook.science.Estimate;

/**
 * Where an element of a respirator stands.
 *
 * @param element the element
 * @param elementClass what it is
 * @param hoursWorn hours on a face
 * @param loadMg dust drawn onto it, a pair taken together, mg
 * @param typicalMg the same in its two kinds, typical
 * @param vapourUsed typical share of its vapour life used, the safety fraction allowed for
 * @param daysOpen days since it was opened; empty while it is sealed
 * @param clocks what ends it
 */
public record ElementStanding(
    Element element,
    ElementClass elementClass,
    double hoursWorn,
    Estimate loadMg,
    Portion typicalMg,
    double vapourUsed,
    OptionalLong daysOpen,
    List<CareClock> clocks) {
  public ElementStanding {
    clocks = List.copyOf(clocks);
  }

  /** The clock that runs out first, or ran out first. */
  public Optional<CareClock> first() {
    return first(clocks);
  }

  static Optional<CareClock> first(List<CareClock> clocks) {
    return clocks.stream()
        .filter(clock -> clock.ends().isPresent())
        .min(
            Comparator.comparing((CareClock clock) -> clock.ends().orElseThrow())
                .thenComparing(clock -> clock.ranOut().isEmpty()))
        .or(() -> clocks.stream().max(Comparator.comparingDouble(CareClock::share)));
  }
}
