package motebook.journal;

import java.time.Instant;
import java.util.Optional;

/**
 * One change of the book.
 *
 * @param id the book's number
 * @param at when it was made
 * @param deed what was done; of an undo, of what was undone
 * @param undone whether it has been undone since
 * @param undoes number of the change that this one undoes, if it is an undo
 */
public record Change(long id, Instant at, Deed deed, boolean undone, Optional<Long> undoes) {
  /** What was done, as a sentence without its full stop. */
  public String what() {
    return deed.words();
  }
}
