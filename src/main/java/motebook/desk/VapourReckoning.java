package motebook.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import motebook.model.Surroundings;
import motebook.reference.Solvent;
import motebook.reference.Solvents;
import motebook.science.BreathedAir;
import motebook.science.Dose;
import motebook.science.LognormalSum;
import motebook.science.NearField;
import motebook.science.Vapour;

/**
 * What vapour one person breathed on one day, finish by finish: near field for what is at their own
 * hand, the room for everything else, whoever used it; outdoors the near field alone.
 */
final class VapourReckoning {
  private final DayReckoning day;
  private final List<Drying> drying = new ArrayList<>();
  private final Map<String, RoomVapour> rooms = new HashMap<>();
  private final Map<Drying, Double> outside = new LinkedHashMap<>();
  private final Map<Drying, Double> inside = new LinkedHashMap<>();

  VapourReckoning(DayReckoning day) {
    this.day = day;
    day.sources().stream()
        .filter(source -> !source.session().work().amounts().isEmpty())
        .forEach(source -> drying.addAll(Drying.of(source, day.shop().finishes().get())));
    day.breaths().forEach(this::breathe);
  }

  private void breathe(Breath breath) {
    double share = day.vapourShare(breath);
    for (Drying finish : drying) {
      double breathed = mgMinPerM3(breath, finish);
      outside.merge(finish, breathed, Double::sum);
      inside.merge(finish, breathed * share, Double::sum);
    }
  }

  /** What a stretch brought of one finish, all its solvents together, mg·min/m³. */
  double mgMinPerM3(Breath breath, Drying finish) {
    if (!place(finish).equals(breath.place())) {
      return 0;
    }
    return atHand(breath, finish) * breath.minutes()
        + room(breath.place()).mgMinPerM3(finish, breath.from(), breath.to());
  }

  /** The concentration of one finish that a person meets at a minute of a stretch, mg/m³. */
  double mgPerM3(Breath breath, Drying finish, int minute) {
    return place(finish).equals(breath.place())
        ? atHand(breath, finish) + room(breath.place()).mgPerM3At(finish, minute)
        : 0;
  }

  /**
   * What a person breathes of one finish over the day.
   *
   * @param share of what is outside that reaches the person in a stretch, 0 to 1
   */
  BreathedAir air(Drying finish, ToDoubleFunction<Breath> share) {
    return new BreathedAir(
        day.breaths().stream()
            .filter(breath -> place(finish).equals(breath.place()))
            .map(
                breath ->
                    new BreathedAir.Stretch(
                        breath.from(),
                        breath.to(),
                        atHand(breath, finish),
                        share.applyAsDouble(breath),
                        room(breath.place()).traces(finish)))
            .toList());
  }

  private static String place(Drying finish) {
    return finish.source().session().work().place();
  }

  /**
   * How far the near field lies above the room, mg/m³; nothing where another hand holds the brush.
   */
  private double atHand(Breath breath, Drying finish) {
    if (breath.own().filter(finish.source()::equals).isEmpty()) {
      return 0;
    }
    Surroundings air = day.shop().place(breath.place()).surroundings();
    return finish.mgPerMinAtHand() / NearField.exchangeM3PerMin(air.estimatedAirSpeedMPerMin());
  }

  private RoomVapour room(String place) {
    return rooms.computeIfAbsent(place, this::roomVapour);
  }

  private RoomVapour roomVapour(String place) {
    List<Source> here =
        day.sources().stream().filter(s -> s.session().work().place().equals(place)).toList();
    List<Drying> dryingHere = drying.stream().filter(d -> place(d).equals(place)).toList();
    return day.shop().place(place).surroundings() instanceof Surroundings.Indoors indoors
        ? new RoomVapour(indoors, here, dryingHere)
        : RoomVapour.NONE;
  }

  /** The minute by which the air about a finish has changed a number of times after another. */
  double afterAirChanges(Drying finish, double minute, double changes) {
    return room(place(finish)).afterAirChanges(minute, changes);
  }

  /** Every finish that the person breathed of. */
  List<Drying> breathed() {
    return drying.stream().filter(finish -> outside.getOrDefault(finish, 0.0) > 0).toList();
  }

  /** The typical 8-hour TWA of each solvent outside the mask, ppm. */
  Map<Solvent, Double> outsidePpm() {
    return ppm(finish -> outside.get(finish) / Dose.EIGHT_HOURS);
  }

  /** The typical 8-hour TWA of each solvent inside the mask, ppm. */
  Map<Solvent, Double> insidePpm() {
    return ppm(finish -> inside.get(finish) / Dose.EIGHT_HOURS);
  }

  /** The typical mean of each solvent over a stretch outside the mask, ppm. */
  Map<Solvent, Double> meanPpm(Breath breath) {
    return ppm(finish -> mgMinPerM3(breath, finish) / breath.minutes());
  }

  private Map<Solvent, Double> ppm(ToDoubleFunction<Drying> mgPerM3) {
    Map<Solvent, Double> sum = new LinkedHashMap<>();
    for (Drying finish : breathed()) {
      double whole = mgPerM3.applyAsDouble(finish);
      if (whole > 0) {
        parts(finish, whole).forEach((solvent, ppm) -> sum.merge(solvent, ppm, Double::sum));
      }
    }
    return sum;
  }

  /** The solvents in a concentration of a finish's vapour, mg/m³, each in ppm. */
  static Map<Solvent, Double> parts(Drying finish, double mgPerM3) {
    Map<Solvent, Double> parts = new LinkedHashMap<>();
    finish
        .finish()
        .solvents()
        .forEach(
            (key, share) -> {
              Solvent solvent = Solvents.shipped().withKey(key).orElseThrow();
              double molarMass = solvent.molarMass().orElseThrow();
              parts.put(solvent, Vapour.ppm(mgPerM3 * share, molarMass));
            });
    return parts;
  }

  /**
   * What air at 25 °C holds of each solvent where it is full of all that the finishes give off,
   * ppm, by Raoult's law; of a solvent in several of them, the richest counts. Without bound where
   * the pressure is unknown.
   */
  static Map<Solvent, Double> saturatedPpm(List<Drying> finishes) {
    Map<Solvent, Double> full = new HashMap<>();
    for (Drying one : finishes) {
      Map<Solvent, Double> volumes = parts(one, 1);
      double all = volumes.values().stream().mapToDouble(Double::doubleValue).sum();
      volumes.forEach(
          (solvent, part) -> full.merge(solvent, part / all * solvent.saturatedPpm(), Math::max));
    }
    return full;
  }

  /** The terms of the day's sum of some figure outside the mask, one for each finish. */
  List<LognormalSum.Term> outsideTerms(Weight weight) {
    return terms(finish -> outside.get(finish) / Dose.EIGHT_HOURS, weight);
  }

  /** The same inside it. */
  List<LognormalSum.Term> insideTerms(Weight weight) {
    return terms(finish -> inside.get(finish) / Dose.EIGHT_HOURS, weight);
  }

  /** What a finish at a concentration, mg/m³, adds to a sum. */
  interface Weight {
    double of(Drying finish, double mgPerM3);
  }

  List<LognormalSum.Term> terms(ToDoubleFunction<Drying> mgPerM3, Weight weight) {
    return breathed().stream()
        .map(
            finish ->
                new LognormalSum.Term(
                    weight.of(finish, mgPerM3.applyAsDouble(finish)), finish.doubts()))
        .toList();
  }

  DayReckoning day() {
    return day;
  }
}
