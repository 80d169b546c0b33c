package motebook.model;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * The figures that an owner chose.
 *
 * @param chosen those that differ from what is shipped
 */
public record OwnFigures(Map<OwnFigure, Double> chosen) {
  /** All as shipped. */
  public static final OwnFigures SHIPPED = new OwnFigures(Map.of());

  /**
   * Checks each; what is as shipped is not kept.
   *
   * @throws Refusal if one lies outside its bounds
   */
  public OwnFigures {
    EnumMap<OwnFigure, Double> differing = new EnumMap<>(OwnFigure.class);
    chosen.forEach(
        (figure, value) -> {
          if (figure.checked(value) != figure.shipped()) {
            differing.put(figure, value);
          }
        });
    chosen = Collections.unmodifiableMap(differing);
  }

  /** The value that counts, in the figure's unit. */
  public double get(OwnFigure figure) {
    return chosen.getOrDefault(figure, figure.shipped());
  }

  /** The value that counts of a figure that is a whole number. */
  public int whole(OwnFigure figure) {
    return (int) get(figure);
  }

  /**
   * The same with another value for one figure.
   *
   * @throws Refusal if it lies outside its bounds
   */
  public OwnFigures with(OwnFigure figure, double value) {
    EnumMap<OwnFigure, Double> other = new EnumMap<>(OwnFigure.class);
    other.putAll(chosen);
    other.put(figure, value);
    return new OwnFigures(other);
  }
}
