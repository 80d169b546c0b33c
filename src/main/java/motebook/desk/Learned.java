package motebook.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
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
import java.util.stream.IntStream;
import motebook.model.Sample;
import motebook.reference.Limit;
import motebook.reference.Operation;
import motebook.science.Doubts;
import motebook.science.Estimate;
import motebook.science.Fit;
import motebook.science.LognormalSum;
import motebook.science.LognormalSum.Term;
import motebook.science.Observation;
import motebook.science.Observation.Share;
import motebook.science.ObservedSum;
import motebook.science.Part;
import motebook.science.Posterior;
import motebook.science.Spread;

/**
 * What the shop's own samples taught about every source's emission.
 *
 * <p>An operation without a result of its own, a personal sample that it gave more than half of,
 * takes the doubt about the air model no lower than {@link #LEAST_MODEL} and no surer than it was,
 * until the samples agree on it: three results on two days from two operations, each operation's
 * results alone lowering it, and none over two deviations from all the others. Sessions that were
 * sampled show what was measured, whatever their operation.
 */
public final class Learned {
  /** A book without samples: every figure is as published. */
  public static final Learned NOTHING = new Learned(Map.of(), Posterior.NONE);

  private static final double LEAST_MODEL = Math.log(0.9);
  private static final int LEAST_RESULTS = 3;
  private static final int LEAST_DAYS = 2;
  private static final int LEAST_OPERATIONS = 2;
  private static final double FAR = 2;

  private final Map<Sample, Taught> taught;
  private final Posterior posterior;
  private final Set<String> ownResults = new HashSet<>();
  private final Set<String> sampledSessions = new HashSet<>();
  private final Map<LocalDate, List<Taught>> byDay;
  private final Map<Doubts, Posterior.Outcome> free = new ConcurrentHashMap<>();
  private final Map<Doubts, Posterior.Outcome> capped = new ConcurrentHashMap<>();
  private IdentityHashMap<Observation, Fit> fits;
  private Boolean agreed;

  /**
   * A sample that taught something.
   *
   * @param observation what it stands for
   * @param sources one for each of its shares
   * @param mainly the kind of work that gave most of it, where one operation gave more than half
   */
  private record Taught(Observation observation, List<Source> sources, Optional<Kind> mainly) {}

  private Learned(Map<Sample, Taught> taught, Posterior posterior) {
    this.taught = taught;
    this.posterior = posterior;
    byDay =
        taught.entrySet().stream()
            .collect(
                Collectors.groupingBy(
                    entry -> entry.getKey().date(),
                    Collectors.mapping(Map.Entry::getValue, Collectors.toList())));
    taught.forEach(
        (sample, lesson) -> {
          if (sample.use().area().isEmpty()) {
            lesson.mainly.ifPresent(kind -> ownResults.add(kind.operation().key()));
          }
          lesson.sources.stream()
              .filter(source -> sampled(source, sample))
              .forEach(source -> sampledSessions.add(key(source)));
        });
  }

  /**
   * Learns from samples. One over a time in which nothing was logged that made dust teaches
   * nothing, nor does a relative one.
   *
   * @param reckon the day of a sample's person, by the published figures
   */
  public static Learned from(List<Sample> samples, Function<Sample, DayReckoning> reckon) {
    Map<Sample, Taught> taught = new LinkedHashMap<>();
    for (Sample sample : samples) {
      if (!sample.use().relative()) {
        Map<Source, Double> means = means(sample, reckon.apply(sample));
        if (!means.isEmpty()) {
          taught.put(
              sample,
              new Taught(observation(sample, means), List.copyOf(means.keySet()), mainly(means)));
        }
      }
    }
    return taught.isEmpty()
        ? NOTHING
        : new Learned(
            taught, Posterior.of(taught.values().stream().map(Taught::observation).toList()));
  }

  private static Observation observation(Sample sample, Map<Source, Double> means) {
    Measured measured = Measured.of(sample);
    return new Observation(
        sample.date().toString(),
        Math.log(measured.mgPerM3()),
        Observation.variance(sample.cv()),
        measured.below(),
        means.entrySet().stream()
            .map(entry -> share(entry.getValue(), entry.getKey(), sample))
            .toList());
  }

  /** What each source was thought to add to the mean of the air that was sampled. */
  private static Map<Source, Double> means(Sample sample, DayReckoning day) {
    ToDoubleFunction<Portion> amount =
        day.amount(Limit.Fraction.valueOf(sample.fraction().toUpperCase(Locale.ROOT)));
    Map<Source, Double> means = new LinkedHashMap<>();
    for (Source source : day.sources()) {
      Portion breathed =
          sample.use().area().isPresent()
              ? day.inRoom(
                  sample.use().area().get(), source, sample.fromMinute(), sample.toMinute())
              : day.breathed(source, sample.fromMinute(), sample.toMinute());
      double mean = amount.applyAsDouble(breathed) / sample.minutes();
      if (mean > 0) {
        means.put(source, mean);
      }
    }
    return means;
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

  private static Share share(double mean, Source source, Sample sample) {
    Map<String, Double> common = new HashMap<>();
    Map<String, Double> own = new HashMap<>();
    source
        .doubts()
        .variances()
        .forEach((name, variance) -> (Source.isOwn(name) ? own : common).put(name, variance));
    if (sampled(source, sample)) {
      own.put(source.stretch(), Spread.STRETCH);
    }
    return new Share(mean, common, own);
  }

  private static String key(Source source) {
    return source.own() + source.stretch();
  }

  /** Whether a sampler ran while a source did. */
  private static boolean sampled(Source source, Sample sample) {
    return source.from() < sample.toMinute() && sample.fromMinute() < source.to();
  }

  /** How many samples taught something. */
  public int samples() {
    return taught.size();
  }

  /** A source by what was learned. */
  Source source(Source published) {
    if (taught.isEmpty() || published.kind().own().isEmpty()) {
      return published;
    }
    boolean ofDay = byDay.containsKey(published.session().work().date());
    boolean sampled = ofDay && sampledSessions.contains(key(published));
    List<Part> own = new ArrayList<>();
    if (ofDay) {
      posterior.part(published.own()).ifPresent(own::add);
    }
    boolean whole = !own.isEmpty();
    if (sampled) {
      posterior.part(published.stretch()).ifPresent(own::add);
    }
    return published.learned(
        outcome(published.operation(), published.kind().doubts(), sampled), own, whole);
  }

  /** What some work of an operation makes, which was not sampled itself, by what was learned. */
  Term outcome(Operation operation, Term published) {
    Posterior.Outcome outcome = outcome(operation, published.doubts(), false);
    return new Term(published.typical() * Math.exp(outcome.shift()), outcome.doubts());
  }

  private Posterior.Outcome outcome(Operation operation, Doubts prior, boolean sampled) {
    boolean reaches = sampled || ownResults.contains(operation.key()) || agreed();
    Map<Doubts, Posterior.Outcome> known = reaches ? free : capped;
    Posterior.Outcome outcome = known.get(prior);
    return outcome == null
        ? known.computeIfAbsent(prior, reaches ? posterior::outcome : this::held)
        : outcome;
  }

  /** With the doubt about the air model kept from falling. */
  private Posterior.Outcome held(Doubts prior) {
    Optional<Part> model = posterior.part(Source.MODEL);
    if (model.isEmpty()) {
      return posterior.outcome(prior);
    }
    Posterior.Outcome rest = posterior.outcome(prior.without(Source.MODEL));
    return new Posterior.Outcome(
        rest.shift() + Math.max(model.get().shift(), LEAST_MODEL),
        rest.doubts().and(Source.MODEL, Math.max(model.get().variance(), Spread.MODEL)));
  }

  /** Whether the samples agree that the air is cleaner than published, whatever is done. */
  private synchronized boolean agreed() {
    if (agreed == null) {
      agreed = taught.size() >= LEAST_RESULTS && agree();
    }
    return agreed;
  }

  private boolean agree() {
    Map<String, List<Observation>> byOperation = new LinkedHashMap<>();
    Set<LocalDate> days = new HashSet<>();
    taught.forEach(
        (sample, lesson) -> {
          if (sample.use().area().isEmpty() && lesson.mainly.isPresent()) {
            byOperation
                .computeIfAbsent(lesson.mainly.get().operation().key(), any -> new ArrayList<>())
                .add(lesson.observation);
            days.add(sample.date());
          }
        });
    return byOperation.size() >= LEAST_OPERATIONS
        && days.size() >= LEAST_DAYS
        && byOperation.values().stream().mapToInt(List::size).sum() >= LEAST_RESULTS
        && fits().entrySet().stream()
            .allMatch(entry -> Math.abs(entry.getValue().z(entry.getKey())) <= FAR)
        && byOperation.values().stream().allMatch(Learned::lower);
  }

  private static boolean lower(List<Observation> results) {
    return Posterior.of(results).part(Source.MODEL).map(part -> part.shift() < 0).orElse(false);
  }

  /**
   * Sums over the sources of a day that was sampled.
   *
   * @return nothing where sums of lognormals say the same, or not all that was sampled is there
   */
  Optional<ObservedSum> sums(LocalDate date, List<Source> sources) {
    List<ObservedSum.Result> results = new ArrayList<>();
    for (Taught lesson : byDay.getOrDefault(date, List.of())) {
      int[] places = lesson.sources.stream().mapToInt(one -> place(one, sources)).toArray();
      if (IntStream.of(places).anyMatch(place -> place < 0)) {
        return Optional.empty();
      }
      double[] shifts =
          IntStream.of(places).mapToDouble(place -> sources.get(place).moved()).toArray();
      results.add(new ObservedSum.Result(lesson.observation, places, shifts));
    }
    return results.isEmpty()
        ? Optional.empty()
        : posterior.sums(sources.stream().map(Source::doubts).toList(), results);
  }

  private static int place(Source published, List<Source> sources) {
    for (int i = 0; i < sources.size(); i++) {
      if (sources.get(i).equals(published) && sources.get(i).kind().equals(published.kind())) {
        return i;
      }
    }
    return -1;
  }

  /** The kind of work that gave most of a sample, where one operation gave more than half of it. */
  Optional<Kind> mainly(Sample sample) {
    return Optional.ofNullable(taught.get(sample)).flatMap(Taught::mainly);
  }

  /** How each sample agrees with all the others; reckoned when it is first asked for. */
  private synchronized IdentityHashMap<Observation, Fit> fits() {
    if (fits == null) {
      fits = posterior.fits();
    }
    return fits;
  }

  /** How a sample agrees with all the others; empty for one that taught nothing. */
  Optional<Evidence.Agreement> agreement(Sample sample) {
    return Optional.ofNullable(taught.get(sample))
        .map(
            lesson ->
                Evidence.Agreement.of(
                    Measured.of(sample), lesson.observation, fits().get(lesson.observation)));
  }

  /**
   * How a sample that is none of these agrees with them; empty for one that would teach nothing.
   *
   * @param published the day of the sample's person, by the published figures
   */
  Optional<Evidence.Agreement> expected(Sample sample, DayReckoning published) {
    Map<Source, Double> means = sample.use().relative() ? Map.of() : means(sample, published);
    if (means.isEmpty()) {
      return Optional.empty();
    }
    Estimate known =
        LognormalSum.of(
            means.entrySet().stream()
                .map(
                    entry -> {
                      Source source = entry.getKey();
                      Doubts doubts =
                          sampled(source, sample)
                              ? source.doubts().and(source.stretch(), Spread.STRETCH)
                              : source.doubts();
                      return posterior.applied(new Term(entry.getValue(), doubts));
                    })
                .toList());
    double log = Math.log(known.central());
    double variance = known.sigma() * known.sigma();
    return Optional.of(
        Evidence.Agreement.of(
            Measured.of(sample),
            observation(sample, means),
            new Fit(log, variance, log, variance)));
  }

  /**
   * The sample whose ratio to the published estimate is farthest from that of another sample: of
   * those over the same sessions, else of those of the same operations, else of all.
   *
   * @param published the day of the other sample's person, by the published figures
   */
  Optional<Sample> farthest(Sample other, DayReckoning published) {
    Map<Source, Double> means = means(other, published);
    Set<String> sessions = means.keySet().stream().map(Learned::key).collect(Collectors.toSet());
    Set<String> kinds =
        means.keySet().stream().map(s -> s.operation().key()).collect(Collectors.toSet());
    double ratio = ratio(observation(other, means));
    return taught.entrySet().stream()
        .max(
            Comparator.comparing(
                    (Map.Entry<Sample, Taught> entry) ->
                        entry.getValue().sources.stream().anyMatch(s -> sessions.contains(key(s))))
                .thenComparing(
                    entry ->
                        entry.getValue().sources.stream()
                            .anyMatch(s -> kinds.contains(s.operation().key())))
                .thenComparing(entry -> Math.abs(ratio(entry.getValue().observation) - ratio)))
        .map(Map.Entry::getKey);
  }

  /** Of a result to the published estimate, as a logarithm. */
  private static double ratio(Observation seen) {
    return seen.log() - Math.log(seen.shares().stream().mapToDouble(Share::typical).sum());
  }

  /** The samples that lie too far from all else that is known, in the order of the book. */
  List<Sample> contradicting() {
    return taught.keySet().stream()
        .filter(sample -> agreement(sample).orElseThrow().disagrees())
        .toList();
  }

  /** The operations of which some dust was sampled. */
  Set<String> operations() {
    return taught.values().stream()
        .flatMap(lesson -> lesson.sources.stream())
        .map(source -> source.operation().key())
        .collect(Collectors.toSet());
  }
}
