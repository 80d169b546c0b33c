package motebook.model;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What was done to a filter of the shop.
 *
 * @param id the book's number; 0 before it is written
 * @param filter name of the filter
 * @param date when
 * @param time at what time of the day, if it was said
 * @param what what was done
 * @param reading what the gauge showed, in its own unit; there exactly when it was read
 */
public record Upkeep(
    long id,
    String filter,
    LocalDate date,
    Optional<LocalTime> time,
    What what,
    OptionalDouble reading) {

  /** What can be done to a filter. */
  public enum What {
    CLEANED,
    REPLACED,
    EMPTIED,
    INSPECTED,
    GAUGE;

    /** The word it is given and stored with. */
    public String key() {
      return name().toLowerCase(Locale.ROOT);
    }

    /** What is meant by a word, whatever its case. */
    public static Optional<What> of(String word) {
      String folded = Text.folded(word);
      return Arrays.stream(values()).filter(what -> what.key().equals(folded)).findFirst();
    }
  }

  public Upkeep {
    filter = Names.check("filter", filter);
    Checks.believable(date);
    time = time.map(at -> at.withSecond(0).withNano(0));
    reading.ifPresent(x -> Checks.within("reading", x, -1e6, 1e6, "on the gauge"));
    if ((what == What.GAUGE) != reading.isPresent()) {
      throw new Refusal(
          what == What.GAUGE
              ? "Say what the gauge shows, for example: gauge 1.4"
              : "Only the gauge has a reading; \"" + what.key() + "\" stands alone.");
    }
  }
}
