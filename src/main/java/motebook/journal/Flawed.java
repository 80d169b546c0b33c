package motebook.journal;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A session that stands in the book and cannot be gone by, with what can be read of it.
 *
 * @param id the book's number
 * @param date the day it stands on
 * @param person who worked; empty where that leads nowhere
 * @param startMinute the minute of the day at which it begins, as it stands there
 * @param minutes how long, as it stands there
 * @param operation key of the operation, as it stands there
 * @param reason why it cannot be gone by
 * @param details what is wrong, a sentence each where it is damaged, else what is unknown
 */
public record Flawed(
    long id,
    LocalDate date,
    Optional<String> person,
    int startMinute,
    int minutes,
    String operation,
    Reason reason,
    List<String> details) {

  /** Why a session cannot be gone by. */
  public enum Reason {
    /** It is not what the history holds of it. */
    DAMAGED,
    /** It names an operation, a material, a control or a finish that this program does not know. */
    UNKNOWN,
    /** What stands in it can be no session. */
    IMPOSSIBLE
  }

  public Flawed {
    details = List.copyOf(details);
  }
}
