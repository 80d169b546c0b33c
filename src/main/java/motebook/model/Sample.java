package motebook.model;

import java.time.LocalDate;
import java.util.Set;

/**
 * A measured air result: what one person's sampler held over a time, outside any mask.
 *
 * @param id the book's number; 0 before it is written
 * @param person who wore the sampler
 * @param date the local date
 * @param fromMinute first minute of the day sampled, 0 to 1439
 * @param toMinute the minute after the last, up to 1440
 * @param fraction of the dust: inhalable, respirable or total
 * @param kind how it was measured
 * @param result what was found
 * @param cv coefficient of variation of the result about the truth, 0.01 to 2
 * @param note free text, cleaned, possibly empty
 */
public record Sample(
    long id,
    String person,
    LocalDate date,
    int fromMinute,
    int toMinute,
    String fraction,
    Kind kind,
    Result result,
    double cv,
    String note) {
  /** The fractions that a sampler may hold. */
  public static final Set<String> FRACTIONS = Set.of("inhalable", "respirable", "total");

  private static final double MOST_MG_M3 = 1e6;
  private static final int DAY = 24 * 60;

  public Sample {
    note = Text.note(note);
    if (date.getYear() < 1900 || date.getYear() > 2199) {
      throw new Refusal("The date " + date + " is outside 1900 to 2199.");
    }
    if (fromMinute < 0 || toMinute > DAY || fromMinute >= toMinute) {
      throw new Refusal(
          "A sample ends after it begins, on the same day; give one that runs past midnight as"
              + " two.");
    }
    if (!FRACTIONS.contains(fraction)) {
      throw new Refusal(
          "A sample is of inhalable, respirable or total dust: got " + fraction + ".");
    }
    Checks.within("error of a sample", cv, 0.01, 2, "as a share of the result");
  }

  /** How a result was measured, with its error where the owner says nothing else. */
  public enum Kind {
    /** A weighed filter. NIOSH 0501: ±15.5 % (read). */
    GRAVIMETRIC("gravimetric", 0.15),
    /** An instrument that shows a figure at once. A judgement. */
    DIRECT_READING("direct-reading", 0.30);

    private final String key;
    private final double cv;

    Kind(String key, double cv) {
      this.key = key;
      this.cv = cv;
    }

    /** The word for it. */
    public String key() {
      return key;
    }

    /** Coefficient of variation unless another is given. */
    public double cv() {
      return cv;
    }
  }

  /** What was found. */
  public sealed interface Result {}

  /**
   * A filter that was weighed.
   *
   * @param mg what it gained; a damp day can make it lighter
   * @param blankMg what the field blank gained
   * @param litresPerMin flow of the pump
   * @param detectionLimitMg least mass that can be told
   */
  public record Weighed(double mg, double blankMg, double litresPerMin, double detectionLimitMg)
      implements Result {
    public Weighed {
      Checks.within("mass on the filter", mg, -1000, 1e5, "mg");
      Checks.within("mass on the blank", blankMg, -1000, 1e5, "mg");
      Checks.within("flow of the pump", litresPerMin, 0.01, 1000, "L/min");
      Checks.within("limit of detection", detectionLimitMg, 0, 1000, "mg");
      if (mg - blankMg <= 0 && detectionLimitMg == 0) {
        throw new Refusal(
            "The mass less the blank leaves nothing, and a result is never zero: give the"
                + " laboratory's limit of detection, and it is kept as below that.");
      }
    }
  }

  /**
   * A concentration that was told.
   *
   * @param mgPerM3 above 0
   * @param below whether the result is only known to lie below it
   */
  public record Told(double mgPerM3, boolean below) implements Result {
    public Told {
      if (!(mgPerM3 > 0 && mgPerM3 <= MOST_MG_M3)) {
        throw new Refusal(
            "A result must be above 0 mg/m³ and no more than a million: got "
                + Figures.exact(mgPerM3)
                + ". One below detection is not zero; give the limit of detection.");
      }
    }
  }

  /** The time sampled, min. */
  public int minutes() {
    return toMinute - fromMinute;
  }
}
