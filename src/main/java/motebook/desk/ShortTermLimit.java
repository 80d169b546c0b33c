package motebook.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import motebook.reference.Solvent;
import motebook.reference.Solvent.Authority;

/**
 * A limit that the worst 15 minutes of one solvent are held against. A ceiling is held so too, and
 * never against a mean over 8 hours.
 *
 * @param authority whose it is
 * @param kind what it is called
 * @param ppm above 0
 */
public record ShortTermLimit(Authority authority, Kind kind, double ppm) {
  /** The authorities that hold wherever the shop is, until it names its country. */
  static final List<Authority> AUTHORITIES =
      List.of(Authority.OSHA, Authority.NIOSH, Authority.EPA);

  /** What kind of limit it is. */
  public enum Kind {
    /** A mean over 15 minutes. */
    STEL,
    /** A figure not to be passed at any time. */
    CEILING
  }

  /** Those of a solvent. */
  static List<ShortTermLimit> of(Solvent solvent) {
    List<ShortTermLimit> limits = new ArrayList<>();
    for (Authority authority : AUTHORITIES) {
      Solvent.Ppm printed = solvent.limits().of(authority);
      add(authority, Kind.STEL, printed.shortTerm(), limits);
      add(authority, Kind.CEILING, printed.ceiling(), limits);
    }
    return limits;
  }

  private static void add(
      Authority authority, Kind kind, OptionalDouble ppm, List<ShortTermLimit> limits) {
    ppm.ifPresent(figure -> limits.add(new ShortTermLimit(authority, kind, figure)));
  }
}
