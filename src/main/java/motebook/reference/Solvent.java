package motebook.reference;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.science.Breakthrough;
import motebook.science.Vapour;
import motebook.science.WheelerJonas;

/**
 * A substance that a finish gives off.
 *
 * @param key stable key
 * @param name listed name
 * @param also other names
 * @param cas registry number; empty for a group
 * @param molarMass g/mol; empty for what has none
 * @param element what protects from it
 * @param boilingC boiling point, °C
 * @param kPa25 vapour pressure at 25 °C, kPa; empty where it has none
 * @param lightAlcohol whether it is one of the small alcohols that carbon hardly holds
 * @param vapour what the carbon-bed estimate needs
 * @param breakthrough printed breakthrough times
 * @param limits figures that a concentration is held against
 * @param advice what is said in place of a cartridge time; empty where one may be reckoned
 * @param basis source
 */
public record Solvent(
    String key,
    String name,
    List<String> also,
    String cas,
    OptionalDouble molarMass,
    Element element,
    OptionalDouble boilingC,
    OptionalDouble kPa25,
    boolean lightAlcohol,
    Optional<WheelerJonas.Vapour> vapour,
    Optional<Breakthrough> breakthrough,
    Limits limits,
    String advice,
    String basis)
    implements Named {

  /** By the key alone: no two rows of the table share it. */
  @Override
  public int hashCode() {
    return key.hashCode();
  }

  /** Whether a weight of it can be told as parts per million. */
  public boolean weighed() {
    return molarMass.isPresent();
  }

  /**
   * The most of it that air at 25 °C can hold, ppm; without bound where its pressure is unknown.
   */
  public double saturatedPpm() {
    return kPa25.isPresent()
        ? Vapour.saturatedPpm(1, kPa25.getAsDouble())
        : Double.POSITIVE_INFINITY;
  }

  /**
   * Whether a concentration of it, ppm, lies above what is immediately dangerous to life or health.
   */
  public boolean aboveIdlh(double ppm) {
    return limits.idlhPpm().isPresent() && ppm > limits.idlhPpm().getAsDouble();
  }

  /** What protects from it. */
  public enum Element {
    ORGANIC_VAPOUR,
    FORMALDEHYDE,
    AMMONIA,
    NONE,
    SUPPLIED_AIR_ONLY,
    SUPPLIED_AIR_BY_DEFAULT
  }

  /** Whose limits of a vapour are in the table. */
  public enum Authority {
    OSHA,
    NIOSH,
    EPA,
    EU,
    GB
  }

  /**
   * What one authority allows, as printed, ppm; empty where it has no such limit.
   *
   * @param eightHour mean over 8 h, with NIOSH up to 10 h
   * @param shortTerm mean over 15 min
   * @param ceiling at no time, held as a mean over 15 min; never a limit over 8 h
   */
  public record Ppm(OptionalDouble eightHour, OptionalDouble shortTerm, OptionalDouble ceiling) {
    static final Ppm NONE =
        new Ppm(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
  }

  /**
   * What a concentration of it is held against.
   *
   * @param lelPercent lower flammable limit, % by volume; empty where there is none
   * @param idlhPpm immediately dangerous to life or health (NIOSH), ppm; empty where there is none
   * @param occupational by authority; one that names none is left out
   * @param acuteBasis source of the short-term limits, ceilings and the IDLH; may be empty
   */
  public record Limits(
      OptionalDouble lelPercent,
      OptionalDouble idlhPpm,
      Map<Authority, Ppm> occupational,
      String acuteBasis) {
    static final Limits UNKNOWN =
        new Limits(OptionalDouble.empty(), OptionalDouble.empty(), Map.of(), "");

    /** What an authority allows. */
    public Ppm of(Authority authority) {
      return occupational.getOrDefault(authority, Ppm.NONE);
    }
  }
}
