package motebook.model;

import java.util.Arrays;
import java.util.Optional;

/** Whose rules a respirator's protection factor and fit tests follow. */
public enum Scheme {
  /** 29 CFR 1910.134, United States. */
  OSHA("osha"),
  /** HSG53 and the EN standards, United Kingdom. */
  UK("uk");

  private final String key;

  Scheme(String key) {
    this.key = key;
  }

  /** The word it is given and stored with. */
  public String key() {
    return key;
  }

  /** The scheme of that word, whatever its case. */
  public static Optional<Scheme> of(String word) {
    String folded = Text.folded(word);
    return Arrays.stream(values()).filter(scheme -> scheme.key.equals(folded)).findFirst();
  }
}
