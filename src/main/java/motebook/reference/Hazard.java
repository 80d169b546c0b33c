package motebook.reference;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Something in the air and what protects from it.
 *
 * @param key stable key
 * @param name listed name
 * @param kind what it is
 * @param heldBy what holds it back; any one of them is enough
 * @param leastEfficiencyPercent least efficiency of a particulate element; 0 where any will do
 * @param mostPpm the most that its elements may be used in, 42 CFR 84.190; empty where none is set
 * @param cautions keys of the cautions of materials and operations that tell of it
 * @param solvents the kinds of solvent that it stands for
 * @param advice what is said to whoever wears something else
 * @param source where that is printed
 */
public record Hazard(
    String key,
    String name,
    Kind kind,
    Set<String> heldBy,
    double leastEfficiencyPercent,
    OptionalDouble mostPpm,
    Set<String> cautions,
    Set<Solvent.Element> solvents,
    String advice,
    String source)
    implements Named {

  /** The dust that every dusty operation makes. */
  public static final String WOOD_DUST = "wood-dust";

  /** What breaks through a cartridge at once and may or may not be in a product. */
  public static final String METHANOL = "methanol";

  /** What air from elsewhere counts as. */
  public static final String SUPPLIED_AIR = "supplied-air";

  /** What a hazard is. */
  public enum Kind {
    DUST,
    VAPOUR,
    MIST
  }

  @Override
  public List<String> also() {
    return List.of();
  }

  /** Whether an element of a class holds it back. */
  public boolean heldBy(ElementClass element) {
    boolean fine = kind != Kind.DUST || element.efficiencyPercent() >= leastEfficiencyPercent;
    return fine && element.holds().stream().anyMatch(heldBy::contains);
  }

  /** Whether nothing but air from elsewhere protects from it. */
  public boolean suppliedAirOnly() {
    return heldBy.equals(Set.of(SUPPLIED_AIR));
  }
}
