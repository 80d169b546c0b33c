package motebook.model;

/**
 * Where work is done, as it is on the day in question.
 *
 * @param id the book's number; 0 before it is written
 * @param name unique in the book, whatever the case
 * @param surroundings what its air does on that day
 */
public record Place(long id, String name, Surroundings surroundings) {
  public Place {
    name = Names.check("place", name);
  }

  /** Whether the place has no room that holds dust back. */
  public boolean outdoors() {
    return surroundings instanceof Surroundings.Outdoors;
  }
}
