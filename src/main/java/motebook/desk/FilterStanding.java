package motebook.desk;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.model.ShopFilter;

/**
 * Where a filter of the shop stands.
 *
 * @param filter the filter
 * @param runHours run hours since it was last replaced, or emptied where no clock is for cleaning,
 *     or since it is counted
 * @param reading the latest gauge reading since it was cleaned or replaced
 * @param clocks what asks for upkeep
 */
public record FilterStanding(
    ShopFilter filter, double runHours, OptionalDouble reading, List<CareClock> clocks) {
  public FilterStanding {
    clocks = List.copyOf(clocks);
  }

  /** The clock that runs out first, or ran out first. */
  public Optional<CareClock> first() {
    return ElementStanding.first(clocks);
  }
}
