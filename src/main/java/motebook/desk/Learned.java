package motebook.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import motebook.model.Sample;
import motebook.reference.Limit;
import motebook.science.Doubts;
import motebook.science.Observation;
import motebook.science.Observation.Share;
import motebook.science.Posterior;

/** What the shop's own samples taught about every source's emission. */
public final class Learned {
  /** A book without samples: every figure is as published. */
  public static final Learned NOTHING = new Learned(Map.of(), Posterior.NONE);

  private final Map<Sample, Observation> observations;
  private final Posterior posterior;
  private final Map<Doubts, Posterior.Outcome> kinds = new ConcurrentHashMap<>();

  private Learned(Map<Sample, Observation> observations, Posterior posterior) {
    this.observations = observations;
    this.posterior = posterior;
  }

  /**
   * Learns from samples. One over a time in which nothing was logged that made dust teaches
   * nothing.
   *
   * @param reckon the day of a sample's person, by the published figures
   */
  public static Learned from(List<Sample> samples, Function<Sample, DayReckoning> reckon) {
    Map<Sample, Observation> observations = new LinkedHashMap<>();
    for (Sample sample : samples) {
      List<Share> shares = shares(sample, reckon.apply(sample));
      if (!shares.isEmpty()) {
        observations.put(sample, observation(sample, shares));
      }
    }
    return observations.isEmpty()
        ? NOTHING
        : new Learned(observations, Posterior.of(List.copyOf(observations.values())));
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
  private static List<Share> shares(Sample sample, DayReckoning day) {
    ToDoubleFunction<Portion> amount =
        day.amount(Limit.Fraction.valueOf(sample.fraction().toUpperCase(Locale.ROOT)));
    List<Share> shares = new ArrayList<>();
    for (Source source : day.sources()) {
      Portion breathed = day.breathed(source, sample.fromMinute(), sample.toMinute());
      double mean = amount.applyAsDouble(breathed) / sample.minutes();
      if (mean > 0) {
        shares.add(share(mean, source.doubts().variances()));
      }
    }
    return shares;
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
    return published.learned(
        kinds.computeIfAbsent(ofKind, posterior::outcome), posterior.part(published.own()));
  }

  /** What each sample that taught something stands for. */
  Map<Sample, Observation> observations() {
    return observations;
  }

  Posterior posterior() {
    return posterior;
  }
}
