package motebook.desk;

import java.util.Optional;

/**
 * One reason why a respirator is not credited.
 *
 * @param brief the same in two to four words, where there is little room
 * @param reason what is wrong, a sentence without its full stop
 * @param mend what mends it, a sentence that ends with the command; empty where nothing does
 */
public record Objection(String brief, String reason, Optional<String> mend) {
  static Objection mendable(String brief, String reason, String mend) {
    return new Objection(brief, reason, Optional.of(mend));
  }

  static Objection lasting(String brief, String reason) {
    return new Objection(brief, reason, Optional.empty());
  }
}
