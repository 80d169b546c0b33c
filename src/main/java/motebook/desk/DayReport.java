package motebook.desk;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import motebook.journal.Flawed;
import motebook.reference.Caution;
import motebook.science.Estimate;

/**
 * The answer to "what did this person breathe on this day".
 *
 * @param date the day
 * @param person whose
 * @param limitSet the set the owner chose
 * @param limits how it stands to limits
 * @param sessions the person's own, in order of time
 * @param outside 8-hour TWA of inhalable dust outside the mask
 * @param inside the same inside it
 * @param respirableOutsideTypical typical 8-hour TWA of respirable dust outside, mg/m³
 * @param others sources of other people that the person breathed from
 * @param leftOut sessions of the day, anybody's, that cannot be gone by and are not estimated
 * @param minutesLogged length of the person's sessions
 * @param minutesBetween short gaps counted as spent in the room
 * @param remarks what a reader must know beside the figures
 * @param cautions raised by what was worked and how
 * @param vapour what was breathed of finishes; empty where there was none
 * @param learnedFrom how many of the shop's own samples the estimates learned from
 * @param published the 8-hour TWA outside the mask by the published figures alone; empty where
 *     nothing was learned
 */
public record DayReport(
    LocalDate date,
    String person,
    String limitSet,
    DayLimits limits,
    List<SessionLine> sessions,
    Twa outside,
    Twa inside,
    double respirableOutsideTypical,
    List<OtherSource> others,
    List<Flawed> leftOut,
    int minutesLogged,
    int minutesBetween,
    List<String> remarks,
    List<Caution> cautions,
    Optional<VapourReport> vapour,
    int learnedFrom,
    Optional<Estimate> published) {

  /** The first thing to do so that a mask of the day counts; empty where none gains anything. */
  public Optional<Remedy.Step> nextStep() {
    return sessions.stream()
        .flatMap(line -> line.credit().remedy().stream())
        .map(remedy -> remedy.steps().get(0))
        .findFirst();
  }

  /** The limit that the day is judged by; empty where none applies or none covers the dust. */
  public Optional<HeldLimit> limit() {
    return limits.judged();
  }

  /** The dust that no limit covers; empty where there is none. */
  public Optional<Uncovered> uncovered() {
    return limits.uncovered();
  }

  /** How much protection the dust calls for; empty where no limit judges it. */
  public Optional<RequiredProtection> requiredForDust() {
    return limit().flatMap(HeldLimit::required);
  }

  /**
   * How much a shift over midnight calls for, as one shift, where that is more than the day does;
   * empty where it is not.
   */
  public Optional<RequiredProtection> requiredForNight() {
    double ofDay = requiredForDust().map(RequiredProtection::central).orElse(0.0);
    return limits.nights().stream()
        .filter(night -> night.uncovered().isEmpty())
        .flatMap(night -> night.limit().stream())
        .flatMap(held -> held.required().stream())
        .filter(needed -> needed.central() > ofDay)
        .max(Comparator.comparingDouble(RequiredProtection::central));
  }

  /** How much protection the vapours call for; empty where there are none, or no limit for any. */
  public Optional<RequiredProtection> requiredForVapour() {
    return vapour.flatMap(VapourReport::required);
  }

  /** The credited masks that are not enough, for dust and for vapour. */
  public List<Shortfall> shortfalls() {
    Set<Shortfall> all = new LinkedHashSet<>();
    double needed = requiredForDust().map(RequiredProtection::central).orElse(0.0);
    for (SessionLine line : sessions) {
      double apf = line.credit().apf();
      if (apf > 1 && needed > apf) {
        String worn = line.source().session().work().mask().orElseThrow().respirator();
        all.add(new Shortfall(worn, apf, new Shortfall.Day(Foremost.DUST, needed)));
      }
    }
    vapour.ifPresent(of -> all.addAll(of.shortfalls()));
    return List.copyOf(all);
  }

  /**
   * An 8-hour TWA.
   *
   * @param estimate mg/m³
   * @param chanceOverLimit chance of being over the day's limit, 0 to 1; empty without a limit
   */
  public record Twa(Estimate estimate, OptionalDouble chanceOverLimit) {}

  /**
   * One session of the person.
   *
   * @param source the session and what it makes
   * @param credit what its respirator counts for
   * @param meanOutsideMgPerM3 typical inhalable concentration breathed, whoever made it
   * @param sharePercent what its own emission put into the person's whole day
   */
  public record SessionLine(
      Source source, Credit credit, double meanOutsideMgPerM3, double sharePercent) {}

  /**
   * Somebody else's session in the same place.
   *
   * @param source the session and what it makes
   * @param sharePercent what it put into the person's whole day
   */
  public record OtherSource(Source source, double sharePercent) {}
}
