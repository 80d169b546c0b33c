package motebook.desk;

import java.util.List;
import java.util.Optional;
import motebook.reference.Material;

/**
 * Dust on a day that no limit of wood dust covers, such as that of lead paint or of wood with
 * arsenic: whatever it is held against says too little about it.
 *
 * @param percent its share of the expected dose outside the mask, above 0, 100 where it is all
 *     there is
 * @param materials what gave it off, in the order of the work
 */
public record Uncovered(double percent, List<Material> materials) {

  public Uncovered {
    materials = List.copyOf(materials);
  }

  static Optional<Uncovered> of(DayReckoning day) {
    List<Source> sources =
        day.reached().stream().filter(source -> !source.coveredByLimit()).toList();
    if (sources.isEmpty()) {
      return Optional.empty();
    }
    double part = sources.stream().mapToDouble(day::expected).sum();
    return Optional.of(
        new Uncovered(
            sources.size() == day.reached().size() ? 100 : 100 * part / day.expectedTotal(),
            sources.stream().map(Source::material).distinct().toList()));
  }

  /** Whether there is no other dust. */
  public boolean alone() {
    return percent == 100;
  }
}
