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
    String rating,
    String basis)
    implements Named {

  /** The word for what holds dust. */
  public static final String PARTICULATE = "particulate";

  /** Whether it holds dust. */
  public boolean particulate() {
    return holds.contains(PARTICULATE);
  }

  /** Whether it holds a gas or a vapour. */
  public boolean gas() {
    return holds.stream().anyMatch(what -> !what.equals(PARTICULATE));
  }

  /** Whether oil and hours of dirt spoil it: class N of 42 CFR 84. */
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
