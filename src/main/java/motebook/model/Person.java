package motebook.model;

/**
 * Somebody who works in the shop.
 *
 * @param id the book's number; 0 before it is written
 * @param name unique in the book, whatever the case
 */
public record Person(long id, String name) {
  public Person {
    name = Names.check("person", name);
  }
}
