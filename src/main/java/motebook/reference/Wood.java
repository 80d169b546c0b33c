package motebook.reference;

import java.util.List;

/**
 * A wood or board of the trade that has no row of figures of its own, and the row that stands for
 * it.
 *
 * @param name its name
 * @param also other names
 * @param stands key of the material whose figures and wood class stand for it
 * @param source where that is printed; says so where it is only common practice
 */
public record Wood(String name, List<String> also, String stands, String source) implements Named {
  @Override
  public String key() {
    return name.replace(' ', '-');
  }
}
