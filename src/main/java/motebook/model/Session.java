package motebook.model;

/**
 * A stretch of work as it stands in the book.
 *
 * @param id the book's number
 * @param work what was done
 */
public record Session(long id, Work work) {
  /** By the number alone: no two sessions of a book share it. */
  @Override
  public int hashCode() {
    return Long.hashCode(id);
  }

  /** The number first: it tells most of them apart without a look at the work. */
  @Override
  public boolean equals(Object other) {
    return this == other
        || (other instanceof Session that && id == that.id && work.equals(that.work));
  }
}
