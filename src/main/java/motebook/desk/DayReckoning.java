package motebook.desk;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import motebook.journal.Flawed;
import motebook.journal.Logged;
import motebook.model.Session;
import motebook.model.Surroundings;
import motebook.reference.Limit;
import motebook.science.Dose;
import motebook.science.Emission;
import motebook.science.Estimate;
import motebook.science.LognormalSum;
import motebook.science.NearField;

/**
 * What one person breathed on one day, source by source.
 *
 * <p>Near field for the source that the person runs, the room for everything else, whoever made it;
 * outdoors the near field alone.
 */
public final class DayReckoning {
  private final DayWork work;
  private final String person;
  private final Shop shop;
  private final List<Source> sources;
  private final List<Breath> breaths;
  private Breathed outside;
  private Breathed inside;

  /**
   * Reckons a day.
   *
   * @param sessions everybody's sessions of that day
   */
  public DayReckoning(LocalDate date, String person, List<Session> sessions, Shop shop) {
    this(person, DayWork.of(date, sessions, shop));
  }

  /** Reckons a day from all that is on record of it. */
  public DayReckoning(LocalDate date, String person, Logged logged, Shop shop) {
    this(person, DayWork.of(date, logged, shop));
  }

  /** Reckons a day of one of those who were in the shop. */
  DayReckoning(String person, DayWork work) {
    this(person, work, 0, RoomDay.DAY_ENDS);
  }

  /** The same of what they breathed between two minutes of it. */
  DayReckoning(String person, DayWork work, int from, int to) {
    this.work = work;
    this.person = person;
    this.shop = work.shop();
    this.sources = work.sources();
    this.breaths =
        Breath.ofDay(
                sources.stream().filter(this::isOwn).toList(), shop.settings().gapMinutes(), shop)
            .stream()
            .flatMap(breath -> breath.within(from, to).stream())
            .toList();
  }

  /** Reckons a day from sources whose emission is known. */
  static DayReckoning ofSources(LocalDate date, String person, List<Source> sources, Shop shop) {
    return new DayReckoning(person, new DayWork(date, sources, List.of(), shop));
  }

  /** The same day by the published figures alone; empty where this is one already. */
  Optional<DayReckoning> published() {
    return shop.learned().samples() == 0
        ? Optional.empty()
        : Optional.of(
            new DayReckoning(
                work.date(),
                person,
                sources.stream().map(Source::session).toList(),
                shop.with(Learned.NOTHING)));
  }

  /** What the person breathed of each source outside the mask; reckoned when it is asked for. */
  private Breathed outside() {
    if (outside == null) {
      double[] all = new double[breaths.size()];
      Arrays.fill(all, 1);
      outside = breathed(all);
    }
    return outside;
  }

  /** The same inside it: what the masks count for is asked for here alone. */
  private Breathed inside() {
    if (inside == null) {
      double[] shares = breaths.stream().mapToDouble(b -> credit(b).insideShare()).toArray();
      inside = Arrays.stream(shares).allMatch(share -> share == 1) ? outside() : breathed(shares);
    }
    return inside;
  }

  private Breathed breathed(double[] shares) {
    Breathed sums = new Breathed(sources.size());
    for (int i = 0; i < shares.length; i++) {
      Breath breath = breaths.get(i);
      double share = shares[i];
      breath.own().ifPresent(own -> addNear(sums, own, breath.minutes() * share));
      room(breath.place()).ifPresent(room -> room.addTo(sums, breath.from(), breath.to(), share));
    }
    return sums;
  }

  private void addNear(Breathed sums, Source own, double times) {
    Portion near = nearField(own);
    sums.add(work.placeOf(own), near.coarse(), near.fine(), times);
  }

  /** What else is on record of the day and cannot be gone by. */
  List<Flawed> leftOut() {
    return work.leftOut();
  }

  /** What the respirator of a stretch counts for; nothing between sessions. */
  Credit credit(Breath breath) {
    return breath.own().map(own -> credit(own)).orElse(Credit.NONE);
  }

  /** What the respirator of a source's session counts for. */
  Credit credit(Source source) {
    return shop.credits().credit(source.session());
  }

  /** The share of the vapour outside that reaches the person in a stretch. */
  double vapourShare(Breath breath) {
    return credit(breath).vapourInsideShare();
  }

  private Portion breathed(Breath breath, Source source) {
    if (!source.in(breath.place())) {
      return Portion.NONE;
    }
    Portion near =
        breath.own().filter(source::equals).isPresent()
            ? nearField(source).times(breath.minutes())
            : Portion.NONE;
    Optional<RoomDay> room = room(breath.place());
    return room.isEmpty()
        ? near
        : near.plus(room.get().fromSource(work.placeOf(source), breath.from(), breath.to()));
  }

  /** What the person breathed of a source in some minutes of the day, in mg·min/m³. */
  Portion breathed(Source source, int from, int to) {
    return breaths.stream()
        .flatMap(breath -> breath.within(from, to).stream())
        .map(breath -> breathed(breath, source))
        .reduce(Portion.NONE, Portion::plus);
  }

  /** What there was of a source in the air of a room in some minutes of the day, in mg·min/m³. */
  Portion inRoom(String place, Source source, int from, int to) {
    return source.in(place)
        ? room(place)
            .map(air -> air.fromSource(work.placeOf(source), from, to))
            .orElse(Portion.NONE)
        : Portion.NONE;
  }

  /** What a running source adds at the face of whoever runs it, in mg/m³. */
  Portion nearField(Source source) {
    Surroundings air = shop.place(source.session().work().place()).surroundings();
    double mgPerM3 = source.mgPerMin() / NearField.exchangeM3PerMin(air.estimatedAirSpeedMPerMin());
    double fine = Emission.FINE_SHARE;
    return new Portion(mgPerM3 * (1 - fine), mgPerM3 * fine);
  }

  /** The air of a place over the day; nothing outdoors. */
  public Optional<RoomDay> room(String place) {
    return work.room(place);
  }

  boolean isOwn(Source source) {
    return source.session().work().person().equals(person);
  }

  /** Typical inhalable concentration breathed during a session of the person, mg/m³. */
  double meanOutside(Source own) {
    Breath breath = breathOf(own);
    return sources.stream().mapToDouble(s -> breathed(breath, s).inhalable()).sum()
        / breath.minutes();
  }

  /** The source that a session of this day is. */
  Source sourceOf(Session session) {
    return sources.stream().filter(s -> s.session().equals(session)).findFirst().orElseThrow();
  }

  /** What was outside the face during a session of the person, source by source, mg·min/m³. */
  Map<Source, Portion> during(Source own) {
    Breath breath = breathOf(own);
    Map<Source, Portion> parts = new LinkedHashMap<>();
    for (Source source : sources) {
      Portion part = breathed(breath, source);
      if (part.inhalable() > 0) {
        parts.put(source, part);
      }
    }
    return parts;
  }

  /** The stretch that a session of the person is. */
  Breath breathOf(Source own) {
    return breaths.stream()
        .filter(b -> b.own().filter(own::equals).isPresent())
        .findFirst()
        .orElseThrow();
  }

  /** The 8-hour TWA outside the mask, mg/m³, in one fraction. */
  Estimate outside(Limit.Fraction fraction) {
    return work.sum(twa(outside(), fraction));
  }

  /**
   * What some stretches of the day add to the 8-hour TWA outside the mask, mg/m³, in one fraction.
   *
   * @param stretches first minute and the minute after the last of each
   */
  Estimate outside(Limit.Fraction fraction, List<int[]> stretches) {
    ToDoubleFunction<Portion> amount = amount(fraction);
    double[] typical =
        sources.stream()
            .mapToDouble(
                source ->
                    stretches.stream()
                            .mapToDouble(s -> amount.applyAsDouble(breathed(source, s[0], s[1])))
                            .sum()
                        / Dose.EIGHT_HOURS)
            .toArray();
    return Arrays.stream(typical).sum() == 0 ? Estimate.ZERO : work.sum(typical);
  }

  /** The 8-hour TWA inside the mask, mg/m³, in one fraction. */
  Estimate inside(Limit.Fraction fraction) {
    return inside() == outside() ? outside(fraction) : work.sum(twa(inside(), fraction));
  }

  /**
   * The dust of some sources outside the mask as a multiple of limits: the 8-hour TWA of each over
   * the limit that is its own, in that limit's fraction, added up.
   *
   * @param limitOf the limit of a source
   * @param counted which sources count
   */
  Estimate outsideOver(Function<Source, Limit> limitOf, Predicate<Source> counted) {
    return over(outside(), limitOf, counted);
  }

  /** The same inside the mask. */
  Estimate insideOver(Function<Source, Limit> limitOf, Predicate<Source> counted) {
    return over(inside(), limitOf, counted);
  }

  private Estimate over(
      Breathed breathed, Function<Source, Limit> limitOf, Predicate<Source> counted) {
    double[] shares = new double[sources.size()];
    for (int i = 0; i < shares.length; i++) {
      Source source = sources.get(i);
      if (counted.test(source)) {
        Limit limit = limitOf.apply(source);
        double mgMinPerM3 = amount(limit.fraction()).applyAsDouble(breathed.of(i));
        shares[i] = mgMinPerM3 / Dose.EIGHT_HOURS / limit.mgPerM3();
      }
    }
    return work.sum(shares);
  }

  /** The terms of the 8-hour TWA outside the mask, mg/m³, in one fraction. */
  List<LognormalSum.Term> outsideTerms(Limit.Fraction fraction) {
    return terms(twa(outside(), fraction));
  }

  /** The terms of the 8-hour TWA inside the mask, mg/m³, in one fraction. */
  List<LognormalSum.Term> insideTerms(Limit.Fraction fraction) {
    return terms(twa(inside(), fraction));
  }

  private List<LognormalSum.Term> terms(double[] twa) {
    return IntStream.range(0, twa.length).mapToObj(i -> sources.get(i).term(twa[i])).toList();
  }

  private double[] twa(Breathed breathed, Limit.Fraction fraction) {
    ToDoubleFunction<Portion> part = amount(fraction);
    return breathed.twa(
        part.applyAsDouble(new Portion(1, 0)), part.applyAsDouble(new Portion(0, 1)));
  }

  private Portion outsideOf(Source source) {
    int at = work.placeOf(source);
    return at < 0 ? Portion.NONE : outside().of(at);
  }

  /** How much of a portion is in a fraction. */
  ToDoubleFunction<Portion> amount(Limit.Fraction fraction) {
    return switch (fraction) {
      case INHALABLE -> Portion::inhalable;
      case TOTAL -> portion -> portion.inhalable() / shop.settings().totalConversion();
      case RESPIRABLE -> Portion::fine;
    };
  }

  /** The expected part of a source in the expected dose outside, mg/m³ as 8-hour TWA. */
  double expected(Source source) {
    Portion portion = outsideOf(source);
    return source.term(portion.inhalable() / Dose.EIGHT_HOURS).expected();
  }

  /** The expected dose outside, mg/m³ as 8-hour TWA. */
  double expectedTotal() {
    return sources.stream().mapToDouble(this::expected).sum();
  }

  /** The sources of which the person breathed any dust. */
  List<Source> reached() {
    return IntStream.range(0, sources.size())
        .filter(i -> outside().of(i).inhalable() > 0)
        .mapToObj(sources::get)
        .toList();
  }

  /** Whether the person breathed any of a source's dust. */
  boolean reached(Source source) {
    return outsideOf(source).inhalable() > 0;
  }

  /**
   * The share of what the person breathed of a source that was breathed after the source's session
   * had ended: in a gap, or during a later session. 0 where nothing was breathed of it.
   */
  double leftOverShare(Source source) {
    double all = outsideOf(source).inhalable();
    double after =
        breaths.stream()
            .filter(breath -> breath.place().equals(source.session().work().place()))
            .filter(breath -> breath.to() > source.to())
            .mapToDouble(breath -> leftOver(breath, source))
            .sum();
    return all == 0 ? 0 : after / all;
  }

  private double leftOver(Breath breath, Source source) {
    int from = Math.max(breath.from(), source.to());
    return room(breath.place())
        .map(room -> room.fromSource(work.placeOf(source), from, breath.to()).inhalable())
        .orElse(0.0);
  }

  /** Minutes of the person's sessions and of the short gaps that were counted. */
  int minutesInShop() {
    return breaths.stream().mapToInt(Breath::minutes).sum();
  }

  /** Minutes of short gaps that were counted as spent in the room. */
  int minutesBetween() {
    return breaths.stream().filter(b -> b.own().isEmpty()).mapToInt(Breath::minutes).sum();
  }

  /** The person's day, stretch by stretch. */
  List<Breath> breaths() {
    return breaths;
  }

  /** Every source of the day, whoever ran it and wherever. */
  List<Source> sources() {
    return sources;
  }

  LocalDate date() {
    return work.date();
  }

  String person() {
    return person;
  }

  Shop shop() {
    return shop;
  }
}
