package motebook.model;

import java.util.Locale;

/** Whose figures the vapours of a day are held against. */
public enum VapourLimits {
  /** For each solvent the lower of OSHA's and NIOSH's figure. */
  STRICTER,
  /** OSHA's permissible exposure limits, 29 CFR 1910.1000, over 8 h. */
  OSHA,
  /** NIOSH's recommended exposure limits, over up to 10 h. */
  NIOSH;

  /** The word for it, as the owner says it and JSON has it. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * The one that a word stands for, whatever its case.
   *
   * @throws Refusal if it stands for none
   */
  public static VapourLimits of(String word) {
    for (VapourLimits limits : values()) {
      if (limits.key().equals(Text.folded(word))) {
        return limits;
      }
    }
    throw new Refusal(
        "The vapours are held against stricter, osha or niosh: got \"" + Text.clean(word) + "\".");
  }
}
