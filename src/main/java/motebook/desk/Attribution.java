package motebook.desk;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import motebook.reference.Material;
import motebook.reference.Operation;

/**
 * Where the dust came from that a person breathed outside the mask: the same dose cut in five ways,
 * each of which adds to 100 %. Nothing breathed, nothing to cut: the lists are empty.
 *
 * @param byOperation by what was done, most first
 * @param byMaterial by what it was done to
 * @param byPlace by where
 * @param byPerson by who made it: the person, and whoever worked nearby
 * @param leftOverPercent breathed after the session that made it had ended, whoever's it was: in a
 *     short gap between sessions, or during a later one. The rest was breathed while it was made.
 */
public record Attribution(
    List<Share<Operation>> byOperation,
    List<Share<Material>> byMaterial,
    List<Share<String>> byPlace,
    List<Share<String>> byPerson,
    double leftOverPercent) {

  /**
   * One part of the dose.
   *
   * @param of what
   * @param percent of the expected dose outside
   */
  public record Share<K>(K of, double percent) {}

  /** The parts of some days. */
  static Attribution of(List<DayReckoning> days) {
    return new Attribution(
        cut(days, Source::operation),
        cut(days, Source::material),
        cut(days, source -> source.session().work().place()),
        cut(days, source -> source.session().work().person()),
        leftOver(days));
  }

  private static <K> List<Share<K>> cut(List<DayReckoning> days, Function<Source, K> key) {
    Map<K, Double> sums = new LinkedHashMap<>();
    for (DayReckoning day : days) {
      day.sources().stream()
          .filter(day::reached)
          .forEach(source -> sums.merge(key.apply(source), day.expected(source), Double::sum));
    }
    double total = total(days);
    return sums.entrySet().stream()
        .map(entry -> new Share<>(entry.getKey(), 100 * entry.getValue() / total))
        .sorted(Comparator.comparingDouble((Share<K> share) -> share.percent()).reversed())
        .toList();
  }

  private static double total(List<DayReckoning> days) {
    return days.stream().mapToDouble(DayReckoning::expectedTotal).sum();
  }

  private static double leftOver(List<DayReckoning> days) {
    double part = 0;
    for (DayReckoning day : days) {
      for (Source source : day.sources()) {
        part += day.expected(source) * day.leftOverShare(source);
      }
    }
    return part == 0 ? 0 : 100 * part / total(days);
  }
}
