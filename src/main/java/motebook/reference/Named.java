package motebook.reference;

import java.util.List;
import java.util.stream.Stream;

/** A row that a person can name. */
public interface Named {
  /** Stable lower-case key with hyphens, as stored and as printed in JSON. */
  String key();

  /** The name it is listed by. */
  String name();

  /** Other names it answers to. */
  List<String> also();

  /** The key as a person says it: with spaces. */
  default String spoken() {
    return key().replace('-', ' ');
  }

  /** Every name it answers to: the key with spaces, the listed name, the others. */
  default List<String> names() {
    return Stream.concat(Stream.of(spoken(), name()), also().stream()).distinct().toList();
  }
}
