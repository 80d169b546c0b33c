package motebook.screen.state;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.model.Action;

/**
 * One thing that is kept in order.
 *
 * @param name what it is called
 * @param told the words behind its name
 * @param used share of the clock that runs out first, 0 and more; empty where no clock runs
 * @param pressing whether it asks for something now
 * @param more what is told of it when it is pointed at
 * @param next what the Enter key offers to do
 * @param worn name of the element, where it can be damaged or soiled on a mask
 * @param mask name of the respirator that it belongs to; empty where there is none
 */
public record CareRow(
    String name,
    String told,
    OptionalDouble used,
    boolean pressing,
    List<Note> more,
    Optional<Action> next,
    Optional<String> worn,
    String mask) {
  public CareRow {
    more = List.copyOf(more);
  }

  /**
   * Something told of a thing.
   *
   * @param told in words
   * @param used share of the clock that it tells of, 0 and more; empty where it tells of none
   */
  public record Note(String told, OptionalDouble used) {
    /** Words alone. */
    public static Note of(String told) {
      return new Note(told, OptionalDouble.empty());
    }
  }
}
