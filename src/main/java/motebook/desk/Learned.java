package motebook.desk;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import motebook.model.Sample;
import motebook.reference.Limit;
import motebook.science.Doubts;
import motebook.science.Fit;
import motebook.science.Observation;
import motebook.science.Observation.Share;
import motebook.science.Posterior;

/** What the shop's own samples taught about every source's emission. */
public final class Learned {
  /** A book without samples: every figure is as published. */
  public static final Learned NOTHING = new Learned(Map.of(), Map.of(), Posterior.NONE);

  private final Map<Sample, Observation> observations;
  private final Map<Sample, Kind> mainly;
  private IdentityHashMap<Observation, Fit> fits;
  private final Posterior posterior;
  private final Set<LocalDate> days;
  private final Map<Doubts, Posterior.Outcome> kinds = new ConcurrentHashMap<>();

  private Learned(
      Map<Sample, Observation> observations, Map<Sample, Kind> mainly, Posterior posterior) {
    this.observations = observations;
    this.mainly = mainly;
    this.posterior = posterior;
    this.days = observations.keySet().stream().map(Sample::date).collect(Collectors.toSet());
  }

  /**
   * Learns from samples. One over a time in which nothing was logged that made dust teaches
   * nothing.
   *
   * @param reckon the day of a sample's person, by the published figures
   */
  public static Learned from(List<Sample> samples, Function<Sample, DayReckoning> reckon) {
    Map<Sample, Observation> observations = new LinkedHashMap<>();
    Map<Sample, Kind> mainly = new HashMap<>();
    for (Sample sample : samples) {
      Map<Source, Double> means = means(sample, reckon.apply(sample));
      if (!means.isEmpty()) {
        observations.put(sample, observation(sample, shares(means)));
        mainly(means).ifPresent(kind -> mainly.put(sample, kind));
      }
    }
    return observations.isEmpty()
        ? NOTHING
        : new Learned(observations, mainly, Posterior.of(List.copyOf(observations.values())));
  }

  private static Observation observation(Sample sample, List<Share> shares) {
    Measured measured = Measured.of(sample);
    return new Observation(
        sample.date().toString(),
        Math.log(measured.mgPerM3()),
        Observation.variance(sample.cv()),
        measured.below(),
        shares);
  }

  /** What each source was thought to add to the mean of what the person breathed meanwhile. */
  private static Map<Source, Double> means(Sample sample, DayReckoning day) {
    ToDoubleFunction<Portion> amount =
        day.amount(Limit.Fraction.valueOf(sample.fraction().toUpperCase(Locale.ROOT)));
    Map<Source, Double> means = new LinkedHashMap<>();
    for (Source source : day.sources()) {
      Portion breathed = day.breathed(source, sample.fromMinute(), sample.toMinute());
      double mean = amount.applyAsDouble(breathed) / sample.minutes();
      if (mean > 0) {
        means.put(source, mean);
      }
    }
    return means;
  }

  private static List<Share> shares(Map<Source, Double> means) {
    return means.entrySet().stream()
        .map(entry -> share(entry.getValue(), entry.getKey().doubts().variances()))
        .toList();
  }

  /** The operation that more than half of the sampled dust is thought to come from. */
  private static Optional<Kind> mainly(Map<Source, Double> means) {
    double all = means.values().stream().mapToDouble(Double::doubleValue).sum();
    Map<String, Double> byOperation = new HashMap<>();
    means.forEach((source, mean) -> byOperation.merge(source.operation().key(), mean, Double::sum));
    return means.entrySet().stream()
        .filter(entry -> byOperation.get(entry.getKey().operation().key()) > all / 2)
        .max(Map.Entry.comparingByValue())
        .map(entry -> entry.getKey().kind());
  }

  private static Share share(double mean, Map<String, Double> doubts) {
    Map<String, Double> common = new HashMap<>();
    Map<String, Double> own = new HashMap<>();
    doubts.forEach((name, variance) -> (Source.isOwn(name) ? own : common).put(name, variance));
    return new Share(mean, common, own);
  }

  /** How many samples taught something. */
  public int samples() {
    return observations.size();
  }

  /** A source by what was learned. */
  Source source(Source published) {
    if (observations.isEmpty() || published.kind().own().isEmpty()) {
      return published;
    }
    Doubts ofKind = published.kind().doubts();
    Posterior.Outcome outcome = kinds.get(ofKind);
    return published.learned(
        outcome == null ? kinds.computeIfAbsent(ofKind, posterior::outcome) : outcome,
        days.contains(published.session().work().date())
            ? posterior.part(published.own())
            : Optional.empty());
  }

  /** The kind of work that gave most of a sample, where one operation gave more than half of it. */
  Optional<Kind> mainly(Sample sample) {
    return Optional.ofNullable(mainly.get(sample));
  }

  /** How each sample agrees with all the others; reckoned when it is first asked for. */
  synchronized IdentityHashMap<Observation, Fit> fits() {
    if (fits == null) {
      fits = posterior.fits();
    }
    return fits;
  }

  /** The samples that lie too far from all else that is known, in the order of the book. */
  List<Sample> contradicting() {
    return observations.entrySet().stream()
        .filter(entry -> fits().get(entry.getValue()).disagrees(entry.getValue()))
        .map(Map.Entry::getKey)
        .toList();
  }

  /** What each sample that taught something stands for. */
  Map<Sample, Observation> observations() {
    return observations;
  }

  Posterior posterior() {
    return posterior;
  }
}
