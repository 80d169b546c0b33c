package motebook.journal;

import java.time.Instant;
import java.util.Optional;

/**
 * One change of the book.
 *
 * @param id the book's number
 * @param at when it was made
 * @param what what was done, as a sentence without its full stop
 * @param undone whether it has been taken back since
 * @param undoes number of the change that this one takes back, if it is an undo
 */
public record Change(long id, Instant at, String what, boolean undone, Optional<Long> undoes) {}
