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
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import motebook.journal.Settings;
import motebook.model.Sample;
import motebook.reference.Control;
import motebook.reference.Limit;
import motebook.reference.Limit.Fraction;
import motebook.reference.Material;
import motebook.reference.Operation;
import motebook.reference.Reference;
import motebook.reference.WoodClass;

/**
 * The measured days of one person at one operation with one set of controls: a similar exposure
 * group of EN 689, each day one result, brought to the 8-hour mean that the limits are of. A sample
 * counts for the operation that gave more than half of it.
 *
 * @param person whose
 * @param operation what was mainly done while it was sampled
 * @param controls with which controls
 * @param material to what, where it was one material on all days
 * @param fraction of the dust, as it was measured
 * @param days in order
 * @param statistics of the days' figures, mg/m³
 * @param limit the limit of the chosen set that they are held against, the lowest that applies
 * @param converted whether the limit is of the other of inhalable and total, and was converted
 */
public record ExposureGroup(
    String person,
    Operation operation,
    List<Control> controls,
    Optional<Material> material,
    Fraction fraction,
    List<SampledDay> days,
    Statistics statistics,
    Optional<Limit> limit,
    boolean converted) {
  /** Days that a group takes: the least that the preliminary test of EN 689 knows. */
  public static final int LEAST = 3;

  /** A result and the kind of work that gave most of it. */
  private record Point(Sample sample, Kind kind, Fraction fraction) {
    List<Object> group() {
      return List.of(
          sample.person(),
          kind.operation().key(),
          kind.controls().stream().map(Control::key).sorted().toList(),
          fraction);
    }
  }

  /**
   * The groups of some samples.
   *
   * @param reckon a sample's person's day by what was learned
   */
  static List<ExposureGroup> of(
      List<Sample> samples,
      Learned learned,
      Reference reference,
      Settings settings,
      Function<Sample, DayReckoning> reckon) {
    List<Sample> personal =
        samples.stream()
            .filter(sample -> sample.use().area().isEmpty() && !sample.use().relative())
            .toList();
    Map<List<Object>, List<Point>> points = new LinkedHashMap<>();
    for (Sample sample : personal) {
      learned
          .mainly(sample)
          .map(kind -> new Point(sample, kind, fraction(sample)))
          .ifPresent(
              point -> points.computeIfAbsent(point.group(), any -> new ArrayList<>()).add(point));
    }
    Reader reader = new Reader(personal, reference, settings, reckon);
    return points.values().stream()
        .flatMap(group -> reader.group(group).stream())
        .sorted(
            Comparator.comparing((ExposureGroup group) -> group.operation.name())
                .thenComparing(ExposureGroup::fraction)
                .thenComparing(ExposureGroup::person)
                .thenComparing(group -> group.controls.toString()))
        .toList();
  }

  private static Fraction fraction(Sample sample) {
    return Fraction.valueOf(sample.fraction().toUpperCase(Locale.ROOT));
  }

  private record Reader(
      List<Sample> personal,
      Reference reference,
      Settings settings,
      Function<Sample, DayReckoning> reckon) {

    Optional<ExposureGroup> group(List<Point> points) {
      Point first = points.get(0);
      Map<LocalDate, Sample> dates = new TreeMap<>();
      points.forEach(point -> dates.putIfAbsent(point.sample.date(), point.sample));
      if (dates.size() < LEAST) {
        return Optional.empty();
      }
      List<SampledDay> days = dates.values().stream().map(this::day).toList();
      List<Statistics.Result> results =
          days.stream().map(day -> new Statistics.Result(day.mgPerM3(), day.below())).toList();
      Optional<Limit> limit = limit(points, first.fraction);
      OptionalDouble value =
          limit
              .map(one -> OptionalDouble.of(one.mgPerM3() * factor(one.fraction(), first.fraction)))
              .orElse(OptionalDouble.empty());
      Set<Material> materials =
          points.stream().map(point -> point.kind.material()).collect(Collectors.toSet());
      return Optional.of(
          new ExposureGroup(
              first.sample.person(),
              first.kind.operation(),
              first.kind.controls(),
              materials.stream().filter(any -> materials.size() == 1).findFirst(),
              first.fraction,
              days,
              Statistics.of(results, value),
              limit,
              limit.map(one -> one.fraction() != first.fraction).orElse(false)));
    }

    /** All that the person's samplers of one fraction held on the day of a sample. */
    private SampledDay day(Sample of) {
      return SampledDay.of(
          personal.stream()
              .filter(
                  sample ->
                      sample.date().equals(of.date())
                          && sample.person().equals(of.person())
                          && sample.fraction().equals(of.fraction()))
              .toList(),
          ExposureGroup.fraction(of),
          reckon.apply(of));
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
