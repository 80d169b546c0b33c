package motebook.desk;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.DoubleSupplier;
import motebook.model.Element;
import motebook.reference.ElementClass;
import motebook.science.Estimate;

/**
 * Where an element of a respirator stands.
 *
 * @param element the element
 * @param elementClass what it is
 * @param worn the sessions it was on a face
 * @param vapour typical share of its vapour life used, reckoned when it is asked for
 * @param daysOpen days since it was opened; empty while it is sealed
 * @param clocks what ends it
 */
public record ElementStanding(
    Element element,
    ElementClass elementClass,
    List<Wear> worn,
    DoubleSupplier vapour,
    OptionalLong daysOpen,
    List<CareClock> clocks) {
  public ElementStanding {
    worn = List.copyOf(worn);
    clocks = List.copyOf(clocks);
  }

  /** Typical share of its vapour life used, the safety fraction allowed for. */
  public double vapourUsed() {
    return vapour.getAsDouble();
  }

  /** Hours on a face. */
  public double hoursWorn() {
    return Wear.hours(worn);
  }

  /** Dust drawn onto it, a pair taken together, mg. */
  public Estimate loadMg() {
    return Wear.mg(worn);
  }

  /** The same in its two kinds, typical. */
  public Portion typicalMg() {
    return Wear.typicalMg(worn);
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
