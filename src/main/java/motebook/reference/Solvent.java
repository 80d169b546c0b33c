package motebook.reference;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.science.Breakthrough;
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

  /** What protects from it. */
  public enum Element {
    ORGANIC_VAPOUR,
    FORMALDEHYDE,
    AMMONIA,
    NONE,
    SUPPLIED_AIR_ONLY,
    SUPPLIED_AIR_BY_DEFAULT
  }

  /**
   * Limits as printed; empty where there is none.
   *
   * @param lelPercent lower flammable limit, % by volume
   * @param oshaPpm OSHA, 8 h
   * @param nioshPpm NIOSH, up to 10 h
   * @param nioshShortPpm NIOSH, 15 min
   */
  public record Limits(
      OptionalDouble lelPercent,
      OptionalDouble oshaPpm,
      OptionalDouble nioshPpm,
      OptionalDouble nioshShortPpm) {
    static final Limits UNKNOWN =
        new Limits(
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty());
  }
}
