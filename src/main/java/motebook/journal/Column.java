package motebook.journal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * One column of a file of an export.
 *
 * @param name with its unit
 * @param parts what a cell holds: one part, or for a list the parts of each of its items
 * @param list whether a cell holds any number of items
 * @param required whether a cell must not be empty
 * @param refersTo the file whose names stand here, if it is one
 * @param since the version of the form from which on there is this column
 */
public record Column(
    String name,
    List<Part> parts,
    boolean list,
    boolean required,
    Optional<String> refersTo,
    int since) {
  private static final String LIST = "list of ";

  /**
   * What stands in a cell, or in an item of a list.
   *
   * @param name what it is, with its unit
   */
  public record Part(String name, Form form) {
    /** Reads "name:form". */
    static Part of(String text) {
      String[] both = text.split(":", -1);
      return new Part(both[0], Column.form(both[1]));
    }
  }

  /**
   * @param holds the form of a cell, or "list of " and the parts of an item, joined by "="
   */
  static Column of(
      String name, String holds, boolean required, Optional<String> refersTo, int since) {
    boolean list = holds.startsWith(LIST);
    List<Part> parts = new ArrayList<>();
    if (list) {
      Arrays.stream(holds.substring(LIST.length()).split("=", -1))
          .map(Part::of)
          .forEach(parts::add);
    } else {
      parts.add(new Part(name, form(holds)));
    }
    return new Column(name, List.copyOf(parts), list, required, refersTo, since);
  }

  private static Form form(String word) {
    return Form.valueOf(word.toUpperCase(Locale.ROOT));
  }

  /** The form of a cell that holds no list. */
  public Form form() {
    return parts.get(0).form();
  }
}
