package motebook.reference;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What is printed on an element, and what that holds back.
 *
 * @param key stable key
 * @param name listed name
 * @param also other names
 * @param schemes the schemes of protection factors that know the class
 * @param holds what it holds back, one word of {@link Hazard#heldBy()} each
 * @param letter N, R or P of a particulate element of 42 CFR 84, lower case; empty otherwise
 * @param efficiencyPercent least share of particles held; 0 where it holds none
 * @param service what ends it beside damage, dirt and resistance to breathing
 * @param rating the word by which the UK figures call it; empty where they do not
 * @param basis source
 */
public record ElementClass(
    String key,
    String name,
    List<String> also,
    Set<String> schemes,
    Set<String> holds,
    String letter,
    double efficiencyPercent,
    Service service,
    String rating,
    String basis)
    implements Named {

  /** The word for what holds dust. */
  public static final String PARTICULATE = "particulate";

  /** What ends a particulate element of a class, whatever its owner says. */
  public enum Service {
    /** Nothing that the class tells of. */
    OPEN,
    /** Hours, but for a low load: class N of 42 CFR 84, NIOSH 96-101. */
    DIRTY,
    /** The same from when there was oil in the air: class R, NIOSH 96-101. */
    OIL,
    /** The shift in which it was first worn: NR of EN 149 and EN 143. */
    SHIFT
  }

  /** Whether it holds dust. */
  public boolean particulate() {
    return holds.contains(PARTICULATE);
  }

  /** Whether it holds a gas or a vapour. */
  public boolean gas() {
    return holds.stream().anyMatch(what -> !what.equals(PARTICULATE));
  }

  /** Whether it is not for oil: class N of 42 CFR 84. */
  public boolean classN() {
    return letter.equals("n");
  }

  /** The letter as printed on it, if it has one. */
  public Optional<String> printedLetter() {
    return letter.isEmpty()
        ? Optional.empty()
        : Optional.of(letter.toUpperCase(java.util.Locale.ROOT));
  }
}
