package motebook.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import motebook.model.Sample;
import motebook.model.Session;
import motebook.reference.Control;
import motebook.reference.Material;
import motebook.reference.Operation;
import motebook.reference.Reference;
import motebook.science.Estimate;
import motebook.science.LognormalSum;
import motebook.science.LognormalSum.Term;

/**
 * What some samples would teach, before they are kept.
 *
 * @param work the kinds of work that would move by more than a tenth, those of the book first
 * @param days the sampled days that would
 * @param low the samples that lie so far below what was known before them that pump and filter may
 *     have failed
 * @param contradicting the samples that lie over three deviations from what was known before them
 */
public record Teaching(
    List<Moved> work, List<MovedDay> days, List<Low> low, List<Contradiction> contradicting) {
  /** Of no samples. */
  public static final Teaching NONE = new Teaching(List.of(), List.of(), List.of(), List.of());

  // A tenth to the last digit, which is what other operations fall by at most, is no more than one.
  private static final double TENTH = 0.1 + 1e-9;
  private static final double LOW_SHARE = 0.05;
  private static final double LOW_DETECTION = 10;

  /**
   * A kind of work whose estimate moves: one session of it in the default shop.
   *
   * @param operation what is done
   * @param material to what; empty where the factor of the material has no doubt of its own
   * @param control its best control at the source
   * @param logged whether the book holds such work
   * @param before mg/m³ inhalable by what was known
   * @param after the same by what is known with the samples
   */
  public record Moved(
      Operation operation,
      Optional<Material> material,
      Optional<Control> control,
      boolean logged,
      Estimate before,
      Estimate after) {}

  /** A sampled day whose 8-hour TWA outside the mask moves. */
  public record MovedDay(LocalDate date, String person, Estimate before, Estimate after) {}

  /** A sample that lies suspiciously low, beside the estimate from what was known before. */
  public record Low(Sample sample, Measured measured, double estimatedMgPerM3) {}

  /**
   * A sample that lies too far from what was known before.
   *
   * @param sample the new sample
   * @param measured what it stands for
   * @param estimatedMgPerM3 the estimate from what was known before
   * @param other the sample of the book that it contradicts most
   */
  public record Contradiction(
      Sample sample, Measured measured, double estimatedMgPerM3, Sample other) {}

  /**
   * Compares what is known without and with some samples.
   *
   * @param samples those to be kept; each is held against what was known before all of them, so
   *     that none vouches for another
   * @param sessions what the book holds of late
   * @param reckon a person's day by what is known
   */
  static Teaching of(
      List<Sample> samples,
      Learned before,
      Learned after,
      Reference reference,
      List<Session> sessions,
      BiFunction<Sample, Learned, DayReckoning> reckon) {
    Map<List<Object>, Moved> work = new LinkedHashMap<>();
    for (Session session : sessions) {
      Kind kind = Kind.of(session.work(), false, reference);
      if (kind.own().isPresent() && kind.mgPerMin() > 0) {
        work.computeIfAbsent(key(kind), any -> moved(kind, true, before, after));
      }
    }
    Set<String> logged =
        work.values().stream().map(m -> m.operation.key()).collect(Collectors.toSet());
    for (Operation operation : reference.operations()) {
      if (operation.dusty() && !logged.contains(operation.key())) {
        Kind kind = Kind.of(operation, reference);
        work.put(key(kind), moved(kind, false, before, after));
      }
    }
    List<Low> low = new ArrayList<>();
    List<Contradiction> contradicting = new ArrayList<>();
    for (Sample sample : samples) {
      DayReckoning published = reckon.apply(sample, Learned.NOTHING);
      before
          .expected(sample, published)
          .ifPresent(
              known -> {
                low(sample, known).ifPresent(low::add);
                contradiction(sample, known, before, published).ifPresent(contradicting::add);
              });
    }
    return new Teaching(
        work.values().stream()
            .filter(moved -> movedEnough(moved.before, moved.after))
            .sorted(
                Comparator.comparing((Moved moved) -> !moved.logged)
                    .thenComparing(moved -> -Math.abs(log(moved.before, moved.after))))
            .toList(),
        days(samples, before, after, reckon),
        low,
        contradicting);
  }

  private static Optional<Contradiction> contradiction(
      Sample sample, Evidence.Agreement known, Learned before, DayReckoning published) {
    return before
        .farthest(sample, published)
        .filter(any -> known.disagrees())
        .map(
            other ->
                new Contradiction(sample, Measured.of(sample), known.estimatedMgPerM3(), other));
  }

  private static List<Object> key(Kind kind) {
    return List.of(
        kind.operation().key(),
        kind.operation().sands() ? kind.material().key() : "",
        kind.atSource().map(Control.Row::id).orElse(""));
  }

  private static Moved moved(Kind kind, boolean logged, Learned before, Learned after) {
    return new Moved(
        kind.operation(),
        Optional.of(kind.material()).filter(any -> logged && kind.operation().sands()),
        kind.controls().stream()
            .filter(control -> kind.atSource().filter(control.rows()::contains).isPresent())
            .findFirst(),
        logged,
        estimate(kind, before),
        estimate(kind, after));
  }

  /** One session of a kind in the default shop, by what is known. */
  static Estimate estimate(Kind kind, Learned learned) {
    Term published =
        new Term(
            kind.inDefaultShopMgPerM3(),
            kind.doubts().and("another session", kind.own().orElseThrow()));
    return LognormalSum.of(List.of(learned.outcome(kind.operation(), published)));
  }

  private static double log(Estimate before, Estimate after) {
    return before.central() == 0 ? 0 : Math.log(after.central() / before.central());
  }

  private static boolean movedEnough(Estimate before, Estimate after) {
    return Math.abs(after.central() - before.central()) > TENTH * before.central();
  }

  private static List<MovedDay> days(
      List<Sample> samples,
      Learned before,
      Learned after,
      BiFunction<Sample, Learned, DayReckoning> reckon) {
    List<MovedDay> days = new ArrayList<>();
    Set<List<String>> told = new TreeSet<>(Comparator.comparing(Object::toString));
    for (Sample sample : samples) {
      if (told.add(List.of(sample.date().toString(), sample.person()))) {
        MovedDay day =
            new MovedDay(
                sample.date(),
                sample.person(),
                DayEstimate.of(reckon.apply(sample, before)).outside().estimate(),
                DayEstimate.of(reckon.apply(sample, after)).outside().estimate());
        if (movedEnough(day.before, day.after)) {
          days.add(day);
        }
      }
    }
    return List.copyOf(days);
  }

  private static Optional<Low> low(Sample sample, Evidence.Agreement known) {
    Measured measured = Measured.of(sample);
    double least = measured.below() ? 1 / LOW_DETECTION : LOW_SHARE;
    return known.ratio() < least
        ? Optional.of(new Low(sample, measured, known.estimatedMgPerM3()))
        : Optional.empty();
  }
}
