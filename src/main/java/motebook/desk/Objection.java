package motebook.desk;

import java.util.Optional;

/**
 * One reason why a respirator is not credited.
 *
 * @param reason what is wrong, a sentence without its full stop
 * @param mend what mends it, a sentence that ends with the command; empty where nothing does
 */
public record Objection(String reason, Optional<String> mend) {
  static Objection mendable(String reason, String mend) {
    return new Objection(reason, Optional.of(mend));
  }

  static Objection lasting(String reason) {
    return new Objection(reason, Optional.empty());
  }
}
