package motebook.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import motebook.reference.Limit;
import motebook.reference.WoodClass;
import motebook.science.Estimate;

/**
 * A limit that a day is held against, and the day's dust as a multiple of it.
 *
 * <p>Where a set has a row for red cedar beside one for all other wood, and both woods are in the
 * air, the dust of each source is divided by the limit of its own row and the shares are added, as
 * 29 CFR 1910.1000(d)(2) does for a mixture: over 1 the mixture is over its limit. This index is a
 * sum of lognormal terms as the dose is, so its median and the chance of more than 1 follow from
 * the same formula of Lo with the same covariance.
 *
 * @param limit the limit; of two rows whose shares are added, the one with the larger share
 * @param other the other of two such rows
 * @param outside the 8-hour TWA outside the mask as a multiple of the limit, in its own fraction
 * @param inside the same inside it
 * @param covered the same for the dust that limits cover alone; empty where they cover all of it
 */
public record HeldLimit(
    Limit limit,
    Optional<Limit> other,
    Estimate outside,
    Estimate inside,
    Optional<HeldLimit> covered) {
  private static final Set<WoodClass> RED_CEDAR = EnumSet.of(WoodClass.RED_CEDAR);
  private static final Set<WoodClass> OTHER_WOOD = EnumSet.complementOf(EnumSet.copyOf(RED_CEDAR));
  private static final Comparator<HeldLimit> BY_RATIO =
      Comparator.comparingDouble(HeldLimit::ratio);

  /**
   * The best estimate outside as a multiple of the limit, above 1 over it. Dust that no limit
   * covers never lowers it.
   */
  public double ratio() {
    double all = outside.central();
    return covered.map(part -> Math.max(all, part.ratio())).orElse(all);
  }

  /** The median of the added shares; empty where one row holds for all of the dust. */
  public OptionalDouble index() {
    return other.isPresent() ? OptionalDouble.of(ratio()) : OptionalDouble.empty();
  }

  /** How much protection it calls for; empty where there was no dust. */
  Optional<RequiredProtection> required() {
    return RequiredProtection.of(outside, inside)
        .map(
            all ->
                new RequiredProtection(
                    ratio(),
                    Math.max(all.high90(), covered.map(part -> part.outside.high90()).orElse(0.0)),
                    all.counted()));
  }

  /** The chance of being over the limit outside the mask, 0 to 1. */
  public double chanceOutside() {
    return chance(HeldLimit::outside);
  }

  /** The chance of being over the limit inside the mask, 0 to 1. */
  public double chanceInside() {
    return chance(HeldLimit::inside);
  }

  private double chance(Function<HeldLimit, Estimate> side) {
    double all = side.apply(this).chanceOver(1);
    return covered.map(part -> Math.max(all, part.chance(side))).orElse(all);
  }

  /**
   * The limit that a day is judged by: of those of the chosen set that apply and judge, the one
   * that the day comes closest to. Empty where none applies to what was in the air, or where no
   * limit covers any of it.
   */
  static Optional<HeldLimit> of(DayReckoning day) {
    return judging(day.shop().settings().limitSet(), day);
  }

  /** The rows of the chosen set that are shown and judge nothing. */
  static List<HeldLimit> shown(DayReckoning day) {
    return held(day.shop().settings().limitSet(), day).stream()
        .filter(held -> !held.limit.judges())
        .toList();
  }

  /** The advisory limit, which stands beside a set that is not advisory itself. */
  static Optional<HeldLimit> advisory(DayReckoning day) {
    Set<String> advisory = day.shop().reference().advisorySets();
    return advisory.contains(day.shop().settings().limitSet())
        ? Optional.empty()
        : advisory.stream().flatMap(set -> judging(set, day).stream()).max(BY_RATIO);
  }

  private static Optional<HeldLimit> judging(String set, DayReckoning day) {
    return held(set, day).stream().filter(held -> held.limit.judges()).max(BY_RATIO);
  }

  private static List<HeldLimit> held(String set, DayReckoning day) {
    List<Source> reached = day.reached();
    if (reached.stream().noneMatch(Source::coveredByLimit)) {
      return List.of();
    }
    Set<WoodClass> wood =
        reached.stream().map(source -> source.material().woodClass()).collect(Collectors.toSet());
    List<Limit> rows = day.shop().reference().limits(set, day.date(), wood);
    Optional<Limit> cedar = rowFor(RED_CEDAR, rows);
    Optional<Limit> rest = rowFor(OTHER_WOOD, rows);
    List<HeldLimit> held = new ArrayList<>();
    boolean shared = cedar.isPresent() && rest.isPresent();
    if (shared) {
      held.add(shares(cedar.get(), rest.get(), day));
    }
    rows.stream()
        .filter(row -> !shared || !(row.equals(cedar.get()) || row.equals(rest.get())))
        .map(row -> held(row, Optional.empty(), source -> row, day))
        .forEach(held::add);
    return held;
  }

  private static Optional<Limit> rowFor(Set<WoodClass> wood, List<Limit> rows) {
    return rows.stream().filter(row -> row.judges() && row.woodClasses().equals(wood)).findFirst();
  }

  private static HeldLimit shares(Limit cedar, Limit rest, DayReckoning day) {
    Predicate<Source> isCedar = source -> cedar.covers(source.material().woodClass());
    Function<Source, Limit> rowOf = source -> isCedar.test(source) ? cedar : rest;
    double ofCedar = day.outsideOver(rowOf, isCedar).central();
    return ofCedar >= day.outsideOver(rowOf, isCedar.negate()).central()
        ? held(cedar, Optional.of(rest), rowOf, day)
        : held(rest, Optional.of(cedar), rowOf, day);
  }

  private static HeldLimit held(
      Limit limit, Optional<Limit> other, Function<Source, Limit> rowOf, DayReckoning day) {
    HeldLimit all = held(limit, other, rowOf, source -> true, day);
    return day.reached().stream().allMatch(Source::coveredByLimit)
        ? all
        : new HeldLimit(
            limit,
            other,
            all.outside,
            all.inside,
            Optional.of(held(limit, other, rowOf, Source::coveredByLimit, day)));
  }

  private static HeldLimit held(
      Limit limit,
      Optional<Limit> other,
      Function<Source, Limit> rowOf,
      Predicate<Source> counted,
      DayReckoning day) {
    return new HeldLimit(
        limit,
        other,
        day.outsideOver(rowOf, counted),
        day.insideOver(rowOf, counted),
        Optional.empty());
  }
}
