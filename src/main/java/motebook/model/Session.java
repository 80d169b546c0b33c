package motebook.model;

/**
 * A stretch of work as it stands in the book.
 *
 * @param id the book's number
 * @param work what was done
 */
public record Session(long id, Work work) {}
