package motebook.desk;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import motebook.model.Amount;
import motebook.reference.Finish;
import motebook.reference.Finishes;
import motebook.reference.Solvent;
import motebook.reference.Solvents;
import motebook.science.Release;
import motebook.science.Spread;

/**
 * A finish used in a session as a source of vapour: how much it gives off, when, how sure that is.
 *
 * @param source the session
 * @param finish what was used
 * @param millilitres how much of it
 */
public record Drying(Source source, Finish finish, double millilitres) {
  private static final double MEAN_TIMES = 3;
  private static final double MINUTES_PER_HOUR = 60;

  /** What a session gives off, one for each amount. */
  static List<Drying> of(Source source, Finishes finishes) {
    return source.session().work().amounts().stream()
        .map(amount -> of(source, amount, finishes))
        .toList();
  }

  private static Drying of(Source source, Amount amount, Finishes finishes) {
    return new Drying(source, finishes.finish(amount.finish()), amount.millilitres());
  }

  /** Vapour given off in all, mg. */
  double mg() {
    return finish.mg(millilitres);
  }

  private double mgWithin() {
    return mg() * finish.withinSession();
  }

  /** At the worker's hand while it is put on, mg/min. */
  double mgPerMinAtHand() {
    return mgWithin() / source.session().work().minutes();
  }

  /** Evenly while it is put on; then the rest, ever more slowly, until the day ends. */
  List<Release> releases() {
    return List.of(
        Release.even(mgWithin(), source.from(), source.to()),
        Release.drying(mg() - mgWithin(), finish.laterPerHour(), source.to(), RoomDay.DAY_ENDS));
  }

  /**
   * The minute of the day by which all but a twentieth of what was left to dry has been given off:
   * three times the mean time that it takes.
   */
  double mostlyGivenOff() {
    return finish.withinSession() < 1
        ? source.to() + MEAN_TIMES * MINUTES_PER_HOUR / finish.laterPerHour()
        : source.to();
  }

  /** What it gives off that no vapour balance tells of. */
  Set<Solvent> unmeasured() {
    Set<Solvent> unmeasured = new LinkedHashSet<>();
    if (finish.cautions().contains(Finish.ISOCYANATES)) {
      Solvents.shipped().withKey("isocyanates").ifPresent(unmeasured::add);
    }
    if (finish.cautions().contains(Finish.FORMALDEHYDE)) {
      Solvents.shipped().withKey("formaldehyde").ifPresent(unmeasured::add);
    }
    return unmeasured;
  }

  /** By session and finish alone: hashing all that they hold costs more than their vapour. */
  @Override
  public int hashCode() {
    return 31 * source.hashCode() + finish.key().hashCode();
  }

  @Override
  public boolean equals(Object other) {
    return this == other
        || (other instanceof Drying that
            && source.equals(that.source)
            && finish.key().equals(that.finish.key()));
  }

  /**
   * Log variances by the name of each part; the model's is shared with all vapour, that of the air
   * outdoors with all vapour there, that of the volatile content with every use of the finish.
   */
  Map<String, Double> doubts() {
    double ofFinish = Spread.ofRange(finish.volatileGPerL().low(), finish.volatileGPerL().high());
    Map<String, Double> parts = new HashMap<>();
    parts.put("finish " + finish.key(), ofFinish);
    parts.put(Source.MODEL, Spread.MODEL);
    if (source.kind().outdoors()) {
      parts.put(Source.OUTDOORS, Spread.OUTDOORS);
    }
    return parts;
  }
}
