package motebook.model;

/**
 * A line that is said often, under a name.
 *
 * @param id the book's number; 0 before it is written
 * @param name unique in the book, whatever the case
 * @param line what is said, without date and time of day
 */
public record Favourite(long id, String name, String line) {
  /** Longest line that is kept, in code points. */
  public static final int LONGEST = 5000;

  public Favourite {
    name = Names.check("favourite", name);
    line = Text.clean(line);
    if (line.isEmpty() || Text.length(line) > LONGEST) {
      throw new Refusal(
          "A favourite needs a line of 1 to " + LONGEST + " characters, such as 40m assembly.");
    }
  }
}
