package motebook.reference;

import java.util.List;
import java.util.Optional;

/**
 * A wood or board of the trade that has no row of figures of its own, and the row that stands for
 * it; or what is worked like wood and is none.
 *
 * @param name its name
 * @param also other names
 * @param stands key of the material whose figures and wood class stand for it; empty for what is no
 *     wood
 * @param advice what to say where nothing stands for it; else empty
 * @param source where that is printed; says so where it is only common practice
 */
public record Wood(
    String name, List<String> also, Optional<String> stands, String advice, String source)
    implements Named {
  @Override
  public String key() {
    return name.replace(' ', '-');
  }
}
