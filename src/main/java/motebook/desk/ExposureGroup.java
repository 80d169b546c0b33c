package motebook.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import motebook.journal.Settings;
import motebook.model.Sample;
import motebook.reference.Limit;
import motebook.reference.Limit.Fraction;
import motebook.reference.Material;
import motebook.reference.Operation;
import motebook.reference.Reference;
import motebook.reference.WoodClass;

/**
 * The measured results of one kind of work together, a similar exposure group: samples of which one
 * operation gave more than half, each as the mean over its own time.
 *
 * @param operation the operation
 * @param material the material, where the group is cut by it
 * @param fraction of the dust, as it was measured
 * @param statistics of the results, mg/m³
 * @param limit the limit of the chosen set that they are held against, the lowest that applies
 * @param converted whether the limit is of the other of inhalable and total, and was converted
 */
public record ExposureGroup(
    Operation operation,
    Optional<Material> material,
    Fraction fraction,
    Statistics statistics,
    Optional<Limit> limit,
    boolean converted) {
  /** Results that a group takes: the least that the preliminary test of EN 689 knows. */
  public static final int LEAST = 3;

  /** A result and where it comes from. */
  private record Point(Sample sample, Kind kind, Fraction fraction) {}

  /**
   * The groups of some samples: each operation, then each of its materials where it has several.
   */
  static List<ExposureGroup> of(
      List<Sample> samples, Learned learned, Reference reference, Settings settings) {
    Map<List<Object>, List<Point>> byOperation = new LinkedHashMap<>();
    for (Sample sample : samples) {
      Fraction fraction = Fraction.valueOf(sample.fraction().toUpperCase(Locale.ROOT));
      learned
          .mainly(sample)
          .map(kind -> new Point(sample, kind, fraction))
          .ifPresent(
              point ->
                  byOperation
                      .computeIfAbsent(
                          List.of(point.kind.operation().key(), fraction), any -> new ArrayList<>())
                      .add(point));
    }
    Reader reader = new Reader(reference, settings);
    List<ExposureGroup> groups = new ArrayList<>();
    byOperation.values().forEach(points -> groups.addAll(reader.groups(points)));
    groups.sort(
        Comparator.comparing((ExposureGroup group) -> group.operation.name())
            .thenComparing(ExposureGroup::fraction)
            .thenComparing(group -> group.material.map(Material::name).orElse("")));
    return groups;
  }

  private record Reader(Reference reference, Settings settings) {
    List<ExposureGroup> groups(List<Point> points) {
      Map<String, List<Point>> byMaterial = new LinkedHashMap<>();
      points.forEach(
          point ->
              byMaterial
                  .computeIfAbsent(point.kind.material().key(), any -> new ArrayList<>())
                  .add(point));
      List<ExposureGroup> groups = new ArrayList<>();
      group(points, Optional.empty()).ifPresent(groups::add);
      if (byMaterial.size() > 1) {
        byMaterial
            .values()
            .forEach(
                some ->
                    group(some, Optional.of(some.get(0).kind.material())).ifPresent(groups::add));
      }
      return groups;
    }

    Optional<ExposureGroup> group(List<Point> points, Optional<Material> material) {
      List<Statistics.Result> results =
          points.stream()
              .map(point -> Measured.of(point.sample))
              .map(measured -> new Statistics.Result(measured.mgPerM3(), measured.below()))
              .toList();
      if (results.size() < LEAST || !Statistics.enough(results)) {
        return Optional.empty();
      }
      Fraction fraction = points.get(0).fraction;
      Optional<Limit> limit = limit(points, fraction);
      OptionalDouble value =
          limit
              .map(one -> OptionalDouble.of(one.mgPerM3() * factor(one.fraction(), fraction)))
              .orElse(OptionalDouble.empty());
      return Optional.of(
          new ExposureGroup(
              points.get(0).kind.operation(),
              material,
              fraction,
              Statistics.of(results, value),
              limit,
              limit.map(one -> one.fraction() != fraction).orElse(false)));
    }

    private Optional<Limit> limit(List<Point> points, Fraction fraction) {
      LocalDate newest =
          points.stream().map(point -> point.sample.date()).max(LocalDate::compareTo).orElseThrow();
      if (!points.stream().allMatch(point -> point.kind.material().coveredByLimit())) {
        return Optional.empty();
      }
      Set<WoodClass> wood = new LinkedHashSet<>();
      points.forEach(point -> wood.add(point.kind.material().woodClass()));
      return reference.limits(settings.limitSet(), newest, wood).stream()
          .filter(Limit::judges)
          .filter(
              limit ->
                  (limit.fraction() == Fraction.RESPIRABLE) == (fraction == Fraction.RESPIRABLE))
          .min(Comparator.comparingDouble(l -> l.mgPerM3() * factor(l.fraction(), fraction)));
    }

    // Inhalable is taken as the owner's factor times total, here as everywhere.
    private double factor(Fraction ofLimit, Fraction ofResults) {
      if (ofLimit == ofResults) {
        return 1;
      }
      double total = settings.totalConversion();
      return ofLimit == Fraction.TOTAL ? total : 1 / total;
    }
  }
}
