package motebook.screen.state;

/**
 * The change that an undo would take back.
 *
 * @param id its number in the book
 * @param what what was done, as a sentence without its full stop
 */
public record Undoable(long id, String what) {}
